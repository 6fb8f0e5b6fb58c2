package org.wellcurb.judgement;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/**
 * Spares the judge the rules that a record settles by what it leaves blank. Most entries of most
 * forms are: a rule none of whose entries has anything written has the outcome that it has on an
 * empty form, which is worked out once; and a rule that applies only where an entry is known does
 * not apply where that entry is blank. Both are seen by comparing bits.
 */
public final class QuietRules {
  private static final byte NOT_APPLICABLE = (byte) Outcome.NOT_APPLICABLE.ordinal();

  private final long[][] reads;
  private final long[][] mustBeKnown;
  private final byte[] onAnEmptyForm;
  private final long[] present;
  private final long[] notKnown;
  private final byte[] states;
  private final int covers;
  private final int bothParts;

  /** Works out the outcome of each rule on an empty form. */
  public QuietRules(
      Catalogue catalogue, LocalDate asOf, List<String> mustApply, List<RuleProgram> rules) {
    int words = (catalogue.size() + 63) / 64;
    present = new long[words];
    notKnown = new long[words];
    states = new byte[catalogue.size()];
    covers = catalogue.index("record.covers");
    bothParts = catalogue.entry(covers).choices().indexOf("well and pump");
    reads = new long[rules.size()][words];
    mustBeKnown = new long[rules.size()][words];
    onAnEmptyForm = new byte[rules.size()];
    Judge judge = new Judge(catalogue, asOf, mustApply);
    judge.take(new RecordFiller(catalogue).record());
    for (int i = 0; i < reads.length; i++) {
      for (Entry entry : rules.get(i).reads()) {
        reads[i][entry.index() >> 6] |= 1L << entry.index();
      }
      onAnEmptyForm[i] = (byte) judge.outcome(rules.get(i));
      Formula when = rules.get(i).when();
      if (when != null) {
        known(when.tree(), mustBeKnown[i]);
      }
    }
  }

  /** Marks the entries without which a condition is false whatever its other parts are. */
  private static void known(Expr.Condition condition, long[] into) {
    if (condition instanceof Expr.Known of) {
      into[of.entry().index() >> 6] |= 1L << of.entry().index();
    } else if (condition instanceof Expr.And and) {
      and.all().forEach(part -> known(part, into));
    }
  }

  /** Takes the record that {@link #isSettled} is asked about. */
  public void take(WellRecord record) {
    record.statesInto(states);
    for (int w = 0; w < present.length; w++) {
      long given = 0;
      long unknown = 0;
      int end = Math.min(states.length, (w + 1) * 64);
      for (int i = w * 64; i < end; i++) {
        byte state = states[i];
        given |= (state == WellRecord.UNKNOWN ? 0L : 1L) << i;
        unknown |= (state == WellRecord.UNKNOWN || state == WellRecord.UNREADABLE ? 1L : 0L) << i;
      }
      present[w] = given;
      notKnown[w] = unknown;
    }
    // A form that covers a part only, or a repair, makes blanks count otherwise.
    if (record.isGiven(covers) && record.lo(covers) != bothParts) {
      Arrays.fill(present, -1L);
      Arrays.fill(notKnown, 0L);
    }
  }

  /** True if the outcome of the rule hangs on nothing but which entries are blank. */
  public boolean isSettled(int rule) {
    return isIdle(rule) || isQuiet(rule);
  }

  /** The outcome of a rule that is settled. */
  public byte outcome(int rule) {
    return isIdle(rule) ? NOT_APPLICABLE : onAnEmptyForm[rule];
  }

  /** True if an entry is not known without which the rule does not apply. */
  private boolean isIdle(int rule) {
    return meet(mustBeKnown[rule], notKnown);
  }

  /** True if nothing is written in any entry that the rule reads. */
  private boolean isQuiet(int rule) {
    return !meet(reads[rule], present);
  }

  private static boolean meet(long[] a, long[] b) {
    long common = 0;
    for (int w = 0; w < b.length; w++) {
      common |= a[w] & b[w];
    }
    return common != 0;
  }
}
