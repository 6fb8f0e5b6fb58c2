package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Units of licences whose wells stand at shared points: section centres, as most forms have them.
 */
class SharedPointsTest {
  private static final long SEED = 20261;

  @TempDir Path folder;

  private final Batches batch = new Batches();
  private final Random random = new Random(SEED);

  private void well(String licence, int section, boolean isMetres) {
    int feet = 180 + random.nextInt(80);
    batch.add(
        "record.id",
        "W-" + batch.records.size(),
        "driller.licence",
        licence,
        "site.latitude",
        "" + (44 + section * 0.1),
        "site.longitude",
        "-38.6",
        "well.depth",
        "" + (isMetres ? Math.round(feet * 0.3048) : feet));
  }

  /** One licence in metres stands first; five honest ones share its sections, others do not. */
  private void region() {
    for (int section = 0; section < 4; section++) {
      for (int i = 0; i < 10; i++) {
        well("A-metres", section, true);
      }
    }
    for (int i = 0; i < 200; i++) {
      well("B-" + i / 40, i / 10 % 4, false);
    }
    for (int i = 0; i < 720; i++) {
      well("C-" + i / 48, 4 + i / 4 % 12, false);
    }
  }

  private static String said(CrossResult result) {
    StringBuilder said = new StringBuilder();
    for (CrossResult.SlipHint hint : result.slips()) {
      said.append(hint.group()).append(' ').append(hint.share()).append(' ').append(hint.p());
    }
    return said.toString();
  }

  @Test
  void whoStandsBesideOneInMetresIsNotSaidToWriteFeet() throws Exception {
    region();
    List<CrossResult.SlipHint> slips = batch.check(folder).slips();
    assertEquals(
        List.of("A-metres"), slips.stream().map(CrossResult.SlipHint::group).toList(), "" + SEED);
    assertEquals(4, slips.get(0).places());
  }

  @Test
  void theOrderOfRowsTellsNothing() throws Exception {
    region();
    String ordered = said(batch.check(folder));
    for (int i = 0; i < 3; i++) {
      Collections.shuffle(batch.records, random);
      assertEquals(ordered, said(batch.check(folder)), "" + SEED);
    }
  }

  /**
   * Three licences in metres make the honest one among them look as if it wrote feet for metres.
   */
  @Test
  void whatStandsOutMostIsTakenOutBeforeTheOthersAreTested() throws Exception {
    for (int i = 0; i < 16 * 12; i++) {
      well("A-" + i % 3, i / 12, true);
    }
    for (int i = 0; i < 16; i++) {
      well("H", i / 4, false);
    }
    for (int i = 0; i < 400; i++) {
      well("B-" + i / 40, 4 + i / 4 % 12, false);
    }
    List<String> said =
        batch.check(folder).slips().stream().map(CrossResult.SlipHint::group).toList();
    assertEquals(List.of("A-0", "A-1", "A-2"), said.stream().sorted().toList(), "" + SEED);
  }

  /** Wells at one point have the same neighbours: many of them are one witness. */
  @Test
  void wellsOfTwoPlacesAreTooFewWitnesses() throws Exception {
    region();
    batch.records.removeIf(
        record ->
            "A-metres".equals(record.get("driller.licence"))
                && Double.parseDouble(record.getOrDefault("site.latitude", "0")) > 44.15);
    assertEquals("", said(batch.check(folder)), "" + SEED);
  }
}
