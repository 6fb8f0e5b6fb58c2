package org.wellcurb.intake;

import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.NoResult;

/**
 * The cells of one row, in the bytes where they lie or, if the row holds quotes, as the CSV library
 * gives them. It is moved from row to row.
 */
final class RowView {
  /** The row holds NUL bytes. */
  static final int HAS_NUL = -1;

  private final int columns;
  private final int[] from;
  private final int[] to;
  private byte[] bytes = new byte[0];
  private @Nullable CSVRecord quoted;
  private int size;
  private int end;
  private int cells;

  /** A view of rows of so many cells. */
  RowView(int columns) {
    this.columns = columns;
    from = new int[columns];
    to = new int[columns];
  }

  /**
   * Cuts a row without quotes at its delimiters.
   *
   * @return the number of cells, of which only as many as columns are kept; or {@link #HAS_NUL}
   */
  int slice(byte[] source, int start, int end, byte delimiter) {
    bytes = source;
    quoted = null;
    this.end = end;
    size = end - start;
    long wanted = ByteScan.ONES * (delimiter & 0xFF);
    int cell = start;
    int n = 0;
    int i = start;
    for (; i <= end - Long.BYTES; i += Long.BYTES) {
      long word = ByteScan.word(source, i);
      if (ByteScan.zeros(word) != 0) {
        return HAS_NUL;
      }
      long hits = ByteScan.allZeros(word ^ wanted);
      while (hits != 0) {
        int at = i + (Long.numberOfTrailingZeros(hits) >>> 3);
        if (n < columns) {
          from[n] = cell;
          to[n] = at;
        }
        n++;
        cell = at + 1;
        hits &= hits - 1;
      }
    }
    for (; i < end; i++) {
      byte b = source[i];
      if (b == delimiter) {
        if (n < columns) {
          from[n] = cell;
          to[n] = i;
        }
        n++;
        cell = i + 1;
      } else if (b == 0) {
        return HAS_NUL;
      }
    }
    if (n < columns) {
      from[n] = cell;
      to[n] = end;
    }
    cells = n + 1;
    // A row that may end early has blanks there.
    for (int c = cells; c < columns; c++) {
      from[c] = end;
      to[c] = end;
    }
    return cells;
  }

  /** Takes a row that the library has read; gives the number of cells, or {@link #HAS_NUL}. */
  int take(CSVRecord row) {
    quoted = row;
    size = Integer.MAX_VALUE;
    for (String cell : row) {
      if (cell.indexOf('\0') >= 0) {
        return HAS_NUL;
      }
    }
    cells = row.size();
    return cells;
  }

  /** How many cells the row has, those beyond the columns among them. */
  int cells() {
    return cells;
  }

  /** True if nothing stands in the one cell that the row has beyond its columns. */
  boolean isBlankBeyond() {
    CSVRecord row = quoted;
    return HeaderKey.strip(
            row == null
                ? new String(
                    bytes, to[columns - 1] + 1, end - to[columns - 1] - 1, StandardCharsets.UTF_8)
                : row.get(columns))
        .isEmpty();
  }

  /** True if the cells are texts already, and not places in bytes. */
  boolean isText() {
    return quoted != null;
  }

  /** Bytes of the row; no less than those of any cell. */
  int size() {
    return size;
  }

  byte[] bytes() {
    return bytes;
  }

  int from(int column) {
    return from[column];
  }

  int to(int column) {
    return to[column];
  }

  int length(int column) {
    return quoted == null ? to[column] - from[column] : text(column).length();
  }

  /** True of a formula of which the workbook stores no result. */
  boolean isWithoutResult(int column) {
    return quoted == null
        ? NoResult.is(bytes, from[column], to[column])
        : NoResult.is(text(column));
  }

  String text(int column) {
    return quoted == null
        ? new String(bytes, from[column], to[column] - from[column], StandardCharsets.UTF_8)
        : column < cells ? quoted.get(column) : "";
  }

  /** The text of a column that the file may lack, without outer blanks. */
  String trimmed(int column) {
    return column < 0 ? "" : HeaderKey.strip(text(column));
  }
}
