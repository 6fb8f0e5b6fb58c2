package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.report.Cap;
import org.wellcurb.report.KindCounts;
import org.wellcurb.report.SetAsideLine;
import org.wellcurb.rulepack.FindingKind;

/** Counts over a whole batch. */
final class Totals {
  private final long[] outcomes = new long[Outcome.values().length];
  private final long[] kinds = new long[FindingKind.values().length];
  private final List<SetAsideLine> setAsideShown = new ArrayList<>();
  private long setAsideLines;
  private long screened;
  private long setAside;
  private final long[] open = new long[FindingKind.values().length];
  private long settled;
  private long withFindings;
  private long unfitOnly;
  private long withDeficiency;

  /** Adds the counts of the next part. */
  void add(PartResult part) {
    screened += part.screened;
    setAside += part.setAside;
    withFindings += part.withFindings;
    unfitOnly += part.unfitOnly;
    withDeficiency += part.withDeficiency;
    for (int i = 0; i < outcomes.length; i++) {
      outcomes[i] += part.outcomes[i];
    }
    for (int i = 0; i < kinds.length; i++) {
      kinds[i] += part.kinds[i];
      open[i] += part.open[i];
    }
    settled += part.settled;
    for (SetAsideLine line : part.setAsideShown) {
      if (setAsideShown.size() < Cap.SET_ASIDE_ON_PAGE.most()) {
        setAsideShown.add(line);
      }
    }
    setAsideLines += part.setAside;
  }

  /** A file that is set aside whole has a line among the rows set aside. */
  void fileSetAside() {
    setAsideLines++;
  }

  long rowsRead() {
    return screened + setAside;
  }

  long screened() {
    return screened;
  }

  long setAside() {
    return setAside;
  }

  /** Lines of {@code set-aside.csv}: rows, and files set aside whole. */
  long setAsideLines() {
    return setAsideLines;
  }

  /** Records that the batch page lists, if it lists all. */
  long listed() {
    return withFindings + unfitOnly;
  }

  long withFindings() {
    return withFindings;
  }

  long withDeficiency() {
    return withDeficiency;
  }

  List<SetAsideLine> setAsideShown() {
    return setAsideShown;
  }

  /** Findings that are open: nobody has settled them. */
  KindCounts findings() {
    return new KindCounts(
        open[FindingKind.DEFICIENCY.ordinal()],
        open[FindingKind.DISCREPANCY.ordinal()],
        open[FindingKind.OMISSION.ordinal()],
        open[FindingKind.ADVISORY.ordinal()]);
  }

  /** Findings that someone has settled. */
  long settled() {
    return settled;
  }

  long outcome(Outcome outcome) {
    return outcomes[outcome.ordinal()];
  }

  /**
   * The counts by name, as run.json holds them.
   *
   * @param filesSetAside files that were set aside whole
   */
  Map<String, Long> named(long filesSetAside) {
    Map<String, Long> named = new LinkedHashMap<>();
    named.put("rowsRead", rowsRead());
    named.put("screened", screened);
    named.put("setAside", setAside);
    named.put("filesSetAside", filesSetAside);
    named.put("recordsWithFindings", withFindings);
    named.put("recordsWithDeficiency", withDeficiency);
    named.put("meets", outcome(Outcome.MEETS));
    named.put("fallsShort", outcome(Outcome.FALLS_SHORT));
    named.put("cannotTell", outcome(Outcome.CANNOT_TELL));
    named.put("notApplicable", outcome(Outcome.NOT_APPLICABLE));
    named.put("waived", outcome(Outcome.WAIVED));
    for (FindingKind kind : FindingKind.values()) {
      named.put(kind.label(), kinds[kind.ordinal()]);
    }
    named.put("settled", settled);
    return named;
  }
}
