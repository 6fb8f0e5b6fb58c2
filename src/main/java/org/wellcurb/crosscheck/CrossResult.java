package org.wellcurb.crosscheck;

import java.util.List;

/**
 * What only the whole batch shows. Everything in it is a hint to look, never a finding.
 *
 * @param records records of the batch
 * @param duplicates records that stand more than once
 * @param figures figures repeated, rounded or in a row, least q first
 * @param slips groups whose depths are in another unit, least q first
 * @param tests tests tried on figures and slips together, over which q is reckoned
 * @param unlike wells unlike their neighbours, farthest first, at most so many
 * @param unlikeTotal how many there are
 * @param comparedWells wells with neighbours that agree, over all fields
 * @param contractors rates by driller's licence, most records first
 * @param zones rates by zone, most records first
 * @param years rates by year of completion, in order
 */
public record CrossResult(
    long records,
    Duplicates.Found duplicates,
    List<FigureHint> figures,
    List<SlipHint> slips,
    long tests,
    List<NeighbourHint> unlike,
    long unlikeTotal,
    long comparedWells,
    List<GroupRate> contractors,
    List<GroupRate> zones,
    List<GroupRate> years) {

  /** The rate of false discoveries that is accepted among hints that rest on tests. */
  public static final double ACCEPTED = 0.05;

  public CrossResult {
    figures = List.copyOf(figures);
    slips = List.copyOf(slips);
    unlike = List.copyOf(unlike);
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
   * @param figure the figure as written; NaN where it is about multiples of ten
   * @param hits how often it stands there, or how many in a row
   * @param own figures of the contractor there
   * @param share its share among them, with the interval
   * @param othersShare its share among the figures of all others there
   * @param p how likely that would be by chance
   * @param q the least rate of false discoveries at which it would be called one
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
      List<Seen> seen) {
    public FigureHint {
      seen = List.copyOf(seen);
    }
  }

  /**
   * A group whose depths seem to be in another unit.
   *
   * @param group the licence, or the input
   * @param isInput whether it is an input
   * @param hits wells off by the factor
   * @param share their share among those with neighbours, with the interval
   * @param ratio median of depth over that of the neighbours
   * @param p how likely that would be by chance
   * @param q the least rate of false discoveries at which it would be called one
   */
  public record SlipHint(
      String group, boolean isInput, int hits, Share share, double ratio, double p, double q) {}

  /**
   * A well unlike its neighbours.
   *
   * @param seen the record
   * @param field what was measured
   * @param value in SI; of a water level, its height above the sea
   * @param median of the neighbours
   * @param spread of the neighbours
   * @param neighbours how many
   * @param score spreads away
   */
  public record NeighbourHint(
      Seen seen,
      Field field,
      double value,
      double median,
      double spread,
      int neighbours,
      double score) {}

  /**
   * How often a deficiency was found in a group.
   *
   * @param name the group; empty for records that name none
   * @param share the rate, with its interval
   * @param isSmall whether there are too few records to say anything
   * @param p how likely a rate as far from the batch's is by chance; NaN where it is small
   * @param q the same over all groups that were tested; NaN where it is small
   */
  public record GroupRate(String name, Share share, boolean isSmall, double p, double q) {}
}
