package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class MinnesotaTest {
  private static final String FIELD = "setback.absorption_field";
  private static final String LIMESTONE = "well.aquifer=limestone or dolomite";
  private static final String NEW = "dates.completed=2008-08-04";
  private static final Code MN = Code.of("minnesota", "Minnesota, USA");

  @Test
  void part_4725_4450_by_class_of_well() {
    MN.states("Minn. R. 4725.4450", "drainfield (small system)", "50 ft")
        .least("absorption-field-distance", FIELD, "50 ft", NEW, "well.casing_depth=50 ft");
    MN.states("Minn. R. 4725.4450", "drainfield (small system)", "100 ft")
        .least(
            "absorption-field-distance",
            FIELD,
            "100 ft",
            NEW,
            "well.casing_depth=49 ft",
            "well.confining_layer_thickness=9 ft");
    MN.meets(
        "absorption-field-distance",
        NEW,
        FIELD + "=60 ft",
        "well.casing_depth=20 ft",
        "well.confining_layer_thickness=10 ft");
    MN.states("Minn. R. 4725.4450", "septic tank", "50 ft")
        .least("septic-tank-distance", "setback.septic_tank", "50 ft");
    MN.states("Minn. R. 4725.4450 item A", "10,000 gal/day", "300 ft")
        .least("large-absorption-field-distance", FIELD, "300 ft", "site.sewage_flow=10001 gpd");
    MN.doesNotApply(
        "large-absorption-field-distance", "site.sewage_flow=10000 gpd", FIELD + "=60 ft");
    MN.states("Minn. R. 4725.4450 (municipal restatement)", "over 10,000 gal/day", "600 ft")
        .least(
            "large-absorption-field-sensitive-distance",
            FIELD,
            "600 ft",
            "site.sewage_flow=20000 gpd",
            "well.casing_depth=40 ft",
            "well.confining_layer_thickness=0 ft");
    MN.states("Minn. R. 4725.4450 item A", "landfill", "300 ft")
        .least("landfill-distance", "setback.landfill", "300 ft");
  }

  @Test
  void part_4725_1851_and_3550() {
    MN.states("Minn. R. 4725.1851 subp. 1", "record", "30 days")
        .days("report-in-time", 30, LocalDate.of(2016, 4, 5));
    MN.states("Minn. R. 4725.1851 subp. 1 D", "ground surface", "datum")
        .fallsShort("depths-from-ground", "record.datum=casing top");
    MN.meets("depths-from-ground", "record.datum=ground");
    MN.states("Minn. R. 4725.3550", "label", "required").asksFor("well-label", "well.tag=H-1");
  }

  @Test
  void part_4725_3450_either_of_two_thresholds() {
    MN.states("Minn. R. 4725.3450 subp. 1a-2", "flow over 70 gpm", "70 gpm")
        .cannotTell(
            "strong-flowing-well",
            "water.flowing=yes",
            "water.yield=71 gpm",
            "water.shut_in_pressure=2 psi");
    MN.cannotTell(
        "strong-flowing-well",
        "water.flowing=yes",
        "water.yield=5 gpm",
        "water.shut_in_pressure=11 psi");
    MN.doesNotApply(
        "strong-flowing-well",
        "water.flowing=yes",
        "water.yield=70 gpm",
        "water.shut_in_pressure=10 psi");
  }

  @Test
  void part_4725_4850() {
    MN.states("Minn. R. 4725.4850 subp. 1", "connection", "12 in")
        .fallsShort(
            "low-connection-is-pitless",
            "service_line.burial_depth=7 ft",
            "well.head=well house",
            "pitless.fitted=no");
    MN.meets(
        "low-connection-is-pitless", "service_line.burial_depth=7 ft", "well.head=pitless unit");
  }

  @Test
  void part_4725_3050() {
    MN.states("4725.3050 subp. 1", "neat cement", "allowed list")
        .fallsShort("grout-material", "grout.material=concrete");
    MN.meets("grout-material", "grout.material=bentonite slurry");
    MN.states("4725.3050 subp. 2 D", "base of pitless", "full length")
        .most("grout-to-surface", "grout.top", "7 ft", "pitless.depth=7 ft");
    MN.states("4725.3050 subp. 2 F", "pouring", "10 ft")
        .fallsShort("poured-grout-depth", "grout.method=poured", "grout.bottom=10 ft");
    MN.meets("poured-grout-depth", "grout.method=poured", "grout.bottom=9.9 ft");
    MN.states("4725.3050 subp. 2a", "neat cement", "24 h")
        .least("ordinary-cement-set-time", "grout.set_time", "24 h", "grout.material=neat cement");
    MN.states("4725.3050 subp. 2a", "rapid-setting", "12 h")
        .least("cement-set-time", "grout.set_time", "12 h", "grout.material=neat cement");
  }

  @Test
  void part_4725_4250_limestone() {
    MN.states("4725.4250 subp. 2", "plastic", "5 ft")
        .most(
            "plastic-casing-in-limestone",
            "well.casing_depth",
            "75 ft",
            LIMESTONE,
            "well.casing_material=pvc",
            "well.rock_depth=70 ft");
    MN.states("4725.4250 subp. 3", "over 10 ft", "3.0 in")
        .least(
            "bore-in-limestone",
            "well.bore_diameter",
            "7.5 in",
            LIMESTONE,
            "well.rock_depth=60 ft",
            "well.casing_depth=80 ft",
            "well.casing_diameter=4.5 in",
            "well.casing_size_is=outside",
            "well.casing_material=steel");
    MN.states("4725.4250 subp. 3", "deeper than 100 ft", "3.5 in")
        .least(
            "bore-in-limestone",
            "well.bore_diameter",
            "21.5 in",
            LIMESTONE,
            "well.rock_depth=60 ft",
            "well.casing_depth=140 ft",
            "well.casing_diameter=18 in",
            "well.casing_size_is=outside",
            "well.casing_material=steel");
    MN.states("4725.4250 subp. 4 A", "cover", "50 ft")
        .least("cover-over-limestone", "well.rock_depth", "50 ft", LIMESTONE, "well.use=household");
    MN.states("4725.4250 subp. 5 (as cited)", "below static", "20 ft")
        .least(
            "casing-below-water-in-limestone",
            "well.casing_depth",
            "50 ft",
            LIMESTONE,
            "water.static_level=30 ft");
  }

  @Test
  void part_4725_2250_and_103i_301() {
    MN.states("4725.2250 subp. 11 (as cited)", "above established ground", "12 in")
        .least("casing-top-height", "well.stickup", "12 in");
    MN.states("103I.301 subd. 1(b)", "not in use", "required")
        .fallsShort("old-well-sealed", "well.replacement=yes", "well.old_well=not sealed");
    MN.meets("old-well-sealed", "well.replacement=yes", "well.old_well=kept in use");
  }
}
