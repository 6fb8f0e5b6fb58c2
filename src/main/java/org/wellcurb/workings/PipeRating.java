package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.wellcurb.quantity.Units;

/** Pressure that pipe is made for, cold and warm. Pa, kelvin. */
public final class PipeRating {
  private static final String TEMPERATURE = "usual_water_temperature";
  private static final String PVC_JOINT = "pvc_drop_pipe_joint";

  private static final double PE = Choices.place("drop_pipe.material", "pe");
  private static final double PVC = Choices.place("drop_pipe.material", "pvc");
  private static final double OTHER = Choices.place("drop_pipe.material", "other");
  private static final double LINE_PE = Choices.place("service_line.material", "pe");
  private static final double LINE_PVC = Choices.place("service_line.material", "pvc");
  private static final double LINE_OTHER = Choices.place("service_line.material", "other");

  private static final double[][] PVC_FACTORS = factors("pvc");
  private static final double[][] PE_FACTORS = factors("pe");

  private static final String SOURCE =
      "temperature-factors.csv: Plastic Pipe and Fittings Association User Bulletin 3-96 for PVC,"
          + " Plastics Pipe Institute for PE (both in part from memory)";

  private PipeRating() {}

  private static double[][] factors(String material) {
    List<CSVRecord> rows = new ArrayList<>();
    for (CSVRecord row : PublishedTable.rows("temperature-factors.csv")) {
      if (row.get("material").equals(material)) {
        rows.add(row);
      }
    }
    double[][] table = new double[2][rows.size()];
    for (int i = 0; i < rows.size(); i++) {
      table[0][i] = Units.FAHRENHEIT.toSi(PublishedTable.number(rows.get(i), "degF"));
      table[1][i] = PublishedTable.number(rows.get(i), "factor");
    }
    return table;
  }

  /**
   * Share of its rating that PVC keeps at a temperature (K), never above 1; none above 140 degF.
   */
  public static double pvcFactor(double temperature) {
    return factor(PVC_FACTORS, temperature);
  }

  /** Share of its rating that PE keeps at a temperature (K), never above 1; none above 140 degF. */
  public static double peFactor(double temperature) {
    return factor(PE_FACTORS, temperature);
  }

  /**
   * By straight lines between the rows; 1 below the first. Beyond the last the pipe is not rated
   * for any pressure: 0.
   */
  private static double factor(double[][] table, double temperature) {
    double[] at = table[0];
    double[] factor = table[1];
    if (temperature <= at[0]) {
      return factor[0];
    }
    for (int i = 1; i < at.length; i++) {
      if (temperature <= at[i]) {
        double share = (temperature - at[i - 1]) / (at[i] - at[i - 1]);
        return factor[i - 1] + share * (factor[i] - factor[i - 1]);
      }
    }
    return Double.isNaN(temperature) ? Double.NaN : 0;
  }

  private static double temperature(double given, double usual) {
    return Double.isNaN(given) ? usual : given;
  }

  private static double dropFactor(double material, double temperature, double pvcJoint) {
    if (material == PVC) {
      return pvcFactor(temperature) * pvcJoint;
    }
    return material == PE ? peFactor(temperature) : material == OTHER ? Double.NaN : 1;
  }

  private static double lineFactor(double material, double temperature) {
    if (material == LINE_PVC) {
      return pvcFactor(temperature);
    }
    return material == LINE_PE ? peFactor(temperature) : material == LINE_OTHER ? Double.NaN : 1;
  }

  static List<Figure> figures() {
    return List.of(
        new Figure(
            TEMPERATURE,
            Units.FAHRENHEIT.toSi(55),
            Units.FAHRENHEIT,
            "temperature of the water where the record gives none; pipe is rated for 73 degF",
            "common practice"),
        new Figure(
            PVC_JOINT,
            1,
            Units.ONE,
            "share of its rating that PVC drop pipe keeps at its joints: 0.5 where it is threaded,"
                + " which no form tells",
            "common practice"));
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "pipe_rating_at_temperature",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                "rating of the drop pipe at the temperature of the water, never above the rating"
                    + " stated; metal and hose keep theirs; plastic has none above 140 degF")
            .formula("{drop_pipe.pressure_rating} x {factor}; {drop_pipe.material}")
            .source(SOURCE)
            .reads(
                required("drop_pipe.pressure_rating"),
                required("drop_pipe.material"),
                optional("water.temperature"))
            .figures(TEMPERATURE, PVC_JOINT)
            .step(
                "factor",
                Units.ONE,
                Units.ONE,
                x -> dropFactor(x[1], temperature(x[2], x[3]), x[4]))
            .by(x -> x[0] * dropFactor(x[1], temperature(x[2], x[3]), x[4])),
        Draft.of(
                "service_line_rating_at_temperature",
                Units.PSI_UNIT,
                Units.KILOPASCAL,
                "rating of the buried line at the temperature of the water, never above the rating"
                    + " stated; plastic has none above 140 degF")
            .formula("{service_line.pressure_rating} x {factor}; {service_line.material}")
            .source(SOURCE)
            .reads(
                required("service_line.pressure_rating"),
                required("service_line.material"),
                optional("water.temperature"))
            .figures(TEMPERATURE)
            .step("factor", Units.ONE, Units.ONE, x -> lineFactor(x[1], temperature(x[2], x[3])))
            .by(x -> x[0] * lineFactor(x[1], temperature(x[2], x[3]))));
  }
}
