package org.wellcurb.workings;

/**
 * A turning point of a working inside the range of an input: besides the ends of its range, the
 * input is also tried at this value where it lies inside.
 *
 * @param input place of the input in the working's list
 * @param at place of another input whose value (each end) is the turning point, or -1
 * @param value the turning point in SI where {@code at} is -1
 */
public record Turn(int input, int at, double value) {

  /** The input turns where it equals another input. */
  public static Turn atInput(int input, int other) {
    return new Turn(input, other, 0);
  }

  /** The input turns at a fixed value, in SI. */
  public static Turn atValue(int input, double value) {
    return new Turn(input, -1, value);
  }
}
