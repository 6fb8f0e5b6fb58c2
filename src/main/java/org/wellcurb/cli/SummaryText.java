package org.wellcurb.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wellcurb.batch.RehearseSummary;
import org.wellcurb.batch.ScreenSummary;
import org.wellcurb.report.Cut;
import org.wellcurb.report.FollowUp;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.Refused;
import org.wellcurb.report.RehearsalView.Turns;
import org.wellcurb.report.SinceCounts;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;

/** What a run says at its end. */
final class SummaryText {
  /** Files that are named. */
  private static final int SHOWN = 3;

  private SummaryText() {}

  static List<String> lines(ScreenSummary summary, Path out) {
    List<String> lines = new ArrayList<>();
    lines.add(
        many(summary.rowsRead(), "row")
            + " read: "
            + summary.screened()
            + " screened, "
            + summary.setAside()
            + " set aside");
    if (summary.filesSetAside() > 0) {
      lines.add(
          many(summary.filesSetAside(), "file") + " set aside whole: see " + Outputs.SET_ASIDE_CSV);
    }
    if (!summary.brokenOff().isEmpty()) {
      lines.add(
          many(summary.brokenOff().size(), "file")
              + " cut short, so the rows behind are missing: "
              + some(summary.brokenOff(), ", "));
    }
    if (!summary.notRead().isEmpty()) {
      lines.add(
          many(summary.notRead().size(), "file") + " not read: " + some(summary.notRead(), "; "));
    }
    if (!summary.firstSetAside().isEmpty()) {
      lines.add("no row could be screened; the first: " + summary.firstSetAside());
    }
    if (summary.firstSetAside().isEmpty() || summary.lost().size() > 1) {
      summary.lost().stream().limit(SHOWN).forEach(lines::add);
      if (summary.lost().size() > SHOWN) {
        lines.add("and " + (summary.lost().size() - SHOWN) + " files more like this");
      }
    }
    if (summary.elsewhere().records() > 0) {
      lines.add(
          many(summary.elsewhere().records(), "record")
              + (summary.elsewhere().records() == 1 ? " names" : " name")
              + " another jurisdiction than the only pack given is for ("
              + summary.elsewhere().named()
              + "), and "
              + (summary.elsewhere().records() == 1 ? "was" : "were")
              + " judged by it all the same: name the pack of that place, too");
    }
    lines.add(
        many(summary.withFindings(), "record")
            + " with findings: "
            + kinds(summary)
            + "; "
            + many(summary.cannotTell(), "outcome")
            + " cannot be told");
    lines.addAll(followUp(summary.followUp()));
    for (String sentence : summary.sentences()) {
      lines.add(summary.recordId() + ": " + sentence);
    }
    for (Cut cut : summary.cuts()) {
      lines.add(
          cut.cap().name().toLowerCase(Locale.ROOT).replace('_', ' ')
              + ": "
              + cut.shown()
              + " of "
              + cut.total()
              + "; "
              + cut.cap().rest()
              + " holds all");
    }
    lines.add("report: " + out.resolve(Outputs.INDEX));
    return lines;
  }

  /**
   * What a rehearsal says at its end.
   *
   * @param before what the command line calls the pack in use
   * @param after what it calls the pack tried
   */
  static List<String> lines(RehearseSummary summary, String before, String after, Path out) {
    Turns turns = summary.turns();
    List<String> lines = new ArrayList<>();
    lines.add("in use: " + pack(before, summary.packs().get(0)));
    lines.add("tried: " + pack(after, summary.packs().get(1)));
    lines.add(
        summary.differences() == 0
            ? "no rule differs between the two packs"
            : many(summary.differences(), "rule")
                + (summary.differences() == 1 ? " differs" : " differ"));
    lines.add(
        many(summary.rowsRead(), "row")
            + " read: "
            + summary.screened()
            + " judged by both packs, "
            + summary.setAside()
            + " set aside");
    lines.add(
        many(turns.changed(), "record")
            + (turns.changed() == 1 ? " changes: " : " change: ")
            + turns.newlyShort()
            + " newly short ("
            + turns.firstShort()
            + " of them clean before), "
            + turns.noLongerShort()
            + " no longer short, "
            + turns.newlyUnknown()
            + " that can no longer be told, "
            + turns.noLongerUnknown()
            + " that can be told now"
            + (turns.newlyWaived() + turns.noLongerWaived() == 0
                ? ""
                : ", "
                    + turns.newlyWaived()
                    + " waived by a variance now, "
                    + turns.noLongerWaived()
                    + " waived no longer"));
    lines.add("report: " + out.resolve(Outputs.INDEX));
    return lines;
  }

