package org.wellcurb.batch;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.report.ChangesCsv;
import org.wellcurb.report.FindingsGeoJson;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.SetAsideCsv;

/** What the parts of a rehearsal come to, merged in input order; writes the files that grow. */
final class RehearseMerged implements Pipeline.Merge<RehearsePart>, Closeable {
  final InputLedger inputs = new InputLedger();
  final FirstChanges shown = new FirstChanges();
  final GroupChanges contractors = new GroupChanges();
  final GroupChanges zones = new GroupChanges();
  final GroupChanges years = new GroupChanges();
  final RecordTurns turns = new RecordTurns();
  final long[] counts;
  final long[] reach;
  long screened;
  long setAside;
  long changeLines;
  private final Stop stop;
  private final Progress progress;
  private final Path folder;
  private final Deque<OutputStream> open = new ArrayDeque<>();
  private final OutputStream changes;
  private final OutputStream features;
  private final OutputStream setAsideLines;
  private boolean anyFeature;

  RehearseMerged(Path folder, int pairs, Stop stop, Progress progress) throws IOException {
    this.folder = folder;
    this.stop = stop;
    this.progress = progress;
    counts = new long[pairs * RulePairs.OUTCOMES * RulePairs.OUTCOMES];
    reach = new long[pairs];
    try {
      changes = start(Outputs.CHANGES_CSV, ChangesCsv.HEADER);
      features = start(Outputs.CHANGES_GEOJSON, FindingsGeoJson.START);
      setAsideLines = start(Outputs.SET_ASIDE_CSV, SetAsideCsv.HEADER);
    } catch (IOException e) {
      close();
      throw e;
    }
  }

  private OutputStream start(String name, String text) throws IOException {
    OutputStream out = Files.newOutputStream(folder.resolve(name));
    open.push(out);
    out.write(text.getBytes(StandardCharsets.US_ASCII));
    return out;
  }

  @Override
  public void take(RehearsePart result) throws IOException, RunFailure {
    stop.check();
    write(result);
    inputs.take(
        Objects.requireNonNull(result.part), result.reading, result.screened, result.setAside);
    screened += result.screened;
    setAside += result.setAside;
    turns.add(result.turns);
    changeLines += result.changeLines;
    for (int i = 0; i < counts.length; i++) {
      counts[i] += result.counts[i];
    }
    for (int i = 0; i < reach.length; i++) {
      reach[i] += result.reach[i];
    }
    years.add(result.years);
    contractors.add(result.contractors);
    zones.add(result.zones);
    shown.add(result.shown);
    progress.rows(screened + setAside);
    result.clear();
  }

  private void write(RehearsePart result) throws IOException {
    result.changes.writeTo(changes);
    if (result.features.length() > 0) {
      if (anyFeature) {
        features.write(FindingsGeoJson.BETWEEN.getBytes(StandardCharsets.US_ASCII));
      }
      anyFeature = true;
      result.features.writeTo(features);
    }
    result.setAsideLines.writeTo(setAsideLines);
  }

  /** How many records had this pair of outcomes. */
  long count(int pair, int from, int to) {
    return counts[(pair * RulePairs.OUTCOMES + from) * RulePairs.OUTCOMES + to];
  }

  /** How many records the rule of a pair judges: all to which it applies. */
  long judged(int pair, boolean isAfter) {
    long judged = 0;
    for (int from = 0; from < RulePairs.OUTCOMES; from++) {
      for (int to = 0; to < RulePairs.OUTCOMES; to++) {
        judged += RulePairs.isJudged(isAfter ? to : from) ? count(pair, from, to) : 0;
      }
    }
    return judged;
  }

  /** How many records fall short of the rule of a pair. */
  long fallShort(int pair, boolean isAfter) {
    int shortOf = Outcome.FALLS_SHORT.ordinal();
    long all = 0;
    for (int other = 0; other < RulePairs.OUTCOMES; other++) {
      all += isAfter ? count(pair, other, shortOf) : count(pair, shortOf, other);
    }
    return all;
  }

  /** How many records fare otherwise by the rule of a pair. */
  long changed(int pair) {
    long changed = 0;
    for (int from = 0; from < RulePairs.OUTCOMES; from++) {
      for (int to = 0; to < RulePairs.OUTCOMES; to++) {
        changed += RulePairs.touches(from, to) ? count(pair, from, to) : 0;
      }
    }
    return changed;
  }

  /** Writes what stands at the end of files, and closes them. */
  void finish() throws IOException {
    features.write(FindingsGeoJson.END.getBytes(StandardCharsets.US_ASCII));
    close();
  }

  @Override
  public void close() throws IOException {
    while (!open.isEmpty()) {
      open.pop().close();
    }
  }
}
