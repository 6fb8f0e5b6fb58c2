package org.wellcurb.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainNumberTest {
  private final PlainNumber number = new PlainNumber();

  /** A million numbers: of the shapes that forms have, and of any shape, long ones too. */
  @Test
  void agreesWithTheLibraryBitForBit() {
    long seed = 811;
    Random random = new Random(seed);
    for (int i = 0; i < 1_000_000; i++) {
      String text = number(random);
      byte[] bytes = ("[" + text + "]").getBytes(StandardCharsets.US_ASCII);
      String context = "seed " + seed + ", " + text;
      assertTrue(number.read(bytes, 1, bytes.length - 1), context);
      long expected = Double.doubleToRawLongBits(Double.parseDouble(text));
      assertEquals(expected, Double.doubleToRawLongBits(number.value()), context);
      assertTrue(number.read(text, 0, text.length()), context);
      assertEquals(expected, Double.doubleToRawLongBits(number.value()), context);
      int point = text.indexOf('.');
      assertEquals(point < 0 ? 0 : text.length() - point - 1, number.places(), context);
    }
  }

  private static String number(Random random) {
    String sign = random.nextInt(5) == 0 ? "-" : "";
    return switch (random.nextInt(5)) {
      case 0 -> sign + random.nextInt(1000);
      case 1 -> sign + random.nextInt(100_000) / 100.0;
      case 2 ->
          sign + digits(random, 1 + random.nextInt(12)) + "." + digits(random, random.nextInt(8));
      case 3 -> sign + "." + digits(random, 1 + random.nextInt(30));
      default ->
          sign
              + new BigDecimal(random.nextDouble() * Math.pow(10, random.nextInt(40) - 20))
                  .toPlainString();
    };
  }

  private static String digits(Random random, int count) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < count; i++) {
      out.append((char) ('0' + random.nextInt(10)));
    }
    return out.toString();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-",
        ".",
        "-.",
        "+1",
        "1e5",
        "1,000",
        "1.2.3",
        "1 ",
        " 1",
        "--1",
        "NaN",
        "0x1",
        "1f",
        "1d",
        "Infinity",
        "1_0",
        "\u0661"
      })
  void leavesOtherShapesAlone(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    assertFalse(number.read(bytes, 0, bytes.length), text);
    assertFalse(number.read(text, 0, text.length()), text);
  }

  @Test
  void refusesWhatIsNotFinite() {
    String text = "1" + "0".repeat(400);
    assertFalse(number.read(text, 0, text.length()));
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    assertFalse(number.read(bytes, 0, bytes.length));
  }
}
