package org.wellcurb.intake;

import org.wellcurb.quantity.Bounds;

/** Cuts at line ends (LF or CRLF): JSON with one object a line. Blank lines are no rows. */
final class LineCutter implements Cutter {
  private int from;
  private int to;
  private int next;

  @Override
  public int scan(byte[] bytes, int start, int limit, boolean atEnd) {
    from = start;
    int end = ByteScan.lineFeed(bytes, start, limit);
    boolean tooLong = end - start > Bounds.ROW;
    if (end == limit && !atEnd && !tooLong) {
      return MORE;
    }
    to = end;
    next = end < limit ? end + 1 : atEnd ? limit : MORE;
    if (to > from && bytes[to - 1] == '\r') {
      to--;
    }
    while (from < to && (bytes[from] == ' ' || bytes[from] == '\t')) {
      from++;
    }
    return tooLong ? RowMarks.TOO_LONG : RowMarks.PLAIN;
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
    return 1;
  }

  @Override
  public void shift(int by) {}

  @Override
  public void forget() {}
}
