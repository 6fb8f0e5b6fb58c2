package org.wellcurb.report.drawing;

import java.util.List;

/**
 * The limit of an entry, as drawings show it.
 *
 * @param si the limit in SI; of several, the one that is farthest off; NaN where none can be drawn
 * @param ways all ways to meet the rule, the farthest first, where there is more than one; of one
 *     way of several no drawing may say that it is the limit
 * @param requirement what the rule asks, where its ways cannot be told apart; empty otherwise
 * @param isOpen true where it cannot be told whether its rule applies; each way says so
 * @param isFrost true where the limit is the depth that the rules take the frost to reach
 */
public record Limit(
    double si, List<Way> ways, String requirement, boolean isOpen, boolean isFrost) {
  /** No rule sets one. */
  static final Limit NONE = Limit.of(Double.NaN);

  public Limit {
    ways = List.copyOf(ways);
  }

  /**
   * A way to meet a rule.
   *
   * @param si the limit in SI; NaN where this way sets none
   * @param where when it is open, in words; empty where it always is
   */
  public record Way(double si, String where) {}

  /** A limit that holds whatever else the record says. */
  public static Limit of(double si) {
    return new Limit(si, List.of(), "", false, false);
  }

  /** Limits of one rule that can be met in several ways, the farthest first. */
  public static Limit of(List<Way> ways) {
    return new Limit(ways.get(0).si(), ways, "", false, false);
  }

  /** A limit that hangs on more than can be drawn. */
  public static Limit said(String requirement) {
    return new Limit(Double.NaN, List.of(), requirement, false, false);
  }

  /** The same, which is that of frost. */
  public Limit ofFrost() {
    return new Limit(si, ways, requirement, isOpen, true);
  }

  /** The same of a rule of which it cannot be told whether it applies, as these ways say. */
  public Limit open(List<Way> open) {
    return new Limit(si, open, requirement, true, isFrost);
  }

  /** True where the rule can be met otherwise than by coming up to the limit. */
  public boolean isOneWay() {
    return !ways.isEmpty() || !requirement.isEmpty();
  }
}
