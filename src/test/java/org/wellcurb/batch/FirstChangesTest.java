package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.report.Cap;
import org.wellcurb.report.RehearsalView.RecordChange;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Rule;

/** What newly falls short comes before all else, however late in the input it stands. */
class FirstChangesTest {
  private final Rule rule;

  FirstChangesTest() throws PackException {
    rule = PackLoader.load("federal-drinking-water").rules().get(0);
  }

  private RecordChange change(long row, @Nullable Outcome from, @Nullable Outcome to) {
    return new RecordChange("R" + row, "wells.csv", row, "", rule, from, to, null, null);
  }

  @Test
  void aLateShortfallIsNotCrowdedOut() {
    FirstChanges all = new FirstChanges();
    int most = Cap.CHANGES_ON_PAGE.most();
    for (int row = 1; row <= most + 5; row++) {
      all.add(change(row, Outcome.CANNOT_TELL, null));
    }
    FirstChanges later = new FirstChanges();
    later.add(change(9001, Outcome.FALLS_SHORT, Outcome.MEETS));
    later.add(change(9002, Outcome.MEETS, Outcome.FALLS_SHORT));
    later.add(change(9003, null, Outcome.FALLS_SHORT));
    all.add(later);
    List<Long> rows = all.all().stream().map(RecordChange::row).toList();
    assertEquals(List.of(9002L, 9003L, 9001L, 1L), rows.subList(0, 4));
    assertEquals(most, rows.size());
  }
}
