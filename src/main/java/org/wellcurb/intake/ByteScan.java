package org.wellcurb.intake;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Finds bytes eight at a time: most bytes of a table are neither quotes nor line ends. */
final class ByteScan {
  private static final VarHandle LONG =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
  static final long ONES = 0x0101010101010101L;
  private static final long HIGH = 0x8080808080808080L;
  private static final long LF = ONES * '\n';
  private static final long CR = ONES * '\r';
  private static final long QUOTE = ONES * '"';

  private ByteScan() {}

  /** Place of the next LF, CR or double quote at or after {@code from}; {@code to} if none. */
  static int mark(byte[] bytes, int from, int to) {
    int i = from;
    for (; i <= to - 8; i += 8) {
      long word = (long) LONG.get(bytes, i);
      long hit = zeros(word ^ LF) | zeros(word ^ CR) | zeros(word ^ QUOTE);
      if (hit != 0) {
        return i + (Long.numberOfTrailingZeros(hit) >>> 3);
      }
    }
    for (; i < to; i++) {
      byte b = bytes[i];
      if (b == '\n' || b == '\r' || b == '"') {
        return i;
      }
    }
    return to;
  }

  /** Place of the next LF or CR at or after {@code from}; {@code to} if none. */
  static int lineEnd(byte[] bytes, int from, int to) {
    int i = mark(bytes, from, to);
    while (i < to && bytes[i] == '"') {
      i = mark(bytes, i + 1, to);
    }
    return i;
  }

  /** Place of the next double quote at or after {@code from}; {@code to} if none. */
  static int quote(byte[] bytes, int from, int to) {
    int i = from;
    for (; i <= to - 8; i += 8) {
      long hit = zeros((long) LONG.get(bytes, i) ^ QUOTE);
      if (hit != 0) {
        return i + (Long.numberOfTrailingZeros(hit) >>> 3);
      }
    }
    while (i < to && bytes[i] != '"') {
      i++;
    }
    return i;
  }

  /** Place of the next LF at or after {@code from}; {@code to} if none. */
  static int lineFeed(byte[] bytes, int from, int to) {
    int i = from;
    for (; i <= to - 8; i += 8) {
      long hit = zeros((long) LONG.get(bytes, i) ^ LF);
      if (hit != 0) {
        return i + (Long.numberOfTrailingZeros(hit) >>> 3);
      }
    }
    while (i < to && bytes[i] != '\n') {
      i++;
    }
    return i;
  }

  /** How many line ends (LF, CR, or the pair) there are, and one more for a last line without. */
  static int lines(byte[] bytes, int from, int to) {
    int lines = 0;
    int i = from;
    while (i < to) {
      i = afterLineEnd(bytes, lineEnd(bytes, i, to), to);
      lines++;
    }
    return lines;
  }

  /** Where the line after the one ending at {@code end} (an LF or CR) begins. */
  static int afterLineEnd(byte[] bytes, int end, int to) {
    if (end >= to) {
      return to;
    }
    return bytes[end] == '\r' && end + 1 < to && bytes[end + 1] == '\n' ? end + 2 : end + 1;
  }

  /** True if each byte is a character by itself. */
  static boolean isAscii(byte[] bytes, int from, int to) {
    int i = from;
    for (; i <= to - Long.BYTES; i += Long.BYTES) {
      if ((word(bytes, i) & HIGH) != 0) {
        return false;
      }
    }
    while (i < to && bytes[i] >= 0) {
      i++;
    }
    return i == to;
  }

  /**
   * A bit in the highest place of each byte that is zero. Only the lowest such bit is sure (a
   * borrow may set a false one above it), which is all that is asked.
   */
  static long zeros(long word) {
    return (word - ONES) & ~word & HIGH;
  }

  /** A bit in the highest place of each byte that is zero, and no other. */
  static long allZeros(long word) {
    return ~(((word & ~HIGH) + ~HIGH) | word | ~HIGH);
  }

  /** The eight bytes from here on, the first lowest. */
  static long word(byte[] bytes, int from) {
    return (long) LONG.get(bytes, from);
  }
}
