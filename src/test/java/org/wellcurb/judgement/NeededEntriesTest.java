package org.wellcurb.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/** The set that is filled again and again holds what a fresh set would, in the same order. */
class NeededEntriesTest {
  private static final long SEED = 20_261_126;

  @Test
  void isAFreshSetAfterEachClearing() {
    Catalogue catalogue = Catalogue.standard();
    NeededEntries again = new NeededEntries(catalogue);
    Random random = new Random(SEED);
    for (int fill = 0; fill < 200; fill++) {
      again.clear();
      Set<Entry> fresh = new LinkedHashSet<>();
      for (int i = random.nextInt(40); i > 0; i--) {
        Entry entry = catalogue.entry(random.nextInt(20));
        assertEquals(fresh.add(entry), again.add(entry), "seed " + SEED);
      }
      assertEquals(List.copyOf(fresh), List.copyOf(again), "seed " + SEED);
      assertEquals(fresh, again, "seed " + SEED);
    }
  }
}
