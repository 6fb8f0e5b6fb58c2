package org.wellcurb.report;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.OutputStream;
import org.wellcurb.record.WellRecord;

/** How JSON files are laid out: two blanks a level, LF, the same on every machine. */
final class JsonText {
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final String HEX = "0123456789abcdef";

  private JsonText() {}

  /** Writes an indented file; closing it closes the stream. */
  static JsonGenerator file(OutputStream out) throws IOException {
    JsonGenerator json = FACTORY.createGenerator(out, JsonEncoding.UTF8);
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withRootSeparator("")
            .withArrayEmptySeparator("")
            .withObjectEmptySeparator("");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
    printer.indentArraysWith(indent);
    printer.indentObjectsWith(indent);
    json.setPrettyPrinter(printer);
    return json;
  }

  /** Writes a number to six significant digits; null where there is none, or no end. */
  static void number(JsonGenerator json, String name, double number) throws IOException {
    json.writeFieldName(name);
    if (Double.isNaN(number) || Double.isInfinite(number)) {
      json.writeNull();
    } else {
      json.writeNumber(Digits.text(number));
    }
  }

  /** Adds what a record has in an entry, as written, as a quoted string. */
  static void written(ByteText out, WellRecord record, int entry) {
    if (record.liesInSource(entry)) {
      byte[] source = record.source();
      int from = record.writtenFrom(entry);
      int to = record.writtenTo(entry);
      int i = from;
      while (i < to && source[i] >= ' ' && source[i] != '"' && source[i] != '\\') {
        i++;
      }
      if (i == to) {
        out.put('"').put(source, from, to).put('"');
        return;
      }
    }
    string(out, record.written(entry));
  }

  /** Adds a quoted string to a line that is made by hand. */
  static void string(ByteText out, String text) {
    out.put('"');
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\' || c < ' ') {
        out.put(text.substring(from, i));
        from = i + 1;
        if (c < ' ') {
          out.put("\\u00").put(HEX.charAt(c >> 4)).put(HEX.charAt(c & 0xF));
        } else {
          out.put('\\').put(c);
        }
      }
    }
    out.put(from == 0 ? text : text.substring(from)).put('"');
  }
}
