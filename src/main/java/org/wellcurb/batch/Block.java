package org.wellcurb.batch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.RecordMark;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.LaneScreener;
import org.wellcurb.screening.Screener;

/**
 * Records that are judged together, in input order, each by its own pack. The reader fills one
 * record again and again, so each is copied into a place of its own. One for each worker.
 */
final class Block {
  /** So few are judged one by one: to make ready what judges them together would take longer. */
  private static final int FEW = 8;

  private final List<Pack> packs;
  private final LocalDate asOf;

  /** What judges by each pack; null for one that no record needed yet. */
  private final List<@Nullable LaneScreener> judges = new ArrayList<>();

  private final RecordFiller[] records = new RecordFiller[LaneScreener.MOST];
  private final WellRecord[] taken = new WellRecord[LaneScreener.MOST];
  private final long[] marks = new long[LaneScreener.MOST];
  private final int[] packOf = new int[LaneScreener.MOST];
  private int size;

  Block(List<Pack> packs, LocalDate asOf) {
    this.packs = packs;
    this.asOf = asOf;
    packs.forEach(pack -> judges.add(null));
    for (int i = 0; i < records.length; i++) {
      records[i] = new RecordFiller(Catalogue.standard());
      taken[i] = records[i].record();
    }
  }

  /** Takes a record, to be judged by this pack. */
  void add(WellRecord record, int pack) {
    records[size].copyOf(record);
    packOf[size] = pack;
    size++;
  }

  private LaneScreener judge(int pack) {
    @Nullable LaneScreener judge = judges.get(pack);
    if (judge == null) {
      judge = new LaneScreener(packs.get(pack), asOf);
      judges.set(pack, judge);
    }
    return judge;
  }

  boolean isFull() {
    return size == records.length;
  }

  int size() {
    return size;
  }

  /** Judges all that were taken, and works out their marks. */
  void judge() {
    RecordMark.of(taken, size, marks);
    if (size < FEW) {
      return;
    }
    for (int i = 0; i < size; i++) {
      judge(packOf[i]).take(i, record(i));
    }
    for (@Nullable LaneScreener judge : judges) {
      if (judge != null) {
        judge.judge();
      }
    }
  }

  WellRecord record(int place) {
    return taken[place];
  }

  /** Its {@link RecordMark}. */
  long mark(int place) {
    return marks[place];
  }

  int pack(int place) {
    return packOf[place];
  }

  /** The outcome of each rule on a record, as the screener of its pack gives it. */
  byte[] outcomes(int place, Screener screener) {
    WellRecord record = record(place);
    return size < FEW
        ? screener.outcomes(record)
        : screener.outcomes(record, judge(packOf[place]).outcomes(place));
  }

  /** Leaves it empty. */
  void clear() {
    size = 0;
    for (@Nullable LaneScreener judge : judges) {
      if (judge != null) {
        judge.clear();
      }
    }
  }
}
