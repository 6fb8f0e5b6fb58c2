package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.wellcurb.quantity.Units.AMPERE;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.PERCENT;
import static org.wellcurb.quantity.Units.VOLT;

import org.junit.jupiter.api.Test;

/** Cables of two parts, done by hand with 1.98 ohm a thousand feet of 12 AWG (NEC, Table 8). */
class CableTest {
  private static Given cable(String supply, String motor) {
    return Given.nothing()
        .si("wire.gauge", 12, 12)
        .with("wire.length", 300, FOOT)
        .with("wire.drop_length", 100, FOOT)
        .with("wire.phase", supply)
        .with("pump.phase", motor)
        .with("pump.voltage", 230, VOLT)
        .with("pump.service_factor_current", 10.9, AMPERE);
  }

  /** 2 x (sqrt(3) x 10.9 A) x 0.594 ohm + sqrt(3) x 10.9 A x 0.198 ohm. */
  @Test
  void onePhaseThatFeedsThreeCarriesMore() {
    Given cable = cable("1", "3");
    assertEquals(22.429 + 3.738, cable.at("voltage_drop", VOLT), 0.01);
    assertEquals(11.38, cable.at("voltage_drop_share", PERCENT), 0.01);
  }

  /** 2 x 10.9 A x (0.594 + 0.198) ohm, and sqrt(3) in place of 2 for three phases. */
  @Test
  void onePhaseOrThreeThroughoutCarriesTheMotorsCurrent() {
    assertEquals(17.266, cable("1", "1").at("voltage_drop", VOLT), 0.005);
    assertEquals(14.953, cable("3", "3").at("voltage_drop", VOLT), 0.005);
  }

  @Test
  void aPackMaySetItsOwnFigure() {
    Given cable = cable("1", "3").figure("one_phase_current", 2, org.wellcurb.quantity.Units.ONE);
    assertEquals(25.898 + 3.738, cable.at("voltage_drop", VOLT), 0.01);
  }
}
