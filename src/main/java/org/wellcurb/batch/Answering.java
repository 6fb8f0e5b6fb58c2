package org.wellcurb.batch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.batch.Answers.Line;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Amender;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Kind;
import org.wellcurb.record.NameFold;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Refused.Why;
import org.wellcurb.report.Whose;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Screener;

/**
 * Applies answers to records, on one thread. An answer that cannot be read, that says less than the
 * record, or that is a bound by which a finding cannot be told any more, is not applied: it would
 * make a finding vanish that nobody answered. Nor is the result of a sample that nobody took.
 */
final class Answering {
  /** Share by which a range may be wider, for its ends were reckoned from another unit. */
  private static final double SLACK = 1e-9;

  /** Both ends of a range; what a unit counts by, as in {@code /100 mL}, is none. */
  private static final Pattern TWO_NUMBERS = Pattern.compile("[0-9][^0-9.,]+(?<!/)[.,]?[0-9]");

  private static final int FALLS_SHORT = Outcome.FALLS_SHORT.ordinal();
  private static final int CANNOT_TELL = Outcome.CANNOT_TELL.ordinal();

  private final Answers answers;
  private final @Nullable Set<String> repeated;
  private final LocalDate asOf;
  private final Amender amender = new Amender(Catalogue.standard());

  /**
   * @param repeated numbers on several rows; null where that is not known
   * @param asOf as-of date of the run
   */
  Answering(Answers answers, @Nullable Set<String> repeated, LocalDate asOf) {
    this.asOf = asOf;
    this.answers = answers;
    this.repeated = repeated;
  }

  /**
   * The record with the corrections that came back for it; the same where there are none.
   *
   * @param screener of the pack that judges it
   */
  WellRecord amended(WellRecord record, Screener screener) {
    if (answers.isEmpty()) {
      return record;
    }
    answers.meet(record.id(), licence -> isTheirs(record, licence));
    List<Line> named = answers.of(record.id());
    if (named.isEmpty()) {
      return record;
    }
    List<Line> meant = agreeing(meant(record, named), record);
    if (meant.isEmpty()) {
      return record;
    }
    Set<String> asked = asked(record, screener);
    WellRecord tried = amender.amend(record, texts(meant));
    List<Line> able = new ArrayList<>();
    List<Line> open = new ArrayList<>();
    for (Line line : meant) {
      @Nullable Why why = why(record, tried, line, screener.pack());
      if (why != null || !asked.contains(line.entry().key())) {
        answers.refuse(line, why != null ? why : Why.NOT_ASKED);
        continue;
      }
      able.add(line);
      if (isOpen(tried, line)) {
        open.add(line);
      }
    }
    open.removeIf(line -> !isUntoldBy(record, line, screener));
    open.forEach(line -> answers.refuse(line, Why.OPEN));
    able.removeAll(open);
    if (able.isEmpty()) {
      return record;
    }
    answers.used(able, record);
    WellRecord amended = amender.amend(record, texts(able));
    for (Line line : able) {
      if (amended.state(line.entry().index()) == WellRecord.NOT_APPLICABLE) {
        answers.saidVoid(line);
      }
    }
    return amended;
  }

  /** Whether an answer is an amount or a date that is a range or a bound. */
  private static boolean isOpen(WellRecord now, Line line) {
    int entry = line.entry().index();
    Kind kind = line.entry().kind();
    return (kind == Kind.DATE || kind.isAmount()) && now.isGiven(entry) && !now.isPoint(entry);
  }

  /** Whether a rule that the record falls short of cannot be told once this alone is answered. */
  private boolean isUntoldBy(WellRecord record, Line line, Screener screener) {
    byte[] was = screener.outcomes(record).clone();
    byte[] now = screener.outcomes(amender.amend(record, texts(List.of(line))));
    for (int rule = 0; rule < was.length; rule++) {
      if (was[rule] == FALLS_SHORT && now[rule] == CANNOT_TELL) {
        return true;
      }
    }
    return false;
  }

  private static Map<Integer, String> texts(List<Line> lines) {
    // By place of the entry, so that the order of lines is no matter.
    Map<Integer, String> texts = new java.util.TreeMap<>();
    lines.forEach(line -> texts.put(line.entry().index(), line.text()));
    return texts;
  }

