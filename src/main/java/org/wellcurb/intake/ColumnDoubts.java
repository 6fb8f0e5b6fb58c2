package org.wellcurb.intake;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.wellcurb.quantity.DayNumbers;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;

/**
 * What makes one doubt that a column is read as it was meant, counted as its cells are read:
 * figures that no well has, zeros, days that programs write for no date, days first beside months
 * first, and figures that change their size all at once. Nothing is done about any of it.
 *
 * <p>Counts of later rows are added to those of earlier ones, in the order of the file.
 */
public final class ColumnDoubts {
  /** Most texts of a kind that are counted one by one. */
  private static final int MOST_TEXTS = 50;

  /** 1899-12-30, 1899-12-31, 1900-01-01 and 1970-01-01: day 0 or 1 of what programs count from. */
  private static final double[] EMPTY_DAYS = {-25569, -25568, -25567, 0};

  /** Years that a spreadsheet took for the number of a day: 1977 is 1905-05-30. */
  private static final double FIRST_YEAR = 1850;

  private static final double LAST_YEAR = 2100;

  /** Days of the longest that is named instead of a day: a winter that may be either. */
  private static final double YEAR = 500;

  private static final byte AMOUNT = 1;
  private static final byte DATE = 2;
  private static final byte[] KINDS = new byte[Catalogue.standard().size()];
  private static final boolean[] USUAL_ZEROS = new boolean[KINDS.length];
  private static final double[] LEAST = new double[KINDS.length];
  private static final double[] MOST = new double[KINDS.length];

  /** Depths and levels, which people round: each in feet or metres. */
  private static final boolean[] DEPTHS = new boolean[KINDS.length];

  /** Lengths that are given in feet or metres: what may be in the other of the two. */
  private static final boolean[] LONG = new boolean[KINDS.length];

  private static final double ROUND = 5;

  /** So many figures show where they lie, and these may differ by this factor. */
  private static final long ENOUGH = 20;

  private static final double NEAR = 8;

  /** For each unit the rounded step in SI; 0 for one that no depth is in. */
  private static final double[] STEPS = new double[Units.all().size()];

  static {
    for (Unit unit : List.of(Units.FOOT, Units.METRE)) {
      STEPS[unit.id()] = ROUND * unit.factor();
    }
    for (Entry entry : Catalogue.standard().entries()) {
      int i = entry.index();
      KINDS[i] = entry.kind() == Kind.DATE ? DATE : entry.kind().isAmount() ? AMOUNT : 0;
      USUAL_ZEROS[i] = UsualZeros.isUsual(entry);
      LEAST[i] = entry.plausible().lo();
      MOST[i] = entry.plausible().hi();
      DEPTHS[i] = entry.datum().isMovable();
      LONG[i] = Units.FOOT.equals(entry.unit(UnitSystem.US));
    }
  }

  private final Map<String, Long> beyond = new TreeMap<>(Inputs.CODE_POINTS);
  private final Sizes sizes = new Sizes();
  private final Heaps heaps = new Heaps();
  private long figures;
  private double least = Double.POSITIVE_INFINITY;
  private double most;
  private final Map<String, Long> ninesTexts = new TreeMap<>(Inputs.CODE_POINTS);
  private long nines;
  private long depths;
  private long rounded;
  private long beyondCount;
  private long zeros;
  private long bounds;
  private long ranges;
  private long emptyDays;
  private long yearDays;
  private String yearDay = "";
  private long dayNumbers;
  private long spans;
  private String dayNumber = "";
  private long dayFirst;
  private long monthFirst;

  /** Looks at a cell in which something stands. */
  void see(WellRecord record, int entry) {
    byte kind = KINDS[entry];
    if (kind == AMOUNT) {
      if (record.isGiven(entry)) {
        amount(record, entry, record.lo(entry), record.hi(entry));
      }
    } else if (kind == DATE) {
      date(record, entry);
    }
  }

  private void amount(WellRecord record, int entry, double lo, double hi) {
    if (hi > lo && record.note(entry) != Note.FLOWING) {
      boolean isBound = Double.isInfinite(lo) || Double.isInfinite(hi) || lo == 0;
      bounds += isBound ? 1 : 0;
      ranges += isBound ? 0 : 1;
    }
    if (hi < LEAST[entry] || lo > MOST[entry]) {
      beyondCount++;
      count(beyond, record.written(entry), 1);
    } else if (lo == 0 && hi == 0) {
      zeros += USUAL_ZEROS[entry] ? 0 : 1;
    } else if (lo == hi) {
      size(lo, entry);
      if (DEPTHS[entry]) {
        depth(lo, record.unitId(entry));
      }
      if (record.isNines(entry)) {
        nines++;
        count(ninesTexts, record.written(entry), 1);
      }
    }
  }

  private void size(double si, int entry) {
    double size = Math.abs(si);
    figures++;
    least = Math.min(least, size);
    most = Math.max(most, size);
    if (si > 0) {
      sizes.add(si);
      if (LONG[entry]) {
        heaps.add(si);
      }
    }
  }

  private void depth(double si, int unit) {
    double step = unit < 0 ? 0 : STEPS[unit];
    if (step > 0) {
      double steps = si / step;
      depths++;
      rounded += Math.abs(steps - Math.rint(steps)) < 1e-6 ? 1 : 0;
    }
  }

