package org.wellcurb.screening;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.workings.Geodesy;

/**
 * Entries that lie close together in nearly every well. Where a figure in another unit comes just
 * to where its neighbour stands, a single fault is enough to say so: a number that is wrong by
 * chance hits so small a mark once in twenty or thirty times. A hole that was filled up has a
 * finished depth other than the drilled one, but not just by the ratio of two units.
 */
final class Neighbours {
  /** Two figures agree within this share of the greater; common practice. */
  private static final double NEAR = 0.03;

  /** Of each entry, others at whose sum or difference it stands. */
  private static final Map<String, List<String>> BESIDE =
      Map.ofEntries(
          Map.entry(
              "well.casing_depth",
              List.of(
                  "well.casing_length - well.stickup",
                  "well.casing_length",
                  "well.screen_top",
                  "grout.bottom")),
          Map.entry(
              "well.casing_length",
              List.of(
                  "well.casing_depth + well.stickup",
                  "well.casing_depth",
                  "grout.bottom + well.stickup")),
          Map.entry(
              "drop_pipe.length",
              List.of("pump.intake_depth - pitless.depth", "pump.intake_depth")),
          Map.entry(
              "pump.intake_depth", List.of("drop_pipe.length + pitless.depth", "drop_pipe.length")),
          Map.entry("well.depth", List.of("well.drilled_depth")),
          Map.entry("well.screen_top", List.of("well.casing_depth")),
          Map.entry("well.screen_bottom", List.of("well.depth")),
          Map.entry("well.filter_pack_bottom", List.of("well.screen_bottom", "well.depth")),
          Map.entry("well.filter_pack_top", List.of("grout.bottom", "well.screen_top")),
          Map.entry("grout.bottom", List.of("well.casing_depth", "well.filter_pack_top")),
          Map.entry("wire.drop_length", List.of("drop_pipe.length", "pump.intake_depth")));

  /** Setbacks, by what the second position is the position of. */
  private static final Map<String, String> SETBACKS =
      Map.of(
          "setback.septic_tank", "septic tank",
          "setback.absorption_field", "nearest edge of field");

  private Neighbours() {}

  /** Whether an entry, were it this (SI), would stand where its neighbours say. */
  static boolean agree(WellRecord record, Entry entry, double value) {
    return votes(record, entry, value) > 0;
  }

  /** How many neighbours say that an entry should be this (SI); a length and its sum are one. */
  static int votes(WellRecord record, Entry entry, double value) {
    Set<String> voters = new HashSet<>();
    for (String sum : BESIDE.getOrDefault(entry.key(), List.of())) {
      String[] words = sum.split(" ");
      if (isNear(value, sum(record, words))) {
        voters.add(words[0]);
      }
    }
    String position = SETBACKS.get(entry.key());
    boolean isPlaced = position != null && position.equals(word(record, "site.septic_position_of"));
    if (isPlaced && isNear(value, septicDistance(record))) {
      voters.add("site.septic_position_of");
    }
    return voters.size();
  }

  /**
   * Whether a tank of this volume (SI) would take what the record says of it, and the one that is
   * written would not: as near as telling a tenth or ten times, but no nearer.
   */
  static boolean wouldTake(WellRecord record, Entry entry, double value) {
    double acceptance = value(record, "tank.acceptance");
    return entry.key().equals("tank.volume")
        && isTakenBy(value, acceptance)
        && !isTakenBy(value(record, entry.key()), acceptance);
  }

  private static boolean isNear(double value, double beside) {
    return Math.abs(value - beside) <= NEAR * Math.max(Math.abs(value), Math.abs(beside));
  }

  /** A tank takes from a quarter of its volume to all of it; common practice. */
  private static boolean isTakenBy(double volume, double acceptance) {
    return acceptance >= 0.25 * volume && acceptance <= volume;
  }

  private static double septicDistance(WellRecord record) {
    return Geodesy.distance(
        value(record, "site.latitude"),
        value(record, "site.longitude"),
        value(record, "site.septic_latitude"),
        value(record, "site.septic_longitude"));
  }

  private static double sum(WellRecord record, String[] words) {
    double sum = value(record, words[0]);
    for (int i = 1; i + 1 < words.length; i += 2) {
      sum += (words[i].equals("-") ? -1 : 1) * value(record, words[i + 1]);
    }
    return sum;
  }

  /** A single figure (SI); NaN for a blank or a range, which agrees with nothing. */
  private static double value(WellRecord record, String key) {
    Catalogue catalogue = record.catalogue();
    int i = catalogue.index(key);
    return record.isPoint(i) ? record.lo(i) : Double.NaN;
  }

  private static String word(WellRecord record, String key) {
    String word = record.choice(record.catalogue().index(key));
    return word == null ? "" : word;
  }
}
