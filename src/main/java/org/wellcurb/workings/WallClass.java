package org.wellcurb.workings;

/**
 * How a form writes the wall of a casing: schedule, dimension ratio, weight, class or thickness.
 * The text becomes one number, a thousand for each way plus the figure, so that {@code sdr 21} is
 * 1021.
 */
final class WallClass {
  static final int SCHEDULE = 0;
  static final int RATIO = 1;
  static final int POUNDS_PER_FOOT = 2;
  static final int INCHES = 3;
  static final int STANDARD = 4;
  static final int EXTRA_STRONG = 5;

  /** A number alone: a ratio for plastic, pounds a foot for steel. */
  static final int BARE = 6;

  /**
   * Not said: from this, the thinnest wall that is published for the size, to {@link #THICKEST},
   * and all between.
   */
  static final int UNSAID = 7;

  private static final int STEP = 1000;
  private static final double THINNEST = UNSAID * STEP;
  private static final double THICKEST = THINNEST + STEP;

  /** The codes of a text as written; of a blank, all that the wall may be. */
  static final TextCode CODE =
      new TextCode() {
        @Override
        public double of(String folded) {
          return WallClass.of(folded);
        }

        @Override
        public double leastUnsaid() {
          return THINNEST;
        }

        @Override
        public double greatestUnsaid() {
          return THICKEST;
        }
      };

  private WallClass() {}

  /** Which of the ways a code is; -1 for NaN. */
  static int way(double code) {
    return code >= 0 ? Math.min((int) code / STEP, UNSAID) : -1;
  }

  /** Of an {@link #UNSAID} wall, its share of the way from the thinnest to the thickest: 0 to 1. */
  static double share(double code) {
    return (code - THINNEST) / (THICKEST - THINNEST);
  }

  /** The figure of a code. */
  static double figure(double code) {
    return code % STEP;
  }

  /** The code of a text in lower case; NaN where it says nothing that is understood. */
  static double of(String text) {
    double figure = firstNumber(text);
    if (Double.isNaN(figure)) {
      return text.startsWith("std") || text.startsWith("standard")
          ? code(STANDARD, 0)
          : text.startsWith("xs") || text.startsWith("extra") ? code(EXTRA_STRONG, 0) : Double.NaN;
    }
    if (text.contains("dr")) {
      return code(RATIO, figure);
    }
    if (text.contains("sch")) {
      return code(SCHEDULE, figure);
    }
    if (text.contains("lb") || text.contains("#") || text.contains("pound")) {
      return code(POUNDS_PER_FOOT, figure);
    }
    if (text.contains("kg/m")) {
      return code(POUNDS_PER_FOOT, figure / 1.488164);
    }
    if (text.contains("class") || text.contains("psi") || text.startsWith("cl")) {
      return ratioOfClass(figure);
    }
    if (text.contains("mm")) {
      return code(INCHES, figure / 25.4);
    }
    if (figure < 1) {
      return code(INCHES, figure);
    }
    return isSchedule(figure) ? code(SCHEDULE, figure) : code(BARE, figure);
  }

  private static double code(int way, double figure) {
    return figure >= 0 && figure < STEP ? way * STEP + figure : Double.NaN;
  }

  private static boolean isSchedule(double figure) {
    return figure == 5
        || figure == 10
        || figure == 20
        || figure == 30
        || figure == 40
        || figure == 80
        || figure == 120;
  }

  /** PVC 1120 pressure classes by dimension ratio: class 160 is SDR 26, class 200 is SDR 21. */
  private static double ratioOfClass(double pressureClass) {
    if (pressureClass == 125) {
      return code(RATIO, 32.5);
    }
    if (pressureClass == 160) {
      return code(RATIO, 26);
    }
    if (pressureClass == 200) {
      return code(RATIO, 21);
    }
    return pressureClass == 315 ? code(RATIO, 13.5) : Double.NaN;
  }

  /** The first decimal number in a text; NaN if there is none. No objects are made. */
  private static double firstNumber(String text) {
    int i = 0;
    int n = text.length();
    while (i < n && !isDigit(text, i) && !(text.charAt(i) == '.' && isDigit(text, i + 1))) {
      i++;
    }
    if (i == n) {
      return Double.NaN;
    }
    double digits = 0;
    double scale = 1;
    boolean point = false;
    for (; i < n && (isDigit(text, i) || (text.charAt(i) == '.' && !point)); i++) {
      if (text.charAt(i) == '.') {
        point = true;
      } else {
        digits = digits * 10 + (text.charAt(i) - '0');
        scale = point ? scale * 10 : scale;
      }
    }
    return digits / scale;
  }

  private static boolean isDigit(String text, int i) {
    return i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9';
  }
}
