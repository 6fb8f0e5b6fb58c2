package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide texts of a drawing come out, so that signs stand beside them and none runs past the
 * edge. Widths are those of the common sans-serif letters, in thousandths of the letters' size,
 * with room for the wider ones that stand in for them; others are taken as wide as a broad one.
 */
final class Lettering {
  /** Size of labels in a drawing's own lengths, as the style sheet has it. */
  static final double SIZE = 14;

  /** Letters that stand in where a machine lacks the common ones are about so much wider. */
  private static final double WIDER = 1.15;

  /** From the blank to the tilde. */
  private static final int[] PLAIN = {
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556,
    556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667,
    611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667,
    667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500,
    222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
  };

  /** Accented letters of Latin alphabets are about as wide as these; all else is broad. */
  private static final int ACCENTED = 600;

  private static final int BROAD = 1000;

  private Lettering() {}

  /** Width of a label. */
  static double width(String text) {
    long sum = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      sum += c >= ' ' && c <= '~' ? PLAIN[c - ' '] : c < 0x250 ? ACCENTED : BROAD;
    }
    return sum * WIDER * SIZE / 1000;
  }

  /**
   * A text in rows, the first no wider than {@code first}, the others than {@code next}. A figure
   * and its unit stay together; a word that is wider than a row is broken.
   */
  static List<String> wrap(String text, double first, double next) {
    List<String> rows = new ArrayList<>();
    String rest = text.strip();
    double most = first;
    while (width(rest) > most) {
      int end = lastBlank(rest, most);
      if (end <= 0 && rows.isEmpty() && first < next) {
        rows.add("");
        most = next;
        continue;
      }
      int cut = end > 0 ? end : fitting(rest, most);
      rows.add(rest.substring(0, cut));
      rest = rest.substring(cut).strip();
      most = next;
    }
    rows.add(rest);
    return rows;
  }

  /** The last blank before which a text fits, but for one between a figure and its unit. */
  private static int lastBlank(String text, double most) {
    int end = text.length();
    while (end > 0) {
      end = text.lastIndexOf(' ', end - 1);
      if (end <= 0) {
        return -1;
      }
      boolean isUnit = Character.isDigit(text.charAt(end - 1)) && isUnitAt(text, end + 1);
      boolean isSign = end + 1 < text.length() && ":;?!»".indexOf(text.charAt(end + 1)) >= 0;
      if (!isUnit && !isSign && width(text.substring(0, end)) <= most) {
        return end;
      }
    }
    return -1;
  }

  /** True where a word begins that may be a unit, and not one between two figures. */
  private static boolean isUnitAt(String text, int at) {
    return at < text.length()
        && Character.isLetter(text.charAt(at))
        && !text.startsWith("to ", at)
        && !text.startsWith("à ", at);
  }

  /** How many characters of a word fit, at least one. */
  private static int fitting(String text, double most) {
    int end = 1;
    while (end < text.length() && width(text.substring(0, end + 1)) <= most) {
      end++;
    }
    boolean isSplit = Character.isHighSurrogate(text.charAt(end - 1)) && end < text.length();
    return isSplit ? (end > 1 ? end - 1 : 2) : end;
  }
}
