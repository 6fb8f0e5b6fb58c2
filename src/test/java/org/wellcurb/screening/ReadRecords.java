package org.wellcurb.screening;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wellcurb.intake.Chunk;
import org.wellcurb.intake.ChunkReader;
import org.wellcurb.intake.Input;
import org.wellcurb.intake.Inputs;
import org.wellcurb.intake.RawRow;
import org.wellcurb.intake.RecordSink;
import org.wellcurb.intake.RecordSource;
import org.wellcurb.intake.SetAside;
import org.wellcurb.intake.Sources;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;

/** All records of a folder, kept, and the rows set aside. */
final class ReadRecords {
  final List<WellRecord> records = new ArrayList<>();
  final List<SetAside> setAside = new ArrayList<>();

  static ReadRecords in(Path folder) {
    ReadRecords all = new ReadRecords();
    try {
      for (Input input : Inputs.of(List.of(folder.toString()), nothing()).inputs()) {
        all.read(input);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }

  private static ByteArrayInputStream nothing() {
    return new ByteArrayInputStream(new byte[0]);
  }

  private void read(Input input) throws IOException {
    Path path = input.path();
    if (path != null && input.file().endsWith("json")) {
      json(path);
      return;
    }
    try (RecordSource source = new Sources(Catalogue.standard()).open(input)) {
      ChunkReader reader = new ChunkReader(Catalogue.standard());
      for (Chunk chunk = source.next(); chunk != null; chunk = source.next()) {
        reader.read(chunk, new Keeper());
      }
    }
  }

  private final class Keeper implements RecordSink {
    @Override
    public void record(WellRecord record, RawRow raw) {
      records.add(record.copy());
    }

    @Override
    public void setAside(SetAside row) {
      setAside.add(row);
    }
  }

  private void json(Path path) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    boolean isLines = path.toString().endsWith(".ndjson");
    for (String text : isLines ? Files.readAllLines(path) : List.of(Files.readString(path))) {
      JsonNode tree = mapper.readTree(text);
      for (JsonNode one : tree.isArray() ? tree : List.of(tree)) {
        Map<String, String> texts = new LinkedHashMap<>();
        flatten(one, "", texts);
        records.add(RecordReader.of(texts));
      }
    }
  }

  private static void flatten(JsonNode node, String at, Map<String, String> into) {
    for (Map.Entry<String, JsonNode> field : node.properties()) {
      String key = at + field.getKey();
      if (field.getValue().isObject()) {
        flatten(field.getValue(), key + ".", into);
      } else if (!Set.of("layers", "setbacks").contains(key)) {
        into.put(key, field.getValue().asText());
      }
    }
  }
}
