package org.wellcurb.workings;

/**
 * The relief valve as a bound on pressure. It bounds only what it can pass: it has to be there,
 * with no shut-off valve between it and the pump, and to pass the pump's flow. What the record
 * leaves open is taken both ways, so that there is a least and a greatest bound.
 */
final class Relief {
  private Relief() {}

  private static boolean cannotBound(
      double fitted, double capacity, double valveBetween, double flow, double control) {
    return fitted == 0 || valveBetween == 1 || capacity < flow || SystemPressure.isValve(control);
  }

  /**
   * The lowest pressure (Pa) that it may hold the switch to; infinite where it surely bounds
   * nothing; NaN where it may be there with a setting that is not given.
   *
   * @param fitted 1, 0 or NaN
   * @param setting (Pa) or NaN
   * @param capacity (m3/s) or NaN
   * @param valveBetween 1, 0 or NaN
   * @param flow of the pump (m3/s) or NaN
   * @param control of the pump: behind a constant pressure valve the relief does not feel the pump
   */
  static double leastBound(
      double fitted,
      double setting,
      double capacity,
      double valveBetween,
      double flow,
      double control) {
    return cannotBound(fitted, capacity, valveBetween, flow, control)
        ? Double.POSITIVE_INFINITY
        : setting;
  }

  /**
   * The highest pressure (Pa) that it may let the switch see; infinite where it may not bound, as
   * where the control is not given: it may be a constant pressure valve.
   */
  static double greatestBound(
      double fitted,
      double setting,
      double capacity,
      double valveBetween,
      double flow,
      double control) {
    boolean surely =
        !cannotBound(fitted, capacity, valveBetween, flow, control)
            && !Double.isNaN(setting)
            && !Double.isNaN(control)
            && capacity >= flow
            && valveBetween == 0;
    return surely ? setting : Double.POSITIVE_INFINITY;
  }
}
