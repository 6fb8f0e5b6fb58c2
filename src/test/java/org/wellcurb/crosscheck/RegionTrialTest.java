package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Planted faults in small regions; the full trial, of 20 regions of 50,000 wells, is in the docs.
 */
class RegionTrialTest {
  @TempDir Path folder;

  @Test
  void findsWhatWasPlanted() throws Exception {
    RegionTrial trial = new RegionTrial();
    for (long seed = 1; seed <= 4; seed++) {
      trial.spoiled(seed, 8000, folder);
    }
    String said = "seeds 1 to 4: " + trial;
    assertTrue(trial.recall(trial.foundCopies, trial.plantedCopies) >= 0.95, said);
    assertTrue(trial.recall(trial.foundCopies, trial.saidCopies) >= 0.95, said);
    assertTrue(trial.recall(trial.foundCopyists, trial.plantedCopyists) >= 0.8, said);
    assertTrue(trial.recall(trial.foundCopyists, trial.saidCopyists) >= 0.8, said);
    assertTrue(trial.recall(trial.foundSlips, trial.plantedSlips) >= 0.95, said);
    assertTrue(trial.recall(trial.foundSlips, trial.saidSlips) >= 0.95, said);
  }

  /**
   * At 5 % false discoveries, 6 clean regions have 0.3 false hints; two standard errors more is 1.
   */
  @Test
  void saysLittleOfCleanRegions() throws Exception {
    RegionTrial trial = new RegionTrial();
    for (long seed = 11; seed <= 16; seed++) {
      trial.clean(seed, 6000, folder);
    }
    String said = "seeds 11 to 16: " + trial;
    assertTrue(trial.falseAlarms <= 1, said);
    assertTrue(trial.falseRates <= 1, said);
    assertTrue(trial.falseRules <= 1, said);
    assertEquals(0, trial.saidCopies, said);
  }
}
