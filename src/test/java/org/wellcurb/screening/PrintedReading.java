package org.wellcurb.screening;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.sf.geographiclib.Geodesic;

/** What a sheet prints of a working that is no sum: read off a table, or measured on the globe. */
final class PrintedReading {
  private static final Pattern FIGURE = Pattern.compile("-?\\d+(?:\\.\\d+)?");

  private PrintedReading() {}

  static boolean isOf(String working) {
    return List.of("casing_outside_diameter", "insulation_band", "septic_distance", "stage_boost")
        .contains(working);
  }

  /** Whether the result is what a reader would take from the numbers; ranges are taken as right. */
  static boolean isRight(String working, String withNumbers, String result) {
    if (withNumbers.contains("not known") || result.contains("not known")) {
      return true;
    }
    double[] said = figures(withNumbers);
    double[] came = figures(result);
    return switch (working) {
      case "casing_outside_diameter" -> withNumbers.endsWith(": " + result);
      case "insulation_band" -> came.length > 1 || isBand(said, (int) came[0], withNumbers);
      case "septic_distance" -> came.length > 1 || isLine(said, came[0], result.endsWith(" ft"));
      default -> said.length > 3 || came.length != 2 || isBoost(said, came, result);
    };
  }

  private static double[] figures(String text) {
    Matcher matcher = FIGURE.matcher(text);
    return matcher.results().mapToDouble(found -> Double.parseDouble(found.group())).toArray();
  }

  /** Stages times each end of the boost of one, which is in psi. */
  private static boolean isBoost(double[] said, double[] came, String result) {
    double psi = result.endsWith(" kPa") ? 6.894757 : 1;
    return near(came[0], psi * said[0] * said[1]) && near(came[1], psi * said[0] * said[2]);
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) <= 2e-4 * Math.abs(b);
  }

  /** The figures are: 1, its limit, 2, its limit, 3, its limit, 4, the reading. */
  private static boolean isBand(double[] said, int band, String withNumbers) {
    double reading = said[7];
    int by = reading <= said[1] ? 1 : reading <= said[3] ? 2 : reading <= said[5] ? 3 : 4;
    return by == band || withNumbers.endsWith("or more");
  }

  /** Six decimals of a degree leave some 0.2 m open. */
  private static boolean isLine(double[] said, double length, boolean isFeet) {
    if (said.length != 4) {
      return true;
    }
    double line = Geodesic.WGS84.Inverse(said[0], said[1], said[2], said[3]).s12;
    double metres = isFeet ? length * 0.3048 : length;
    return Math.abs(line - metres) <= 0.2 + 1e-4 * line;
  }
}
