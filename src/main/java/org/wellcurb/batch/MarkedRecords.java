package org.wellcurb.batch;

import java.util.Arrays;
import java.util.function.IntConsumer;

/** Marks of the records of one run, to be looked up by the mark of a record's number. */
final class MarkedRecords {
  private final long[] ids;
  private final long[] marks;
  private final int[] places;

  /**
   * @param ids mark of each record's number, in input order
   * @param marks mark of what each record says
   */
  MarkedRecords(long[] ids, long[] marks) {
    this.ids = ids.clone();
    Arrays.sort(this.ids);
    this.marks = new long[ids.length];
    this.places = new int[ids.length];
    int[] taken = new int[ids.length];
    for (int i = 0; i < ids.length; i++) {
      int start = at(ids[i]);
      int slot = start + taken[start]++;
      this.marks[slot] = marks[i];
      this.places[slot] = i;
    }
  }

  /** Goes through the places of all records with this number, in input order. */
  void each(long id, IntConsumer on) {
    for (int at = at(id); at >= 0 && at < ids.length && ids[at] == id; at++) {
      on.accept(places[at]);
    }
  }

  /** How many records have this number: 0, 1, or 2 for more. */
  int count(long id) {
    int at = at(id);
    return at < 0 ? 0 : at + 1 < ids.length && ids[at + 1] == id ? 2 : 1;
  }

  /** The mark of the first record with this number. */
  long mark(long id) {
    return marks[at(id)];
  }

  /** The first place of this number; -1 if it has none. */
  private int at(long id) {
    int lo = 0;
    int hi = ids.length;
    while (lo < hi) {
      int middle = (lo + hi) >>> 1;
      if (ids[middle] < id) {
        lo = middle + 1;
      } else {
        hi = middle;
      }
    }
    return lo < ids.length && ids[lo] == id ? lo : -1;
  }
}
