package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.ChunkTally;
import org.wellcurb.intake.ColumnDoubts;
import org.wellcurb.report.ColumnDoubt;

/** Which of the doubts about a column are worth a word. */
final class Doubts {
  /** Texts that are named. */
  private static final int SHOWN = 3;

  /** Zeros below this, or below one in twenty cells, are not spoken of. */
  private static final long FEW = 4;

  private static final long ONE_IN = 20;

  /** Nines that are rarer may well be figures. */
  private static final long ONE_IN_MANY = 500;

  /** So many depths show how they are rounded; of unrounded ones a fifth are multiples of five. */
  private static final long ENOUGH = 50;

  private Doubts() {}

  /** What is to be said of the cells of a column. */
  static List<ColumnDoubt> of(int column, ChunkTally cells) {
    @Nullable ColumnDoubts seen = cells.doubts(column);
    if (seen == null) {
      return List.of();
    }
    List<ColumnDoubt> doubts = new ArrayList<>();
    if (seen.beyond() > 0) {
      doubts.add(new ColumnDoubt("beyond", seen.beyond(), List.of(mostCommon(seen.beyondTexts()))));
    }
    long given = cells.cells(column, ChunkTally.GIVEN);
    if (seen.nines() > 1 && seen.nines() * ONE_IN_MANY >= given) {
      doubts.add(new ColumnDoubt("nines", seen.nines(), List.of(mostCommon(seen.ninesTexts()))));
    }
    boolean manyZeros = seen.zeros() >= FEW && seen.zeros() * ONE_IN >= given;
    if (manyZeros || (seen.zeros() > 1 && seen.areZerosFar())) {
      doubts.add(new ColumnDoubt("zeros", seen.zeros(), List.of()));
    }
    if (seen.bounds() > 0) {
      doubts.add(new ColumnDoubt("bounds", seen.bounds(), List.of()));
    }
    if (seen.ranges() > 0) {
      doubts.add(new ColumnDoubt("ranges", seen.ranges(), List.of()));
    }
    if (seen.changesUnit()) {
      doubts.add(new ColumnDoubt("unit_changes", 0, List.of()));
    } else if (seen.mixesUnits()) {
      doubts.add(new ColumnDoubt("units_mixed", 0, List.of()));
    }
    if (seen.depths() >= ENOUGH && seen.roundedDepths() * 10 >= seen.depths() * 8) {
      doubts.add(
          new ColumnDoubt("rounded", seen.roundedDepths(), List.of(Long.toString(seen.depths()))));
    }
    if (seen.emptyDays() > 0) {
      doubts.add(new ColumnDoubt("empty_days", seen.emptyDays(), List.of()));
    }
    if (seen.yearDays() > 0) {
      doubts.add(new ColumnDoubt("year_days", seen.yearDays(), List.of(seen.yearDay())));
    }
    if (seen.spans() > 0) {
      doubts.add(new ColumnDoubt("spans", seen.spans(), List.of()));
    }
    if (seen.dayNumbers() > 0) {
      doubts.add(new ColumnDoubt("day_numbers", seen.dayNumbers(), List.of(seen.dayNumber())));
    }
    if (seen.dayFirst() > 0 && seen.monthFirst() > 0) {
      long fewer = Math.min(seen.dayFirst(), seen.monthFirst());
      doubts.add(
          new ColumnDoubt(
              "two_orders",
              fewer,
              List.of(Long.toString(seen.dayFirst()), Long.toString(seen.monthFirst()))));
    }
    return doubts;
  }

  private static String mostCommon(Map<String, Long> texts) {
    List<Map.Entry<String, Long>> all = new ArrayList<>(texts.entrySet());
    all.sort(
        Comparator.comparingLong((Map.Entry<String, Long> each) -> -each.getValue())
            .thenComparing(Map.Entry::getKey));
    List<String> shown = new ArrayList<>();
    for (Map.Entry<String, Long> text : all.subList(0, Math.min(SHOWN, all.size()))) {
      shown.add(text.getKey() + (text.getValue() > 1 ? " (" + text.getValue() + ")" : ""));
    }
    return String.join(", ", shown);
  }
}
