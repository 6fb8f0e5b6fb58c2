package org.wellcurb.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published conversion of the check values, by the tolerance and the source of its row. */
class PublishedUnitsTest {
  private static final Map<String, Unit> UNITS =
      Map.ofEntries(
          Map.entry("UK_gal", Units.IMPERIAL_GALLON),
          Map.entry("US_gal", Units.US_GALLON),
          Map.entry("L", Units.LITRE),
          Map.entry("m3", Units.CUBIC_METRE),
          Map.entry("ft3", Units.CUBIC_FOOT),
          Map.entry("hp", Units.HORSEPOWER),
          Map.entry("W", Units.WATT),
          Map.entry("psi", Units.PSI_UNIT),
          Map.entry("kPa", Units.KILOPASCAL),
          Map.entry("ft_H2O", Units.FOOT_OF_WATER),
          Map.entry("US_gal/min", Units.GPM),
          Map.entry("L/min", Units.LITRE_PER_MINUTE),
          Map.entry("in", Units.INCH),
          Map.entry("mm", Units.MILLIMETRE));

  /** A standard atmosphere in Pa, by definition; not a unit that forms use. */
  private static final double ATMOSPHERE = 101_325;

  static List<CSVRecord> rows() throws IOException {
    try (InputStream in =
        PublishedUnitsTest.class.getResourceAsStream("/published/check-values.csv")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      try (CSVParser parser = CSVParser.parse(text, format)) {
        return parser.stream().filter(r -> r.get("quantity").equals("unit_conversion")).toList();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void convertsAsPublished(CSVRecord row) throws IOException {
    JsonNode inputs = new ObjectMapper().readTree(row.get("inputs"));
    double value = inputs.get("value").doubleValue();
    String from = inputs.get("from").asText();
    double si = from.equals("atm") ? value * ATMOSPHERE : unit(from).toSi(value);
    double actual = unit(inputs.get("to").asText()).fromSi(si);
    double expected = Double.parseDouble(row.get("expected"));
    String[] tolerance = row.get("tolerance").split(":");
    double slack = Double.parseDouble(tolerance[1]);
    assertEquals(
        expected,
        actual,
        tolerance[0].equals("rel") ? slack * expected : slack,
        row.get("id") + " " + row.get("source_title"));
  }

  private static Unit unit(String name) {
    return Objects.requireNonNull(UNITS.get(name), name);
  }

  @Test
  void thereAreSuchRows() throws IOException {
    assertEquals(17, rows().size());
  }

  /**
   * NEC Chapter 9 Table 8 (rows CV-118 to CV-120), solid copper: resistance per length is inverse
   * to the area, so the ratios of the areas follow, within the three digits printed.
   */
  @ParameterizedTest
  @MethodSource("resistances")
  void areasOfWireFollowThePublishedResistances(double[] pair) {
    double ratio = WireGauge.squareMillimetres(pair[2]) / WireGauge.squareMillimetres(pair[0]);
    assertEquals(pair[1] / pair[3], ratio, 0.005 * ratio);
  }

  static List<double[]> resistances() {
    return List.of(
        new double[] {14, 3.07, 10, 1.21},
        new double[] {14, 3.07, 8, 0.764},
        new double[] {10, 1.21, 8, 0.764});
  }

  /**
   * Areas in mm2 as handbooks print them (ASTM B258, from memory), and the definition: 4/0 is 0.46
   * in across, 36 is 0.005 in.
   */
  @Test
  void areasOfWireFollowTheDefinition() {
    assertEquals(Math.PI / 4 * 11.684 * 11.684, WireGauge.squareMillimetres(-3), 1e-9);
    assertEquals(Math.PI / 4 * 0.127 * 0.127, WireGauge.squareMillimetres(36), 1e-12);
    assertEquals(5.261, WireGauge.squareMillimetres(10), 0.0005);
    assertEquals(3.309, WireGauge.squareMillimetres(12), 0.0005);
    assertEquals(53.49, WireGauge.squareMillimetres(0), 0.02);
    for (int gauge = -3; gauge <= 40; gauge++) {
      assertEquals(gauge, WireGauge.number(WireGauge.squareMillimetres(gauge)), 1e-9);
    }
  }
}
