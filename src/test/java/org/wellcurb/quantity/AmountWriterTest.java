package org.wellcurb.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountWriterTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "212.00000000000003, 212",
    "64.6176, 64.6176",
    "0.1524, 0.1524",
    "1234567, 1234570",
    "1e15, 1000000000000000",
    "1.23456789e-7, 0.000000123457",
    "-2.5, -2.5",
    "0.30000000000000004, 0.3",
    "999999.5, 1000000",
    "100, 100",
    "4.9E-324, "
  })
  void printsTheShortestDigitsThatKeepSix(double value, String expected) {
    if (expected != null) {
      assertEquals(expected, AmountWriter.digits(value));
    }
    String printed = AmountWriter.digits(value);
    assertEquals(value, Double.parseDouble(printed), Math.abs(value) * 5.1e-6);
    assertFalse(printed.contains("E"), printed);
  }

  @Test
  void refusesWhatIsNoNumber() {
    assertThrows(IllegalArgumentException.class, () -> AmountWriter.digits(Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> AmountWriter.digits(Double.POSITIVE_INFINITY));
  }

  @Test
  void printsIntervals() {
    double ft = 0.3048;
    assertEquals("212 ft", AmountWriter.interval(212 * ft, 212 * ft, Units.FOOT));
    assertEquals("10 to 15 ft", AmountWriter.interval(10 * ft, 15 * ft, Units.FOOT));
    assertEquals(">=100 ft", AmountWriter.interval(100 * ft, Double.POSITIVE_INFINITY, Units.FOOT));
    assertEquals(
        "<=-2.5 ft", AmountWriter.interval(Double.NEGATIVE_INFINITY, -2.5 * ft, Units.FOOT));
    assertEquals("", AmountWriter.interval(Interval.ALL, Units.FOOT));
    assertEquals("4/0 AWG", AmountWriter.amount(-3, Units.AWG));
    assertEquals("1/0 AWG", AmountWriter.amount(0, Units.AWG));
    assertEquals("12 AWG", AmountWriter.amount(12, Units.AWG));
    assertEquals("12", AmountWriter.amount(12, Units.ONE));
    assertEquals("4 to 6 mm2", AmountWriter.interval(wire(6), wire(4), Units.SQUARE_MILLIMETRE));
    assertEquals("2,5", AmountWriter.digitsWithComma(2.5));
  }

  private static double wire(double squareMillimetres) {
    return WireGauge.number(squareMillimetres);
  }

  /** Points, ranges and bounds of every unit, printed and read again. */
  @Test
  void everyUnitReadsBackWhatIsPrinted() {
    long seed = 4_715;
    Random random = new Random(seed);
    for (Unit unit : Units.all()) {
      if (unit.equals(Units.PERCENT)) {
        continue;
      }
      Expected expected = Expected.of(unit.dimension(), true);
      for (int i = 0; i < 500; i++) {
        double a = value(unit, random);
        double b = value(unit, random);
        String context = "seed " + seed + ", " + unit.symbol() + " " + a + " " + b;
        back(unit, expected, unit.toSi(a), unit.toSi(a), context);
        back(
            unit,
            expected,
            Math.min(unit.toSi(a), unit.toSi(b)),
            Math.max(unit.toSi(a), unit.toSi(b)),
            context);
        back(unit, expected, unit.toSi(a), Double.POSITIVE_INFINITY, context);
        back(unit, expected, Double.NEGATIVE_INFINITY, unit.toSi(a), context);
      }
    }
  }

  private static double value(Unit unit, Random random) {
    if (unit.equals(Units.AWG)) {
      return random.nextInt(44) - 3;
    }
    double magnitude = Math.pow(10, random.nextInt(9) - 3);
    double value = Math.round(random.nextDouble() * 1e6) / 1e6 * magnitude + 1e-3 * magnitude;
    boolean negative = random.nextInt(4) == 0;
    return negative && unit.dimension().equals(Dimension.LENGTH) ? -value : value;
  }

  private static void back(Unit unit, Expected expected, double lo, double hi, String context) {
    String printed = AmountWriter.interval(lo, hi, unit);
    Reading reading = AmountReader.read(printed, expected, unit, Comma.THOUSANDS);
    if (!(reading instanceof Reading.Amount a)) {
      fail(context + ": '" + printed + "' gave " + reading);
      return;
    }
    assertTrue(near(lo, a.lo(), unit), context + ": " + printed + " gave " + a);
    assertTrue(near(hi, a.hi(), unit), context + ": " + printed + " gave " + a);
    assertEquals(unit, a.unit(), context);
    assertEquals(printed, AmountWriter.interval(a.lo(), a.hi(), unit), context);
  }

  /** Alike to six significant digits in the unit. */
  private static boolean near(double x, double y, Unit unit) {
    if (Double.isInfinite(x) || Double.isInfinite(y)) {
      return x == y;
    }
    double a = unit.fromSi(x);
    double b = unit.fromSi(y);
    return Math.abs(a - b) <= 5.1e-6 * Math.max(Math.abs(a), 1e-300);
  }
}
