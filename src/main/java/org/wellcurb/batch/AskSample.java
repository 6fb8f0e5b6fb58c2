package org.wellcurb.batch;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What cannot be told, counted over a sample of the whole batch: as many records as a cap allows,
 * drawn by the mark of what they say, so that neither the order of rows nor the number of workers
 * tells in it. Each level holds half as many records as that below it; the levels from the least
 * that keeps within the cap are the sample. While a run goes on, that level only rises.
 */
final class AskSample {
  private static final int LEVELS = 40;

  private final @Nullable AskCounts[] levels = new @Nullable AskCounts[LEVELS];
  private int least;

  /** The level of the record with this mark. */
  static int level(long mark) {
    long mixed = (mark ^ (mark >>> 31)) * 0x9E3779B97F4A7C15L;
    return Math.min(LEVELS - 1, Long.numberOfLeadingZeros(mixed ^ (mixed >>> 29)));
  }

  /** The counts over records of a level. */
  AskCounts at(int level) {
    AskCounts counts = levels[level];
    if (counts == null) {
      counts = new AskCounts();
      levels[level] = counts;
    }
    return counts;
  }

  /** Adds the counts of another part, and lets go of levels that are too many records. */
  void add(AskSample part, int most) {
    for (int level = least; level < LEVELS; level++) {
      AskCounts counts = part.levels[level];
      if (counts != null) {
        at(level).add(counts);
      }
    }
    while (least < LEVELS - 1 && records() > most) {
      levels[least++] = null;
    }
  }

  private long records() {
    long records = 0;
    for (int level = least; level < LEVELS; level++) {
      AskCounts counts = levels[level];
      records += counts == null ? 0 : counts.records();
    }
    return records;
  }

  /** Records of lower levels need not be counted any more. */
  int least() {
    return least;
  }

  /** The counts over the sample. */
  AskCounts all() {
    AskCounts all = new AskCounts();
    for (int level = least; level < LEVELS; level++) {
      AskCounts counts = levels[level];
      if (counts != null) {
        all.add(counts);
      }
    }
    return all;
  }

  void clear() {
    Arrays.fill(levels, null);
  }
}
