package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
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

  /** Of the slips planted in an entry, those found, and those for which all was another. */
  private static final class Tally {
    int planted;
    int found;
    final List<String> wrong = new ArrayList<>();

    @Override
    public String toString() {
      return found + " of " + planted;
    }
  }

  /** Plants in every length of every good form the figure of one unit under the other. */
  private static Map<String, Tally> planted(Unit meant, Unit written) throws PackException {
    return planted(meant, written, wells());
  }

  private static Map<String, Tally> planted(Unit meant, Unit written, List<WellRecord> wells)
      throws PackException {
    Screener screener = screener();
    Map<String, Tally> tallies = new TreeMap<>();
    for (WellRecord well : wells) {
      for (Entry entry : CATALOGUE.entries()) {
        if (!isLength(well, entry.index())) {
          continue;
        }
        Map<String, String> form = form(well, written);
        String figure = AmountWriter.digits(meant.fromSi(well.lo(entry.index())));
        form.put(entry.key(), figure + " " + written.symbol());
        Tally tally = tallies.computeIfAbsent(entry.key(), key -> new Tally());
        tally.planted++;
        for (PossibleReading reading : screener.result(RecordReader.of(form)).readings()) {
          String unit = " " + meant.symbol() + ", not " + written.symbol();
          if (reading.entry().equals(entry.key()) && reading.reading().endsWith(unit)) {
            tally.found++;
          } else {
            tally.wrong.add(well.id() + " " + entry.key() + ": " + reading.reading());
          }
        }
      }
    }
    return tallies;
  }

  /** The entries of which any slip was found, with how many of how many. */
  private static String found(Map<String, Tally> tallies) {
    return tallies.entrySet().stream()
        .filter(tally -> tally.getValue().found > 0)
        .map(tally -> tally.getKey() + " " + tally.getValue())
        .collect(Collectors.joining("\n"));
  }

  private static List<String> wrong(Map<String, Tally> tallies) {
    return tallies.values().stream().flatMap(tally -> tally.wrong.stream()).toList();
  }

  /**
   * Entries that other entries bind from both sides. What is not found breaks too little: a level
   * of 9 m that is none of 30 may be one.
   */
  @Test
  void feetWrittenForMetresAreFound() throws PackException {
    Map<String, Tally> tallies = planted(Units.FOOT, Units.METRE);
    assertEquals(
        """
        drop_pipe.length 20 of 20
        grout.bottom 20 of 24
        pump.intake_depth 23 of 23
        setback.septic_tank 26 of 26
        water.drawdown 14 of 14
        water.pumping_level 18 of 21
        water.static_level 15 of 25
        well.casing_depth 24 of 25
        well.casing_length 24 of 24
        well.depth 23 of 25
        well.filter_pack_bottom 12 of 12
        well.filter_pack_top 12 of 12
        well.screen_bottom 14 of 14
        well.screen_top 14 of 14
        well.stickup 1 of 25""",
        found(tallies));
    assertEquals(List.of(), wrong(tallies));
  }

  @Test
  void metresWrittenForFeetAreFound() throws PackException {
    Map<String, Tally> tallies = planted(Units.METRE, Units.FOOT);
    assertEquals(
        """
        drop_pipe.length 16 of 20
        pump.intake_depth 20 of 23
        setback.septic_tank 26 of 26
        water.drawdown 14 of 14
        water.pumping_level 14 of 21
        water.static_level 14 of 25
        well.casing_depth 24 of 25
        well.casing_length 24 of 24
        well.depth 23 of 25
        well.drilled_depth 23 of 24
        well.filter_pack_bottom 12 of 12
        well.screen_bottom 14 of 14
        well.screen_top 14 of 14
        wire.drop_length 20 of 20""",
        found(tallies));
    assertEquals(List.of(), wrong(tallies));
  }

  /** Over wells of every kind, some of which fall short of this or that by themselves. */
  @Test
  void whateverIsOfferedIsWhatWasMeant() throws PackException {
    long seed = 77;
    Random random = new Random(seed);
    List<WellRecord> wells = new ArrayList<>();
    for (int i = 0; i < 4 * GoodWell.values().length; i++) {
      GoodWell kind = GoodWell.values()[i % GoodWell.values().length];
      wells.add(RecordReader.of(kind.form(kind + "-" + i, random)));
    }
    List<String> wrong = new ArrayList<>(wrong(planted(Units.FOOT, Units.METRE, wells)));
    wrong.addAll(wrong(planted(Units.METRE, Units.FOOT, wells)));
    assertEquals(List.of(), wrong, "seed " + seed);
  }

  /**
   * One broken relation proves little: no other unit is offered for it, and no slip in its place,
   * though as feet the well would fit into its hole.
   */
  @Test
  void oneBrokenRelationIsNotEnough() throws PackException {
    Map<String, String> form =
        Map.of("record.datum", "ground", "well.depth", "100 m", "well.drilled_depth", "35.1 m");
    assertEquals(List.of(), screener().result(RecordReader.of(form)).readings());
  }

  /** A bore of 254 in is none, and its annulus takes a hundred times the grout placed: it is mm. */
  @Test
  void aFigureOutOfItsRangeAndOneLimitAreEnough() throws PackException {
    Map<String, String> form = new LinkedHashMap<>();
    form.put("well.method", "rotary");
    form.put("well.bore_diameter", "254 in");
    form.put("well.casing_diameter", "6 in");
    form.put("well.casing_size_is", "nominal");
    form.put("well.casing_material", "steel");
    form.put("well.casing_wall", "0.28 in");
    form.put("grout.material", "neat cement");
    form.put("grout.top", "0 ft");
    form.put("grout.bottom", "57 ft");
    form.put("grout.bags", "16");
    form.put("grout.bag_mass", "94 lb");
    form.put("grout.water_per_bag", "6 gal");
    List<PossibleReading> readings = screener().result(RecordReader.of(form)).readings();
    assertEquals(
        List.of("well bore diameter may be 254 mm, not in"),
        readings.stream().map(PossibleReading::reading).toList());
  }

  /** Unless the figure then comes just to where its neighbour stands. */
  @Test
  void oneBrokenRelationAndTheNeighbourAreEnough() throws PackException {
    Map<String, String> form =
        Map.of("record.datum", "ground", "well.depth", "115 m", "well.drilled_depth", "35.1 m");
    List<PossibleReading> readings = screener().result(RecordReader.of(form)).readings();
    assertEquals(
        List.of("well depth may be 115 ft, not m"),
        readings.stream().map(PossibleReading::reading).toList());
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

  @Test
  void noneIsOfferedOnSamplesWithoutAPlantedFault() throws Exception {
    Set<String> faulty = new HashSet<>();
    for (String line : Files.readAllLines(Path.of("src/test/resources/answer-key.csv"))) {
      faulty.add(line.split(",", -1)[0]);
    }
    Screener screener = screener();
    int clean = 0;
    for (WellRecord sample : ReadRecords.in(Path.of("sample-records")).records) {
      if (!faulty.contains(sample.id())) {
        clean++;
        assertEquals(List.of(), screener.result(sample).readings(), sample.id());
      }
    }
    assertTrue(clean >= 20, clean + " clean samples");
  }
}
