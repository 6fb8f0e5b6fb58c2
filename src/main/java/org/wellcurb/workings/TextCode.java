package org.wellcurb.workings;

/** Gives a number to what a text entry says, so that a function of numbers can read it. */
@FunctionalInterface
public interface TextCode {
  /**
   * @param folded the text as the record keeps it: trimmed, in lower case
   * @return its number; NaN where it says nothing that is understood
   */
  double of(String folded);
}
