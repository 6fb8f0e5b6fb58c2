package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A row of equal figures is one only where nothing else stands between. */
class RowsOfFiguresTest {
  private static final long SEED = 20262;
  private static final int LONG = 11;

  @TempDir Path folder;

  private final Batches batch = new Batches();
  private final Random random = new Random(SEED);

  private void well(String licence, String zone, double latitude, double longitude, String level) {
    batch.add(
        "record.id",
        "W-" + batch.records.size(),
        "driller.licence",
        licence,
        "site.zone",
        zone,
        "site.latitude",
        "" + latitude,
        "site.longitude",
        "" + longitude,
        "water.static_level",
        level);
  }

  private void others() {
    for (int i = 0; i < 1200; i++) {
      well("D-" + i % 12, "plain", somewhere(44), somewhere(-38.2), level());
    }
  }

  private double somewhere(double from) {
    return from + 0.19 * random.nextDouble();
  }

  /** Any but 75. */
  private String level() {
    int level = 20 + random.nextInt(69);
    return "" + (level < 75 ? level : level + 1);
  }

  /** Eleven records of one licence with 75, each after what is put between. */
  private List<Integer> rows(Runnable between) throws Exception {
    others();
    for (int i = 0; i < LONG; i++) {
      between.run();
      well("X-9", "plain", 44.005 + 0.01 * i, -38.195, "75");
    }
    for (int i = 0; i < 100; i++) {
      well("X-9", "plain", somewhere(44), somewhere(-38.2), level());
    }
    return batch.check(folder).figures().stream()
        .filter(hint -> hint.kind() == Copying.Kind.RUN)
        .map(CrossResult.FigureHint::hits)
        .toList();
  }

  @Test
  void equalFiguresInARowAreSaid() throws Exception {
    assertEquals(List.of(LONG), rows(() -> {}), "" + SEED);
  }

  @Test
  void anotherFigureThatIsRepeatedAtOnePlaceStandsBetween() throws Exception {
    assertEquals(List.of(), rows(() -> well("X-9", "plain", 44.105, -38.105, "60")), "" + SEED);
  }

  @Test
  void aRecordOfAnotherZoneStandsBetween() throws Exception {
    assertEquals(List.of(), rows(() -> well("X-9", "hill", 46.1, -38.1, "60")), "" + SEED);
  }

  @Test
  void aRecordWithoutTheFigureStandsBetween() throws Exception {
    assertEquals(
        List.of(),
        rows(() -> batch.add("record.id", "N-" + batch.records.size(), "driller.licence", "X-9")),
        "" + SEED);
  }

  /** The same figure again at the same place is no other figure; it counts once. */
  @Test
  void theSameFigureAtOnePlaceNeitherCountsNorBreaksARow() throws Exception {
    assertEquals(
        List.of(LONG + 1), rows(() -> well("X-9", "plain", 44.105, -38.105, "75")), "" + SEED);
  }

  /** Records of others do not stand between. */
  @Test
  void recordsOfOthersBreakNoRow() throws Exception {
    assertEquals(
        List.of(LONG),
        rows(() -> well("D-3", "plain", somewhere(44), somewhere(-38.2), level())),
        "" + SEED);
  }

  /**
   * One licence works on twelve streets, each in a section of its own, where the water stands
   * alike: three of four of its levels are 75, in any order. Of each section only the first 75
   * counts, and those come first: a row of them is nothing but that.
   */
  @Test
  void streetsOfOneLevelAreNoRow() throws Exception {
    int said = 0;
    for (int seed = 0; seed < 20; seed++) {
      batch.records.clear();
      random.setSeed(seed);
      others();
      for (int i = 0; i < 12 * 16; i++) {
        int section = random.nextInt(12);
        String level = random.nextInt(4) > 0 ? "75" : level();
        well("X-9", "plain", 44.005 + 0.015 * section, -38.195, level);
      }
      said += (int) batch.check(folder).figures().stream().filter(this::isRow).count();
    }
    assertEquals(0, said, "in 20 clean regions");
  }

  private boolean isRow(CrossResult.FigureHint hint) {
    return hint.kind() == Copying.Kind.RUN;
  }

  /** Where a row goes through, half of all others write 75, too; elsewhere nobody does. */
  @Test
  void whereOthersWriteTheSameARowIsNone() throws Exception {
    others();
    for (int i = 0; i < 400; i++) {
      String level = random.nextBoolean() ? "75" : level();
      double east = -38.2 + 0.04 * random.nextDouble();
      well("D-" + i % 12, "plain", 44.3 + 0.04 * random.nextDouble(), east, level);
    }
    for (int i = 0; i < LONG - 3; i++) {
      well("X-9", "plain", 44.305 + 0.01 * (i % 4), -38.195 + 0.01 * (i / 4), "75");
    }
    for (int i = 0; i < 100; i++) {
      well("X-9", "plain", somewhere(44), somewhere(-38.2), level());
    }
    assertEquals(List.of(), batch.check(folder).figures().stream().filter(this::isRow).toList());
  }

  /** What a row is laid beside is said: its figure on all records, and how long rows are anyway. */
  @Test
  void aRowIsLaidBesideWhatAnyOrderGives() throws Exception {
    rows(() -> {});
    CrossResult.FigureHint hint =
        batch.check(folder).figures().stream().filter(this::isRow).findFirst().orElseThrow();
    assertEquals(LONG, hint.share().hits());
    assertEquals(LONG + 100, hint.own());
    assertEquals(2, hint.likelyRow(), 0.5);
  }

  @Test
  void howLongRowsAreAnywayIsAsShufflesHaveIt() {
    for (double share : new double[] {0.1, 0.3, 0.6}) {
      double sum = 0;
      int trials = 2000;
      for (int trial = 0; trial < trials; trial++) {
        int run = 0;
        int longest = 0;
        for (int i = 0; i < 200; i++) {
          run = random.nextDouble() < share ? run + 1 : 0;
          longest = Math.max(longest, run);
        }
        sum += longest;
      }
      assertEquals(sum / trials, LongestRow.likely(200, share), 0.6, share + ", seed " + SEED);
    }
  }
}
