package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MichiganTest {
  private static final Code MI = Code.of("michigan", "Michigan, USA");

  @ParameterizedTest
  @CsvSource({"100, 10", "250, 4", "500, 2", "1000, 1"})
  void r_325_1661_table_5_four_pairs(String ppm, String hours) {
    MI.states("R 325.1661(1) Table 5", "chlorine " + ppm + " ppm", hours + " h")
        .least(
            "chlorine-dose-and-time",
            "disinfection.contact_time",
            hours + " h",
            "disinfection.dose=" + ppm + " ppm");
    MI.least(
        "chlorine-dose-and-time",
        "disinfection.dose",
        ppm + " ppm",
        "disinfection.contact_time=" + hours + " h");
  }

  @Test
  void r_325_1661_1676_1603() {
    MI.states("R 325.1661(2)", "coliform", "absent")
        .fallsShort("clear-sample", "sample.coliform=present");
    MI.meets("clear-sample", "sample.coliform=absent");
    MI.states("R 325.1676(1)", "pump type", "required list")
        .asksFor(
            "pump-record",
            "record.covers=pump",
            "pump.type=submersible",
            "pump.rated_flow=10 gpm",
            "drop_pipe.length=120 ft",
            "pump.power=0.75 hp");
    MI.states("R 325.1603a(1)", "neat cement", "6 gal")
        .most(
            "cement-water",
            "grout.water_per_bag",
            "6 gal",
            "dates.completed=2023-05-26",
            "grout.material=neat cement",
            "grout.bag_mass=94 lb");
    MI.states("R 325.1603(3)", "ground surface", "datum")
        .fallsShort("depths-from-ground", "record.datum=casing top");
    MI.meets("depths-from-ground", "record.datum=ground");
  }

  @Test
  void mcl_333_12707() {
    MI.states("333.12707", "well record", "60 days")
        .days("report-in-time", 60, LocalDate.of(1999, 7, 1));
    MI.asksFor(
        "report-well",
        "record.covers=well",
        "well.depth=90 ft",
        "well.casing_material=pvc",
        "well.casing_depth=60 ft",
        "water.static_level=20 ft");
  }
}
