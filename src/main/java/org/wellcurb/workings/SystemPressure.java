package org.wellcurb.workings;

/** Which pressure a system holds. Pa. */
final class SystemPressure {
  private static final double VARIABLE = Choices.place("pump.control", "variable speed");
  private static final double VALVE = Choices.place("pump.control", "constant pressure valve");

  private SystemPressure() {}

  static boolean isVariableSpeed(double control) {
    return control == VARIABLE;
  }

  static boolean isValve(double control) {
    return control == VALVE;
  }

  /**
   * The pressure that counts: the switch's, or the set point of a variable-speed system. Where the
   * control is not given (NaN) it is the one that is given, and unknown where both are and differ.
   */
  static double of(double bySwitch, double setPoint, double control) {
    if (isVariableSpeed(control)) {
      return setPoint;
    }
    if (!Double.isNaN(control) || Double.isNaN(setPoint) || bySwitch == setPoint) {
      return bySwitch;
    }
    return Double.isNaN(bySwitch) ? setPoint : Double.NaN;
  }
}
