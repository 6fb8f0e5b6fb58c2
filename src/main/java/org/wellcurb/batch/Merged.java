package org.wellcurb.batch;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.crosscheck.SurveyFile;
import org.wellcurb.intake.ChunkTally;
import org.wellcurb.report.Cap;
import org.wellcurb.report.Elsewhere;
import org.wellcurb.report.IdleVariance;
import org.wellcurb.report.Maps;
import org.wellcurb.report.RecordLine;

/** What the parts of a batch come to, merged in input order. */
final class Merged implements Pipeline.Merge<PartResult>, Closeable {
  final Totals totals = new Totals();
  final LicenceCounts licences = new LicenceCounts();
  private final AskSample asks = new AskSample();
  final SinceLog since = new SinceLog();
  final List<IdleVariance> idleVariances = new ArrayList<>();
  final Elsewhere elsewhere = new Elsewhere();
  long idleVarianceCount;
  long unknownVarianceCount;
  final @Nullable SurveyFile survey;
  final Maps maps;
  final Worst<RecordLine> lines = new Worst<>(Cap.RECORDS_ON_PAGE.most(), RecordLine.WORST_FIRST);
  final Worst<Flagged> flagged;
  final InputLedger inputs = new InputLedger();
  private final ReportFiles files;
  private final SetAsideFiles setAsideFiles;
  private final Bars bars;
  private final Stop stop;
  private final Progress progress;
  private @Nullable Flagged first;

  Merged(
      ReportFiles files,
      SetAsideFiles setAsideFiles,
      @Nullable SurveyFile survey,
      int mostSheets,
      Maps maps,
      Bars bars,
      Stop stop,
      Progress progress) {
    this.files = files;
    this.setAsideFiles = setAsideFiles;
    this.survey = survey;
    this.flagged = new Worst<>(mostSheets, Flagged.WORST_FIRST);
    this.maps = maps;
    this.bars = bars;
    this.stop = stop;
    this.progress = progress;
  }

  @Override
  public void take(PartResult result) throws IOException, RunFailure {
    stop.check();
    Part part = Objects.requireNonNull(result.part);
    files.append(result);
    ChunkTally cells = result.reading;
    inputs.take(part, cells, result.screened, result.setAside);
    if (cells != null) {
      setAsideFiles.append(part.source().rawFrame(), result.rawRows);
    }
    if (part.isEnd()) {
      setAsideFiles.endInput();
      if (part.source().unusable() != null) {
        totals.fileSetAside();
      }
    }
    if (first == null) {
      first = result.first;
    }
    asks.add(result.asks, Cap.ASKS_COUNTED.most());
    bars.asksFrom(asks.least());
    totals.add(result);
    licences.add(result.licences);
    since.add(result.since);
    int room = Cap.SIDE_LINES_ON_PAGE.most() - idleVariances.size();
    idleVariances.addAll(
        result.idleVariances.subList(0, Math.min(room, result.idleVariances.size())));
    elsewhere.add(result.elsewhere);
    idleVarianceCount += result.idleVarianceCount;
    unknownVarianceCount += result.unknownVarianceCount;
    maps.add(result.maps);
    if (survey != null) {
      survey.append(result.survey, part.source().file());
    }
    result.lines.sorted().forEach(lines::offer);
    result.flagged.sorted().forEach(flagged::offer);
    Flagged bar = flagged.bar();
    bars.set(lines.bar(), bar == null ? null : bar.line());
    progress.rows(totals.rowsRead());
    result.clear();
  }

  /** What to ask for, over a sample of the whole batch. */
  AskCounts asks() {
    return asks.all();
  }

  /** The record, where there was only one. */
  @Nullable Flagged only() {
    return totals.screened() == 1 ? first : null;
  }

  @Override
  public void close() throws IOException {
    try (files;
        setAsideFiles) {
      if (survey != null) {
        survey.close();
      }
    }
  }
}
