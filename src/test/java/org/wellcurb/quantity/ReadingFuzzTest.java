package org.wellcurb.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Hundreds of thousands of texts made of the pieces that cells are made of, and of noise. Whatever
 * stands there: an answer, ends in order, no NaN, nothing beyond what the kind can be, and what is
 * printed of it reads back the same.
 */
class ReadingFuzzTest {
  private static final String[] PIECES = {
    "0",
    "1",
    "7",
    "12",
    "1/2",
    "3/4",
    "1-1/4",
    "-",
    "\u2013",
    "--",
    "+",
    ".",
    ",",
    " ",
    "\u00A0",
    "  ",
    "'",
    "\"",
    "''",
    "ft",
    "in",
    "m",
    "mm",
    "gpm",
    "psi",
    "mg/L",
    "hp",
    "AWG",
    "mm2",
    "Mohm",
    "degF",
    "h",
    "min",
    "bags",
    "N",
    "W",
    "\u00B0",
    "to",
    "and",
    "or",
    "between",
    ">",
    "<",
    ">=",
    "\u2264",
    "~",
    "est.",
    "ca",
    "approx",
    "(",
    ")",
    "[",
    "]",
    "(30 ft)",
    "(owner)",
    "/",
    "2/0",
    "00",
    "#",
    "e5",
    "E+05",
    "e999",
    "999999",
    "0.005",
    "1,250",
    "1.250,5",
    "\u00BD",
    "\u00BC",
    "OL",
    "ND",
    "flowing",
    "dry",
    "?",
    "*",
    "x",
    "%",
    "per",
    "of water",
    "head",
    "\u0000",
    "\u200B",
    "\uD83D\uDE00",
    "\uFF11",
    "\u0661",
    "100",
    "3.5",
    "NaN",
    "Infinity",
    "1d",
    "0x10",
    "+/-",
    "\u00B1",
    "or more",
    "1940s",
    "2009",
    "-05-",
    "05",
    "/",
    "May",
    "before",
    "after",
    "T00:00:00Z"
  };

  private static final List<Expected> KINDS =
      List.of(
          Expected.of(Dimension.LENGTH, false),
          Expected.of(Dimension.LENGTH, true),
          Expected.of(Dimension.LENGTH, true).plusIsUnclear(),
          Expected.of(Dimension.PRESSURE, false).orHead(),
          Expected.of(Dimension.FLOW, false),
          Expected.of(Dimension.POWER, false),
          Expected.of(Dimension.RESISTANCE, false),
          Expected.of(Dimension.CONCENTRATION, false),
          Expected.of(Dimension.TEMPERATURE, true),
          Expected.of(Dimension.TIME, false),
          Expected.of(Dimension.WIRE_GAUGE, true),
          Expected.of(Dimension.ANGLE, true).within(90),
          Expected.of(Dimension.NUMBER, false).counting(List.of("bags")));

  private static String text(Random random) {
    StringBuilder out = new StringBuilder();
    int pieces = 1 + random.nextInt(7);
    for (int i = 0; i < pieces; i++) {
      int kind = random.nextInt(12);
      if (kind == 0) {
        out.append((char) random.nextInt(0x250));
      } else if (kind == 1) {
        out.append(random.nextInt(1000));
      } else {
        out.append(PIECES[random.nextInt(PIECES.length)]);
      }
      if (random.nextInt(3) == 0) {
        out.append(' ');
      }
    }
    return out.toString();
  }

