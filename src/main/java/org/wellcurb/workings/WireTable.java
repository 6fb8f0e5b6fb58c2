package org.wellcurb.workings;

import java.util.List;
import org.apache.commons.csv.CSVRecord;

/**
 * Resistance of wire by gauge, from {@code wire-resistance.csv}, where each row has its source.
 * Between gauges, as for sizes in mm2, it goes by the logarithm, for the area does too.
 */
final class WireTable {
  private static final double[] GAUGE;
  private static final double[] COPPER;
  private static final double[] ALUMINIUM;

  static {
    List<CSVRecord> rows = PublishedTable.rows("wire-resistance.csv");
    int n = rows.size();
    GAUGE = new double[n];
    COPPER = new double[n];
    ALUMINIUM = new double[n];
    for (int i = 0; i < n; i++) {
      GAUGE[i] = PublishedTable.number(rows.get(i), "awg");
      COPPER[i] = logOfOhmsPerMetre(rows.get(i).get("copper_stranded"));
      ALUMINIUM[i] = logOfOhmsPerMetre(rows.get(i).get("aluminium"));
    }
  }

  private WireTable() {}

  private static double logOfOhmsPerMetre(String ohmsPerThousandFeet) {
    return ohmsPerThousandFeet.isEmpty()
        ? Double.NaN
        : Math.log(Double.parseDouble(ohmsPerThousandFeet) / 304.8);
  }

  /** Stranded copper (ohm/m); NaN outside the table. */
  static double copper(double gauge) {
    return at(COPPER, gauge);
  }

  static double aluminium(double gauge) {
    return at(ALUMINIUM, gauge);
  }

  private static double at(double[] logs, double gauge) {
    for (int i = 0; i < GAUGE.length; i++) {
      if (gauge == GAUGE[i]) {
        return Math.exp(logs[i]);
      }
      if (i > 0 && gauge > GAUGE[i - 1] && gauge < GAUGE[i]) {
        double share = (gauge - GAUGE[i - 1]) / (GAUGE[i] - GAUGE[i - 1]);
        return Math.exp(logs[i - 1] + share * (logs[i] - logs[i - 1]));
      }
    }
    return Double.NaN;
  }
}
