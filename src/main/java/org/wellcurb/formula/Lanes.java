package org.wellcurb.formula;

import org.wellcurb.record.Catalogue;

/**
 * Up to 64 records judged side by side: a frame for each, and the columns of what they hold. A set
 * of records is the bits of a long, so that three truth values of all of them are three longs, and
 * {@code and}, {@code or} and {@code not} are one operation each. One per worker; never shared.
 */
public final class Lanes {
  /** Most records at a time: the bits of a long. */
  public static final int MOST = Long.SIZE;

  private final Frame[] frames = new Frame[MOST];
  private final EntryLanes[] entries;
  private long load;
  private long taken;

  public Lanes(Catalogue catalogue) {
    Scratch scratch = new Scratch();
    Slots slots = new Slots();
    for (int i = 0; i < MOST; i++) {
      frames[i] = new Frame(catalogue, slots, scratch);
    }
    entries = new EntryLanes[catalogue.size()];
    for (int i = 0; i < entries.length; i++) {
      entries[i] = new EntryLanes(i);
    }
  }

  /** The frame of one record, where it is put and found. */
  public Frame frame(int lane) {
    return frames[lane];
  }

  /** Forgets all records, and what was computed of them. */
  public void clear() {
    load++;
    taken = 0;
  }

  /** Takes the record that a frame holds, once its frame says how each entry counts. */
  public void take(int lane) {
    taken |= 1L << lane;
  }

  /** Number of the load at hand, by which what was computed of an earlier one is known. */
  long load() {
    return load;
  }

  /** What these records hold of an entry. */
  EntryLanes entry(int entry) {
    EntryLanes of = entries[entry];
    of.need(frames, load, taken);
    return of;
  }
}
