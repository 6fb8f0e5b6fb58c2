package org.wellcurb.judgement;

import java.time.LocalDate;
import java.util.List;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/**
 * Spares the judge the rules of which a record says nothing. Most entries of most forms are blank;
 * a rule none of whose entries has anything written has the outcome that it has on an empty form,
 * and that is worked out once.
 */
public final class QuietRules {
  private final long[][] reads;
  private final byte[] onAnEmptyForm;
  private final long[] present;
  private final byte[] states;
  private final int covers;

  /** Works out the outcome of each rule on an empty form. */
  public QuietRules(
      Catalogue catalogue, LocalDate asOf, List<String> mustApply, List<RuleProgram> rules) {
    int words = (catalogue.size() + 63) / 64;
    present = new long[words];
    states = new byte[catalogue.size()];
    covers = catalogue.index("record.covers");
    reads = new long[rules.size()][words];
    onAnEmptyForm = new byte[rules.size()];
    Judge judge = new Judge(catalogue, asOf, mustApply);
    judge.take(new RecordFiller(catalogue).record());
    for (int i = 0; i < reads.length; i++) {
      for (Entry entry : rules.get(i).reads()) {
        reads[i][entry.index() >> 6] |= 1L << entry.index();
      }
      onAnEmptyForm[i] = (byte) judge.outcome(rules.get(i));
    }
  }

  /** Takes the record that {@link #isQuiet} is asked about. */
  public void take(WellRecord record) {
    record.statesInto(states);
    for (int w = 0; w < present.length; w++) {
      long bits = 0;
      int end = Math.min(states.length, (w + 1) * 64);
      for (int i = w * 64; i < end; i++) {
        bits |= (states[i] == WellRecord.UNKNOWN ? 0L : 1L) << i;
      }
      present[w] = bits;
    }
    // A form that covers a part only, or a repair, makes blanks count otherwise.
    if (record.isGiven(covers) && record.lo(covers) != bothParts(record)) {
      java.util.Arrays.fill(present, -1L);
    }
  }

  private double bothParts(WellRecord record) {
    return record.catalogue().entry(covers).choices().indexOf("well and pump");
  }

  /** True if nothing is written in any entry that the rule reads. */
  public boolean isQuiet(int rule) {
    long common = 0;
    long[] mask = reads[rule];
    for (int w = 0; w < present.length; w++) {
      common |= mask[w] & present[w];
    }
    return common == 0;
  }

  /** The outcome of a rule that is quiet. */
  public byte outcome(int rule) {
    return onAnEmptyForm[rule];
  }
}
