package org.wellcurb.rulepack.published;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class MaineTest {
  private static final Code ME = Code.of("maine", "Maine, USA");

  @Test
  void section_400_2_field() {
    ME.states("232-4-400.2", "under 2,000", "100 ft")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "100 ft",
            "site.sewage_flow=1999 gpd");
    ME.states("232-4-400.2", "2,000 gal/day or more", "300 ft")
        .least(
            "absorption-field-distance",
            "setback.absorption_field",
            "300 ft",
            "site.sewage_flow=2000 gpd");
  }

  @Test
  void section_401_bedrock() {
    ME.states("232-4-401.1.2", "steel casing", "0.250 in")
        .least(
            "steel-casing-wall",
            "well.casing_wall",
            "0.250 in",
            "well.open_hole=yes",
            "well.casing_material=steel");
    ME.states("232-4-401.2.3", "above ground", "8 in")
        .least("casing-top-height", "well.stickup", "8 in", "well.open_hole=yes");
    ME.states("232-4-401.3", "cover", "required")
        .meets("well-capped", "well.cap=sealed", "well.open_hole=yes");
    ME.fallsShort("well-capped", "well.cap=none", "well.open_hole=yes");
    ME.states("232-4-401.4", "drive shoe", "required")
        .meets(
            "drive-shoe",
            "well.drive_shoe=yes",
            "well.open_hole=yes",
            "well.casing_material=steel",
            "well.method=rotary");
    ME.fallsShort(
        "drive-shoe",
        "well.drive_shoe=no",
        "well.open_hole=yes",
        "well.casing_material=steel",
        "well.method=rotary");
    ME.states("232-4-401.1.3", "plastic casing", "Schedule 40")
        .meets(
            "plastic-casing-schedule",
            "well.casing_schedule=Schedule 40",
            "well.open_hole=yes",
            "well.casing_material=pvc");
    ME.fallsShort(
        "plastic-casing-schedule",
        "well.casing_schedule=Sch 20",
        "well.open_hole=yes",
        "well.casing_material=pvc");
  }

  @Test
  void title_12_550_b_report() {
    ME.states("12 MRS 550-B(3)(A)", "completion report", "30")
        .days("report-in-time", 30, LocalDate.of(2019, 3, 1));
  }
}
