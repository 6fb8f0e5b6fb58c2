package org.wellcurb.batch;

import java.util.Arrays;

/** Whole numbers one after the other, as many as there are. */
final class LongRow {
  private long[] numbers = new long[256];
  private int size;

  void add(long number) {
    if (size == numbers.length) {
      numbers = Arrays.copyOf(numbers, 2 * size);
    }
    numbers[size++] = number;
  }

  /** All of them, in their order. */
  long[] all() {
    return Arrays.copyOf(numbers, size);
  }
}