  /** Lines that mean this record and were sent to its licence. */
  private List<Line> meant(WellRecord record, List<Line> named) {
    List<Line> meant = new ArrayList<>();
    for (Line line : named) {
      if (line.spot().fit(record.file(), record.row(), repeated) == Spot.Fit.NONE) {
        answers.refuse(line, line.spot().unfit());
      } else if (!isTheirs(record, line.licence())) {
        answers.refuse(line, Why.OTHER_LICENCE);
      } else {
        meant.add(line);
      }
    }
    return meant;
  }

  /**
   * The entries that a point of a notice may ask for: those that decided a finding of this record
   * that is no advisory, and the second sample where it was the first. By any other a licence would
   * change what nobody asked about, such as where a well is or when it was completed, and with it
   * which rules apply.
   */
  private static Set<String> asked(WellRecord record, Screener screener) {
    screener.outcomes(record);
    Set<String> entries = new HashSet<>();
    for (Finding finding : screener.findings()) {
      if (finding.rule().kind() != FindingKind.ADVISORY) {
        entries.add(finding.deciding().entry());
      }
    }
    if (entries.contains(SampleAnswer.FIRST)) {
      entries.add(SampleAnswer.AGAIN);
    }
    return entries;
  }

  private static boolean isTheirs(WellRecord record, String licence) {
    return licence.isEmpty()
        || NameFold.same(licence, Whose.driller(record))
        || NameFold.same(licence, Whose.installer(record));
  }

  /** Those of each entry that say one thing; file and row go before a number alone. */
  private List<Line> agreeing(List<Line> meant, WellRecord record) {
    Map<Integer, List<Line>> byEntry = new HashMap<>();
    meant.forEach(
        line -> byEntry.computeIfAbsent(line.entry().index(), e -> new ArrayList<>()).add(line));
    List<Line> agreeing = new ArrayList<>();
    for (Line line : meant) {
      List<Line> same = byEntry.getOrDefault(line.entry().index(), List.of());
      boolean one = same.stream().allMatch(other -> other.text().equals(line.text()));
      if (one || isExact(line, record)) {
        agreeing.add(line);
      } else {
        answers.refuse(line, Why.TWO_ANSWERS);
      }
    }
    return agreeing;
  }

  private boolean isExact(Line line, WellRecord record) {
    return line.spot().fit(record.file(), record.row(), repeated) == Spot.Fit.EXACT;
  }

  /** Why this entry is not to be taken from the answer; null if it may be. */
  private @Nullable Why why(WellRecord was, WellRecord now, Line line, Pack pack) {
    int entry = line.entry().index();
    return switch (now.state(entry)) {
      case WellRecord.UNREADABLE -> Why.UNREADABLE;
      case WellRecord.UNKNOWN -> Why.NOTHING;
      case WellRecord.NOT_APPLICABLE ->
          was.isGiven(entry) || pack.mustApply().contains(was.catalogue().entry(entry).key())
              ? Why.NOT_APPLICABLE
              : null;
      default ->
          saysLess(was, now, entry, line.text()) ? Why.LESS : SampleAnswer.why(was, line, asOf);
    };
  }

  /**
   * True of a range that is wider than what was written, wherever it lies: of a figure that was
   * measured it says less, and no rule may be able to tell it. A result of a laboratory may be
   * below what it can detect, which is one number; it must not hold what was written.
   */
  private static boolean saysLess(WellRecord was, WellRecord now, int entry, String text) {
    if (!was.isGiven(entry)) {
      return false;
    }
    boolean holds = now.lo(entry) <= was.lo(entry) && now.hi(entry) >= was.hi(entry);
    double width = was.hi(entry) - was.lo(entry);
    boolean isWider = now.hi(entry) - now.lo(entry) > width + SLACK * Math.abs(width);
    return isWider && (holds || !isResult(was, entry, text));
  }

  private static boolean isResult(WellRecord was, int entry, String text) {
    return was.catalogue().entry(entry).key().startsWith("sample.")
        && !TWO_NUMBERS.matcher(text).find();
  }
}
