package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.wellcurb.report.Cap;
import org.wellcurb.report.GridView;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;

/** The grid of rules by contractors counts every finding once, whatever the parts. */
final class RuleGridTest {
  @Test
  void theSameFindingsGiveTheSameGridInAnyParts() throws Exception {
    List<Pack> packs = List.of(PackLoader.load("fenwick-county"), PackLoader.load("tarn-district"));
    int[] starts = RuleGrid.starts(packs);
    int rules = starts[1] + packs.get(1).rules().size();
    for (long seed = 1; seed <= 20; seed++) {
      Random random = new Random(seed);
      LicenceCounts whole = new LicenceCounts();
      LicenceCounts merged = new LicenceCounts();
      LicenceCounts part = new LicenceCounts();
      Map<String, Long> expected = new TreeMap<>();
      Map<Integer, Long> ofRule = new TreeMap<>();
      for (int record = 0; record < 400; record++) {
        String licence = "D-" + random.nextInt(14);
        int rule = (int) (rules * Math.pow(random.nextDouble(), 3));
        for (LicenceCounts counts : List.of(whole, part)) {
          counts.record(licence);
          counts.finding(licence, FindingKind.DEFICIENCY, rule, record);
        }
        expected.merge(licence + " " + rule, 1L, Long::sum);
        ofRule.merge(rule, 1L, Long::sum);
        if (random.nextInt(30) == 0) {
          merged.add(part);
          part.clear();
        }
      }
      merged.add(part);
      GridView grid = RuleGrid.of(packs, merged);
      assertEquals(RuleGrid.of(packs, whole), grid, "seed " + seed);
      assertEquals(14, grid.licences(), "seed " + seed);
      assertEquals(ofRule.size(), grid.rules(), "seed " + seed);
      assertEquals(Cap.GRID_CONTRACTORS.most(), grid.contractors().size());
      assertEquals(Math.min(Cap.GRID_RULES.most(), ofRule.size()), grid.rows().size());
      long before = Long.MAX_VALUE;
      FindingKind kind = FindingKind.DEFICIENCY;
      for (GridView.Row row : grid.rows()) {
        int rule = starts[row.pack()] + row.rule();
        assertTrue(row.rule() < packs.get(row.pack()).rules().size(), "seed " + seed);
        assertEquals(ofRule.getOrDefault(rule, 0L), row.all(), "seed " + seed);
        assertTrue(row.all() <= before, "most first, seed " + seed);
        FindingKind graver = packs.get(row.pack()).rules().get(row.rule()).kind();
        assertTrue(
            row.all() < before || kind.compareTo(graver) <= 0, "the graver first, seed " + seed);
        kind = graver;
        before = row.all();
        for (int i = 0; i < row.counts().size(); i++) {
          String key = grid.contractors().get(i).licence() + " " + rule;
          assertEquals(expected.getOrDefault(key, 0L), row.counts().get(i), key + " seed " + seed);
        }
      }
    }
  }

  /** Who is worst on one rule is shown, however many findings the others have. */
  @Test
  void whoStandsOutOnARuleComesFirst() throws Exception {
    List<Pack> packs = List.of(PackLoader.load("fenwick-county"));
    LicenceCounts counts = new LicenceCounts();
    for (int licence = 0; licence < 30; licence++) {
      int records = licence == 17 ? 40 : licence == 18 ? 10 : 400;
      for (int record = 0; record < records; record++) {
        counts.record("D-" + licence);
        if (record % 4 == 0) {
          counts.finding("D-" + licence, FindingKind.DEFICIENCY, 3, record);
        }
        if ((licence == 17 && record % 2 == 0) || licence == 18 || record == 0) {
          counts.finding("D-" + licence, FindingKind.DEFICIENCY, 5, record);
        }
      }
    }
    GridView grid = RuleGrid.of(packs, counts);
    assertEquals("D-17", grid.contractors().get(0).licence());
    assertTrue(grid.contractors().stream().noneMatch(line -> line.licence().equals("D-18")));
  }
}
