package org.wellcurb.record;

import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Note;

/**
 * One layer of the driller's log.
 *
 * @param from top, metres below the datum of the record
 * @param to bottom, metres below the datum of the record
 * @param material what was met, as written
 * @param note what is to be said of its depths
 * @param depths its depths as written, where they could not be read; empty otherwise
 */
public record Layer(Interval from, Interval to, String material, Note note, String depths) {

  /** A layer of which nothing is to be said. */
  public Layer(Interval from, Interval to, String material) {
    this(from, to, material, Note.NONE, "");
  }

  /** What it says of the ground: how it was written makes no other layer of it. */
  @Override
  public String toString() {
    return "Layer[from=" + from + ", to=" + to + ", material=" + material + "]";
  }
}
