package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class KansasTest {
  private static final Code KS = Code.of("kansas", "Kansas, USA");

  @Test
  void kar_28_30_6_b_counts_from_below_the_pitless() {
    KS.states("28-30-6(b)(1)", "ground level", "20, or 5 ft into first clay")
        .least("grout-depth", "grout.bottom", "20 ft", "pitless.fitted=no");
    KS.states("28-30-6(b)(1)", "pitless", "20 below pitless")
        .least("grout-depth", "grout.bottom", "25 ft", "pitless.fitted=yes", "pitless.depth=5 ft");
    KS.cannotTell("grout-depth", "grout.bottom=22 ft");
    KS.states("28-30-6(b)(2)", "boring", "3 in diameter")
        .least(
            "bore-for-grout",
            "well.bore_diameter",
            "7.5 in",
            "well.method=rotary",
            "well.casing_material=steel",
            "well.casing_size_is=outside",
            "well.casing_diameter=4.5 in");
  }

  @Test
  void kar_28_30_6_d_and_28_30_4() {
    KS.states("28-30-6(d)", "vent end", "1 ft").least("vent-height", "well.vent_height", "1 ft");
    KS.states("28-30-6(d)", "vent screen", "16 mesh")
        .fallsShort("vent-screened", "well.vent_screened=no");
    KS.meets("vent-screened", "well.vent_screened=yes");
    KS.states("28-30-4(a)(1)", "record", "30 days")
        .days("report-in-time", 30, LocalDate.of(2019, 12, 20));
  }
}
