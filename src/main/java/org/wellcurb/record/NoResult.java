package org.wellcurb.record;

import java.nio.charset.StandardCharsets;

/**
 * What stands in a table for a formula of which the workbook stores no result: a cell that somebody
 * filled, so no blank, and of which nothing can be read. It is a text, so that a row that is set
 * aside still says it.
 */
public final class NoResult {
  private static final String MARK = "#formula without a result: =";

  private static final byte[] BYTES = MARK.getBytes(StandardCharsets.UTF_8);

  private NoResult() {}

  /** The text for a formula, which is written without its equals sign. */
  public static String of(String formula) {
    return MARK + formula;
  }

  /** True of such a text. */
  public static boolean is(String text) {
    return text.startsWith(MARK);
  }

  /** True if {@code source[from, to)} is such a text in UTF-8. */
  public static boolean is(byte[] source, int from, int to) {
    if (to - from < BYTES.length) {
      return false;
    }
    int i = 0;
    while (i < BYTES.length && source[from + i] == BYTES[i]) {
      i++;
    }
    return i == BYTES.length;
  }
}
