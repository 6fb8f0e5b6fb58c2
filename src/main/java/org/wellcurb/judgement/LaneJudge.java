package org.wellcurb.judgement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.LaneCompiler;
import org.wellcurb.formula.Lanes;
import org.wellcurb.formula.TruthLanes;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;

/**
 * Judges rules on up to 64 records side by side, with the outcomes that {@link Judge} gives them
 * one by one. A rule's parts are worked out for all records at once, and only for those that it
 * applies to; what several rules share is worked out once. Where the depths of a record may have to
 * be brought to ground in several ways, its own judge takes over. One per worker.
 */
public final class LaneJudge {
  private final Lanes lanes;
  private final Judge[] judges = new Judge[Lanes.MOST];
  private final RuleLanes[] rules;
  private final Map<JudgedBy, DayLanes> days = new HashMap<>();
  private final List<DayLanes> allDays = new ArrayList<>();
  private final double[] covered = new double[Lanes.MOST];
  private final OutcomeLanes outcome = new OutcomeLanes();
  private final OutcomeLanes ofText = new OutcomeLanes();
  private final OutcomeLanes ofDay = new OutcomeLanes();
  private long isRepair;
  private long hasSeveralWays;

  /**
   * @param asOf the as-of date of the run
   * @param mustApply keys of the entries for which n/a counts as blank
   */
  public LaneJudge(
      Catalogue catalogue, LocalDate asOf, List<String> mustApply, List<RuleProgram> programs) {
    lanes = new Lanes(catalogue);
    for (int i = 0; i < judges.length; i++) {
      judges[i] = new Judge(catalogue, asOf, mustApply, lanes.frame(i));
    }
    LaneCompiler compiler = new LaneCompiler();
    rules = programs.stream().map(one -> new RuleLanes(one, compiler)).toArray(RuleLanes[]::new);
    for (RuleLanes rule : rules) {
      if (rule.program().isDated()) {
        prepare(rule.program().judgedBy());
      }
    }
  }

  private void prepare(JudgedBy day) {
    if (day instanceof JudgedBy.LessStrictOf several) {
      several.days().forEach(this::prepare);
    } else if (!days.containsKey(day)) {
      DayLanes lanesOfDay = new DayLanes(day);
      days.put(day, lanesOfDay);
      allDays.add(lanesOfDay);
    }
  }

  /** Forgets all records. */
  public void clear() {
    lanes.clear();
    allDays.forEach(DayLanes::clear);
    isRepair = 0;
    hasSeveralWays = 0;
  }

  /** Takes a record, which must stay as it is until all are judged. */
  public void take(int lane, WellRecord record) {
    Judge judge = judges[lane];
    judge.take(record);
    lanes.take(lane);
    long bit = 1L << lane;
    isRepair |= judge.isRepair() ? bit : 0;
    if (judge.shifts().count() > 1) {
      hasSeveralWays |= bit;
    } else {
      judge.shifts().apply(judge.frame(), 0);
    }
  }

  /**
   * Judges a rule on the records of these lanes.
   *
   * @param outcomes gets the ordinal of each record's outcome, by lane and rule; never waived. That
   *     a rule is not applicable, as most are, must stand there already
   */
  public void judge(int rule, long mask, byte[][] outcomes) {
    RuleLanes of = rules[rule];
    long idle = of.program().omission() ? mask & isRepair : 0;
    judgedBy(of, of.program().judgedBy(), mask & ~idle);
    put(outcome.meets, Outcome.MEETS, rule, outcomes);
    put(outcome.fallsShort, Outcome.FALLS_SHORT, rule, outcomes);
    put(outcome.cannotTell, Outcome.CANNOT_TELL, rule, outcomes);
  }

  private static void put(long mask, Outcome outcome, int rule, byte[][] outcomes) {
    byte ordinal = (byte) outcome.ordinal();
    for (long left = mask; left != 0; left &= left - 1) {
      outcomes[Long.numberOfTrailingZeros(left)][rule] = ordinal;
    }
  }

