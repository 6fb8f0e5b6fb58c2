package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class IndianaTest {
  private static final Code IN = Code.of("indiana", "Indiana, USA");

  @Test
  void recommended_distances() {
    IN.states("Table 1 (recommended)", "septic tank", "50 ft")
        .least("septic-tank-distance", "setback.septic_tank", "50 ft");
    IN.states("Table 1 (recommended)", "holding tank", "50 ft")
        .least("holding-tank-distance", "setback.holding_tank", "50 ft");
    IN.states("Table 1 (recommended)", "absorption field", "100 ft")
        .least("absorption-field-distance", "setback.absorption_field", "100 ft");
    IN.states("Table 1 (recommended)", "cesspool", "100 ft")
        .least("cesspool-distance", "setback.cesspool", "100 ft");
    IN.states("Table 1 (recommended)", "sewer of other pipe", "50 ft")
        .least("sewer-line-distance", "setback.sewer_line", "50 ft", "site.sewer_watertight=no");
    IN.states("Table 1 (recommended)", "water-works-grade", "25 ft")
        .least("sewer-line-distance", "setback.sewer_line", "25 ft", "site.sewer_watertight=yes");
    IN.states("Table 1 (recommended)", "fuel-oil tank", "25 ft")
        .least("fuel-tank-distance", "setback.fuel_tank", "25 ft");
    IN.states("Table 1 (recommended)", "chemical, petrol", "100 ft")
        .least("chemical-storage-distance", "setback.chemical_storage", "100 ft");
    IN.states("Table 1 (recommended)", "stream, lake", "25 ft")
        .least("surface-water-distance", "setback.surface_water", "25 ft");
    IN.states("Table 1 (recommended)", "feeding pen", "50 ft")
        .least("animal-yard-distance", "setback.animal_yard", "50 ft");
    IN.states("Table 1 (recommended)", "silo", "50 ft")
        .least("silage-distance", "setback.silage", "50 ft");
  }

  @Test
  void n_312_iac_13_2_6_record() {
    IN.states("312 IAC 13-2-6", "well record", "30")
        .days("report-in-time", 30, LocalDate.of(2019, 3, 1));
    IN.states("IC 25-39-4-2(b)", "wells drilled after", "1987-12-31")
        .fallsShort("report-in-time", "dates.completed=1988-01-01", "dates.received=1988-02-01");
    IN.doesNotApply("report-in-time", "dates.completed=1987-12-31", "dates.received=1988-02-01");
  }
}
