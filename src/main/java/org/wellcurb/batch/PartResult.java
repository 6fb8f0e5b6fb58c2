package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.crosscheck.SurveyPart;
import org.wellcurb.intake.ChunkTally;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.ByteText;
import org.wellcurb.report.Elsewhere;
import org.wellcurb.report.IdleVariance;
import org.wellcurb.report.Maps;
import org.wellcurb.report.RecordLine;
import org.wellcurb.report.SetAsideLine;
import org.wellcurb.rulepack.FindingKind;

/** What came of one part: lines of the files in input order, and counts. Used again and again. */
final class PartResult {
  final ByteText findings = new ByteText();
  final ByteText records = new ByteText();
  final ByteText outcomeLines = new ByteText();
  final ByteText features = new ByteText();
  final ByteText setAsideLines = new ByteText();
  final ByteText variances = new ByteText();

  final ByteText marks = new ByteText();
  final SinceLog since = new SinceLog();

  final Maps maps;
  final SurveyPart survey;

  /** The first variances that match nothing, as the page names them. */
  final List<IdleVariance> idleVariances = new ArrayList<>();

  /** Records judged by the only pack given, which is not for the place that they name. */
  final Elsewhere elsewhere = new Elsewhere();

  long idleVarianceCount;
  long unknownVarianceCount;

  /** Findings that wait for the notices. */
  final NoticeLog noticed = new NoticeLog();

  /** Rows set aside as they stand, with what parts them. */
  final ByteText rawRows = new ByteText();

  /** The first rows set aside, for the page. */
  final List<SetAsideLine> setAsideShown = new ArrayList<>();

  final LicenceCounts licences = new LicenceCounts();
  final AskSample asks = new AskSample();
  final Worst<RecordLine> lines;
  final Worst<Flagged> flagged;
  final long[] outcomes = new long[Outcome.values().length];
  final long[] kinds = new long[FindingKind.values().length];

  /** Findings that are open, by kind. */
  final long[] open = new long[FindingKind.values().length];

  long settled;
  long screened;
  long setAside;
  long withFindings;

  /** Records without an open finding whose water cannot wait. */
  long unfitOnly;

  long withDeficiency;
  @Nullable Part part;
  @Nullable ChunkTally reading;

  /** The first record of the part, which gets a sheet if it is the only one of the run. */
  @Nullable Flagged first;

  /**
   * @param mostRules rules of the longest pack
   * @param maps empty maps, one for each pack
   */
  PartResult(int mostLines, int mostSheets, int mostRules, Maps maps) {
    survey = new SurveyPart(Catalogue.standard(), mostRules);
    this.maps = maps;
    lines = new Worst<>(mostLines, RecordLine.WORST_FIRST);
    flagged = new Worst<>(mostSheets, Flagged.WORST_FIRST);
  }

  void clear() {
    findings.clear();
    records.clear();
    outcomeLines.clear();
    features.clear();
    setAsideLines.clear();
    variances.clear();
    noticed.clear();
    marks.clear();
    since.clear();
    idleVariances.clear();
    elsewhere.clear();
    idleVarianceCount = 0;
    unknownVarianceCount = 0;
    survey.clear();
    maps.clear();
    settled = 0;
    java.util.Arrays.fill(open, 0);
    rawRows.clear();
    setAsideShown.clear();
    licences.clear();
    asks.clear();
    lines.clear();
    flagged.clear();
    java.util.Arrays.fill(outcomes, 0);
    java.util.Arrays.fill(kinds, 0);
    screened = 0;
    setAside = 0;
    withFindings = 0;
    unfitOnly = 0;
    withDeficiency = 0;
    part = null;
    reading = null;
    first = null;
  }
}
