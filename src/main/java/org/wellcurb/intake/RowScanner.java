package org.wellcurb.intake;

import java.util.Arrays;
import org.wellcurb.quantity.Bounds;

/**
 * Finds where one row of a table ends, knowing quotes.
 *
 * <p>A quote opens a cell only where the cell begins; elsewhere it is a character ({@code 6"}). A
 * doubled quote within a quoted cell is a quote. After the closing quote only blanks may come
 * before the delimiter or the line end. Where that does not hold, or the row does not end within
 * {@link Bounds#ROW}, or it runs over lines that are rows of their own, only the first physical
 * line of the row is taken and reading resumes at the next: one stray quote costs one line, not the
 * file.
 *
 * <p>So the lines after a bad one are looked at again, and rows that are all bad in the same way
 * would cost the square of their length. That is why the places where the last failed row opened
 * quotes are remembered: whoever opens a quote at the same place fails at the same place.
 */
final class RowScanner implements Cutter {

  private final byte delimiter;
  private final SwallowedRows swallowed;
  private int from;
  private int to;
  private int next;
  private int lines;

  /** Where this row opened quotes, as long as it has not come upon the last failed one. */
  private int[] opened = new int[16];

  private int openedCount;

  /** Where the last failed row opened quotes: from {@code failedFrom} to {@code failedTo}. */
  private int[] failed = new int[16];

  private int failedFrom;
  private int failedTo;
  private int failedStatus;

  /** Where it failed; or, if it only was too long, the place from which to look on. */
  private int failedAt;

  /** Finds rows of any number of cells. */
  RowScanner(byte delimiter) {
    this(delimiter, 0);
  }

  /**
   * Finds rows of so many cells: what runs over several lines and has not as many, because a quote
   * was left open and another row's closed it, is no row.
   */
  RowScanner(byte delimiter, int columns) {
    this.delimiter = delimiter;
    this.swallowed = new SwallowedRows(delimiter, columns);
  }

  @Override
  public int from() {
    return from;
  }

  @Override
  public int to() {
    return to;
  }

  @Override
  public int next() {
    return next;
  }

  @Override
  public int lines() {
    return lines;
  }

  @Override
  public void shift(int by) {
    for (int i = failedFrom; i < failedTo; i++) {
      failed[i] -= by;
    }
    failedAt -= by;
  }

  @Override
  public void forget() {
    failedFrom = 0;
    failedTo = 0;
  }

  @Override
  public int scan(byte[] bytes, int start, int limit, boolean atEnd) {
    from = start;
    openedCount = 0;
    boolean joined = false;
    int status = RowMarks.PLAIN;
    int closedAt = start;
    int i = start;
    while (true) {
      i = ByteScan.mark(bytes, i, limit);
      if (i >= limit || bytes[i] != '"') {
        boolean cut = !atEnd && (i >= limit || (bytes[i] == '\r' && i + 1 == limit));
        if (i - start > Bounds.ROW) {
          int why = status == RowMarks.PLAIN ? RowMarks.TOO_LONG : RowMarks.NOT_CLOSED;
          return broken(bytes, start, limit, atEnd, why, closedAt, joined);
        }
        if (joined) {
          forget();
        }
        return cut ? MORE : sound(bytes, start, i, limit, status);
      }
      if (i > start && bytes[i - 1] != delimiter) {
        i++;
        continue;
      }
      status = RowMarks.QUOTED;
      int inside = i + 1;
      int seen = joined ? -1 : Arrays.binarySearch(failed, failedFrom, failedTo, i);
      if (seen >= 0) {
        joined = true;
        failedFrom = seen;
        if (failedStatus == RowMarks.TEXT_AFTER_QUOTE) {
          return broken(bytes, start, limit, atEnd, failedStatus, failedAt, joined);
        }
        inside = failedAt;
      } else if (joined) {
        failed = append(failed, failedTo++, i);
      } else {
        opened = append(opened, openedCount++, i);
      }
      int close = closing(bytes, inside, limit, atEnd);
      if (close < 0) {
        if (!atEnd && limit - start <= Bounds.ROW) {
          forget();
          return MORE;
        }
        return broken(bytes, start, limit, atEnd, RowMarks.NOT_CLOSED, ~close, joined);
      }
      closedAt = close;
      i = afterBlanks(bytes, close + 1, limit);
      if (i < limit && bytes[i] == delimiter) {
        i++;
      } else if (i < limit && bytes[i] != '\n' && bytes[i] != '\r') {
        return broken(bytes, start, limit, atEnd, RowMarks.TEXT_AFTER_QUOTE, i, joined);
      }
    }
  }

  private int sound(byte[] bytes, int start, int end, int limit, int status) {
    to = end;
    next = ByteScan.afterLineEnd(bytes, end, limit);
    lines = status == RowMarks.PLAIN ? 1 : ByteScan.lines(bytes, start, next);
    if (lines > 1 && swallowed.in(bytes, start, end)) {
      forget();
      to = ByteScan.lineEnd(bytes, start, limit);
      next = ByteScan.afterLineEnd(bytes, to, limit);
      lines = 1;
      return RowMarks.SWALLOWS;
    }
    return status;
  }

  private int broken(
      byte[] bytes, int start, int limit, boolean atEnd, int status, int at, boolean joined) {
    if (!joined) {
      int[] spare = failed;
      failed = opened;
      failedFrom = 0;
      failedTo = openedCount;
      opened = spare;
    }
    failedStatus = status;
    failedAt = at;
    to = ByteScan.lineEnd(bytes, start, limit);
    boolean seenEnd = to < limit && !(bytes[to] == '\r' && to + 1 == limit && !atEnd);
    next = seenEnd || atEnd ? ByteScan.afterLineEnd(bytes, to, limit) : MORE;
    lines = 1;
    if (next == MORE && limit - start <= Bounds.ROW) {
      return MORE;
    }
    return status == RowMarks.TEXT_AFTER_QUOTE && at - start > Bounds.ROW
        ? RowMarks.NOT_CLOSED
        : status;
  }

  /** Place of the closing quote; if none, the complement of the place from which to look on. */
  private static int closing(byte[] bytes, int from, int limit, boolean atEnd) {
    int i = from;
    while (true) {
      i = ByteScan.quote(bytes, i, limit);
      if (i >= limit) {
        return ~limit;
      }
      if (i + 1 == limit) {
        return atEnd ? i : ~i;
      }
      if (bytes[i + 1] != '"') {
        return i;
      }
      i += 2;
    }
  }

  private int afterBlanks(byte[] bytes, int from, int limit) {
    int i = from;
    while (i < limit && bytes[i] != delimiter && isBlank(bytes[i])) {
      i++;
    }
    return i;
  }

  /** White space of one byte, less the line ends. */
  private static boolean isBlank(byte b) {
    return b == ' ' || b == '\t' || b == 0x0B || b == '\f' || (b >= 0x1C && b <= 0x1F);
  }

  private static int[] append(int[] list, int count, int value) {
    int[] longer = count == list.length ? Arrays.copyOf(list, count * 2) : list;
    longer[count] = value;
    return longer;
  }
}
