package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class OntarioTest {
  private static final String CASED = "well.casing_depth=6 m";
  private static final String OTHER = "well.casing_depth=5.9 m";
  private static final String S12 = "Reg. 903 s. 12 (Table 4-1)";
  private static final Code ON = Code.of("ontario", "Ontario, Canada");

  @Test
  void reg_903_s_12() {
    by("distribution pipe", "absorption-field-distance", "absorption_field", "15 m", "30 m");
    by("cesspool", "cesspool-distance", "cesspool", "30 m", "60 m");
    by("privy vault", "privy-distance", "privy", "10 m", "15 m");
    by("earth pit privy", "earth-pit-privy-distance", "privy", "15 m", "30 m");
    by("septic tank", "septic-tank-distance", "septic_tank", "15 m", "15 m");
    by("holding tank", "holding-tank-distance", "holding_tank", "15 m", "15 m");
  }

  private static void by(String subject, String rule, String source, String cased, String other) {
    ON.states(S12, subject, cased).least(rule, "setback." + source, cased, CASED);
    ON.states(S12, subject, other).least(rule, "setback." + source, other, OTHER);
  }

  @Test
  void reg_903_s_12_casing_not_known() {
    ON.cannotTell("absorption-field-distance", "setback.absorption_field=20 m");
    ON.meets("absorption-field-distance", "setback.absorption_field=30 m");
    ON.fallsShort("absorption-field-distance", "setback.absorption_field=14 m");
  }

  @Test
  void reg_903_s_15() {
    ON.states("Reg. 903 s. 15", "free chlorine dose", "50-200 mg/L")
        .least("chlorine-dose", "disinfection.dose", "50 mg/L", "water.flowing=no");
    ON.most("chlorine-dose", "disinfection.dose", "200 mg/L", "water.static_level=3 m");
    ON.states("Reg. 903 s. 15", "contact time", "12 h")
        .least("chlorine-contact-time", "disinfection.contact_time", "12 h", "water.flowing=no");
    ON.doesNotApply("chlorine-dose", "water.flowing=yes", "disinfection.dose=1 mg/L");
    ON.states("Reg. 903 s. 15(9)", "residual", "required")
        .asksFor("chlorine-left-recorded", "disinfection.residual=60 mg/L");
  }

  @Test
  void reg_903_s_12_4_14_8_and_16_3() {
    ON.states("Reg. 903 s. 12.4 (bulletin restatement)", "absolute", "3 m")
        .least("well-depth-least", "well.depth", "3 m", "well.use=household");
    ON.states("Reg. 903 s. 12.4 (bulletin restatement)", "new water supply well", "6 m")
        .least("well-depth", "well.depth", "6 m", "well.use=household");
    ON.states("Reg. 903 s. 16.3", "GPS", "required")
        .asksFor("report-location", "site.latitude=45.1", "site.longitude=-79.2");
    ON.states("Reg. 903 ss. 14.8-14.10", "structural stage", "required")
        .asksFor(
            "report-yield-test",
            "water.test_method=test pump",
            "water.test_rate=20 L/min",
            "water.static_level=4 m");
  }
}
