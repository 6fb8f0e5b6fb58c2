package org.wellcurb.batch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.ChunkReader;
import org.wellcurb.intake.RawRow;
import org.wellcurb.intake.RecordSink;
import org.wellcurb.intake.SetAside;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.ChangesCsv;
import org.wellcurb.report.ChangesGeoJson;
import org.wellcurb.report.Place;
import org.wellcurb.report.RehearsalView.RecordChange;
import org.wellcurb.report.SetAsideCsv;
import org.wellcurb.report.Whose;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Screener;

/** Judges the records of parts by two packs, on one thread. */
final class RehearseWork implements Pipeline.Work<Part, RehearsePart>, RecordSink {
  private static final int FALLS_SHORT = Outcome.FALLS_SHORT.ordinal();
  private static final int CANNOT_TELL = Outcome.CANNOT_TELL.ordinal();
  private static final int WAIVED = Outcome.WAIVED.ordinal();
  private static final int COMPLETED = Catalogue.standard().index("dates.completed");

  private final RulePairs pairs;
  private final Stop stop;
  private final Screener before;
  private final Screener after;
  private final double positionAccuracy;
  private final ChunkReader reader = new ChunkReader(Catalogue.standard());
  private final List<String> worse = new ArrayList<>();
  private final List<String> better = new ArrayList<>();
  private final RecordTurns.One turn = new RecordTurns.One();

  /** The day of the edition tried: a well completed before it is older than its text. */
  private final double edition;

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
    edition = packAfter.edition().toEpochDay();
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
    turn.clear();
    turn.isOlder = record.hi(COMPLETED) < edition;
    for (int pair = 0; pair < pairs.size(); pair++) {
      int from = pairs.before(pair, was);
      int to = pairs.after(pair, is);
      turn.wasShort |= from == FALLS_SHORT;
      turn.isShort |= to == FALLS_SHORT;
      result.count(pair, from, to);
      if (RulePairs.touches(from, to)) {
        turn.changes = true;
        change(record, pair, from, to);
      }
    }
    result.screened++;
    result.turns.add(turn);
    boolean changed = turn.changes;
    group(result.contractors, Whose.driller(record), changed);
    group(result.zones, Whose.written(record, "site.zone"), changed);
    group(result.years, year(record), changed);
    if (changed) {
      @Nullable Place place = Place.of(record, positionAccuracy);
      ChangesGeoJson.put(result.features, record, worse, better, place);
    }
  }

  private void change(WellRecord record, int pair, int from, int to) {
    Rule rule = pairs.rule(pair);
    if (to == FALLS_SHORT) {
      worse.add(rule.id());
      turn.becomesShort = true;
      result.reach[pair] += turn.isOlder ? 1 : 0;
    } else if (from == FALLS_SHORT) {
      better.add(rule.id());
      turn.endsShort = true;
    }
    turn.becomesUnknown |= to == CANNOT_TELL;
    turn.endsUnknown |= from == CANNOT_TELL;
    turn.becomesWaived |= to == WAIVED;
    turn.endsWaived |= from == WAIVED;
    RecordChange change =
        new RecordChange(
            record.id(),
            record.file(),
            record.row(),
            Whose.written(record, "dates.completed"),
            rule,
            RulePairs.outcome(from),
            RulePairs.outcome(to),
            deciding(before, pairs.placeBefore(pair)),
            deciding(after, pairs.placeAfter(pair)));
    ChangesCsv.put(result.changes, change);
    result.changeLines++;
    result.shown.add(change);
  }

  private static @Nullable Deciding deciding(Screener screener, int place) {
    return place < 0 ? null : screener.deciding(place);
  }

  /** The year of completion; empty where it is not known. */
  private static String year(WellRecord record) {
    double first = record.lo(COMPLETED);
    double last = record.hi(COMPLETED);
    if (!record.isGiven(COMPLETED) || Double.isInfinite(first) || Double.isInfinite(last)) {
      return "";
    }
    int year = LocalDate.ofEpochDay((long) first).getYear();
    return year == LocalDate.ofEpochDay((long) last).getYear() ? String.valueOf(year) : "";
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