  @Test
  void amountsAreSoundWhateverIsWritten() {
    long seed = 54_866_096L;
    Random random = new Random(seed);
    int read = 0;
    for (int i = 0; i < 300_000; i++) {
      String text = text(random);
      Expected kind = KINDS.get(random.nextInt(KINDS.size()));
      Unit bare = unit(kind, random);
      Comma comma = Comma.values()[random.nextInt(3)];
      String context = "seed " + seed + ", '" + text + "' as " + bare.symbol() + ", " + comma;
      if (AmountReader.read(text, kind, bare, comma) instanceof Reading.Amount a) {
        read++;
        assertTrue(a.lo() <= a.hi(), context + " gave " + a);
        assertTrue(a.lo() < Double.POSITIVE_INFINITY && a.hi() > Double.NEGATIVE_INFINITY, context);
        assertTrue(a.halfPlace() >= 0 && a.halfPlace() < Double.POSITIVE_INFINITY, context);
        assertTrue(a.lo() == a.hi() || a.halfPlace() == 0, context + " gave " + a);
        assertEquals(kind.dimension(), a.unit().dimension(), context);
        assertTrue(a.lo() >= kind.least() || Double.isInfinite(a.lo()), context + " gave " + a);
        assertFalse(a.lo() == 0 && 1 / a.lo() < 0, context + " gave minus zero");
        printsAndReadsBack(a, kind, context);
      }
    }
    assertTrue(read > 10_000, "seed " + seed + ": the texts are no texts of amounts: " + read);
  }

  /** To six significant digits, so printing again gives the same. */
  private static void printsAndReadsBack(Reading.Amount a, Expected kind, String context) {
    String printed = AmountWriter.interval(a.lo(), a.hi(), a.unit());
    Reading again = AmountReader.read(printed, kind, a.unit(), Comma.THOUSANDS);
    boolean tooFine = printed.length() > AmountReader.MOST_TEXT;
    boolean overTheEdge = again.note() == Note.IMPOSSIBLE;
    if (tooFine || overTheEdge) {
      return;
    }
    assertTrue(again instanceof Reading.Amount, context + " printed " + printed + ": " + again);
    Reading.Amount b = (Reading.Amount) again;
    assertEquals(
        printed, AmountWriter.interval(b.lo(), b.hi(), b.unit()), context + " printed " + printed);
  }

  private static Unit unit(Expected kind, Random random) {
    while (true) {
      Unit unit = Units.at(random.nextInt(Units.all().size()));
      if (unit.dimension().equals(kind.dimension()) && kind.taken(unit) != null) {
        return unit;
      }
    }
  }

  @Test
  void datesAreSoundWhateverIsWritten() {
    long seed = 5_199;
    Random random = new Random(seed);
    int read = 0;
    double first = (double) CalendarDays.day(CalendarDays.FIRST_YEAR - 1, 1, 1);
    double last = (double) CalendarDays.day(CalendarDays.LAST_YEAR + 100, 12, 31);
    for (int i = 0; i < 300_000; i++) {
      String text = dateText(random);
      DateOrder order = DateOrder.values()[random.nextInt(4)];
      DayNumbers numbers = DayNumbers.values()[random.nextInt(3)];
      int pivot = random.nextBoolean() ? 0 : 1930;
      String context = "seed " + seed + ", '" + text + "' " + order + " " + numbers + " " + pivot;
      DateReading d = DateReader.read(text, order, pivot, numbers);
      if (d.isRead()) {
        read++;
        assertTrue(d.from() <= d.to(), context + " gave " + d);
        assertTrue(Double.isInfinite(d.from()) || d.from() >= first, context + " gave " + d);
        assertTrue(Double.isInfinite(d.to()) || d.to() <= last, context + " gave " + d);
        assertTrue(d.from() == Math.rint(d.from()), context + " gave " + d);
      } else {
        assertFalse(d.note() == Note.NONE, context);
      }
    }
    assertTrue(read > 10_000, "seed " + seed + ": the texts are no texts of dates: " + read);
  }

  private static String dateText(Random random) {
    if (random.nextInt(4) == 0) {
      return text(random);
    }
    String[] pieces = {
      "2009",
      "39934",
      "39934.75",
      "2009-05-01",
      "12 May 1984",
      "1975",
      "75",
      "05",
      "5",
      "13",
      "31",
      "-",
      "/",
      ".",
      " ",
      "May",
      "mai",
      "Sept.",
      "1940s",
      "before ",
      "after ",
      "between ",
      " to ",
      " and ",
      "c. ",
      "'",
      "T00:00",
      " 12:30 PM",
      "Z",
      ",",
      "1st",
      "Fri",
      "(May)",
      "39934",
      "early ",
      "winter ",
      "pre-"
    };
    StringBuilder out = new StringBuilder();
    int count = 1 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      out.append(pieces[random.nextInt(pieces.length)]);
    }
    return out.toString();
  }
}
