package org.wellcurb.quantity;

/** What became of a text that should hold an amount. */
public sealed interface Reading {
  /** What is to be said about it. */
  Note note();

  /**
   * An amount was read.
   *
   * @param lo least value in SI, may be minus infinity
   * @param hi greatest value in SI, may be infinity; never less than {@code lo}
   * @param halfPlace half a unit of the last written decimal place, in SI; 0 for fractions, ranges
   *     and bounds
   * @param unit what it was written in
   * @param note what is to be said about it
   */
  record Amount(double lo, double hi, double halfPlace, Unit unit, Note note) implements Reading {}

  /**
   * Something is written, and its meaning is not sure enough to be used: the note says why.
   *
   * @param note why
   */
  record Unsure(Note note) implements Reading {}

  /**
   * Nothing could be made of it.
   *
   * @param note why
   */
  record Unreadable(Note note) implements Reading {}
}
