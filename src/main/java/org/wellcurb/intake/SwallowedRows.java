package org.wellcurb.intake;

/**
 * Tells a row of several lines that is one row from one whose stray quote has swallowed those after
 * it. Such a row has too many cells or too few; or, where the quote of another row happens to close
 * it in the same column, one of its cells holds the ends and beginnings of rows.
 */
final class SwallowedRows {
  /** With fewer columns a sentence with commas may look like the end of a row. */
  private static final int FEW = 5;

  private final byte delimiter;
  private final int columns;

  /**
   * @param columns how many cells a row has; 0 if it is not known
   */
  SwallowedRows(byte delimiter, int columns) {
    this.delimiter = delimiter;
    this.columns = columns;
  }

  /** True if {@code bytes[start, end)}, soundly quoted and of several lines, is no single row. */
  boolean in(byte[] bytes, int start, int end) {
    if (columns == 0) {
      return false;
    }
    int cell = 0;
    int i = start;
    while (true) {
      int from = i;
      if (i < end && bytes[i] == '"') {
        i = closed(bytes, i + 1, end);
        if (columns >= FEW && isRowEnds(bytes, from + 1, i, cell)) {
          return true;
        }
      }
      while (i < end && bytes[i] != delimiter) {
        i++;
      }
      cell++;
      if (i >= end) {
        return cell != columns;
      }
      i++;
    }
  }

  /** Past the closing quote. */
  private static int closed(byte[] bytes, int from, int end) {
    int i = from;
    while (i < end) {
      if (bytes[i] != '"') {
        i++;
      } else if (i + 1 < end && bytes[i + 1] == '"') {
        i += 2;
      } else {
        return i + 1;
      }
    }
    return end;
  }

  /** True if a quoted cell holds the end of a row, whole rows, and the beginning of another. */
  private boolean isRowEnds(byte[] bytes, int from, int to, int cell) {
    int delimiters = 0;
    boolean first = true;
    for (int i = from; i < to; i++) {
      if (bytes[i] == delimiter) {
        delimiters++;
      } else if (bytes[i] == '\n') {
        if (delimiters != (first ? columns - 1 - cell : columns - 1)) {
          return false;
        }
        first = false;
        delimiters = 0;
      }
    }
    return !first && delimiters == cell;
  }
}
