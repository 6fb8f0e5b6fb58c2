package org.wellcurb.intake;

import java.util.Arrays;
import org.wellcurb.quantity.Bounds;

/**
 * Cuts an array of JSON objects, or objects one after another, by matching braces outside strings.
 * Whether an object is sound is for the reader to say.
 *
 * <p>An object that does not end within {@link Bounds#ROW} is taken to go up to the next line that
 * begins with a brace: where each record has lines of its own, a brace forgotten costs one record.
 * A string ends with its line at the latest, as JSON wants it. Which braces were found open to the
 * end is remembered, so that they are not followed again and again.
 */
final class ObjectCutter implements Cutter {
  private enum Place {
    BEFORE,
    IN_ARRAY,
    AFTER
  }

  private Place place = Place.BEFORE;
  private int from;
  private int to;
  private int next;
  private int lines;
  private int[] open = new int[0];

  @Override
  public int scan(byte[] bytes, int start, int limit, boolean atEnd) {
    int i = start;
    while (i < limit && isBetween(bytes[i])) {
      i++;
    }
    if (i > start || i == limit) {
      return nothing(i);
    }
    byte b = bytes[i];
    if (b == '[' && place == Place.BEFORE) {
      place = Place.IN_ARRAY;
      return nothing(i + 1);
    }
    if (b == ']' && place == Place.IN_ARRAY) {
      place = Place.AFTER;
      return nothing(i + 1);
    }
    from = i;
    lines = 1;
    if (place == Place.AFTER) {
      return line(bytes, limit, atEnd, RowMarks.AFTER_END);
    }
    if (b == '{' || b == '[') {
      return object(bytes, limit, atEnd, b == '{' ? RowMarks.PLAIN : RowMarks.NOT_AN_OBJECT);
    }
    return other(bytes, limit, atEnd);
  }

  private int nothing(int at) {
    from = at;
    to = at;
    next = at;
    lines = 0;
    return RowMarks.PLAIN;
  }

  private int object(byte[] bytes, int limit, boolean atEnd, int status) {
    if (Arrays.binarySearch(open, from) < 0) {
      int bound = Math.min(limit, from + Bounds.ROW);
      int end = Braces.end(bytes, from, bound);
      if (end >= 0) {
        to = end;
        next = end;
        return status;
      }
      if (bound == limit && !atEnd && limit - from < Bounds.ROW) {
        return MORE;
      }
      open = Braces.open(bytes, from, bound);
    }
    int bound = Math.min(limit, from + Bounds.ROW);
    int end = nextObject(bytes, bound);
    if (end < bound) {
      to = end;
      next = end;
    } else if (limit - from < Bounds.ROW && !atEnd) {
      return MORE;
    } else {
      to = bound;
      int lineEnd = ByteScan.lineFeed(bytes, bound, limit);
      next = lineEnd < limit ? lineEnd + 1 : atEnd ? limit : MORE;
    }
    while (to > from && isBetween(bytes[to - 1])) {
      to--;
    }
    return RowMarks.NOT_CLOSED;
  }

  /** The next line, after that of {@code from}, that begins with a brace; {@code bound} if none. */
  private int nextObject(byte[] bytes, int bound) {
    int i = ByteScan.lineFeed(bytes, from, bound);
    while (i < bound) {
      int first = i + 1;
      while (first < bound && bytes[first] != '\n' && isBetween(bytes[first])) {
        first++;
      }
      if (first < bound && bytes[first] == '{') {
        return first;
      }
      i = ByteScan.lineFeed(bytes, first, bound);
    }
    return bound;
  }

  /** Anything else: up to the next comma or bracket of its line. */
  private int other(byte[] bytes, int limit, boolean atEnd) {
    int status = line(bytes, limit, atEnd, RowMarks.NOT_AN_OBJECT);
    if (status == MORE) {
      return MORE;
    }
    boolean inString = false;
    for (int i = from; i < to; i++) {
      byte b = bytes[i];
      if (b == '"') {
        inString = !inString;
      } else if (b == '\\') {
        i++;
      } else if (!inString && i > from && (b == ',' || b == ']' || b == '{')) {
        to = i;
        next = i;
        return status;
      }
    }
    return status;
  }

  private int line(byte[] bytes, int limit, boolean atEnd, int status) {
    int end = ByteScan.lineFeed(bytes, from, limit);
    if (end == limit && !atEnd && limit - from <= Bounds.ROW) {
      return MORE;
    }
    to = end;
    next = end < limit ? end + 1 : atEnd ? limit : MORE;
    while (to > from && isBetween(bytes[to - 1])) {
      to--;
    }
    return status;
  }

  /** Blanks, commas, and the mark that some programs put before each object. */
  private static boolean isBetween(byte b) {
    return b == ' ' || b == '\t' || b == '\r' || b == '\n' || b == ',' || b == 0x1E;
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
    for (int i = 0; i < open.length; i++) {
      open[i] -= by;
    }
  }

  @Override
  public void forget() {
    open = new int[0];
  }

  @Override
  public String missing() {
    return place == Place.IN_ARRAY ? "the file ends before its array does" : "";
  }
}
