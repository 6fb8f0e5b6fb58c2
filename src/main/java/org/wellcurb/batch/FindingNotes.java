package org.wellcurb.batch;

import java.util.Arrays;

/**
 * Notes on the findings of an earlier report: of each, whether something holds of the record that
 * has its number now, and, where several have it, of which. May be shared between threads: each
 * only ever sets a note.
 */
final class FindingNotes {
  private final long[] places;
  private final boolean[] byNumber;
  private final boolean[] byPlace;

  /** Marks of findings together with other places at which it holds of a record of this number. */
  private final LongRow others = new LongRow();

  private long[] elsewhere = new long[0];

  /**
   * @param places of each finding, the mark of where its record stood
   */
  FindingNotes(long[] places) {
    this.places = places.clone();
    this.byNumber = new boolean[places.length];
    this.byPlace = new boolean[places.length];
  }

  /**
   * Notes that it holds.
   *
   * @param place mark of where the record stands now
   */
  void set(int finding, long place) {
    byNumber[finding] = true;
    if (place == places[finding]) {
      byPlace[finding] = true;
    } else {
      synchronized (others) {
        others.add(mark(finding, place));
      }
    }
  }

  private static long mark(int finding, long place) {
    return (place + finding) * 0x9E3779B97F4A7C15L;
  }

  /** Closes the notes, once every record was laid beside. */
  void close() {
    elsewhere = others.all();
    Arrays.sort(elsewhere);
  }

  /** Whether it holds, the number of the finding being one record's. */
  boolean holds(int finding) {
    return byNumber[finding];
  }

  /**
   * The same where the number stands for several.
   *
   * @param place mark of where the record stands now
   */
  boolean holds(int finding, long place) {
    return place == places[finding]
        ? byPlace[finding]
        : Arrays.binarySearch(elsewhere, mark(finding, place)) >= 0;
  }
}