  private static void count(Map<String, Long> texts, String text, long times) {
    if (texts.size() < MOST_TEXTS || texts.containsKey(text)) {
      texts.merge(text, times, Long::sum);
    }
  }

  private void date(WellRecord record, int entry) {
    if (record.state(entry) == WellRecord.UNREADABLE) {
      dayNumber(record.written(entry));
    }
    if (record.isPoint(entry)) {
      day(record, entry, record.lo(entry));
    } else if (record.isGiven(entry)
        && record.hi(entry) > record.lo(entry)
        && record.hi(entry) - record.lo(entry) <= YEAR) {
      spans++;
    }
    int first = record.writtenFigures(entry, 0);
    if (first >= 1 && first <= 31) {
      int second = record.writtenFigures(entry, 1);
      dayFirst += first > 12 && second >= 1 && second <= 12 ? 1 : 0;
      monthFirst += first <= 12 && second > 12 && second <= 31 ? 1 : 0;
    }
  }

  /** Numbers that a spreadsheet may have for days. */
  private void dayNumber(String text) {
    boolean five = text.length() == 5 && text.chars().allMatch(c -> c >= '0' && c <= '9');
    if (five && DayNumbers.mayBe(Integer.parseInt(text))) {
      dayNumber = dayNumbers++ == 0 ? text : dayNumber;
    }
  }

  private void day(WellRecord record, int entry, double day) {
    // All of them lie before 1970, or on its first day.
    emptyDays += day <= 0 && Arrays.binarySearch(EMPTY_DAYS, day) >= 0 ? 1 : 0;
    double number = day - EMPTY_DAYS[0];
    if (number >= FIRST_YEAR && number <= LAST_YEAR) {
      if (yearDays++ == 0) {
        yearDay = record.written(entry) + " = " + (long) number;
      }
    }
  }

  void add(ColumnDoubts later) {
    yearDay = yearDays == 0 ? later.yearDay : yearDay;
    yearDays += later.yearDays;
    dayNumber = dayNumbers == 0 ? later.dayNumber : dayNumber;
    dayNumbers += later.dayNumbers;
    spans += later.spans;
    beyondCount += later.beyondCount;
    later.beyond.forEach((text, times) -> count(beyond, text, times));
    nines += later.nines;
    later.ninesTexts.forEach((text, times) -> count(ninesTexts, text, times));
    zeros += later.zeros;
    bounds += later.bounds;
    ranges += later.ranges;
    depths += later.depths;
    rounded += later.rounded;
    emptyDays += later.emptyDays;
    dayFirst += later.dayFirst;
    monthFirst += later.monthFirst;
    sizes.add(later.sizes);
    heaps.add(later.heaps);
    figures += later.figures;
    least = Math.min(least, later.least);
    most = Math.max(most, later.most);
  }

  /** Amounts beyond the plausible range of the entry. */
  public long beyond() {
    return beyondCount;
  }

  /** How often each of the first such texts was met. */
  public Map<String, Long> beyondTexts() {
    return Collections.unmodifiableMap(beyond);
  }

  /** Figures of nines only, at least three, that a well may have: a figure, or unknown? */
  public long nines() {
    return nines;
  }

  /** How often each of the first such texts was met. */
  public Map<String, Long> ninesTexts() {
    return Collections.unmodifiableMap(ninesTexts);
  }

  /** Depths and levels of a single figure in feet or metres. */
  public long depths() {
    return depths;
  }

  /** How many of them are multiples of five, as they were written. */
  public long roundedDepths() {
    return rounded;
  }

  /** Zeros that were taken as figures where one does not expect many. */
  public long zeros() {
    return zeros;
  }

  /** Amounts of which only one end is given: {@code >100}, {@code <5}. */
  public long bounds() {
    return bounds;
  }

  /** Amounts of which both ends are given: {@code 10 to 15}. */
  public long ranges() {
    return ranges;
  }

  /** True if all other figures lie far from zero and near one another. */
  public boolean areZerosFar() {
    return figures >= ENOUGH && least * NEAR > most;
  }

  /** Days that are the first of some program's calendar. */
  public long emptyDays() {
    return emptyDays;
  }

  /** Days of 1905 that are years if they are taken for numbers of days. */
  public long yearDays() {
    return yearDays;
  }

  /** The first such day, and the year that it would be. */
  public String yearDay() {
    return yearDay;
  }

  /** Dates that are a year, a season or a month. */
  public long spans() {
    return spans;
  }

  /** Cells that are no dates, and numbers by which a spreadsheet counts days. */
  public long dayNumbers() {
    return dayNumbers;
  }

  /** The first such number. */
  public String dayNumber() {
    return dayNumber;
  }

  /** Dates of figures that can only have the day first. */
  public long dayFirst() {
    return dayFirst;
  }

  /** Dates of figures that can only have the month first. */
  public long monthFirst() {
    return monthFirst;
  }

  /** True if the figures are about 3.28 times as large, or as small, from some row on. */
  public boolean changesUnit() {
    return sizes.changeByFeet();
  }

  /** True if some figures are about 3.28 times as large as the others, whatever their rows. */
  public boolean mixesUnits() {
    return heaps.areFeetAndMetres();
  }
}
