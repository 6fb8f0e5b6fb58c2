package org.wellcurb.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Of several ways to meet a rule, the limit named is one that is enough when it is come up to. */
class WaysToALimitTest {
  private static final OneRule DISTANCE =
      OneRule.requires(
          "setback.absorption_field >= 30 m or (setback.absorption_field >= 15 m"
              + " and well.casing_depth >= 5 m and grout.bottom >= 5 m)");

  private static Deciding deciding(String casing, String grout) {
    return Objects.requireNonNull(
        DISTANCE
            .explained(
                "setback.absorption_field", "12 m",
                "well.casing_depth", casing,
                "grout.bottom", grout)
            .deciding());
  }

  @Test
  void aLimitBesideWhichMoreIsLackingIsNotNamed() {
    assertEquals(30, deciding("4 m", "3 m").limit(), 1e-9);
    assertEquals(-18, deciding("4 m", "3 m").margin(), 1e-9);
  }

  @Test
  void theNearerLimitIsNamedWhereItAloneIsLacking() {
    assertEquals(15, deciding("6 m", "6 m").limit(), 1e-9);
    assertEquals(-3, deciding("6 m", "6 m").margin(), 1e-9);
  }

  /** Where what holds is put with what does not, only the latter is asked for. */
  @Test
  void whatIsGivenIsNotAskedFor() {
    OneRule rule = OneRule.requires("known(pump.type) and pump.type is 'jet'");
    String said = rule.explained("pump.type", "hand").withNumbers();
    assertTrue(said.contains("(hand) is given") && said.contains("(asked for: jet)"), said);
  }

  /** A word, or whether an entry is given or applies, is a way out and no limit to come up to. */
  @Test
  void aWayOutThatIsNoLimitIsNotNamed() {
    for (String wayOut :
        new String[] {
          "not applies(setback.pond)",
          "known(well.tag)",
          "well.use is 'monitoring'",
          "well.use is one of 'monitoring', 'irrigation'",
          "water.flowing"
        }) {
      OneRule rule = OneRule.requires(wayOut + " or setback.pond >= 10 ft");
      Deciding deciding =
          Objects.requireNonNull(
              rule.explained("setback.pond", "8 ft", "well.use", "household", "water.flowing", "no")
                  .deciding());
      assertEquals("setback.pond", deciding.entry(), wayOut);
      assertEquals(10, deciding.limit(), 1e-9, wayOut);
      assertEquals(-2, deciding.margin(), 1e-9, wayOut);
    }
  }
}
