package org.wellcurb.crosscheck;

/**
 * The longest row of equal figures of one contractor in a zone: of those that count, which are
 * those that the shares are taken of, too.
 */
final class LongestRow {
  private int length;
  private int longest;
  private int last = -1;
  private float figure = Float.NaN;
  private double nearby;

  /**
   * Takes the figure of the next record that counts.
   *
   * @param at its place
   * @param begins whether another stands between it and the last that counted
   */
  void add(int at, float next, boolean begins) {
    length = begins ? 1 : length + 1;
    if (length > longest) {
      longest = length;
      figure = next;
      last = at;
    }
  }

  /** How long it is; 0 if there is none. */
  int length() {
    return longest;
  }

  /** The figure of it. */
  float figure() {
    return figure;
  }

  /** The place of its last record. */
  int last() {
    return last;
  }

  /** Takes the share of others in the area of one of its records who write the same. */
  void isNearby(double share) {
    nearby = Math.max(nearby, share);
  }

  /** The greatest share of others who write the same, of the areas that it goes through. */
  double nearby() {
    return nearby;
  }

  /**
   * How likely a row as long would be if records came in any order: it may begin at each, and each
   * next one is as likely as the figure is common.
   */
  static double p(int length, int of, double share) {
    return Math.min(1, of * Math.pow(share, length - 1.0));
  }

  /**
   * How long the longest row would be about, if records came in any order.
   *
   * <p>Source: M. F. Schilling, The longest run of heads, The College Mathematics Journal 21
   * (1990), 196-207 (from memory; checked in the tests by trial).
   */
  static double likely(int of, double share) {
    return Math.max(1, Math.log(of * (1 - share)) / -Math.log(share));
  }
}
