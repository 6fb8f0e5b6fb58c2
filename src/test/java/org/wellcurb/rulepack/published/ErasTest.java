package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

/**
 * Wells of 1990, 2005 and 2020: each by the text in force, or by the milder where the code says.
 */
class ErasTest {
  private static final String Y1990 = "dates.completed=1990-06-15";
  private static final String Y2005 = "dates.completed=2005-06-15";
  private static final String Y2020 = "dates.completed=2020-08-15";

  @Test
  void montana_seal_of_18_ft_then_25_ft() {
    Code mt = Code.of("montana", "Montana, USA");
    for (String then : new String[] {Y1990, Y2005}) {
      mt.least("seal-depth", "grout.bottom", "18 ft", then, "well.method=rotary");
    }
    mt.least("seal-depth", "grout.bottom", "25 ft", Y2020, "well.method=rotary");
    // A year that holds the change: 20 ft met the one text and not the other.
    mt.cannotTell("seal-depth", "dates.completed=2010", "well.method=rotary", "grout.bottom=20 ft");
    mt.meets("seal-depth", "dates.completed=2010", "well.method=rotary", "grout.bottom=25 ft");
    mt.fallsShort("seal-depth", "dates.completed=2010", "well.method=rotary", "grout.bottom=17 ft");
    mt.cannotTell("seal-depth", "well.method=rotary", "grout.bottom=20 ft");
  }

  @Test
  void quebec_one_regulation_after_the_other() {
    Code qc = Code.of("quebec", "Quebec, Canada");
    qc.doesNotApply("yield-test-length", Y1990, "well.method=rotary", "water.test_duration=5 min");
    qc.fallsShort("yield-test-length", Y2005, "well.method=rotary", "water.test_duration=29 min");
    qc.doesNotApply("yield-test-length", Y2020, "well.method=rotary", "water.test_duration=5 min");
    qc.doesNotApply("animal-yard-distance", Y2005, "setback.animal_yard=20 m");
    qc.fallsShort("animal-yard-distance", Y2020, "setback.animal_yard=20 m");
    qc.meets("position-datum", Y2005, "site.position_datum=nad27");
    qc.fallsShort("position-datum", Y2020, "site.position_datum=nad27");
    // The day on which the one took over was not read: what both ask alike is judged through it,
    // what they ask differently is not judged in those months.
    String between = "dates.completed=2014-10-01";
    qc.fallsShort("septic-tank-distance", between, "setback.septic_tank=14 m");
    qc.doesNotApply("position-datum", between, "site.position_datum=nad27");
    qc.doesNotApply("animal-yard-distance", between, "setback.animal_yard=20 m");
    qc.doesNotApply(
        "yield-test-length", between, "well.method=rotary", "water.test_duration=5 min");
  }

  @Test
  void wisconsin_by_the_milder_of_then_and_now() {
    Code wi = Code.of("wisconsin", "Wisconsin, USA");
    // 100 ft in 1990 and 50 ft since: 60 ft is enough for each of them.
    for (String then : new String[] {Y1990, Y2005, Y2020}) {
      wi.meets("cemetery-distance", then, "setback.cemetery=60 ft");
      wi.fallsShort("cemetery-distance", then, "setback.cemetery=40 ft");
    }
    // The graves came after the well: by the text of their own day alone.
    wi.fallsShort(
        "cemetery-after-well-distance",
        "dates.completed=1985-01-01",
        "dates.source_installed=1990-06-15",
        "setback.cemetery=60 ft");
    wi.meets(
        "cemetery-after-well-distance",
        "dates.completed=1985-01-01",
        "dates.source_installed=2005-06-15",
        "setback.cemetery=60 ft");
    wi.doesNotApply(
        "cemetery-after-well-distance",
        "dates.completed=1985-01-01",
        "dates.source_installed=2020-08-15",
        "setback.cemetery=60 ft");
    wi.least("casing-top-height", "well.stickup", "8 in", Y1990);
    wi.doesNotApply("casing-top-height", Y2005, "well.stickup=1 in");
    wi.least("casing-top-height", "well.stickup", "12 in", Y2020);
  }

  @Test
  void virginia_from_1990_09_01() {
    Code va = Code.of("virginia", "Virginia, USA");
    va.doesNotApply("casing-top-height", Y1990, "well.stickup=2 in");
    va.least("casing-top-height", "well.stickup", "12 in", Y2005);
    va.least("casing-top-height", "well.stickup", "12 in", Y2020);
    va.fallsShort(
        "casing-top-height-of-altered-well",
        Y1990,
        "dates.altered=2005-06-15",
        "well.stickup=2 in");
  }

  @Test
  void federal_arsenic_by_the_day_of_the_sample() {
    Code us = Code.of("federal-drinking-water", "US federal");
    us.meets("arsenic-primary", Y1990, "dates.sampled=1990-07-01", "sample.arsenic=30 ug/L");
    us.meets("arsenic-primary", Y2005, "dates.sampled=2005-07-01", "sample.arsenic=30 ug/L");
    us.fallsShort("arsenic-primary", Y2020, "dates.sampled=2020-09-01", "sample.arsenic=30 ug/L");
    // An old well, sampled lately.
    us.fallsShort("arsenic-primary", Y1990, "dates.sampled=2020-09-01", "sample.arsenic=30 ug/L");
  }

  @Test
  void north_carolina_and_washington_start_on_a_day() {
    Code nc = Code.of("north-carolina", "North Carolina, USA");
    nc.doesNotApply("report-in-time", Y2005, "dates.received=2006-01-01");
    nc.fallsShort("report-in-time", Y2020, "dates.received=2021-01-01");
    Code wa = Code.of("washington", "Washington, USA");
    wa.doesNotApply("casing-top-height", Y2005, "well.stickup=1 in");
    wa.fallsShort("casing-top-height", Y2020, "well.stickup=1 in");
  }
}
