package org.wellcurb.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackFile;

/** {@code run.json}: what was run on what. */
public final class RunJson {
  private RunJson() {}

  /** Writes the file and closes the stream. */
  public static void write(OutputStream out, RunFacts facts) throws IOException {
    try (JsonGenerator json = JsonText.file(out)) {
      json.writeStartObject();
      json.writeStringField("program", "wellcurb");
      json.writeStringField("version", facts.version());
      json.writeStringField("asOf", facts.asOf().toString());
      json.writeObjectFieldStart("options");
      for (Map.Entry<String, String> option : facts.options().entrySet()) {
        json.writeStringField(option.getKey(), option.getValue());
      }
      json.writeEndObject();
      json.writeObjectFieldStart("counts");
      for (Map.Entry<String, Long> count : facts.counts().entrySet()) {
        json.writeNumberField(count.getKey(), count.getValue());
      }
      json.writeEndObject();
      cuts(json, facts);
      packs(json, facts);
      inputs(json, facts);
      json.writeArrayFieldStart("notRead");
      for (Map.Entry<String, String> file : facts.notRead().entrySet()) {
        json.writeStartObject();
        json.writeStringField("file", file.getKey());
        json.writeStringField("reason", file.getValue());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }

  /** A number as outputs write it. */
  public static String number(double number) {
    return Digits.text(number);
  }

  private static void cuts(JsonGenerator json, RunFacts facts) throws IOException {
    json.writeArrayFieldStart("cuts");
    for (Cut cut : facts.cuts()) {
      json.writeStartObject();
      json.writeStringField("cap", cut.cap().name().toLowerCase(Locale.ROOT).replace('_', ' '));
      json.writeNumberField("shown", cut.shown());
      json.writeNumberField("total", cut.total());
      json.writeStringField("rest", cut.cap().rest());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void packs(JsonGenerator json, RunFacts facts) throws IOException {
    json.writeArrayFieldStart("packs");
    for (Pack pack : facts.packs()) {
      json.writeStartObject();
      json.writeStringField("pack", pack.id());
      json.writeStringField("edition", pack.edition().toString());
      json.writeNumberField("rules", pack.rules().size());
      json.writeArrayFieldStart("files");
      for (PackFile file : pack.files()) {
        json.writeStartObject();
        json.writeStringField("pack", file.pack());
        json.writeStringField("sha256", file.sha256());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void inputs(JsonGenerator json, RunFacts facts) throws IOException {
    json.writeArrayFieldStart("inputs");
    for (InputLine input : facts.inputs()) {
      json.writeStartObject();
      json.writeStringField("file", input.file());
      json.writeStringField("sha256", input.sha256());
      json.writeStringField("format", input.format());
      json.writeNumberField("rowsRead", input.rowsRead());
      json.writeNumberField("screened", input.screened());
      json.writeNumberField("setAside", input.setAside());
      if (input.joined() > 0) {
        json.writeNumberField("joined", input.joined());
      }
      json.writeNumberField("rowsCounted", input.rowsCounted());
      json.writeArrayFieldStart("notes");
      for (String note : input.notes()) {
        json.writeString(note);
      }
      json.writeEndArray();
      columns(json, input);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void columns(JsonGenerator json, InputLine input) throws IOException {
    json.writeArrayFieldStart("columns");
    for (ColumnLine column : input.columns()) {
      json.writeStartObject();
      json.writeStringField("name", column.name());
      text(json, "entry", column.entry());
      text(json, "unit", column.unit());
      text(json, "said", column.said());
      json.writeNumberField("given", column.given());
      json.writeNumberField("blank", column.blank());
      json.writeNumberField("unknown", column.unknown());
      json.writeNumberField("notApplicable", column.notApplicable());
      json.writeNumberField("unreadable", column.unreadable());
      counts(json, "units", column.units());
      counts(json, "notes", column.notes());
      doubts(json, column.doubts());
      codes(json, column.codes());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void codes(JsonGenerator json, List<CodeLine> codes) throws IOException {
    if (codes.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("codes");
    for (CodeLine code : codes) {
      json.writeStartObject();
      text(json, "written", code.written());
      text(json, "read", code.read());
      json.writeNumberField("cells", code.cells());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void doubts(JsonGenerator json, List<ColumnDoubt> doubts) throws IOException {
    if (doubts.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("doubts");
    for (ColumnDoubt doubt : doubts) {
      json.writeStartObject();
      json.writeStringField("doubt", doubt.kind().replace('_', ' '));
      if (doubt.cells() > 0) {
        json.writeNumberField("cells", doubt.cells());
      }
      text(json, "of", String.join(", ", doubt.of()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void text(JsonGenerator json, String name, String text) throws IOException {
    if (!text.isEmpty()) {
      json.writeStringField(name, text);
    }
  }

  private static void counts(JsonGenerator json, String name, Map<String, Long> counts)
      throws IOException {
    if (!counts.isEmpty()) {
      json.writeObjectFieldStart(name);
      for (Map.Entry<String, Long> count : counts.entrySet()) {
        String key = count.getKey();
        json.writeNumberField(key.substring(key.indexOf('.') + 1), count.getValue());
      }
      json.writeEndObject();
    }
  }
}
