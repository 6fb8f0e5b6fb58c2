package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;

/** Tallies of parts, added in any order and whatever way they came, are the tally of the whole. */
class TallyTest {
  private static final long SEED = 7;
  private static final int RECORDS = 500;
  private static final int PARTS = 4;

  @Test
  void partsAddUpToTheWhole() throws Exception {
    Pack pack = PackLoader.load("fenwick-county");
    Random random = new Random(SEED);
    Tally whole = new Tally(pack);
    Tally[] parts = new Tally[PARTS];
    for (int i = 0; i < PARTS; i++) {
      parts[i] = new Tally(pack);
    }
    for (int n = 0; n < RECORDS; n++) {
      byte[] outcomes = new byte[pack.rules().size()];
      for (int i = 0; i < outcomes.length; i++) {
        outcomes[i] = (byte) random.nextInt(Outcome.values().length);
      }
      Tally part = parts[random.nextInt(PARTS)];
      int near = random.nextInt(outcomes.length);
      whole.add(outcomes);
      part.add(outcomes);
      whole.addNear(near);
      part.addNear(near);
    }
    Tally merged = new Tally(pack);
    Tally carried = new Tally(pack);
    for (int i = 0; i < PARTS; i++) {
      merged.add(parts[i]);
      carried.add(parts[PARTS - 1 - i].carried());
    }
    assertArrayEquals(whole.carried(), merged.carried(), "seed " + SEED);
    assertArrayEquals(whole.carried(), carried.carried(), "seed " + SEED);
    assertEquals(RECORDS, carried.records());
    long of = 0;
    for (Outcome outcome : Outcome.values()) {
      of += carried.count(3, outcome);
    }
    assertEquals(RECORDS, of);
  }

  @Test
  void talliesOfDifferentPacksAreNotAdded() throws Exception {
    Tally one = new Tally(PackLoader.load("fenwick-county"));
    Tally other = new Tally(PackLoader.load("common-practice"));
    assertThrows(IllegalArgumentException.class, () -> one.add(other));
    assertThrows(IllegalArgumentException.class, () -> one.add(new long[1]));
  }
}
