package org.wellcurb.quantity;

/** The family of units that an amount was written in. */
public enum UnitSystem {
  /** Feet, inches, gallons, pounds: US customary and imperial units. */
  US,
  /** Metres, litres, kilopascals, kilograms. */
  METRIC,
  /** Units that both systems share (mg/L, V, A, h): they decide nothing. */
  NEUTRAL;

  private static final UnitSystem[] ALL = values();

  /** The system with this ordinal, without copying the array of values. */
  public static UnitSystem at(int ordinal) {
    return ALL[ordinal];
  }
}
