package org.wellcurb.batch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.ChunkReader;
import org.wellcurb.intake.RawRow;
import org.wellcurb.intake.RecordSink;
import org.wellcurb.intake.SetAside;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.ChangesCsv;
import org.wellcurb.report.ChangesGeoJson;
import org.wellcurb.report.Place;
import org.wellcurb.report.RehearsalView.RecordChange;
import org.wellcurb.report.RehearsalView.Turn;
import org.wellcurb.report.SetAsideCsv;
import org.wellcurb.report.Whose;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Screener;

/** Judges the records of parts by two packs, on one thread. */
final class RehearseWork implements Pipeline.Work<Part, RehearsePart>, RecordSink {
  private static final int FALLS_SHORT = Outcome.FALLS_SHORT.ordinal();

  private final RulePairs pairs;
  private final Stop stop;
  private final Screener before;
  private final Screener after;
  private final double positionAccuracy;
  private final ChunkReader reader = new ChunkReader(Catalogue.standard());
  private final List<String> worse = new ArrayList<>();
  private final List<String> better = new ArrayList<>();
  private RehearsePart result = new RehearsePart(0);

  RehearseWork(
      Pack packBefore,
      Pack packAfter,
      RulePairs pairs,
      LocalDate asOf,
      double positionAccuracy,
      Stop stop) {
    this.pairs = pairs;
    this.stop = stop;
    this.before = new Screener(packBefore, asOf);
    this.after = new Screener(packAfter, asOf);
    this.positionAccuracy = positionAccuracy;
  }

  @Override
  public void on(Part part, RehearsePart into) {
    result = into;
    into.part = part;
    if (part.chunk() != null) {
      into.reading = reader.read(part.chunk(), this);
      return;
    }
    SetAside whole = part.source().unusable();
    if (whole != null) {
      put(whole);
    }
  }

  @Override
  public void record(WellRecord record, RawRow raw) {
    stop.checkWithinPart();
    byte[] was = before.outcomes(record);
    byte[] is = after.outcomes(record);
    worse.clear();
    better.clear();
    boolean changed = false;
    for (int pair = 0; pair < pairs.size(); pair++) {
      int from = pairs.before(pair, was);
      int to = pairs.after(pair, is);
      if (from != to) {
        result.count(pair, from, to);
        if (RulePairs.touches(from, to)) {
          changed = true;
          change(record, pairs.rule(pair), from, to);
        }
      }
    }
    result.screened++;
    result.changed += changed ? 1 : 0;
    result.newlyShort += worse.isEmpty() ? 0 : 1;
    result.noLongerShort += better.isEmpty() ? 0 : 1;
    group(result.contractors, Whose.driller(record), changed);
    group(result.zones, Whose.written(record, "site.zone"), changed);
    if (changed) {
      @Nullable Place place = Place.of(record, positionAccuracy);
      ChangesGeoJson.put(result.features, record, worse, better, place);
    }
  }

  private void change(WellRecord record, Rule rule, int from, int to) {
    if (to == FALLS_SHORT) {
      worse.add(rule.id());
    } else if (from == FALLS_SHORT) {
      better.add(rule.id());
    }
    @Nullable Outcome was = RulePairs.outcome(from);
    @Nullable Outcome is = RulePairs.outcome(to);
    ChangesCsv.put(result.changes, record, rule, was, is);
    result.changeLines++;
    if (result.shown.hasRoom(Turn.of(was, is))) {
      result.shown.add(
          new RecordChange(record.id(), record.file(), record.row(), rule.title(), was, is));
    }
  }

  private void group(GroupChanges groups, String name, boolean changed) {
    groups.record(name, changed, !worse.isEmpty(), !better.isEmpty());
  }

  @Override
  public void setAside(SetAside row) {
    result.setAside++;
    put(row);
  }

  private void put(SetAside row) {
    SetAsideCsv.put(
        result.setAsideLines, row.file(), row.row(), row.column(), row.reason(), row.text());
  }
}
