package org.wellcurb.judgement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Frame;
import org.wellcurb.formula.Truth;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Datum;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Part;
import org.wellcurb.record.WellRecord;

/**
 * Judges rules on one record at a time: when they apply, which dated texts are in force, at which
 * datum. One per worker; it makes no objects while it judges.
 */
public final class Judge {
  private static final int MEETS = Outcome.MEETS.ordinal();
  private static final int FALLS_SHORT = Outcome.FALLS_SHORT.ordinal();
  private static final int CANNOT_TELL = Outcome.CANNOT_TELL.ordinal();
  private static final int NOT_APPLICABLE = Outcome.NOT_APPLICABLE.ordinal();
  private static final int NONE_YET = -1;

  private final Catalogue catalogue;
  private final Frame frame;
  private final Shifts shifts;
  private final double asOf;
  private final int[] mustApply;
  private final int covers;
  private boolean isRepair;

  /**
   * @param asOf the as-of date of the run
   * @param mustApply keys of the entries for which n/a counts as blank
   */
  public Judge(Catalogue catalogue, LocalDate asOf, List<String> mustApply) {
    this(catalogue, asOf, mustApply, new Frame(catalogue));
  }

  /** A judge of the record in a frame that others look into too. */
  Judge(Catalogue catalogue, LocalDate asOf, List<String> mustApply, Frame frame) {
    this.catalogue = catalogue;
    this.frame = frame;
    this.asOf = asOf.toEpochDay();
    this.mustApply = mustApply.stream().mapToInt(catalogue::index).toArray();
    shifts = new Shifts(catalogue);
    covers = catalogue.index("record.covers");
  }

  /** Takes a record, to be judged by {@link #outcome}. */
  public void take(WellRecord record) {
    frame.take(record);
    for (int entry : mustApply) {
      if (frame.state(entry) == WellRecord.NOT_APPLICABLE) {
        frame.countAs(entry, WellRecord.UNKNOWN);
      }
    }
    @Nullable String covered = record.choice(covers);
    isRepair = "repair".equals(covered);
    if ("well".equals(covered)) {
      leaveOut(Part.PUMP);
    } else if ("pump".equals(covered)) {
      leaveOut(Part.WELL);
    }
    frame.asOf(asOf);
    shifts.take(frame);
  }

  /** Entries of a part that the form does not cover count as n/a, whatever stands there. */
  private void leaveOut(Part part) {
    for (Entry entry : catalogue.entries()) {
      if (entry.part() == part) {
        frame.countAs(entry.index(), WellRecord.NOT_APPLICABLE);
      }
    }
  }

  /** The outcome of a rule on the record taken, as an ordinal of {@link Outcome}; never waived. */
  public int outcome(RuleProgram rule) {
    if (rule.omission() && isRepair) {
      return NOT_APPLICABLE;
    }
    return judgedBy(rule, rule.judgedBy());
  }

  private int judgedBy(RuleProgram rule, JudgedBy day) {
    if (!rule.isDated()) {
      return text(rule, rule.texts().get(0));
    }
    if (!(day instanceof JudgedBy.LessStrictOf several)) {
      return between(rule, first(day), last(day));
    }
    int best = NONE_YET;
    for (JudgedBy one : several.days()) {
      if (counts(one, several)) {
        best = milder(best, judgedBy(rule, one));
      }
    }
    return best;
  }

  /** The first day that it may be. */
  double first(JudgedBy day) {
    if (day instanceof JudgedBy.Entry of) {
      return isGiven(of) ? frame.record().lo(of.entry().index()) : Double.NEGATIVE_INFINITY;
    }
    if (day instanceof JudgedBy.LaterOf of) {
      double latest = Double.NEGATIVE_INFINITY;
      for (JudgedBy one : of.days()) {
        latest = Math.max(latest, first(one));
      }
      return latest;
    }
    return asOf;
  }

  /** The last day that it may be. */
  double last(JudgedBy day) {
    if (day instanceof JudgedBy.Entry of) {
      return isGiven(of) ? frame.record().hi(of.entry().index()) : Double.POSITIVE_INFINITY;
    }
    if (day instanceof JudgedBy.LaterOf of) {
      double latest = Double.NEGATIVE_INFINITY;
      for (JudgedBy one : of.days()) {
        latest = isOut(one) ? latest : Math.max(latest, last(one));
      }
      return latest == Double.NEGATIVE_INFINITY ? Double.POSITIVE_INFINITY : latest;
    }
    return asOf;
  }

  private boolean isGiven(JudgedBy.Entry of) {
    return frame.state(of.entry().index()) == WellRecord.GIVEN;
  }

  /** True if a day of several is judged by: those that are n/a are not, unless all are. */
  boolean counts(JudgedBy one, JudgedBy.LessStrictOf several) {
    return !isOut(one) || isOut(several);
  }

