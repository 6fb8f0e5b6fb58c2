package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names of licences and zones: no more are kept than a cap allows, and the cut is counted. */
class NamesTest {
  @TempDir Path folder;

  @Test
  void namesBeyondTheCapAreTakenForNone() {
    SurveyPart.Names names = new SurveyPart.Names(3);
    for (int i = 0; i < 500; i++) {
      names.place("D-" + i);
    }
    assertTrue(names.written().size() <= 5, "" + names.written());
    assertEquals(names.place("D-2"), names.place(" d-2 "));
    assertEquals(names.place(""), names.place("D-77"));
  }

  @Test
  void recordsOfNamesBeyondTheCapAreCounted() throws Exception {
    Batches batch = new Batches();
    for (int i = 0; i < Batches.MOST_NAMES + 40; i++) {
      batch.add("record.id", "W-" + i, "driller.licence", "D-" + i);
    }
    // One more than the cap has a place, for the empty name may come yet.
    assertEquals(39, batch.check(folder).unnamed());
  }
}
