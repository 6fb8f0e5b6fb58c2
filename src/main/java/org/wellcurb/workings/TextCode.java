package org.wellcurb.workings;

/** Gives a number to what a text entry says, so that a function of numbers can read it. */
@FunctionalInterface
public interface TextCode {
  /**
   * @param folded the text as the record keeps it: trimmed, in lower case
   * @return its number; NaN where it says nothing that is understood
   */
  double of(String folded);

  /**
   * The least number that a text may have which is blank or says nothing that is understood; NaN
   * where it then counts as not given.
   */
  default double leastUnsaid() {
    return Double.NaN;
  }

  /** The greatest of the same. */
  default double greatestUnsaid() {
    return Double.NaN;
  }
}
