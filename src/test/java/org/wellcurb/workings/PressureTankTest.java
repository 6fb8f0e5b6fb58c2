package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.GPM;
import static org.wellcurb.quantity.Units.MINUTE;
import static org.wellcurb.quantity.Units.ONE;
import static org.wellcurb.quantity.Units.PSI_UNIT;
import static org.wellcurb.quantity.Units.US_GALLON;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PressureTankTest {
  private static Given tank(double precharge) {
    return Given.nothing()
        .with("tank.volume", 20, US_GALLON)
        .with("tank.precharge", precharge, PSI_UNIT)
        .with("pressure.cut_in", 40, PSI_UNIT)
        .with("pressure.cut_out", 60, PSI_UNIT);
  }

  /** Done by hand: 20 gal, 40/60 psi, air at 14.696 psi. */
  @ParameterizedTest
  @CsvSource({"38, 5.16", "45, 4.02", "40, 5.355", "60, 0", "70, 0"})
  void twentyGallonsByHand(double precharge, double gallons) {
    assertEquals(gallons, tank(precharge).at("tank_usable_volume", US_GALLON), 0.005);
  }

  @Test
  void theAcceptanceCutsIt() {
    Given given = tank(38).with("tank.acceptance", 4, US_GALLON);
    assertEquals(4, given.at("tank_usable_volume", US_GALLON), 1e-9);
  }

  /**
   * The volume is that of all tanks, what a bladder takes that of one: 2 of 86 gal, 34 gal each.
   */
  @Test
  void severalTanksTakeTheAcceptanceOfEach() {
    Given one = tank(38).with("tank.volume", 172, US_GALLON).with("tank.acceptance", 34, US_GALLON);
    assertEquals(34, one.at("tank_usable_volume", US_GALLON), 1e-9);
    Given two =
        tank(38)
            .with("tank.volume", 172, US_GALLON)
            .with("tank.acceptance", 34, US_GALLON)
            .with("tank.count", 2, ONE);
    double boyle = 172 * (38 + 14.696) * (1 / (40 + 14.696) - 1 / (60 + 14.696));
    assertEquals(boyle, two.at("tank_usable_volume", US_GALLON), 0.01);
    assertEquals(boyle / 20 * 60, two.with("pump.rated_flow", 20, GPM).at("pump_run_time"), 0.05);
  }

  @Test
  void equalCutInAndCutOutGiveNothingAndTheWrongWayRoundIsUnknown() {
    Given equal = tank(38).with("pressure.cut_in", 60, PSI_UNIT);
    assertEquals(0, equal.at("tank_usable_volume"), 0);
    Given swapped = tank(38).with("pressure.cut_in", 61, PSI_UNIT);
    assertTrue(Double.isNaN(swapped.at("tank_usable_volume")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"air over water", "none", "other"})
  void onlyDiaphragmAndBladderTanks(String type) {
    assertTrue(Double.isNaN(tank(38).with("tank.type", type).at("tank_usable_volume")));
  }

  @Test
  void theMostOverAPrechargeThatMayBeCutInIsAtCutIn() {
    double[] range = tank(0).range("tank.precharge", 30, 55, PSI_UNIT).over("tank_usable_volume");
    assertEquals(tank(40).at("tank_usable_volume"), range[1], 1e-12);
    assertEquals(tank(55).at("tank_usable_volume"), range[0], 1e-12);
  }

  @Test
  void thinAirOfHighPlacesAndAPacksOwnElevation() {
    double high = tank(38).with("site.elevation", 6000, FOOT).at("tank_usable_volume");
    double sea = tank(38).at("tank_usable_volume");
    assertTrue(high > sea);
    assertEquals(
        high, tank(38).figure("usual_elevation", 6000, FOOT).at("tank_usable_volume"), 1e-15);
    // 11.8 psi at 6,000 ft is printed for tanks; the standard atmosphere has 11.78.
    assertEquals(11.8, PSI_UNIT.fromSi(Atmosphere.pressure(FOOT.toSi(6000))), 0.05);
  }

  @Test
  void aRunLastsAsLongAsTheWaterInTheTank() {
    Given given = tank(38).with("pump.rated_flow", 5.16, GPM);
    assertEquals(1, given.at("pump_run_time", MINUTE), 0.001);
    assertTrue(Double.isNaN(tank(38).with("pump.rated_flow", 0, GPM).at("pump_run_time")));
    double[] range = tank(38).range("pump.rated_flow", 5, 10, GPM).over("pump_run_time");
    assertEquals(2, range[1] / range[0], 1e-9);
  }
}
