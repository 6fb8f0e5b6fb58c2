package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.AmountWriter;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/** Feet written where metres were meant, and the other way round, in otherwise good forms. */
class SlipsTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  private static Screener screener() throws PackException {
    return new Screener(PackLoader.load("fenwick-county"), LocalDate.of(2026, 1, 1));
  }

  private static List<WellRecord> wells() {
    return ReadRecords.in(Path.of("src/test/resources/good-wells")).records;
  }

  /** The form with all its lengths in feet and metres in this unit, as bare figures with it. */
  private static Map<String, String> form(WellRecord well, Unit unit) {
    Map<String, String> form = new LinkedHashMap<>();
    for (Entry entry : CATALOGUE.entries()) {
      int i = entry.index();
      if (isLength(well, i)) {
        form.put(entry.key(), AmountWriter.digits(unit.fromSi(well.lo(i))) + " " + unit.symbol());
      } else if (!well.written(i).isEmpty()) {
        form.put(entry.key(), well.written(i));
      }
    }
    return form;
  }

  private static boolean isLength(WellRecord well, int entry) {
    Unit unit = well.unit(entry);
    return unit != null
        && (unit.equals(Units.FOOT) || unit.equals(Units.METRE))
        && well.isGiven(entry)
        && well.lo(entry) == well.hi(entry)
        && well.lo(entry) != 0;
  }

  @Test
  void slipsThatBreakTwoThingsAreFoundAndTheirReadingOffered() throws PackException {
    Screener screener = screener();
    Map<String, TreeSet<String>> found = new TreeMap<>();
    for (Unit unit : List.of(Units.FOOT, Units.METRE)) {
      Unit meant = unit.equals(Units.FOOT) ? Units.METRE : Units.FOOT;
      for (WellRecord well : wells()) {
        for (Entry entry : CATALOGUE.entries()) {
          if (isLength(well, entry.index())) {
            Map<String, String> form = form(well, unit);
            String slip = AmountWriter.digits(meant.fromSi(well.lo(entry.index())));
            form.put(entry.key(), slip + " " + unit.symbol());
            RecordResult result = screener.result(RecordReader.of(form));
            String wanted = slip + " " + meant.symbol();
            if (result.readings().stream().anyMatch(r -> r.reading().contains(wanted))) {
              found.computeIfAbsent(entry.key(), key -> new TreeSet<>()).add(well.id());
            }
          }
        }
      }
    }
    assertEquals(
        List.of(
            "grout.bottom",
            "pump.intake_depth",
            "water.pumping_level",
            "water.static_level",
            "well.casing_depth",
            "well.stickup"),
        List.copyOf(found.keySet()),
        "found in " + found);
  }

  /**
   * One broken relation proves little: no other unit is offered for it, and no slip in its place.
   */
  @Test
  void oneBrokenRelationIsNotEnough() throws PackException {
    Map<String, String> form =
        Map.of("record.datum", "ground", "well.depth", "115 m", "well.drilled_depth", "35.1 m");
    assertEquals(List.of(), screener().result(RecordReader.of(form)).readings());
  }

  @Test
  void noneIsOfferedOnGoodForms() throws PackException {
    Screener screener = screener();
    for (Unit unit : List.of(Units.FOOT, Units.METRE)) {
      for (WellRecord well : wells()) {
        RecordResult result = screener.result(RecordReader.of(form(well, unit)));
        assertEquals(List.of(), result.readings(), well.id());
      }
    }
  }
}
