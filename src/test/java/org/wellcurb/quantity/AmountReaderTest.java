package org.wellcurb.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each spelling, with the value in the unit that was taken, half its last place, and the note. */
class AmountReaderTest {
  private static final Map<String, Expected> KINDS =
      Map.ofEntries(
          Map.entry("depth", Expected.of(Dimension.LENGTH, false)),
          Map.entry("height", Expected.of(Dimension.LENGTH, true)),
          Map.entry("level", Expected.of(Dimension.LENGTH, true).plusIsUnclear()),
          Map.entry("flow", Expected.of(Dimension.FLOW, false)),
          Map.entry("pressure", Expected.of(Dimension.PRESSURE, false)),
          Map.entry("boost", Expected.of(Dimension.PRESSURE, false).orHead()),
          Map.entry("power", Expected.of(Dimension.POWER, false)),
          Map.entry("voltage", Expected.of(Dimension.VOLTAGE, false)),
          Map.entry("current", Expected.of(Dimension.CURRENT, false)),
          Map.entry("resistance", Expected.of(Dimension.RESISTANCE, false)),
          Map.entry("volume", Expected.of(Dimension.VOLUME, false)),
          Map.entry("mass", Expected.of(Dimension.MASS, false)),
          Map.entry("time", Expected.of(Dimension.TIME, false)),
          Map.entry("temperature", Expected.of(Dimension.TEMPERATURE, true)),
          Map.entry("concentration", Expected.of(Dimension.CONCENTRATION, false)),
          Map.entry("gauge", Expected.of(Dimension.WIRE_GAUGE, true)),
          Map.entry(
              "count",
              Expected.of(Dimension.NUMBER, false).counting(java.util.List.of("bags", "bag"))),
          Map.entry("number", Expected.of(Dimension.NUMBER, false)),
          Map.entry("latitude", Expected.of(Dimension.ANGLE, true).within(90)),
          Map.entry("longitude", Expected.of(Dimension.ANGLE, true).within(180)));

  private static final Map<String, Unit> BARE =
      Map.ofEntries(
          Map.entry("depth", Units.FOOT),
          Map.entry("height", Units.FOOT),
          Map.entry("level", Units.FOOT),
          Map.entry("flow", Units.GPM),
          Map.entry("pressure", Units.PSI_UNIT),
          Map.entry("boost", Units.PSI_UNIT),
          Map.entry("power", Units.HORSEPOWER),
          Map.entry("voltage", Units.VOLT),
          Map.entry("current", Units.AMPERE),
          Map.entry("resistance", Units.MEGOHM),
          Map.entry("volume", Units.US_GALLON),
          Map.entry("mass", Units.POUND),
          Map.entry("time", Units.HOUR),
          Map.entry("temperature", Units.FAHRENHEIT),
          Map.entry("concentration", Units.MILLIGRAM_PER_LITRE),
          Map.entry("gauge", Units.AWG),
          Map.entry("count", Units.ONE),
          Map.entry("number", Units.ONE),
          Map.entry("latitude", Units.DEGREE),
          Map.entry("longitude", Units.DEGREE));

  private static String read(String kind, String text, Comma comma) {
    Reading reading = AmountReader.read(text, KINDS.get(kind), BARE.get(kind), comma);
    String note = reading.note() == Note.NONE ? "" : " " + reading.note();
    if (!(reading instanceof Reading.Amount a)) {
      return (reading instanceof Reading.Unsure ? "unsure" : "unreadable") + note;
    }
    double x = a.unit().fromSi(a.unit().isReversed() ? a.hi() : a.lo());
    double y = a.unit().fromSi(a.unit().isReversed() ? a.lo() : a.hi());
    String unit = a.unit().symbol().isEmpty() ? "" : " " + a.unit().symbol();
    String value = x == y ? digits(x) : digits(x) + ".." + digits(y);
    String half = a.halfPlace() == 0 ? "" : " half " + digits(a.halfPlace() / a.unit().factor());
    return value + unit + half + note;
  }

