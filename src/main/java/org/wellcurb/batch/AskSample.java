package org.wellcurb.batch;

import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * What cannot be told, counted over a sample of the whole batch: as many records as a cap allows,
 * drawn by the mark of what they say, so that neither the order of rows nor the number of workers
 * tells in it. Each level holds half as many records as that below it; the levels from the least
 * that keeps within the cap are the sample. While a run goes on, that level only rises.
 */
final class AskSample {
  private static final int LEVELS = 40;

  private final NavigableMap<Integer, AskCounts> levels = new TreeMap<>();
  private int least;

  /** The level of the record with this mark. */
  static int level(long mark) {
    long mixed = (mark ^ (mark >>> 31)) * 0x9E3779B97F4A7C15L;
    return Math.min(LEVELS - 1, Long.numberOfLeadingZeros(mixed ^ (mixed >>> 29)));
  }

  /** The counts over records of a level. */
  AskCounts at(int level) {
    return levels.computeIfAbsent(level, none -> new AskCounts());
  }

  /** Adds the counts of another part, and lets go of levels that are too many records. */
  void add(AskSample part, int most) {
    part.levels.tailMap(least, true).forEach((level, counts) -> at(level).add(counts));
    while (least < LEVELS - 1 && records() > most) {
      levels.remove(least++);
    }
  }

  private long records() {
    return levels.values().stream().mapToLong(AskCounts::records).sum();
  }

  /** Records of lower levels need not be counted any more. */
  int least() {
    return least;
  }

  /** The counts over the sample. */
  AskCounts all() {
    AskCounts all = new AskCounts();
    levels.values().forEach(all::add);
    return all;
  }

  void clear() {
    levels.clear();
  }
}
