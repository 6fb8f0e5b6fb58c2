package org.wellcurb.intake;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wellcurb.quantity.Bounds;

/** The text of a header map: its values, where each stands, and what is wrong with it. */
final class MapText {
  private static final ObjectMapper MAPPER =
      new ObjectMapper(
              JsonFactory.builder()
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .streamReadConstraints(
                      StreamReadConstraints.builder().maxNestingDepth(Bounds.DEPTH).build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private final String file;
  private final Map<String, JsonLocation> places = new HashMap<>();
  private final List<MapProblem> problems = new ArrayList<>();
  private JsonNode root = MissingNode.getInstance();

  MapText(String file, String text) {
    this.file = file;
    try {
      root = MAPPER.readTree(text);
      if (root.isMissingNode()) {
        add("", "the file is empty", "headers FILE --out MAP.json drafts a map");
      }
      locate(text);
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      int line = at == null ? 0 : at.getLineNr();
      int column = at == null ? 0 : at.getColumnNr();
      String what = e.getOriginalMessage().lines().findFirst().orElse("");
      // The parser's own options are nothing to whoever writes a map.
      what = what.contains(": enable `") ? what.substring(0, what.indexOf(": enable `")) : what;
      problems.add(
          new MapProblem(
              file,
              "",
              line,
              column,
              "this is not JSON (" + what + ")",
              "look at the quotes, commas and brackets around it"));
    }
  }

  private void locate(String text) {
    try (JsonParser parser = MAPPER.createParser(text)) {
      for (JsonToken t = parser.nextToken(); t != null; t = parser.nextToken()) {
        String pointer = parser.getParsingContext().pathAsPointer().toString();
        boolean start = t == JsonToken.START_OBJECT || t == JsonToken.START_ARRAY;
        if (start || t == JsonToken.FIELD_NAME || t.isScalarValue()) {
          places.putIfAbsent(pointer, parser.currentTokenLocation());
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  JsonNode root() {
    return root;
  }

  boolean isSound() {
    return problems.isEmpty();
  }

  /** Notes that a value is wrong. */
  void add(String pointer, String what, String mend) {
    JsonLocation at = place(pointer).orElse(null);
    problems.add(
        new MapProblem(
            file,
            pointer,
            at == null ? 0 : at.getLineNr(),
            at == null ? 0 : at.getColumnNr(),
            what,
            mend));
  }

  /** Where a value stands, or the nearest one above it. */
  private Optional<JsonLocation> place(String pointer) {
    for (String at = pointer; ; at = at.substring(0, at.lastIndexOf('/'))) {
      JsonLocation place = places.get(at);
      if (place != null || at.isEmpty()) {
        return Optional.ofNullable(place);
      }
    }
  }

  /** Everything that is wrong, in the order of the places. */
  List<MapProblem> problems() {
    return problems.stream()
        .distinct()
        .sorted(
            Comparator.comparingInt(MapProblem::line)
                .thenComparingInt(MapProblem::column)
                .thenComparing(MapProblem::what))
        .toList();
  }
}