  private static String pack(String called, Pack pack) {
    String hash = pack.files().get(pack.files().size() - 1).sha256();
    return called
        + " ("
        + pack.id()
        + ", edition of "
        + pack.edition()
        + ", SHA-256 "
        + hash.substring(0, Math.min(12, hash.length()))
        + "...)";
  }

  private static List<String> followUp(FollowUp told) {
    List<String> lines = new ArrayList<>();
    if (told.settled() + told.settledUnmatchedTotal() > 0) {
      lines.add(
          many(told.settled(), "finding")
              + " settled, not counted; "
              + many(told.settledUnmatchedTotal(), "line")
              + " of the table settle nothing");
    }
    if (told.settledOtherwiseTotal() > 0) {
      lines.add(
          many(told.settledOtherwiseTotal(), "finding")
              + " settled when the record said something else: the page names them, to be looked"
              + " at again");
    }
    if (told.corrections() + told.answersUnmatchedTotal() > 0) {
      lines.add(
          many(told.corrections(), "correction")
              + " in "
              + many(told.correctedRecords(), "record")
              + "; "
              + many(told.answersUnmatchedTotal(), "record")
              + " of the answers not in this batch");
    }
    if (told.saidVoidTotal() > 0) {
      lines.add(
          many(told.saidVoidTotal(), "answer")
              + " n/a to a blank entry: said not to apply, for the office to look at: "
              + Outputs.EXPLAINED_CSV);
    }
    if (told.explainedTotal() > 0) {
      lines.add(
          many(told.explainedTotal(), "explanation")
              + " came back, for the office to settle: "
              + Outputs.EXPLAINED_CSV);
    }
    for (Refused refused : told.refused()) {
      lines.add(
          refused.place()
              + ": not applied, "
              + refused.why().label()
              + " ("
              + refused.what()
              + ")");
    }
    if (told.refusedTotal() > told.refused().size()) {
      lines.add(many(told.refusedTotal(), "line") + " of the tables given not applied in all");
    }
    if (told.idleVariancesTotal() > 0) {
      lines.add(
          many(told.idleVariancesTotal(), "variance")
              + (told.idleVariancesTotal() == 1 ? " waives" : " waive")
              + " nothing, "
              + told.unknownVariances()
              + (told.unknownVariances() == 1 ? " names" : " name")
              + " no rule of the pack: see "
              + Outputs.VARIANCES_CSV);
    }
    SinceCounts since = told.since();
    if (since != null) {
      lines.add(
          "since the earlier report: "
              + since.added()
              + " new, "
              + since.ofNewRecords()
              + " of records not in the earlier batch, "
              + since.still()
              + " still there, "
              + since.cleared()
              + " cleared, "
              + since.saidVoid()
              + " said not to apply, "
              + since.untold()
              + " that cannot be told any more; judged otherwise, "
              + since.judgedShort()
              + " newly short and "
              + since.judgedClear()
              + " no longer short; "
              + since.gone()
              + " of records not in this batch");
    }
    return lines;
  }

  private static String kinds(ScreenSummary summary) {
    List<String> counts = new ArrayList<>();
    for (FindingKind kind : FindingKind.values()) {
      long count = summary.findings().of(kind);
      String plural =
          switch (kind) {
            case DEFICIENCY -> "deficiencies";
            case DISCREPANCY -> "discrepancies";
            case OMISSION -> "omissions";
            case ADVISORY -> "advisories";
          };
      counts.add(count + " " + (count == 1 ? kind.label() : plural));
    }
    return String.join(", ", counts);
  }

  /** The first few; the report holds all. */
  private static String some(List<String> all, String between) {
    List<String> shown = all.subList(0, Math.min(SHOWN, all.size()));
    int more = all.size() - shown.size();
    return String.join(between, shown) + (more > 0 ? " and " + more + " more" : "");
  }

  private static String many(long count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
