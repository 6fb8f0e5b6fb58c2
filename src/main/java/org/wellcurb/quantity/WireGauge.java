package org.wellcurb.quantity;

/**
 * American wire gauge: diameter 0.127 mm x 92^((36 - n) / 39). Source: ASTM B258, from memory; the
 * tabulated areas are compared in the tests.
 */
public final class WireGauge {
  private static final double AREA_OF_36 = Math.PI / 4 * 0.127 * 0.127;
  private static final double STEP = Math.log(92) / 19.5;

  private WireGauge() {}

  /** Conductor area in mm2 of gauge number {@code n} (1/0 is 0, 4/0 is -3). */
  public static double squareMillimetres(double n) {
    return AREA_OF_36 * Math.exp(STEP * (36 - n));
  }

  /** Gauge number, not rounded, of a conductor area in mm2. */
  public static double number(double squareMillimetres) {
    return 36 - Math.log(squareMillimetres / AREA_OF_36) / STEP;
  }
}
