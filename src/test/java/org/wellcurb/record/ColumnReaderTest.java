package org.wellcurb.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;

/** What is remembered of a column's cells is what each would be read as anew. */
class ColumnReaderTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();
  private static final List<String> CELLS =
      List.of(
          "0",
          "0.0",
          "-0",
          "12",
          "12.5",
          "61.0",
          " 61.0 ",
          "61.0\t",
          "10-15",
          ">100",
          "<0.005",
          "5 ft 6 in",
          "12 m",
          "12 ft",
          "12 psi",
          "12345678",
          "123456789",
          "1234567.8901234",
          "12345678901.2345",
          "123456789012345678",
          "yes",
          "No",
          "Y",
          "steel",
          "pvc",
          "PE",
          "unknown",
          "n/a",
          "NA",
          "-",
          "flowing",
          "flowing @ 3 gpm",
          "dry",
          "2001-04-15",
          "2001-13-15",
          "15/04/2001",
          "03/04/01",
          "fenwick",
          "Fenwick",
          "\u00a012\u00a0",
          "r\u00e9sidence",
          "submersible",
          "rotary",
          "household",
          "absent",
          "present",
          "seventeen");

  @Test
  void remembersOnlyWhatWouldBeReadAnew() {
    for (long seed = 1; seed <= 20; seed++) {
      Random random = new Random(seed);
      for (Entry entry : CATALOGUE.entries()) {
        agree(entry.index(), random, "seed " + seed + ", " + entry.key());
      }
    }
  }

  private static void agree(int entry, Random random, String where) {
    @Nullable Unit unit = random.nextInt(3) == 0 ? Units.METRE : null;
    CellReader cells = new CellReader(CATALOGUE);
    ColumnReader column = new ColumnReader(new CellReader(CATALOGUE), entry, unit, CellStyle.PLAIN);
    RecordFiller anew = new RecordFiller(CATALOGUE);
    RecordFiller remembered = new RecordFiller(CATALOGUE);
    int flowing = CATALOGUE.index("water.flowing");
    for (int i = 0; i < 60; i++) {
      anew.clear("a.csv", i);
      remembered.clear("a.csv", i);
      int before = random.nextInt(6) == 0 ? entry : flowing;
      if (random.nextInt(3) == 0) {
        byte[] given = (before == flowing ? "yes" : "7").getBytes(StandardCharsets.UTF_8);
        for (RecordFiller filler : List.of(anew, remembered)) {
          cells.read(filler, before, given, 0, given.length, null, UnitSystem.US, CellStyle.PLAIN);
        }
      }
      String text = CELLS.get(random.nextInt(CELLS.size()));
      UnitSystem system = random.nextBoolean() ? UnitSystem.US : UnitSystem.METRIC;
      // What stands behind a cell may or may not be long enough to read it by words of eight bytes.
      byte[] source =
          ("xx," + text + ",y".repeat(random.nextInt(14))).getBytes(StandardCharsets.UTF_8);
      int to = 3 + text.getBytes(StandardCharsets.UTF_8).length;
      cells.read(anew, entry, source, 3, to, unit, system, CellStyle.PLAIN);
      column.read(remembered, source, 3, to, system);
      assertEquals(said(anew.record()), said(remembered.record()), where + ": '" + text + "'");
    }
  }

  private static List<String> said(WellRecord record) {
    List<String> said = new ArrayList<>();
    for (int e = 0; e < CATALOGUE.size(); e++) {
      if (record.state(e) != WellRecord.UNKNOWN || !record.written(e).isEmpty()) {
        said.add(
            String.join(
                " ",
                CATALOGUE.entry(e).key(),
                String.valueOf(record.state(e)),
                record.interval(e).toString(),
                String.valueOf(record.halfPlace(e)),
                String.valueOf(record.unit(e)),
                record.note(e).toString(),
                String.valueOf(record.text(e)),
                record.written(e)));
      }
    }
    return said;
  }
}
