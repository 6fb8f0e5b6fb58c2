package org.wellcurb.crosscheck;

import java.util.List;

/**
 * What only the whole batch shows. Everything in it is a hint to look, never a finding.
 *
 * @param records records of the batch
 * @param unnamed records whose licence or zone came after as many as are told apart: they count as
 *     records that name none
 * @param duplicates records that stand more than once
 * @param figures figures repeated, rounded or in a row, least q first
 * @param rules rules that a group falls short of far more often than all others, least q first, at
 *     most so many
 * @param rulesTotal how many there are
 * @param groupsLeftOut groups that were too many to be counted rule by rule; the largest were
 * @param notAmongOthers records of licences whose depths seem to be in another unit, which are not
 *     counted among all others of a group
 * @param slips groups whose depths are in another unit, least q first
 * @param tried tests by kind: q is the greater of that over all of them and that over those of one
 *     kind
 * @param unlike wells unlike their neighbours, farthest first, at most so many
 * @param unlikeTotal how many there are
 * @param looked of each field, whether wells were compared with their neighbours
 * @param contractors rates by driller's licence, most records first
 * @param zones rates by zone, most records first
 * @param years rates by year of completion, in order
 */
public record CrossResult(
    long records,
    long unnamed,
    Duplicates.Found duplicates,
    List<FigureHint> figures,
    List<RuleHint> rules,
    long rulesTotal,
    long groupsLeftOut,
    long notAmongOthers,
    List<SlipHint> slips,
    Tests tried,
    List<NeighbourHint> unlike,
    long unlikeTotal,
    List<Looked> looked,
    List<GroupRate> contractors,
    List<GroupRate> zones,
    List<GroupRate> years) {

  /** The rate of false discoveries that is accepted among hints that rest on tests. */
  public static final double ACCEPTED = 0.05;

  /** Records of a group below which nothing is said of its rates. */
  public static final int LEAST_OF_GROUP = Rates.SMALL;

  /**
   * Tests by kind. Figures and units are one kind, rules another, rates by licence, zone and year
   * one each.
   */
  public record Tests(long figures, long units, long rules, List<Long> rates) {
    public Tests {
      rates = List.copyOf(rates);
    }

    /** Tests of all kinds. */
    public long all() {
      return figures + units + rules + rates.stream().mapToLong(Long::longValue).sum();
    }
  }

  /**
   * How many tests have a p as small, its own among them: q is the least of p times tests over
   * rank, over this test and all of a greater p; the greater of that over all tests and that over
   * its kind.
   *
   * @param ofAll among all tests
   * @param ofKind among those of its kind
   */
  public record Rank(int ofAll, int ofKind) {
    /** Of what was not tested. */
    public static final Rank NONE = new Rank(0, 0);
  }

  /** Tests tried in all. */
  public long tests() {
    return tried.all();
  }

  /** Figures that were compared with those of neighbours that agree, over all fields. */
  public long comparedWells() {
    return looked.stream()
        .filter(each -> each.how() == How.COMPARED)
        .mapToLong(Looked::wells)
        .sum();
  }

  /** Tests among them on rules and groups. */
  public long rulesTests() {
    return tried.rules();
  }

  public CrossResult {
    figures = List.copyOf(figures);
    rules = List.copyOf(rules);
    slips = List.copyOf(slips);
    unlike = List.copyOf(unlike);
    looked = List.copyOf(looked);
    contractors = List.copyOf(contractors);
    zones = List.copyOf(zones);
    years = List.copyOf(years);
  }

  /**
   * Figures of a contractor in a zone.
   *
   * @param licence the contractor
   * @param zone the zone; may be empty
   * @param field what was measured
   * @param kind what stands out
   * @param figure the figure as written; NaN where it is about multiples of fifty
   * @param hits how often it stands there, or how many in a row
   * @param own figures of the contractor there
   * @param share its share among them, with the interval; of a row, that of its figure
   * @param othersShare its share among the figures of all others there; of a row, the greatest that
   *     its figure has there, among its own or all others'
   * @param p how likely that would be by chance
   * @param q the least rate of false discoveries at which it would be called one
   * @param rank its rank among the tests
   * @param seen some of the records, in input order
   */
  public record FigureHint(
      String licence,
      String zone,
      Field field,
      Copying.Kind kind,
      double figure,
      int hits,
      int own,
      Share share,
      double othersShare,
      double p,
      double q,
      Rank rank,
      List<Seen> seen) {
    public FigureHint {
      seen = List.copyOf(seen);
    }

    /** How long the longest row of such a figure would be about, if records came in any order. */
    public double likelyRow() {
      return LongestRow.likely(own, othersShare);
    }
  }

  /**
   * A group whose depths seem to be in another unit.
   *
   * @param group the licence, or the input
   * @param isInput whether it is an input
   * @param hits wells off by the factor
   * @param share their share among those with neighbours, with the interval
   * @param places at how many places, of some 1 km, these stand: what the test rests on
   * @param ratio median of depth over that of the neighbours
   * @param p how likely that would be by chance
   * @param q the least rate of false discoveries at which it would be called one
   * @param rank its rank among the tests
   * @param seen some of the wells, in input order
   */
  public record SlipHint(
      String group,
      boolean isInput,
      int hits,
      Share share,
      int places,
      double ratio,
      double p,
      double q,
      Rank rank,
      List<Seen> seen) {
    public SlipHint {
      seen = List.copyOf(seen);
    }
  }

  /** By what records are grouped. */
  public enum By {
    CONTRACTOR,
    ZONE,
    YEAR
  }

  /**
   * A rule that the records of a group fall short of far more often than all others.
   *
   * @param by what makes the group
   * @param group its name
   * @param pack id of the pack
   * @param rule id of the rule
   * @param title title of the rule
   * @param share the share that falls short, of the records of which it could be told; of a
   *     licence, only where enough others work
   * @param othersShare the same share among all others; of a licence, where it works
   * @param between how much groups differ on it anyway, as a standard deviation of log odds
   * @param p how likely that would be by chance, where groups differ so
   * @param q the least rate of false discoveries at which it would be called one
   * @param rank its rank among the tests
   */
  public record RuleHint(
      By by,
      String group,
      String pack,
      String rule,
      String title,
      Share share,
      double othersShare,
      double between,
      double p,
      double q,
      Rank rank) {}

  /** Whether wells were compared with their neighbours. */
  public enum How {
    COMPARED,
    /** No well has neighbours enough that agree. */
    NONE_NEAR,
    /** Wells are hardly nearer to their neighbours than to all wells of the batch. */
    TELLS_TOO_LITTLE
  }

  /**
   * How a field was looked at.
   *
   * @param wells wells with neighbours that agree
   */
  public record Looked(Field field, long wells, How how) {}

  /**
   * A well unlike its neighbours.
   *
   * @param seen the record
   * @param field what was measured
   * @param value in SI; of a water level, its height above the sea
   * @param median of the neighbours
   * @param spread of the neighbours: 1.4826 times the median of their distances from the median
   * @param believed the same, or a floor where it is less: what the score is reckoned with
   * @param neighbours how many
   * @param score spreads away
   */
  public record NeighbourHint(
      Seen seen,
      Field field,
      double value,
      double median,
      double spread,
      double believed,
      int neighbours,
      double score) {}

  /**
   * How often a deficiency was found in a group.
   *
   * @param name the group; empty for records that name none
   * @param share the rate, with its interval
   * @param expected the rate that was to be expected of the rules that could be told
   * @param low lower limit of the funnel around the expected rate: 99.8 % of groups that are like
   *     all others lie within
   * @param high upper limit of it
   * @param isSmall whether there are too few records to say anything
   * @param p how likely a rate as far from the batch's is by chance; NaN where it is small
   * @param q the same over all groups that were tested; NaN where it is small
   * @param spread by how much groups of this kind differ more than by chance, in variances
   * @param rank its rank among the tests
   */
  public record GroupRate(
      String name,
      Share share,
      double expected,
      double low,
      double high,
      boolean isSmall,
      double p,
      double q,
      double spread,
      Rank rank) {}
}
