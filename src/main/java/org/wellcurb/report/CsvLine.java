package org.wellcurb.report;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.WellRecord;

/**
 * Writes CSV (RFC 4180, LF) cell by cell. A cell of text that a spreadsheet would take for a
 * formula gets an apostrophe in front; a number, written as one, stays a number.
 */
public final class CsvLine {
  private final ByteText out;
  private boolean first = true;

  /** Writes lines at the end of this text. */
  public CsvLine(ByteText out) {
    this.out = out;
  }

  /** A cell of text that came from outside. */
  public CsvLine text(String text) {
    separate();
    boolean defuse = startsFormula(text);
    if (!needsQuotes(text)) {
      if (defuse) {
        out.put('\'');
      }
      out.put(text);
      return this;
    }
    out.put('"');
    if (defuse) {
      out.put('\'');
    }
    out.put(text.indexOf('"') < 0 ? text : text.replace("\"", "\"\"")).put('"');
    return this;
  }

  /** What a record has in an entry, as written: copied where it lies, if it can stand so. */
  public CsvLine written(WellRecord record, int entry) {
    if (record.liesInSource(entry)) {
      byte[] source = record.source();
      int from = record.writtenFrom(entry);
      int to = record.writtenTo(entry);
      if (isPlain(source, from, to)) {
        separate();
        out.put(source, from, to);
        return this;
      }
    }
    return text(record.written(entry));
  }

  /** True for ASCII that needs no quotes and begins no formula. */
  private static boolean isPlain(byte[] source, int from, int to) {
    byte first = source[from];
    if (first == '=' || first == '@' || first == '+' || first == '-' || first == '\t') {
      return false;
    }
    for (int i = from; i < to; i++) {
      byte b = source[i];
      if (b < 0 || b == ',' || b == '"' || b == '\n' || b == '\r') {
        return false;
      }
    }
    return true;
  }

  /** A cell of text that is ours: no comma, quote, line end or formula in it. */
  public CsvLine word(String word) {
    separate();
    out.put(word);
    return this;
  }

  public CsvLine whole(long number) {
    separate();
    out.whole(number);
    return this;
  }

  /** A number; nothing where it is NaN. */
  public CsvLine number(double number) {
    separate();
    Digits.put(out, number);
    return this;
  }

  /** An empty cell. */
  public CsvLine nothing() {
    separate();
    return this;
  }

  public CsvLine unit(@Nullable Unit unit) {
    separate();
    if (unit != null) {
      out.put(unit.symbol());
    }
    return this;
  }

  /** Ends the line. */
  public void end() {
    out.put('\n');
    first = true;
  }

  private void separate() {
    if (!first) {
      out.put(',');
    }
    first = false;
  }

  private static boolean needsQuotes(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ',' || c == '"' || c == '\n' || c == '\r') {
        return true;
      }
    }
    return false;
  }

  /** True for text that starts as formulas do and is not a plain number. */
  static boolean startsFormula(String text) {
    if (text.isEmpty()) {
      return false;
    }
    return switch (text.charAt(0)) {
      case '=', '@', '\t', '\r', '\n' -> true;
      case '+', '-' -> !isPlainNumber(text);
      default -> false;
    };
  }

  private static boolean isPlainNumber(String text) {
    boolean digit = false;
    boolean point = false;
    for (int i = 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        digit = true;
      } else if (c == '.' && !point) {
        point = true;
      } else {
        return false;
      }
    }
    return digit;
  }
}
