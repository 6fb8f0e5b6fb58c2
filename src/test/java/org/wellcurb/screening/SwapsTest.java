package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;

/** Two entries written in each other's place. */
class SwapsTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  private static Screener screener(String pack) throws PackException {
    return new Screener(PackLoader.load(pack), LocalDate.of(2026, 1, 1));
  }

  private static RecordResult sample(String pack, String id) throws Exception {
    WellRecord sample =
        ReadRecords.in(Path.of("sample-records")).records.stream()
            .filter(each -> each.id().equals(id))
            .findFirst()
            .orElseThrow();
    return screener(pack).result(sample);
  }

  /** A slipped decimal point in the cut-in would put right one of the three, and is not said. */
  @Test
  void theSwapThatSettlesAllIsOfferedAndNotTheSlipThatSettlesOne() throws Exception {
    RecordResult result = sample("tarn-district", "TD/2022/34");
    assertEquals(
        List.of(
            new PossibleReading(
                "pressure.cut_in",
                "pressure.cut_out",
                "415",
                "pressure cut in and pressure cut out may stand in each other's place",
                3,
                List.of("cut-in-below-cut-out", "switch-range-usual", "tank-precharge"))),
        result.readings());
    assertEquals(
        List.of("cut-in-below-cut-out", "switch-range-usual", "tank-precharge"),
        result.findings().stream().map(finding -> finding.rule().id()).toList());
  }

  /** Metres for the pumping level would fit too, but for what the pump can raise. */
  @Test
  void swappedWaterLevelsAreTold() throws Exception {
    assertEquals(
        List.of(
            new PossibleReading(
                "water.static_level",
                "water.pumping_level",
                "123.6",
                "water static level and water pumping level may stand in each other's place",
                1,
                List.of("pumping-level-below-static"))),
        sample("fenwick-county", "FW-23-0407").readings());
  }

  /** No reading of a good form with two entries changed over is another than the swap. */
  @Test
  void swapsPlantedInGoodFormsAreToldOrNothingIs() throws PackException {
    List<String> wrong = new ArrayList<>();
    Map<String, Integer> planted = new LinkedHashMap<>();
    Map<String, Integer> told = new LinkedHashMap<>();
    Screener screener = screener("fenwick-county");
    for (List<String> pair :
        List.of(
            List.of("pressure.cut_in", "pressure.cut_out"),
            List.of("water.static_level", "water.pumping_level"),
            List.of("tank.acceptance", "tank.volume"),
            List.of("well.casing_length", "well.casing_depth"),
            List.of("tank.precharge", "pressure.cut_out"))) {
      String name = String.join(" ", pair);
      for (WellRecord well : ReadRecords.in(Path.of("src/test/resources/good-wells")).records) {
        Entry first = CATALOGUE.entry(CATALOGUE.index(pair.get(0)));
        Entry second = CATALOGUE.entry(CATALOGUE.index(pair.get(1)));
        if (!well.isGiven(first.index()) || !well.isGiven(second.index())) {
          continue;
        }
        planted.merge(name, 1, Integer::sum);
        for (PossibleReading reading : screener.result(swapped(well, first, second)).readings()) {
          boolean isTold =
              pair.contains(reading.entry()) && reading.reading().contains("each other's place");
          told.merge(name, isTold ? 1 : 0, Integer::sum);
          if (!isTold) {
            wrong.add(well.id() + " " + name + ": " + reading.reading());
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(told.getOrDefault("tank.acceptance tank.volume", 0) > 0, told + " of " + planted);
    assertTrue(
        told.getOrDefault("well.casing_length well.casing_depth", 0) > 9, told + " of " + planted);
    for (String usual :
        List.of("pressure.cut_in pressure.cut_out", "water.static_level water.pumping_level")) {
      int most = planted.getOrDefault(usual, 0);
      assertTrue(most >= 20, usual + " planted " + most + " times");
      assertTrue(10 * told.getOrDefault(usual, 0) >= 9 * most, told + " of " + planted);
    }
  }

  private static WellRecord swapped(WellRecord well, Entry first, Entry second) {
    Map<String, String> form = new LinkedHashMap<>();
    for (Entry entry : CATALOGUE.entries()) {
      Entry from = entry.equals(first) ? second : entry.equals(second) ? first : entry;
      if (!well.written(from.index()).isEmpty()) {
        form.put(entry.key(), well.written(from.index()));
      }
    }
    return RecordReader.of(form);
  }
}
