package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class ConnecticutTest {
  private static final Code CT = Code.of("connecticut", "Connecticut, USA");

  @Test
  void b51k_yield_test_steps() {
    CT.states("19-13-B51k(b)", "under 10 gal", "4 h")
        .least("yield-test-length", "water.test_duration", "4 h", "water.yield=9.9 gpm");
    CT.states("19-13-B51k(b)", "10-50 gal", "36 h")
        .least("yield-test-length", "water.test_duration", "36 h", "water.yield=10 gpm");
    CT.states("19-13-B51k(b)", "over 50 gal", "72 h")
        .least("yield-test-length", "water.test_duration", "72 h", "water.yield=50.1 gpm");
  }

  @Test
  void b51k_disinfection() {
    CT.states("19-13-B51k(c)", "storage tank", "required")
        .meets("disinfected", "disinfection.done=yes");
    CT.fallsShort("disinfected", "disinfection.done=no");
  }

  @Test
  void b51j_vent() {
    CT.states("19-13-B51j(b)", "drawdown", "10 ft")
        .meets(
            "vent-where-water-draws-down",
            "well.cap=vented sealed",
            "water.static_level=20 ft",
            "water.pumping_level=30 ft");
    CT.fallsShort(
        "vent-where-water-draws-down",
        "well.cap=sealed",
        "water.static_level=20 ft",
        "water.pumping_level=30 ft");
    CT.doesNotApply(
        "vent-where-water-draws-down",
        "well.cap=sealed",
        "water.static_level=20 ft",
        "water.pumping_level=29.9 ft");
    CT.states("19-13-B51j(b)", "high water", "12 in")
        .least("vent-over-flood", "well.vent_height", "24 in", "well.flood_level=12 in");
    CT.states("19-13-B51j(b)", "high water", "12 in")
        .meets("vent-screened", "well.vent_screened=yes");
    CT.fallsShort("vent-screened", "well.vent_screened=no");
  }

  @Test
  void n_25_128_62_report() {
    CT.states("25-128-62(a)", "completion report", "60")
        .days("report-in-time", 60, LocalDate.of(2019, 3, 1));
  }
}
