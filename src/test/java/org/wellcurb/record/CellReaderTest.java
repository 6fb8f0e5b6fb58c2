package org.wellcurb.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.UnitSystem;

class CellReaderTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  /** Reads the text both ways, sees that they agree, and gives what the text way made of it. */
  private static WellRecord read(String key, String text, CellStyle style) {
    int entry = CATALOGUE.index(key);
    CellReader reader = new CellReader(CATALOGUE);
    RecordFiller one = new RecordFiller(CATALOGUE);
    one.clear("a.csv", 2);
    reader.read(one, entry, text, null, UnitSystem.US, style);
    RecordFiller two = new RecordFiller(CATALOGUE);
    two.clear("a.csv", 2);
    byte[] bytes = ("xx" + text + "yy").getBytes(StandardCharsets.UTF_8);
    reader.read(two, entry, bytes, 2, bytes.length - 2, null, UnitSystem.US, style);
    assertEquals(said(one.record(), entry), said(two.record(), entry), text);
    return one.record();
  }

  private static String said(WellRecord r, int e) {
    return r.state(e)
        + " "
        + r.lo(e)
        + " "
        + r.hi(e)
        + " "
        + r.halfPlace(e)
        + " "
        + r.unit(e)
        + " "
        + r.note(e)
        + " "
        + r.text(e)
        + " "
        + r.written(e);
  }

  private static String brief(WellRecord r, String key) {
    int e = CATALOGUE.index(key);
    String state =
        switch (r.state(e)) {
          case WellRecord.UNKNOWN -> "unknown";
          case WellRecord.NOT_APPLICABLE -> "n/a";
          case WellRecord.UNREADABLE -> "unreadable";
          default -> CATALOGUE.entry(e).kind() == Kind.CHOICE ? r.choice(e) : value(r, e);
        };
    return r.note(e) == Note.NONE ? state : state + " " + r.note(e);
  }

  private static String value(WellRecord r, int e) {
    return r.text(e) != null
        ? r.text(e)
        : r.lo(e) == r.hi(e) ? short9(r.lo(e)) : short9(r.lo(e)) + ".." + short9(r.hi(e));
  }

  private static String short9(double x) {
    return String.format(java.util.Locale.ROOT, "%.9g", x)
        .replaceAll("(\\.\\d*?)0+$", "$1")
        .replaceAll("\\.$", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "well.depth | 212 ft | 64.6176",
        "well.depth | 212 | 64.6176",
        "well.depth | 64.6 m | 64.6",
        "well.depth | >100 | 30.48..Infinity",
        "well.depth | <100 | 0..30.48",
        "water.static_level | <100 | -Infinity..30.48",
        "water.static_level | -2.5 | -0.762",
        "water.static_level | flowing | -Infinity..0 FLOWING",
        "water.static_level | FLOWING @ 3 gpm | -Infinity..0 FLOWING",
        "water.static_level | dry | unknown DRY",
        "water.static_level | +5 | unknown AMBIGUOUS_SIGN",
        "well.depth | -5 | unreadable IMPOSSIBLE",
        "well.depth | 5 gal | unreadable WRONG_DIMENSION",
        "well.depth | 5 furlongs | unreadable UNKNOWN_UNIT",
        "well.depth | N/A | n/a",
        "well.depth | NA | unknown",
        "well.depth | ? | unknown",
        "well.depth | #VALUE! | unknown",
        "well.cap | none | none",
        "pump.splice | none | none",
        "well.casing_material | none | n/a",
        "sample.tap | unknown | unknown",
        "well.casing_material | Stainless Steel | stainless steel",
        "well.casing_material | brick | unreadable NOT_A_CHOICE",
        "well.open_hole | Y | 1",
        "well.open_hole | non | 0",
        "well.tag | AB-12 | ab-12",
        "dates.completed | 2009-05-01 | 14365",
        "grout.bags | 12 bags | 12",
        "grout.bags | 12.5 | unreadable NOT_WHOLE",
        "wire.gauge | 2/0 | -1",
        "wire.gauge | 12/2 | 12 CABLE",
        "pump.shutoff_pressure | 231 ft | 690474.459",
        "pressure.cut_in | 100 ft | unreadable WRONG_DIMENSION",
        "pump.insulation_resistance | OL | 2000000..Infinity OVER_RANGE",
      })
  void readsEveryKindOfCell(String key, String text, String expected) {
    assertEquals(expected, brief(read(key, text, CellStyle.PLAIN), key));
  }

  @Test
  void aFlowingLevelSaysThatTheWellFlows() {
    WellRecord r = RecordReader.of(Map.of("water.static_level", "overflow @ 1 gpm"));
    assertEquals("1 FLOWING", brief(r, "water.flowing"));
    assertEquals("6.30901964e-05 FLOWING", brief(r, "water.free_flow"));
  }
}
