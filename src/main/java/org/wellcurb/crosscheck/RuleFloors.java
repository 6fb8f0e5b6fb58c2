package org.wellcurb.crosscheck;

/** What is asked of a difference by rule and group before it is said, whatever its p is. */
public final class RuleFloors {
  /** Fewest records of a group of which a rule could be told. */
  public static final int OF_GROUP = 20;

  /** Fewest records of all others of which it could be told. */
  public static final int OF_OTHERS = 60;

  /** Fewest of all others in a zone of which it could be told, to compare a licence there. */
  public static final int IN_STRATUM = 15;

  /** Fewest shortfalls. */
  public static final int SHORT = 5;

  /** By how much its share must be greater than that of all others. */
  public static final double MORE = 0.05;

  /** How many times the share of all others it must be. */
  public static final double RATIO = 2;

  /** How many times the share of all others the lower end of its interval must be. */
  public static final double SURE_RATIO = 1.5;

  private RuleFloors() {}

  /**
   * How many of so many records must fall short to be said of a group.
   *
   * @param others share of all others
   */
  public static int least(int of, double others) {
    int hits = SHORT;
    while (hits < of && !isGreat(hits, of, others)) {
      hits++;
    }
    return hits;
  }

  static boolean isGreat(int hits, int of, double others) {
    double share = (double) hits / of;
    return hits >= SHORT
        && share - others >= MORE
        && share >= RATIO * others
        && Share.of(hits, of).lo() >= SURE_RATIO * others;
  }
}
