package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Rule;

/** What comes of a finding, and how soon, is told by the entries that its rule holds to a limit. */
class HarmTest {
  @Test
  void everyHarmNamesEntriesOfTheCatalogue() {
    for (Harm harm : Harm.values()) {
      for (String key : harm.entries()) {
        assertTrue(Catalogue.standard().find(key) != null, key);
      }
    }
  }

  @Test
  void rulesAreOfTheHarmThatMayComeOfThem() throws PackException {
    Map<String, Harm> harms = new TreeMap<>();
    for (Rule rule : PackLoader.load("fenwick-county").rules()) {
      harms.put(rule.id(), Harm.of(rule));
    }
    Map<String, Harm> expected =
        Map.of(
            "coliform-absent", Harm.WATER,
            "nitrate-limit", Harm.WATER,
            "nothing-before-relief", Harm.HAZARD,
            "relief-ten-above-cut-out", Harm.OTHER,
            "relief-within-tank-rating", Harm.PRESSURE,
            "casing-bonded", Harm.HAZARD,
            "arsenic-limit", Harm.SLOW,
            "septic-tank-distance", Harm.WAY_IN,
            "filed-in-time", Harm.PAPER);
    expected.forEach((rule, harm) -> assertEquals(harm, harms.get(rule), rule));
  }

  @Test
  void theSoonerHarmOfTheGraverKindStandsFirst() throws PackException {
    Pack pack = PackLoader.load("fenwick-county");
    List<String> ids =
        Harm.gravestFirst(
                new Screener(pack, LocalDate.of(2026, 1, 1))
                    .result(
                        RecordReader.of(
                            Map.ofEntries(
                                Map.entry("record.id", "W-1"),
                                Map.entry("dates.completed", "2020-05-01"),
                                Map.entry("well.use", "household"),
                                Map.entry("setback.septic_tank", "20 ft"),
                                Map.entry("sample.coliform", "present"),
                                Map.entry("relief.setting", "50 psi"),
                                Map.entry("pressure.cut_out", "60 psi"),
                                Map.entry("wire.casing_bonded", "no"),
                                Map.entry("relief.fitted", "yes"),
                                Map.entry("well.casing_material", "steel"),
                                Map.entry("pump.type", "submersible"))))
                    .findings())
            .stream()
            .map(finding -> finding.rule().id())
            .toList();
    assertEquals(
        List.of("coliform-absent", "casing-bonded", "septic-tank-distance"),
        ids.subList(0, 3),
        ids.toString());
  }
}
