package org.wellcurb.screening;

import java.time.LocalDate;
import java.util.Arrays;
import org.wellcurb.formula.Lanes;
import org.wellcurb.judgement.LaneJudge;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;

/**
 * Judges up to {@link #MOST} records by all rules of a pack at once, many times as fast as one
 * after the other, with the same outcomes. One for each worker.
 */
public final class LaneScreener {
  /** Most records at a time. */
  public static final int MOST = Lanes.MOST;

  private static final byte NOT_APPLICABLE = (byte) Outcome.NOT_APPLICABLE.ordinal();

  private final LaneJudge judge;
  private final byte[][] outcomes;
  private final int rules;
  private long taken;

  public LaneScreener(Pack pack, LocalDate asOf) {
    rules = pack.rules().size();
    judge =
        new LaneJudge(
            Catalogue.standard(),
            asOf,
            pack.mustApply(),
            pack.rules().stream().map(Rule::program).toList());
    outcomes = new byte[MOST][rules];
  }

  /** Forgets all records. */
  public void clear() {
    judge.clear();
    taken = 0;
  }

  /** Takes a record into a place, from 0; it must stay as it is until all are judged. */
  public void take(int place, WellRecord record) {
    judge.take(place, record);
    Arrays.fill(outcomes[place], NOT_APPLICABLE);
    taken |= 1L << place;
  }

  /** Judges all records taken by each rule. */
  public void judge() {
    if (taken != 0) {
      for (int i = 0; i < rules; i++) {
        judge.judge(i, taken, outcomes);
      }
    }
  }

  /** The outcome of each rule on one record, not waived, before subjects; see {@link Screener}. */
  public byte[] outcomes(int place) {
    return outcomes[place];
  }
}
