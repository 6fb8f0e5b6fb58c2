package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;
import org.wellcurb.screening.Harm;

/** What is written the quick way is what the long way would write. */
class QuickLinesTest {
  private static final double[] EDGES = {
    0,
    -0.0,
    1,
    -1,
    0.001,
    0.00099999999,
    0.1,
    0.30000000000000004,
    9.9999995,
    9.9999994999,
    99999.95,
    999999.4999999,
    999999.5,
    1e6,
    1.0000005,
    2.5000005,
    0.0010000005,
    123456.5,
    1e15,
    Double.MIN_VALUE,
    Double.MAX_VALUE
  };

  @Test
  void numbers() {
    for (double edge : EDGES) {
      number(edge, "edge");
      number(Math.nextUp(edge), "edge");
      number(Math.nextDown(edge), "edge");
      number(-edge, "edge");
    }
    long seed = 20260102;
    Random random = new Random(seed);
    for (int i = 0; i < 200_000; i++) {
      double written = random.nextInt(1 << random.nextInt(1, 25)) / Math.pow(10, random.nextInt(8));
      number(written, "seed " + seed);
      number(written * 0.3048, "seed " + seed);
      number(-written / 0.3048, "seed " + seed);
      number(written + 0.5 / Math.pow(10, random.nextInt(8)), "seed " + seed);
    }
  }

  private static void number(double number, String where) {
    ByteText out = new ByteText();
    Digits.put(out, number);
    assertEquals(Digits.text(number), out.toString(), where + ": " + number);
  }

  @Test
  void places() {
    long seed = 20260103;
    Random random = new Random(seed);
    for (int i = 0; i < 50_000; i++) {
      double north = (random.nextDouble() - 0.5) * (i % 3 == 0 ? 1e-5 : 180);
      double east = Math.round((random.nextDouble() - 0.5) * 3.6e8) / 1e6 + (i % 2) * 5e-7;
      ByteText out = new ByteText();
      new Place(north, east, 1).put(out);
      assertEquals(rounded(east) + "," + rounded(north), out.toString(), "seed " + seed);
    }
  }

  private static String rounded(double degrees) {
    BigDecimal six = BigDecimal.valueOf(degrees).setScale(6, RoundingMode.HALF_UP);
    return six.signum() == 0 ? "0" : six.stripTrailingZeros().toPlainString();
  }

  @Test
  void whatARecordHasAsWritten() {
    long seed = 20260104;
    Random random = new Random(seed);
    int[] points = "ab1 ,\"'=+-@\t\\\u00e9\u20ac\ud83d\ude00;|".codePoints().toArray();
    CellReader cells = new CellReader(Catalogue.standard());
    RecordFiller filler = new RecordFiller(Catalogue.standard());
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(6); n > 0; n--) {
        text.appendCodePoint(points[random.nextInt(points.length)]);
      }
      byte[] source = text.toString().getBytes(StandardCharsets.UTF_8);
      if (source.length > 0 && random.nextInt(9) == 0) {
        source[random.nextInt(source.length)] = (byte) 0xC3;
      }
      filler.clear("a.csv", i);
      cells.read(filler, 0, source, 0, source.length, null, UnitSystem.US, CellStyle.PLAIN);
      WellRecord record = filler.record();
      ByteText quick = new ByteText();
      new CsvLine(quick).word("x").written(record, 0).end();
      JsonText.written(quick, record, 0);
      ByteText slow = new ByteText();
      new CsvLine(slow).word("x").text(record.id()).end();
      JsonText.string(slow, record.id());
      assertEquals(slow.toString(), quick.toString(), "seed " + seed + ", line " + i);
    }
  }

  @Test
  void theOrderOfTheListIsThatOfItsBars() {
    long seed = 20260105;
    Random random = new Random(seed);
    for (int i = 0; i < 10_000; i++) {
      RecordLine one = line(random);
      RecordLine two = line(random);
      assertEquals(
          RecordLine.WORST_FIRST.compare(one, two) < 0,
          two.isAfter(one.kinds(), one.harm(), one.file(), one.row()),
          () -> "seed " + seed + ": " + one + " " + two);
    }
  }

  private static RecordLine line(Random random) {
    KindCounts kinds =
        new KindCounts(random.nextInt(2), random.nextInt(2), random.nextInt(2), random.nextInt(2));
    String file = random.nextBoolean() ? "a.csv" : "b.csv";
    Harm harm = Harm.values()[random.nextInt(3)];
    return new RecordLine(
        "W1", file, random.nextInt(3), "pack", "", "", kinds, harm, 0, "", "", /* where= */ null);
  }
}
