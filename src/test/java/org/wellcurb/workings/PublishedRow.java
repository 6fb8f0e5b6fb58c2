package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** A row of the published check values, each of which names its own source. */
record PublishedRow(
    String id,
    String quantity,
    JsonNode inputs,
    String expected,
    String unit,
    String tolerance,
    String source) {

  static List<PublishedRow> all() {
    try (InputStream in = PublishedRow.class.getResourceAsStream("/published/check-values.csv")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      ObjectMapper json = new ObjectMapper();
      CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
      try (CSVParser parser = CSVParser.parse(text, format)) {
        return parser.stream()
            .map(
                row -> {
                  try {
                    return new PublishedRow(
                        row.get("id"),
                        quantity(row.get("quantity"), json.readTree(row.get("inputs"))),
                        json.readTree(row.get("inputs")),
                        row.get("expected"),
                        row.get("unit"),
                        row.get("tolerance"),
                        row.get("source_title"));
                  } catch (IOException e) {
                    throw new IllegalStateException(row.get("id"), e);
                  }
                })
            .toList();
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Solid and stranded wire stand in one table; workings read the one only. */
  private static String quantity(String quantity, JsonNode inputs) {
    boolean isSolid = inputs.has("stranded") && !inputs.get("stranded").asBoolean();
    return isSolid ? quantity + "_solid" : quantity;
  }

  double in(String name) {
    JsonNode node = inputs.get(name);
    if (node == null || !node.isNumber()) {
      throw new AssertionError(id + " has no number " + name);
    }
    return node.doubleValue();
  }

  double in(String name, double otherwise) {
    return inputs.has(name) ? in(name) : otherwise;
  }

  String word(String name) {
    return Objects.requireNonNull(inputs.get(name), id + " " + name).asText();
  }

  /** Compares with the row's own tolerance; {@code exact} and 0 allow only for binary rounding. */
  void check(double actual) {
    double wanted = Double.parseDouble(expected);
    double slack = 1e-9 * Math.abs(wanted);
    if (tolerance.startsWith("abs:")) {
      slack += Double.parseDouble(tolerance.substring(4));
    } else if (tolerance.startsWith("rel:")) {
      slack += Double.parseDouble(tolerance.substring(4)) * Math.abs(wanted);
    }
    assertEquals(wanted, actual, slack, () -> id + " " + quantity + " " + inputs + ": " + source);
  }

  /** The row, allowed no more than half of its last digit. */
  PublishedRow asPrinted() {
    if (!expected.matches("-?\\d+(\\.\\d+)?")) {
      return this;
    }
    int decimals = expected.indexOf('.') < 0 ? 0 : expected.length() - expected.indexOf('.') - 1;
    double half = 0.5 * Math.pow(10, -decimals);
    return new PublishedRow(id, quantity, inputs, expected, unit, "abs:" + half, source);
  }

  @Override
  public String toString() {
    return id + " " + quantity;
  }
}
