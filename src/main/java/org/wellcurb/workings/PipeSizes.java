package org.wellcurb.workings;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/**
 * True sizes of pipe of iron pipe size, from the table {@code pipe-sizes.csv}, where each row has
 * its source. Metres.
 */
final class PipeSizes {
  /** A nominal size is recognised within this share of it: 150 mm is written for 6 in. */
  private static final double NOMINAL_SLACK = 0.02;

  /** A true size is recognised within this share of it. */
  private static final double TRUE_SLACK = 0.003;

  private static final double INCH = 0.0254;
  private static final double[] NOMINAL;
  private static final double[] OUTSIDE;
  private static final double[] WALL;
  private static final int[] WALL_CLASS;

  /** By row, the thinnest and the thickest wall of all rows of its outside diameter. */
  private static final double[] THINNEST;

  private static final double[] THICKEST;

  static {
    List<CSVRecord> rows = new ArrayList<>(PublishedTable.rows("pipe-sizes.csv"));
    int n = rows.size();
    NOMINAL = new double[n];
    OUTSIDE = new double[n];
    WALL = new double[n];
    WALL_CLASS = new int[n];
    for (int i = 0; i < n; i++) {
      NOMINAL[i] = PublishedTable.number(rows.get(i), "nominal_in") * INCH;
      OUTSIDE[i] = PublishedTable.number(rows.get(i), "outside_in") * INCH;
      WALL[i] = PublishedTable.number(rows.get(i), "wall_in") * INCH;
      WALL_CLASS[i] = (int) WallClass.of(rows.get(i).get("class"));
    }
    THINNEST = WALL.clone();
    THICKEST = WALL.clone();
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (OUTSIDE[i] == OUTSIDE[j]) {
          THINNEST[i] = Math.min(THINNEST[i], WALL[j]);
          THICKEST[i] = Math.max(THICKEST[i], WALL[j]);
        }
      }
    }
  }

  private PipeSizes() {}

  /** Outside diameter of a nominal size; NaN if the table has no such size. */
  static double outsideOfNominal(double nominal) {
    for (int i = 0; i < NOMINAL.length; i++) {
      if (Math.abs(nominal - NOMINAL[i]) <= NOMINAL_SLACK * NOMINAL[i]) {
        return OUTSIDE[i];
      }
    }
    return Double.NaN;
  }

  /** The table's outside diameter that this is; NaN if it is none. */
  static double outsideNear(double diameter) {
    for (double outside : OUTSIDE) {
      if (Math.abs(diameter - outside) <= TRUE_SLACK * outside) {
        return outside;
      }
    }
    return Double.NaN;
  }

  /** Wall of a pipe of this outside diameter and class of wall; NaN if the table has none. */
  static double wall(double outside, double wallClass) {
    for (int i = 0; i < OUTSIDE.length; i++) {
      if (WALL_CLASS[i] == wallClass && Math.abs(outside - OUTSIDE[i]) <= TRUE_SLACK * outside) {
        return WALL[i];
      }
    }
    return Double.NaN;
  }

  /** The thinnest wall that the table has for this outside diameter; NaN if it has none. */
  static double thinnest(double outside) {
    return ofOutside(THINNEST, outside);
  }

  /** The thickest wall that the table has for this outside diameter; NaN if it has none. */
  static double thickest(double outside) {
    return ofOutside(THICKEST, outside);
  }

  private static double ofOutside(double[] column, double outside) {
    for (int i = 0; i < OUTSIDE.length; i++) {
      if (Math.abs(outside - OUTSIDE[i]) <= TRUE_SLACK * outside) {
        return column[i];
      }
    }
    return Double.NaN;
  }

  /** Wall of a pipe of this inside diameter and class of wall; NaN if the table has none. */
  static double wallOfInside(double inside, double wallClass) {
    for (int i = 0; i < OUTSIDE.length; i++) {
      double of = OUTSIDE[i] - 2 * WALL[i];
      if (WALL_CLASS[i] == wallClass && Math.abs(inside - of) <= NOMINAL_SLACK / 2 * of) {
        return WALL[i];
      }
    }
    return Double.NaN;
  }
}
