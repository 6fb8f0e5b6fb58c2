package org.wellcurb.workings;

import java.util.List;
import org.wellcurb.quantity.Units;

/** Which pressure a system holds, and where its switch stands. Pa, metres. */
final class SystemPressure {
  static final String SWITCH_HEIGHT = "usual_switch_height";

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

  /** Height of the switch above ground at the well, or the usual one where it is not given. */
  static double switchHeight(double given, double usual) {
    return Double.isNaN(given) ? usual : given;
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            SWITCH_HEIGHT,
            0,
            Units.FOOT,
            "height of the pressure switch above ground at the well where the record gives none",
            "common practice: level with the ground"));
  }
}