  private static String digits(double x) {
    return Double.isInfinite(x) ? (x > 0 ? "inf" : "-inf") : AmountWriter.digits(x);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "depth | 212 ft | 212 ft half 0.5",
        "depth | 212 | 212 ft half 0.5",
        "depth | 212.50 ft | 212.5 ft half 0.005",
        "depth | 212ft | 212 ft half 0.5",
        "depth | 12 ft. | 12 ft half 0.5",
        "depth | 12' | 12 ft half 0.5",
        "depth | 12\u2019 | 12 ft half 0.5",
        "depth | 12\u2032 | 12 ft half 0.5",
        "depth | 12 feet | 12 ft half 0.5",
        "depth | 12 FT | 12 ft half 0.5",
        "depth | 12 m | 12 m half 0.5",
        "depth | 12 M | unreadable UNKNOWN_UNIT",
        "depth | 12 MM | 12 mm half 0.5",
        "depth | 64.6 m | 64.6 m half 0.05",
        "depth | 20 m | 20 m half 0.5",
        "depth | 1,250 | 1250 ft half 0.5",
        "depth | 1,250.5 ft | 1250.5 ft half 0.05",
        "depth | 1,250,000 | 1250000 ft half 0.5",
        "depth | 1\u00A0250 ft | 1250 ft half 0.5",
        "depth | 1\u202F250 ft | 1250 ft half 0.5",
        "depth | 1 250 ft | unsure AMBIGUOUS_BLANK",
        "depth | 12,50 | unsure AMBIGUOUS_COMMA",
        "depth | 1,25,000 | unreadable NOT_A_NUMBER",
        "depth | 4E+05 | 400000 ft half 50000",
        "depth | 1.5e2 ft | 150 ft half 5",
        "depth | 1e999 | unreadable NOT_A_NUMBER",
        "depth | .5 ft | 0.5 ft half 0.05",
        "depth | 12. | 12 ft half 0.5",
        "depth | '212 | 212 ft half 0.5",
        "depth | \u00A0212\u00A0ft\u00A0 | 212 ft half 0.5",
        "depth | \uFEFF212 | 212 ft half 0.5",
        "depth | \uFF12\uFF11\uFF12 ft | 212 ft half 0.5",
        "depth | 212 (ft) | 212 ft half 0.5",
        "depth | 64.6 [m] | 64.6 m half 0.05",
        "depth | 212 (gal) | unreadable WRONG_DIMENSION",
      })
  void readsPlainNumbersAndUnits(String kind, String text, String expected) {
    assertEquals(expected, read(kind, text, Comma.THOUSANDS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "depth | 5 ft 6 in | 5.5 ft half 0.0416667",
        "depth | 5' 6\" | 5.5 ft half 0.0416667",
        "depth | 5'-6\" | 5.5 ft half 0.0416667",
        "depth | 5'6 | 5.5 ft half 0.0416667",
        "depth | 5'-6 1/2\" | 5.54167 ft",
        "depth | 5' 6\u00BD\u2033 | 5.54167 ft",
        "depth | 5 ft, 6 in | 5.5 ft half 0.0416667",
        "depth | 5 ft and 6 in | 5.5 ft half 0.0416667",
        "depth | 5ft6in | 5.5 ft half 0.0416667",
        "depth | 5' 6'' | 5.5 ft half 0.0416667",
        "depth | 5' 12\" | unreadable PART_TOO_LARGE",
        "depth | 10'-6 | 10.5 ft half 0.0416667",
        "depth | 5'-6 | 5.5 ft half 0.0416667",
        "depth | 5'-11 | 5.91667 ft half 0.0416667",
        "depth | 5 ft-6 | 5.5 ft half 0.0416667",
        "depth | 5 ft - 11 | unreadable NOT_A_NUMBER",
        "depth | 10'-15 | 10..15 ft",
        "depth | 100 ft 13 in | unreadable PART_TOO_LARGE",
        "depth | 2 m 30 cm | 2.3 m half 0.005",
        "depth | 2 m 10 in | unreadable NOT_A_NUMBER",
        "height | -5 ft 6 in | -5.5 ft half 0.0416667",
        "time | 1 h 30 min | 1.5 h half 0.00833333",
        "time | 2 days 6 hours | 2.25 day half 0.0208333",
        "depth | 6 1/4 in | 6.25 in",
        "depth | 6-1/4\" | 6.25 in",
        "depth | 1-1/4 | 1.25 ft",
        "depth | 1 - 1/4 in | 1.25 in",
        "depth | 3/4\" | 0.75 in",
        "depth | 3 / 4 in | 0.75 in",
        "depth | \u00BD in | 0.5 in",
        "depth | 6\u00BC in | 6.25 in",
        "depth | 6 \u00BC in | 6.25 in",
        "depth | 1\u20441 | unreadable NOT_A_NUMBER",
        "depth | 3\u20444 in | 0.75 in",
        "depth | 1/2-3/4 in | 0.5..0.75 in",
        "depth | 1-1/4 to 1-1/2 in | 1.25..1.5 in",
        "depth | 12/2 | unreadable NOT_A_NUMBER",
        "depth | 4/8 | unreadable NOT_A_NUMBER",
        "depth | 1/7 | unreadable NOT_A_NUMBER",
        "depth | 10/12 | unreadable NOT_A_NUMBER",
        "depth | 3/4/5 | unreadable NOT_A_NUMBER",
        "power | 1/2 hp | 0.5 hp",
        "power | 1 1/2 HP | 1.5 hp",
        "power | 3/4 | 0.75 hp",
        "voltage | 115/230 | unreadable NOT_A_NUMBER",
        "voltage | 1/2 | unreadable NOT_A_NUMBER",
      })
  void readsFeetAndInchesAndFractions(String kind, String text, String expected) {
    assertEquals(expected, read(kind, text, Comma.THOUSANDS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "flow | 10-15 gpm | 10..15 gpm",
        "flow | 10 - 15 | 10..15 gpm",
        "flow | 10\u201315 gpm | 10..15 gpm",
        "flow | 10 to 15 | 10..15 gpm",
        "flow | 10 gpm to 15 gpm | 10..15 gpm",
        "flow | 10 gpm to 15 | 10..15 gpm",
        "flow | between 10 and 15 gpm | 10..15 gpm",
        "flow | between 10-15 | 10..15 gpm",
        "flow | 15-10 | unreadable REVERSED",
        "flow | 15 & 10 gpm | 10..15 gpm SEVERAL",
        "flow | 10; 15 | 10..15 gpm SEVERAL",
        "flow | 10, 15 | 10..15 gpm SEVERAL",
        "flow | 10 or 15 gpm | 10..15 gpm SEVERAL",
        "flow | 10,15 | unsure AMBIGUOUS_COMMA",
        "flow | 10; 15; 12 | 10..15 gpm SEVERAL",
        "flow | 10, 12 and 15 L/min | 10..15 L/min SEVERAL",
        "flow | 10; 12 L/min; 15 gpm | unreadable UNITS_DISAGREE",
        "flow | 10; 12; ? | unreadable NOT_A_NUMBER",
        "flow | 10; 12; 12-15 | unreadable NOT_A_NUMBER",
        "flow | 5 gpm to 40 L/min | unreadable UNITS_DISAGREE",
        "depth | 6 in to 1 ft | 6..12 in",
        "height | -5 to -3 ft | -5..-3 ft",
        "height | \u22125-10 | -5..10 ft",
        "height | -3 to -5 | unreadable REVERSED",
        "height | 5--3 | unreadable REVERSED",
        "flow | >100 gpm | 100..inf gpm",
        "flow | > 100 | 100..inf gpm",
        "flow | >=100 | 100..inf gpm",
        "flow | \u2265 100 | 100..inf gpm",
        "flow | over 100 gpm | 100..inf gpm",
        "flow | at least 100 | 100..inf gpm",
        "flow | 100+ | 100..inf gpm",
        "flow | 100 gpm + | 100..inf gpm",
        "flow | 100 or more | 100..inf gpm",
        "depth | 120'+ | 120..inf ft",
        "depth | >14 | 14..inf ft",
        "concentration | <0.005 mg/L | 0..0.005 mg/L",
        "concentration | < 0.005 | 0..0.005 mg/L",
        "concentration | less than 5 ug/L | 0..5 ug/L",
        "height | <5 ft | -inf..5 ft",
        "temperature | <50 F | -inf..50 degF",
        "flow | 5 or less | 0..5 gpm",
        "flow | < | unreadable NOT_A_NUMBER",
        "flow | >-5 | unreadable IMPOSSIBLE",
        "depth | 40 +/- 2 ft | 38..42 ft",
        "depth | 40\u00B12 | 38..42 ft",
        "gauge | <10 mm2 | 0..10 mm2",
        "gauge | >10 mm2 | 10..inf mm2",
        "gauge | 4-6 mm2 | 4..6 mm2",
        "gauge | 14-10 | 10..14 AWG",
      })
  void readsRangesAndBounds(String kind, String text, String expected) {
    assertEquals(expected, read(kind, text, Comma.THOUSANDS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "depth | ~40 | 40 ft half 0.5 APPROXIMATE",
        "depth | ~ 40 ft | 40 ft half 0.5 APPROXIMATE",
        "depth | est. 40 | 40 ft half 0.5 APPROXIMATE",
        "depth | est 40 | 40 ft half 0.5 APPROXIMATE",
        "depth | Est.40 | 40 ft half 0.5 APPROXIMATE",
        "depth | ca 40 | 40 ft half 0.5 APPROXIMATE",
        "depth | ca. 40 | 40 ft half 0.5 APPROXIMATE",
        "depth | circa 40 ft | 40 ft half 0.5 APPROXIMATE",
        "depth | approx. 40 | 40 ft half 0.5 APPROXIMATE",
        "depth | about 40 | 40 ft half 0.5 APPROXIMATE",
        "depth | 40 est. | 40 ft half 0.5 APPROXIMATE",
        "depth | 40 ft approx | 40 ft half 0.5 APPROXIMATE",
        "depth | 40 (est) | 40 ft half 0.5 APPROXIMATE",
        "depth | 40\u00B1 | 40 ft half 0.5 APPROXIMATE",
        "depth | +/- 40 | 40 ft half 0.5 APPROXIMATE",
        "depth | ~ 15 -20 | 15..20 ft APPROXIMATE",
        "depth | 52.0 (landowner) | 52 ft half 0.05 COMMENT",
        "depth | 37.30 m (pump) | 37.3 m half 0.005 COMMENT",
        "depth | 52 (2 tries) | 52 ft half 0.5 COMMENT",
        "depth | 9 m to 18 m (30 to 60 ft) | 9..18 m",
        "depth | 50 ft (15 m) | 50 ft half 0.5",
        "depth | 50 ft (20 m) | unreadable UNITS_DISAGREE",
        "depth | 9 m to 18 m (40 to 60 ft) | unreadable UNITS_DISAGREE",
        "depth | 100 (30.5 m) | 100 ft half 0.5",
        "depth | 100 ft (3 gpm) | 100 ft half 0.5 COMMENT",
        "depth | (120) | unreadable NOT_A_NUMBER",
        "depth | 120 () | 120 ft half 0.5 COMMENT",
      })
  void readsEstimatesAndBrackets(String kind, String text, String expected) {
    assertEquals(expected, read(kind, text, Comma.THOUSANDS));
  }

  /** Slips of the pen are quoted back, never mended. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "depth | j20 | unreadable NOT_A_NUMBER",
        "depth | 120? | unreadable NOT_A_NUMBER",
        "depth | 54.86-60-96 | unreadable NOT_A_NUMBER",
        "depth | 9'.5\" | unreadable NOT_A_NUMBER",
        "temperature | T0C | unreadable NOT_A_NUMBER",
        "depth | 1O0 | unreadable NOT_A_NUMBER",
        "depth | 12.3.4 | unreadable NOT_A_NUMBER",
        "depth | 12..5 | unreadable NOT_A_NUMBER",
        "depth | 120 ft below grade | unreadable UNKNOWN_UNIT",
        "depth | Top of Pit 9'2 from casing | unreadable NOT_A_NUMBER",
        "depth | 1\u00002 | unreadable NOT_A_NUMBER",
        "depth | 1\u200B2 | unreadable NOT_A_NUMBER",
        "depth | 10x12 | unreadable NOT_A_NUMBER",
        "depth | # | unreadable NOT_A_NUMBER",
        "depth | ft | unreadable NOT_A_NUMBER",
        "depth | -- | unreadable NOT_A_NUMBER",
        "depth | +-5 | 5 ft half 0.5 APPROXIMATE",
        "depth | - 5 | unreadable IMPOSSIBLE",
        "depth | 5- | unreadable NOT_A_NUMBER",
        "depth | 5 to | unreadable NOT_A_NUMBER",
        "level | +5 | unsure AMBIGUOUS_SIGN",
        "height | +5 | 5 ft half 0.5",
        "level | -5 | -5 ft half 0.5",
      })
  void doesNotMendSlips(String kind, String text, String expected) {
    assertEquals(expected, read(kind, text, Comma.THOUSANDS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "gauge | 12 | 12 AWG half 0.5",
        "gauge | 12 AWG | 12 AWG half 0.5",
        "gauge | #12 | 12 AWG half 0.5",
        "gauge | No. 12 | 12 AWG half 0.5",
        "gauge | AWG 12 | 12 AWG half 0.5",
        "gauge | #2/0 | -1 AWG half 0.5",
        "gauge | #12/2 | 12 AWG half 0.5 CABLE",
        "gauge | #12 to #10 | 10..12 AWG",
        "gauge | 2/0-4 | -1..4 AWG",
        "gauge | >=1/0 | 0..inf AWG",
        "gauge | -2/0 | unreadable NOT_A_NUMBER",
        "gauge | 12 ga. | 12 AWG half 0.5",
        "gauge | 1/0 | 0 AWG half 0.5",
        "gauge | 2/0 | -1 AWG half 0.5",
        "gauge | 3/0 AWG | -2 AWG half 0.5",
        "gauge | 4/0 | -3 AWG half 0.5",
        "gauge | 0 | 0 AWG half 0.5",
        "gauge | 00 | -1 AWG half 0.5",
        "gauge | 0000 | -3 AWG half 0.5",
        "gauge | 5/0 | unreadable NOT_A_NUMBER",
        "gauge | 12/2 | 12 AWG half 0.5 CABLE",
        "gauge | 10/3 w/ground | 10 AWG half 0.5 CABLE",
        "gauge | 12-2 | 12 AWG half 0.5 CABLE",
        "gauge | 10-3 w/g | 10 AWG half 0.5 CABLE",
        "gauge | 6-4 | 4..6 AWG",
        "gauge | 12.5 | unreadable NOT_WHOLE",
        "gauge | 2.5 mm2 | 2.5 mm2 half 0.0853979",
        "gauge | 4 mm\u00B2 | 4 mm2 half 0.507934",
        "gauge | 0 mm2 | unreadable IMPOSSIBLE",
        "gauge | -4 mm2 | unreadable NOT_A_NUMBER",
        "gauge | 4 ft | unreadable WRONG_DIMENSION",
        "resistance | OL | 2..inf Mohm OVER_RANGE",
        "resistance | O.L. | 2..inf Mohm OVER_RANGE",
        "resistance | OL Mohm | 2..inf Mohm OVER_RANGE",
        "resistance | inf | 2..inf Mohm OVER_RANGE",
        "resistance | \u221E | 2..inf Mohm OVER_RANGE",
        "resistance | >200 | 200..inf Mohm",
        "resistance | 500 Mohm | 500 Mohm half 0.5",
        "resistance | 500 MOHM | 500 Mohm half 0.5",
        "resistance | 500 mohm | unreadable UNKNOWN_UNIT",
        "resistance | 500 k\u03A9 | 500 kohm half 0.5",
        "resistance | 2 M\u2126 | 2 Mohm half 0.5",
        "resistance | 2 megohms | 2 Mohm half 0.5",
        "resistance | 1 Gohm | 1 Gohm half 0.5",
        "concentration | ND | unsure NOT_DETECTED",
        "concentration | 5 ppb | 5 ug/L half 0.5",
        "concentration | 5 \u00B5g/L | 5 ug/L half 0.5",
        "concentration | 10 MG/L | 10 mg/L half 0.5",
        "count | 12 | 12 half 0.5",
        "count | 12 bags | 12 half 0.5",
        "count | 12 BAG | 12 half 0.5",
        "count | 12.0 | 12 half 0.05",
        "count | 12.5 | unreadable NOT_WHOLE",
        "count | 10-12 | 10..12",
        "count | 12 tanks | unreadable UNKNOWN_UNIT",
        "count | -1 | unreadable IMPOSSIBLE",
        "count | 12 ft | unreadable WRONG_DIMENSION",
        "count | 50 % | unreadable WRONG_DIMENSION",
      })
  void readsWhatOneKindWritesInItsOwnWay(String kind, String text, String expected) {
    assertEquals(expected, read(kind, text, Comma.THOUSANDS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "pressure | 40 psi | 40 psi half 0.5",
        "pressure | 3.5 bar | 3.5 bar half 0.05",
        "pressure | 92.4 ft of water | 92.4 ft of water half 0.05",
        "pressure | 30 m of water | 30 m of water half 0.5",
        "pressure | 92.4 ft head | 92.4 ft of water half 0.05",
        "pressure | 92 ft | unreadable WRONG_DIMENSION",
        "boost | 92 ft | 92 ft of water half 0.5",
        "boost | 30 m | 30 m of water half 0.5",
        "boost | 100 psi | 100 psi half 0.5",
        "boost | 92 in | unreadable WRONG_DIMENSION",
        "flow | 8 US gal/min | 8 gpm half 0.5",
        "flow | 8 U.S. gal. per min. | 8 gpm half 0.5",
        "flow | 8 g.p.m. | 8 gpm half 0.5",
        "flow | 8 imp. gpm | 8 imp gpm half 0.5",
        "flow | 8 L/min | 8 L/min half 0.5",
        "flow | 8 l / s | 8 L/s half 0.5",
        "flow | 8 m\u00B3/h | 8 m3/h half 0.5",
        "flow | 8 litres per minute | 8 L/min half 0.5",
        "volume | 8 cu. ft. | 8 ft3 half 0.5",
        "volume | 8 m3 | 8 m3 half 0.5",
        "mass | 94 lbs | 94 lb half 0.5",
        "temperature | 55 F | 55 degF half 0.5",
        "temperature | 55\u00B0F | 55 degF half 0.5",
        "temperature | 13 deg C | 13 degC half 0.5",
        "temperature | 55 deg | 55 degF half 0.5",
        "temperature | 55\u00B0 | 55 degF half 0.5",
        "temperature | -5 C | -5 degC half 0.5",
        "temperature | -500 | unreadable IMPOSSIBLE",
        "voltage | 230 VAC | 230 V half 0.5",
        "current | 10.4 amps | 10.4 A half 0.05",
        "time | 24 hrs | 24 h half 0.5",
        "time | 90 min. | 90 min half 0.5",
        "time | 5 m | unreadable WRONG_DIMENSION",
        "number | 7.2 | 7.2 half 0.05",
        "number | -7.2 | unreadable IMPOSSIBLE",
      })
  void readsUnitsOfEveryKind(String kind, String text, String expected) {
    assertEquals(expected, read(kind, text, Comma.THOUSANDS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "latitude | 45.1234 | 45.1234 deg half 0.00005",
        "latitude | 45.1234 N | 45.1234 deg half 0.00005",
        "latitude | N 45.1234 | 45.1234 deg half 0.00005",
        "latitude | 45.1234\u00B0 S | -45.1234 deg half 0.00005",
        "latitude | -45.1234 | -45.1234 deg half 0.00005",
        "latitude | 45\u00B0 12' 30\" N | 45.2083 deg half 0.000138889",
        "latitude | 45\u00B012\u203230.5\u2033N | 45.2085 deg half 0.0000138889",
        "latitude | 45 12 30 | 45.2083 deg half 0.000138889",
        "latitude | 45-12-30 | 45.2083 deg half 0.000138889",
        "latitude | 45 12.5 N | 45.2083 deg half 0.000833333",
        "latitude | 45\u00B012' | 45.2 deg half 0.00833333",
        "latitude | 12' | unreadable WRONG_DIMENSION",
        "latitude | 12\u2032 6\u2033 | unreadable WRONG_DIMENSION",
        "longitude | 1223 | unreadable IMPOSSIBLE",
        "longitude | 122 30 W | -122.5 deg half 0.00833333",
        "longitude | W 122.5 | -122.5 deg half 0.05",
        "longitude | -122.5 W | unreadable NOT_A_NUMBER",
        "longitude | 122.5 N | unreadable NOT_A_NUMBER",
        "latitude | 45.5 W | unreadable NOT_A_NUMBER",
        "latitude | 45 60 00 | unreadable PART_TOO_LARGE",
        "latitude | 45.5 30 | unreadable NOT_A_NUMBER",
        "latitude | 95 | unreadable IMPOSSIBLE",
        "longitude | -181 | unreadable IMPOSSIBLE",
        "longitude | 180 | 180 deg half 0.5",
        "latitude | 45 ft | unreadable WRONG_DIMENSION",
      })
  void readsPositions(String kind, String text, String expected) {
    assertEquals(expected, read(kind, text, Comma.THOUSANDS));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "EITHER | 12,5 | 12.5 ft half 0.05",
        "EITHER | 1,250 | unsure AMBIGUOUS_COMMA",
        "EITHER | 1,250 m | unsure AMBIGUOUS_COMMA",
        "EITHER | 0,250 | 0.25 ft half 0.0005",
        "EITHER | 1,2505 | 1.2505 ft half 0.00005",
        "EITHER | 1,250.5 | 1250.5 ft half 0.05",
        "EITHER | 1.250,5 | 1250.5 ft half 0.05",
        "EITHER | 1,250,000 | 1250000 ft half 0.5",
        "EITHER | 1.250.000 | 1250000 ft half 0.5",
        "EITHER | 1.250 | 1.25 ft half 0.0005",
        "NEITHER | 12,5 | 12.5 ft half 0.05",
        "NEITHER | 12.5 | 12.5 ft half 0.05",
        "NEITHER | 1.250 | unsure AMBIGUOUS_COMMA",
        "NEITHER | 1.250 m | unsure AMBIGUOUS_COMMA",
        "NEITHER | 1,250 | unsure AMBIGUOUS_COMMA",
        "NEITHER | 0.250 | 0.25 ft half 0.0005",
        "NEITHER | 1.250,5 | 1250.5 ft half 0.05",
        "NEITHER | 1250 | 1250 ft half 0.5",
        "EITHER | 12,5-13,5 m | 12.5..13.5 m",
        "DECIMAL | 12,5 | 12.5 ft half 0.05",
        "DECIMAL | 1,250 | 1.25 ft half 0.0005",
        "DECIMAL | 1.250,5 | 1250.5 ft half 0.05",
        "DECIMAL | 1 250,5 | 1250.5 ft half 0.05",
        "DECIMAL | 1 250 | 1250 ft half 0.5",
        "DECIMAL | 1.250 | unsure AMBIGUOUS_COMMA",
        "DECIMAL | 12.5 | 12.5 ft half 0.05",
        "DECIMAL | 1,250.5 | unreadable NOT_A_NUMBER",
        "THOUSANDS | 1.250,5 | unreadable NOT_A_NUMBER",
        "THOUSANDS | 0,250 | unsure AMBIGUOUS_COMMA",
      })
  void readsCommasAsTheFileHasThem(Comma comma, String text, String expected) {
    assertEquals(expected, read("depth", text, comma));
  }

  @Test
  void aUnitOfTheColumnOfAnotherDimensionMakesBareNumbersUnreadable() {
    Reading reading = AmountReader.read("12", KINDS.get("depth"), Units.GPM, Comma.THOUSANDS);
    assertEquals(new Reading.Unreadable(Note.WRONG_DIMENSION), reading);
  }

  @Test
  void aTextWithoutEndIsNotTried() {
    String text = "1" + " ".repeat(200) + "ft";
    Reading reading = AmountReader.read(text, KINDS.get("depth"), Units.FOOT, Comma.THOUSANDS);
    assertEquals(new Reading.Unreadable(Note.NOT_A_NUMBER), reading);
  }

  /** {@code 0.0254 * 6 == 0.1524}, whatever unit states it. */
  @Test
  void theSameAmountInTwoUnitsIsTheSame() {
    double inches = si("depth", "6 in");
    assertEquals(inches, si("depth", "152.4 mm"), 1e-12 * inches);
    assertEquals(si("flow", "1 m3/h"), si("flow", "24 m3/d"), 1e-18);
    assertEquals(String.format(Locale.ROOT, "%.6f", si("temperature", "32 F")), "273.150000");
  }

  private static double si(String kind, String text) {
    Reading reading = AmountReader.read(text, KINDS.get(kind), BARE.get(kind), Comma.THOUSANDS);
    return ((Reading.Amount) reading).lo();
  }

  @Test
  void lettersThatAreTwoInLowerCaseAreNoFault() {
    Expected resistance = Expected.of(Dimension.RESISTANCE, false);
    for (String text : List.of("\u0130\u0130\u0130 or", "\u0130 OL \u0130 Mohm")) {
      Reading reading =
          AmountReader.read(text, resistance, Units.named("Mohm").orElseThrow(), Comma.EITHER);
      assertEquals("Unreadable", reading.getClass().getSimpleName(), text);
    }
  }
}
