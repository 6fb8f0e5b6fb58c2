package org.wellcurb.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wellcurb.crosscheck.Share;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Tally;

/**
 * How a whole batch stands to one rule.
 *
 * @param pack id of the pack
 * @param rule id of the rule
 * @param title what it asks
 * @param kind kind of finding
 * @param share records that fall short, of those of which it could be told
 * @param near of them, those within a hair of the limit
 */
public record RuleCount(
    String pack, String rule, String title, String kind, Share share, long near) {
  /** Rules with most such shortfalls that are always said. */
  private static final int ALWAYS = 5;

  /** Fewest shortfalls near a limit that are worth saying. */
  static final int LEAST_NEAR = 5;

  /** Share of the shortfalls that must be near. */
  static final double LEAST_SHARE = 0.25;

  private static final Comparator<RuleCount> MOST_NEAR_FIRST =
      Comparator.comparingLong((RuleCount count) -> -count.near())
          .thenComparing(RuleCount::pack)
          .thenComparing(RuleCount::rule);

  /** All rules of all packs that could be told of some record, in their order. */
  public static List<RuleCount> of(List<Tally> tallies) {
    List<RuleCount> counts = new ArrayList<>();
    for (Tally tally : tallies) {
      List<Rule> rules = tally.pack().rules();
      for (int i = 0; i < rules.size(); i++) {
        long fallsShort = tally.count(i, Outcome.FALLS_SHORT);
        long told = fallsShort + tally.count(i, Outcome.MEETS);
        if (told > 0) {
          Rule rule = rules.get(i);
          counts.add(
              new RuleCount(
                  tally.pack().id(),
                  rule.id(),
                  rule.title(),
                  rule.kind().label(),
                  Share.of(fallsShort, told),
                  tally.near(i)));
        }
      }
    }
    return counts;
  }

  /**
   * Those with most shortfalls within a hair of the limit, most first; after the first few only
   * those of which many are.
   */
  static List<RuleCount> near(List<RuleCount> counts) {
    List<RuleCount> near =
        counts.stream().filter(count -> count.near() > 0).sorted(MOST_NEAR_FIRST).toList();
    List<RuleCount> shown = new ArrayList<>();
    for (int i = 0; i < near.size(); i++) {
      RuleCount count = near.get(i);
      boolean isMany = count.near() >= Math.max(LEAST_NEAR, LEAST_SHARE * count.share().hits());
      if (i < ALWAYS || isMany) {
        shown.add(count);
      }
    }
    return shown;
  }
}
