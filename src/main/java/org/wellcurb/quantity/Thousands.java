package org.wellcurb.quantity;

/** Tells separators of thousands from decimal points and commas, or says that nothing tells. */
final class Thousands {
  private Thousands() {}

  /**
   * The number with a point for its decimals and without separators; empty if it cannot be read for
   * sure, see {@link #problem}.
   *
   * @param written digits, points, commas and blanks, the blanks each before exactly three digits
   */
  static String plain(String written, Comma comma) {
    String text = withoutBlanks(written, comma);
    int commas = count(text, ',');
    int points = count(text, '.');
    if (commas == 0 && points == 0) {
      return text;
    }
    if (commas == 0) {
      return pointsOnly(text, points, comma);
    }
    if (points == 0) {
      return commasOnly(text, commas, comma);
    }
    return both(text, commas, points, comma);
  }

  /** Why {@link #plain} gave nothing. */
  static Note problem(String written, Comma comma) {
    if (written.indexOf(' ') >= 0 && !comma.isDecimal()) {
      return Note.AMBIGUOUS_BLANK;
    }
    int separators = count(written, ',') + count(written, '.');
    return separators == 1 ? Note.AMBIGUOUS_COMMA : Note.NOT_A_NUMBER;
  }

  /** A plain blank separates thousands only where a comma is the decimal sign. */
  private static String withoutBlanks(String written, Comma comma) {
    boolean plainBlank = written.indexOf(' ') >= 0;
    boolean fixedBlank = written.indexOf(Glyphs.FIXED_BLANK) >= 0;
    if (!plainBlank && !fixedBlank) {
      return written;
    }
    if (plainBlank && !comma.isDecimal()) {
      return "";
    }
    String marked = written.replace(Glyphs.FIXED_BLANK, ' ');
    int point = Math.max(marked.indexOf('.'), marked.indexOf(','));
    String whole = point < 0 ? marked : marked.substring(0, point);
    if (!isGrouped(whole, ' ') || (point >= 0 && marked.indexOf(' ', point) >= 0)) {
      return "";
    }
    return marked.replace(" ", "");
  }

  private static String pointsOnly(String text, int points, Comma comma) {
    if (points > 1) {
      return comma == Comma.THOUSANDS || !isGrouped(text, '.') ? "" : text.replace(".", "");
    }
    boolean unclear = (comma.isDecimal() || comma == Comma.NEITHER) && isGrouped(text, '.');
    return unclear ? "" : text;
  }

  private static String commasOnly(String text, int commas, Comma comma) {
    boolean grouped = isGrouped(text, ',');
    if (commas > 1) {
      return grouped ? text.replace(",", "") : "";
    }
    return switch (comma) {
      case THOUSANDS -> grouped ? text.replace(",", "") : "";
      case EITHER, NEITHER -> grouped ? "" : text.replace(',', '.');
      case DECIMAL, STORED -> text.replace(',', '.');
    };
  }

  private static String both(String text, int commas, int points, Comma comma) {
    boolean pointLast = text.lastIndexOf('.') > text.lastIndexOf(',');
    if (pointLast) {
      boolean reads = points == 1 && isGrouped(text.substring(0, text.indexOf('.')), ',');
      return reads && !comma.isDecimal() ? text.replace(",", "") : "";
    }
    boolean reads = commas == 1 && isGrouped(text.substring(0, text.indexOf(',')), '.');
    return reads && comma != Comma.THOUSANDS ? text.replace(".", "").replace(',', '.') : "";
  }

  /** One to three digits that do not start with 0, then groups of exactly three. */
  private static boolean isGrouped(String text, char separator) {
    int first = text.indexOf(separator);
    if (first < 1 || first > 3 || text.charAt(0) == '0') {
      return false;
    }
    int at = first;
    while (at < text.length()) {
      if (text.charAt(at) != separator || at + 4 > text.length()) {
        return false;
      }
      for (int i = 1; i <= 3; i++) {
        if (text.charAt(at + i) < '0' || text.charAt(at + i) > '9') {
          return false;
        }
      }
      at += 4;
    }
    return true;
  }

  private static int count(String text, char c) {
    int n = 0;
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == c) {
        n++;
      }
    }
    return n;
  }
}
