package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class NebraskaTest {
  private static final String NEW = "dates.completed=2014-08-26";
  private static final Code NE = Code.of("nebraska", "Nebraska, USA");

  @Test
  void s_12_003_01c_chart_1() {
    row("septic tank", "50 ft", "septic-tank-distance", "septic_tank");
    row("septic lateral field", "100 ft", "absorption-field-distance", "absorption_field");
    row("sewer line", "50 ft", "sewer-line-distance", "sewer_line");
    row("cesspool", "100 ft", "cesspool-distance", "cesspool");
    row("privy", "100 ft", "privy-distance", "privy");
    row("animal waste containment", "100 ft", "manure-storage-distance", "manure_storage");
    row("animal holding pen", "100 ft", "animal-yard-distance", "animal_yard");
    row("depression", "10 ft", "pond-distance", "pond");
    for (String source :
        new String[] {"holding_tank", "fuel_tank", "chemical_storage", "landfill", "cemetery"}) {
      row("any other known source", "100 ft", source.replace('_', '-') + "-distance", source);
    }
  }

  private static void row(String subject, String figure, String rule, String source) {
    NE.states("12-003.01C Chart 1", subject, figure).least(rule, "setback." + source, figure, NEW);
  }

  @Test
  void s_12_003_004_005() {
    NE.states("12-003.01A", "well pit", "prohibited")
        .fallsShort("no-well-pit", NEW, "well.head=pit");
    NE.meets("no-well-pit", NEW, "well.head=pitless adapter");
    NE.states("12-004.01", "sand-point", "prohibited")
        .fallsShort("no-driven-household-well", NEW, "well.use=household", "well.method=driven");
    NE.meets("no-driven-household-well", NEW, "well.use=household", "well.method=auger");
    NE.states("12-004.02A", "potable", "12 in")
        .least("casing-top-height", "well.stickup", "12 in", NEW, "well.use=household");
    NE.states("12-005.02A1", "6-5/8 in or less", "12 in")
        .least(
            "casing-top-height-not-for-drinking",
            "well.stickup",
            "12 in",
            NEW,
            "well.use=irrigation",
            "well.casing_size_is=outside",
            "well.casing_diameter=6.625 in");
    NE.states("12-005.02B1", "over 6-5/8 in", "6 in")
        .least(
            "casing-top-height-not-for-drinking",
            "well.stickup",
            "6 in",
            NEW,
            "well.use=livestock",
            "well.casing_size_is=outside",
            "well.casing_diameter=6.63 in");
    NE.states("12-004.03A", "after construction", "required")
        .fallsShort("disinfected", NEW, "well.use=household", "disinfection.done=no");
    NE.meets("disinfected", NEW, "well.use=household", "disinfection.done=yes");
  }

  @Test
  void s_12_011() {
    NE.states("12-011.01B2", "potable well", "50 ppm")
        .least("chlorine-dose", "disinfection.dose", "50 ppm", NEW, "well.use=household");
  }
}