  /** True if a day is n/a; of several, if all are. */
  private boolean isOut(JudgedBy day) {
    if (day instanceof JudgedBy.Entry of) {
      return frame.state(of.entry().index()) == WellRecord.NOT_APPLICABLE;
    }
    if (day instanceof JudgedBy.LaterOf of) {
      return areOut(of.days());
    }
    return day instanceof JudgedBy.LessStrictOf of && areOut(of.days());
  }

  private boolean areOut(List<JudgedBy> days) {
    for (JudgedBy one : days) {
      if (!isOut(one)) {
        return false;
      }
    }
    return true;
  }

  /** The milder of two outcomes: meets, not applicable, cannot tell, falls short. */
  private static int milder(int a, int b) {
    return a == NONE_YET || rank(b) < rank(a) ? b : a;
  }

  private static int rank(int outcome) {
    if (outcome == MEETS) {
      return 0;
    }
    if (outcome == NOT_APPLICABLE) {
      return 1;
    }
    return outcome == CANNOT_TELL ? 2 : 3;
  }

  /** All texts that may be in force on these days, and the days on which none is. */
  private int between(RuleProgram rule, double first, double last) {
    int all = NONE_YET;
    double covered = first;
    boolean isGap = false;
    for (DatedText text : rule.texts()) {
      if (text.firstDay() <= last && text.lastDay() >= first) {
        isGap |= text.firstDay() > covered;
        all = alike(all, text(rule, text));
        covered = Math.max(covered, text.lastDay() + 1);
      }
    }
    isGap |= covered <= last && covered < Double.POSITIVE_INFINITY;
    return isGap || all == NONE_YET ? alike(all, NOT_APPLICABLE) : all;
  }

  private static int alike(int all, int one) {
    return all == NONE_YET || all == one ? one : CANNOT_TELL;
  }

  /** One text, at every way in which the depths may have to be brought to ground. */
  int text(RuleProgram rule, DatedText text) {
    int datums = text.datums() | rule.datums();
    if (datums == 0) {
      // Nothing that it reads moves, wherever the frame was left.
      return atThisDatum(rule, text);
    }
    shifts.apply(frame, 0);
    int all = atThisDatum(rule, text);
    for (int way = 1; way < shifts.count() && all != CANNOT_TELL; way++) {
      shifts.apply(frame, way);
      all = alike(all, atThisDatum(rule, text));
    }
    return all;
  }

  private int atThisDatum(RuleProgram rule, DatedText text) {
    int when = when(rule.when(), text.when());
    if (when == Truth.FALSE || when == Truth.VOID) {
      return NOT_APPLICABLE;
    }
    @Nullable Formula require = text.require();
    if (require == null) {
      return CANNOT_TELL;
    }
    return switch (require.evaluate(frame)) {
      case Truth.VOID -> NOT_APPLICABLE;
      case Truth.TRUE -> MEETS;
      case Truth.FALSE -> when == Truth.TRUE ? FALLS_SHORT : CANNOT_TELL;
      default -> CANNOT_TELL;
    };
  }

  /**
   * Whether the record falls short of a rule that cannot be told if the rule applies: whatever day
   * decides and wherever depths are measured from, what is required does not hold.
   *
   * @param texts those that may be in force
   */
  boolean isShortIfItApplies(RuleProgram rule, List<DatedText> texts) {
    for (DatedText text : texts) {
      int ways = (text.datums() | rule.datums()) == 0 ? 1 : shifts.count();
      for (int way = 0; way < ways; way++) {
        shifts.apply(frame, way);
        @Nullable Formula require = text.require();
        if (require == null || require.evaluate(frame) != Truth.FALSE) {
          return false;
        }
      }
    }
    return !texts.isEmpty();
  }

  /**
   * Whether it cannot be told that the rule applies: on some day that may decide no text of it is
   * in force, or its condition does not hold wherever depths may be measured from.
   *
   * @param texts those that may be in force
   */
  boolean mayNotApply(RuleProgram rule, List<DatedText> texts) {
    if (hasGap(rule)) {
      return true;
    }
    for (DatedText text : texts) {
      int ways = (text.datums() | rule.datums()) == 0 ? 1 : shifts.count();
      for (int way = 0; way < ways; way++) {
        shifts.apply(frame, way);
        if (when(rule.when(), text.when()) != Truth.TRUE) {
          return true;
        }
      }
    }
    return false;
  }

  /** The rule's own condition and its text's; where there is neither it applies. */
  private int when(@Nullable Formula ofRule, @Nullable Formula ofText) {
    if (ofRule == null) {
      return ofText == null ? Truth.TRUE : ofText.evaluate(frame);
    }
    int truth = ofRule.evaluate(frame);
    return ofText == null ? truth : Truth.and(truth, ofText.evaluate(frame));
  }

