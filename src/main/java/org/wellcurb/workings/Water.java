package org.wellcurb.workings;

/** Water as a weight: head and pressure. Fresh water of 1000 kg/m3 and standard gravity. */
public final class Water {
  /** Density (kg/m3). A well's water lies between 999.8 and 998.2. */
  public static final double DENSITY = 1000;

  private static final double WEIGHT = DENSITY * 9.80665;

  private Water() {}

  /** Head (m) of a pressure (Pa): p / (rho g); 2.307 ft for a psi. */
  public static double head(double pressure) {
    return pressure / WEIGHT;
  }

  /** Pressure (Pa) of a head (m): rho g h. */
  public static double pressure(double head) {
    return head * WEIGHT;
  }

  /** Power (W) that lifts a flow (m3/s) by a head (m): rho g Q h; Q h / 3960 hp in gpm and ft. */
  public static double power(double flow, double head) {
    return flow == 0 || head == 0 ? 0 : WEIGHT * flow * head;
  }
}
