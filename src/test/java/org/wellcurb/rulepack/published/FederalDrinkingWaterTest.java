package org.wellcurb.rulepack.published;

import org.junit.jupiter.api.Test;

class FederalDrinkingWaterTest {
  private static final Code US = Code.of("federal-drinking-water", "US federal");

  @Test
  void cfr_40_141_62_b() {
    US.states("40 CFR 141.62(b)(7)", "nitrate", "10 mg/L")
        .most("nitrate-primary", "sample.nitrate", "10 mg/L");
    US.states("40 CFR 141.62(b)(1)", "fluoride", "4.0 mg/L")
        .most("fluoride-primary", "sample.fluoride", "4.0 mg/L");
    US.states("40 CFR 141.62(b)(16)", "arsenic", "0.01 mg/L")
        .most("arsenic-primary", "sample.arsenic", "0.01 mg/L", "dates.sampled=2006-01-23");
  }

  @Test
  void cfr_40_141_11_b_until_2006_01_22() {
    US.states("40 CFR 141.11(b)", "arsenic", "0.05 mg/L")
        .most("arsenic-primary", "sample.arsenic", "0.05 mg/L", "dates.sampled=2006-01-22");
    US.cannotTell("arsenic-primary", "sample.arsenic=0.03 mg/L");
    US.meets("arsenic-primary", "sample.arsenic=10 ug/L");
    US.fallsShort("arsenic-primary", "sample.arsenic=51 ug/L");
  }

  @Test
  void cfr_40_141_2_action_levels() {
    US.states("40 CFR 141.2 (action level)", "lead", "0.015 mg/L")
        .most("lead-action-level", "sample.lead", "0.015 mg/L", "dates.sampled=2020-02-03");
    US.states("40 CFR 141.2 (action level)", "lead", "0.01 mg/L")
        .most("lead-action-level", "sample.lead", "0.01 mg/L", "dates.sampled=2027-11-01");
    US.states("40 CFR 141.2 (action level)", "copper", "1.3 mg/L")
        .most("copper-action-level", "sample.copper", "1.3 mg/L");
  }

  @Test
  void cfr_40_141_66() {
    US.states("40 CFR 141.66", "uranium", "30 ug/L")
        .most("uranium-primary", "sample.uranium", "30 ug/L", "dates.sampled=2003-12-08");
    US.doesNotApply("uranium-primary", "sample.uranium=40 ug/L", "dates.sampled=2003-12-07");
  }

  @Test
  void cfr_40_143_3() {
    goal("fluoride", "fluoride", "2.0 mg/L");
    goal("copper", "copper", "1.0 mg/L");
    goal("iron", "iron", "0.3 mg/L");
    goal("manganese", "manganese", "0.05 mg/L");
    goal("chloride", "chloride", "250 mg/L");
    goal("sulfate", "sulfate", "250 mg/L");
    goal("total dissolved solids", "dissolved_solids", "500 mg/L");
    US.states("40 CFR 143.3", "pH", "6.5-8.5 pH").least("ph-secondary", "sample.ph", "6.5");
    US.most("ph-secondary", "sample.ph", "8.5");
  }

  private static void goal(String subject, String entry, String figure) {
    US.states("40 CFR 143.3", subject, figure)
        .most(entry.replace('_', '-') + "-secondary", "sample." + entry, figure);
  }

  @Test
  void a_sample_that_was_not_taken_is_no_matter() {
    US.doesNotApply("nitrate-primary");
    US.doesNotApply("arsenic-primary", "dates.sampled=2020-01-01");
  }
}
