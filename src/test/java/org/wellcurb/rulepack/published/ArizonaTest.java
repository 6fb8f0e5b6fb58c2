package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class ArizonaTest {
  private static final Code AZ = Code.of("arizona", "Arizona, USA");

  @Test
  void r12_15_811_a_1_casing() {
    AZ.states("R12-15-811(A)(1)", "above ground level", "1 ft")
        .least("casing-top-height", "well.stickup", "1 ft", "pitless.fitted=no");
    AZ.states("R12-15-811(A)(1)", "pitless adapter may end below", "allowed")
        .meets("casing-top-height", "well.stickup=0 ft", "pitless.fitted=yes");
    AZ.states("R12-15-811(A)(1)", "casing", "steel or thermoplastic")
        .fallsShort("casing-material", "well.casing_material=concrete");
    AZ.meets("casing-material", "well.casing_material=pvc");
  }

  @Test
  void r12_15_814_disinfection() {
    String[] well = {"dates.completed=2006-02-04", "well.use=household"};
    AZ.states("R12-15-814", "when", "before drill rig leaves")
        .meets("disinfected", Code.plus(well, "disinfection.done", "yes"));
    AZ.fallsShort("disinfected", Code.plus(well, "disinfection.done", "no"));
  }

  @Test
  void ars_45_600_b_capacity_test() {
    AZ.states("A.R.S. 45-600(B)(2)", "pump discharge", "4 h")
        .least("yield-test-length", "water.test_duration", "4 h", "water.flowing=no");
    AZ.states("A.R.S. 45-600(B)(3)", "drawdown", "4 h")
        .least("yield-test-length", "water.test_duration", "4 h", "water.flowing=no");
  }

  @Test
  void ars_45_600_reports() {
    AZ.states("A.R.S. 45-600(A)", "well driller report", "30 days")
        .days("report-in-time", 30, LocalDate.of(2019, 3, 1), "record.covers=well");
    String[] pump = {"record.covers=pump", "dates.pump_installed=2019-03-01"};
    AZ.states("A.R.S. 45-600(B)", "completion report", "30 days")
        .meets("pump-report-in-time", Code.plus(pump, "dates.received", "2019-03-31"));
    AZ.fallsShort("pump-report-in-time", Code.plus(pump, "dates.received", "2019-04-01"));
  }
}
