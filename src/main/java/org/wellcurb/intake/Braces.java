package org.wellcurb.intake;

import java.util.Arrays;

/** Matches the braces and brackets of JSON outside strings; a string ends with its line. */
final class Braces {
  private Braces() {}

  /** Past the brace that closes the one at {@code from}; -1 if none does before {@code to}. */
  static int end(byte[] bytes, int from, int to) {
    int depth = 0;
    int i = from;
    while (i < to) {
      switch (bytes[i]) {
        case '"' -> i = string(bytes, i + 1, to);
        case '{', '[' -> {
          depth++;
          i++;
        }
        case '}', ']' -> {
          i++;
          if (--depth == 0) {
            return i;
          }
        }
        default -> i++;
      }
    }
    return -1;
  }

  /** Places of those that are not closed before {@code to}, in order. */
  static int[] open(byte[] bytes, int from, int to) {
    int[] stack = new int[16];
    int depth = 0;
    int i = from;
    while (i < to) {
      switch (bytes[i]) {
        case '"' -> i = string(bytes, i + 1, to);
        case '{', '[' -> {
          if (depth == stack.length) {
            stack = Arrays.copyOf(stack, depth * 2);
          }
          stack[depth++] = i++;
        }
        case '}', ']' -> {
          depth = Math.max(0, depth - 1);
          i++;
        }
        default -> i++;
      }
    }
    return Arrays.copyOf(stack, depth);
  }

  /** Past the quote that closes the string which goes on at {@code from}. */
  private static int string(byte[] bytes, int from, int to) {
    int i = from;
    while (i < to) {
      byte b = bytes[i];
      if (b == '"') {
        return i + 1;
      }
      if (b == '\n') {
        return i;
      }
      i += b == '\\' ? 2 : 1;
    }
    return to;
  }
}