  /**
   * The texts that may be in force on the judging days; for several judging days, the mildest's.
   */
  public List<DatedText> inForce(RuleProgram rule) {
    if (!rule.isDated()) {
      return rule.texts();
    }
    JudgedBy day = deciding(rule);
    double first = first(day);
    double last = last(day);
    List<DatedText> inForce = new ArrayList<>(1);
    for (DatedText text : rule.texts()) {
      if (text.firstDay() <= last && text.lastDay() >= first) {
        inForce.add(text);
      }
    }
    return inForce;
  }

  /** The day that decides: where the mildest of several stands, the one that gives it. */
  private JudgedBy deciding(RuleProgram rule) {
    JudgedBy day = rule.judgedBy();
    while (day instanceof JudgedBy.LessStrictOf several) {
      int outcome = judgedBy(rule, several);
      day = thatGives(outcome, rule, several);
    }
    return day;
  }

  /** The first of several days that gives this outcome; the first of all if none does. */
  private JudgedBy thatGives(int outcome, RuleProgram rule, JudgedBy.LessStrictOf several) {
    for (JudgedBy one : several.days()) {
      if (counts(one, several) && judgedBy(rule, one) == outcome) {
        return one;
      }
    }
    return several.days().get(0);
  }

  /** True if on some of the judging days no text is in force. */
  boolean hasGap(RuleProgram rule) {
    if (!rule.isDated()) {
      return false;
    }
    JudgedBy day = deciding(rule);
    double covered = first(day);
    boolean isGap = false;
    for (DatedText text : inForce(rule)) {
      isGap |= text.firstDay() > covered;
      covered = Math.max(covered, text.lastDay() + 1);
    }
    return isGap || (covered <= last(day) && covered < Double.POSITIVE_INFINITY);
  }

  /**
   * Adds the entries that the judging day is taken from and whose day is not known; n/a ones only
   * where there is no other.
   */
  void days(RuleProgram rule, Collection<Entry> into) {
    JudgedBy day = deciding(rule);
    days(day, isOut(day), into);
  }

  private void days(JudgedBy day, boolean withOut, Collection<Entry> into) {
    if (day instanceof JudgedBy.Entry of) {
      boolean isDay =
          isGiven(of)
              && frame.record().lo(of.entry().index()) == frame.record().hi(of.entry().index());
      if (!isDay && (withOut || !isOut(of))) {
        into.add(of.entry());
      }
    } else if (day instanceof JudgedBy.LaterOf of) {
      of.days().forEach(one -> days(one, withOut, into));
    }
  }

  /**
   * The first day that may decide, where it lies before the edition in which the text was read and
   * the text's own first day was not; minus infinity where no day is given; NaN where neither is
   * so.
   */
  double dayBefore(RuleProgram rule, DatedText text) {
    @Nullable LocalDate known = text.knownFrom();
    if (known == null) {
      return Double.NaN;
    }
    double day = first(deciding(rule));
    return day < known.toEpochDay() ? day : Double.NaN;
  }

  /** The outcome by one text alone. */
  Outcome outcome(RuleProgram rule, DatedText text) {
    return Outcome.at(text(rule, text));
  }

  /** Leaves the frame at the first way that gives this outcome; at the first way if none does. */
  void atWayThatGives(RuleProgram rule, DatedText text, Outcome outcome) {
    // Where there is one way only, it is that.
    for (int way = 0; shifts.count() > 1 && way < shifts.count(); way++) {
      shifts.apply(frame, way);
      if (atThisDatum(rule, text) == outcome.ordinal()) {
        return;
      }
    }
    shifts.apply(frame, 0);
  }

  /** True if the outcome is not the same at every way; the frame is left as it was. */
  boolean dependsOnWay(RuleProgram rule, DatedText text) {
    double record = frame.shift(Datum.RECORD);
    double water = frame.shift(Datum.WATER);
    double pump = frame.shift(Datum.PUMP);
    int all = NONE_YET;
    boolean differs = false;
    for (int way = 0; way < shifts.count(); way++) {
      shifts.apply(frame, way);
      int one = atThisDatum(rule, text);
      differs |= all != NONE_YET && all != one;
      all = one;
    }
    frame.shift(Datum.RECORD, record);
    frame.shift(Datum.WATER, water);
    frame.shift(Datum.PUMP, pump);
    return differs;
  }

  /** True if the record taken says that it is of a repair. */
  boolean isRepair() {
    return isRepair;
  }

  Catalogue catalogue() {
    return catalogue;
  }

  Frame frame() {
    return frame;
  }

  Shifts shifts() {
    return shifts;
  }

  static boolean reads(int datums, Datum datum) {
    return (datums >> datum.ordinal() & 1) != 0;
  }
}