  private void judgedBy(RuleLanes rule, JudgedBy day, long mask) {
    outcome.clear();
    if (!rule.program().isDated()) {
      text(rule, rule.texts().get(0), mask, outcome);
    } else if (day instanceof JudgedBy.LessStrictOf several) {
      mildest(rule, several, mask, outcome);
    } else {
      between(rule, day, mask, outcome);
    }
  }

  private void mildest(
      RuleLanes rule, JudgedBy.LessStrictOf several, long mask, OutcomeLanes into) {
    for (JudgedBy one : several.days()) {
      long counts = 0;
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        counts |= judges[lane].counts(one, several) ? 1L << lane : 0;
      }
      ofDay.clear();
      if (one instanceof JudgedBy.LessStrictOf more) {
        mildest(rule, more, counts, into);
      } else {
        between(rule, one, counts, ofDay);
        into.milder(ofDay);
      }
    }
  }

  /** All texts that may be in force on these days, and the days on which none is. */
  private void between(RuleLanes rule, JudgedBy day, long mask, OutcomeLanes into) {
    DayLanes of = java.util.Objects.requireNonNull(days.get(day));
    of.need(judges, mask);
    long hasGap = 0;
    System.arraycopy(of.first, 0, covered, 0, covered.length);
    for (RuleLanes.Text text : rule.texts()) {
      double from = text.text().firstDay();
      double until = text.text().lastDay();
      long inForce = 0;
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        if (from <= of.last[lane] && until >= of.first[lane]) {
          inForce |= 1L << lane;
          hasGap |= from > covered[lane] ? 1L << lane : 0;
          covered[lane] = Math.max(covered[lane], until + 1);
        }
      }
      if (inForce != 0) {
        ofText.clear();
        text(rule, text, inForce, ofText);
        into.alike(ofText);
      }
    }
    for (long left = mask; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      boolean isOpen = covered[lane] <= of.last[lane];
      hasGap |= isOpen && covered[lane] < Double.POSITIVE_INFINITY ? 1L << lane : 0;
    }
    ofText.clear();
    ofText.notApplicable = hasGap | (mask & ~into.all());
    into.alike(ofText);
  }

  private void text(RuleLanes rule, RuleLanes.Text text, long mask, OutcomeLanes into) {
    long alone = text.isMoved() ? mask & hasSeveralWays : 0;
    for (long left = alone; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      into.put(lane, judges[lane].text(rule.program(), text.text()));
    }
    side(rule, text, mask & ~alone, into);
  }

  private void side(RuleLanes rule, RuleLanes.Text text, long mask, OutcomeLanes into) {
    long isFalse = 0;
    long isUnknown = 0;
    long isTrue = rule.when() == null && text.when() == null ? mask : 0;
    @Nullable TruthLanes when = rule.when();
    if (when != null) {
      when.need(lanes, mask);
      isFalse = mask & when.isFalse();
      isTrue = mask & when.isTrue();
      isUnknown = unknown(when, mask);
    }
    when = text.when();
    long left = mask & ~isFalse;
    if (when != null && left != 0) {
      when.need(lanes, left);
      isFalse |= left & when.isFalse();
      isTrue |= left & when.isTrue();
      isUnknown |= unknown(when, left);
    }
    // Where both conditions are void the rule does not apply either.
    long mayApply = (isTrue | isUnknown) & ~isFalse;
    into.notApplicable |= mask & ~mayApply;
    @Nullable TruthLanes require = text.require();
    if (require == null) {
      into.cannotTell |= mayApply;
    } else if (mayApply != 0) {
      require.need(lanes, mayApply);
      into.notApplicable |= mayApply & require.isVoid();
      into.meets |= mayApply & require.isTrue();
      into.fallsShort |= mayApply & require.isFalse() & ~isUnknown;
      into.cannotTell |=
          mayApply & ~require.isVoid() & ~require.isTrue() & ~(require.isFalse() & ~isUnknown);
    }
  }

  private static long unknown(TruthLanes truth, long mask) {
    return mask & ~(truth.isTrue() | truth.isFalse() | truth.isVoid());
  }
}
