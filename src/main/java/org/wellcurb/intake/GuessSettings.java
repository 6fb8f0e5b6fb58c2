package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/**
 * Guesses how a column is written whose entry is known: its unit, the order of its dates, what
 * means unknown in it. One per column.
 */
final class GuessSettings {
  /** Two-digit years are of the hundred years from this one on. */
  private static final int PIVOT = 1930;

  /** Days that programs write for no date: the first or last of their calendars, and noughts. */
  private static final Pattern EMPTY_DATES =
      Pattern.compile(
          "^(0+$|1899-12-3[01]|1900-0?1-0?[01]|1970-01-01|1753-01-01|0001-01-01|9999-|0000-"
              + "|0?[01][./-]0?1[./-]1900|3[01][./-]12[./-]1899|12[./-]3[01][./-]1899"
              + "|0?1[./-]0?1[./-](1970|1753|0001)|\\d\\d[./-]\\d\\d[./-](9999|0000)|99[./-]99[./-])");

  /** What programs and people write where a number is wanted and none is known. */
  private static final Pattern NINES =
      Pattern.compile(
          "-?9{2,8}([.,]9*0*)?|-1([.,]0+)?|-8{2,6}([.,]0+)?|-32768|-2147483648|-?1[eE]\\+?[23]\\d");

  /** Share of figures up to which they are hardly any. */
  private static final double FEW = 0.2;

  private final ColumnSurvey column;
  private final Entry entry;
  private final StringBuilder why;
  private final List<String> unknown = new ArrayList<>();
  private final List<String> doubts = new ArrayList<>();
  private boolean isUnitUnsaid;

  /**
   * @param why why the column is taken to fill this entry
   */
  GuessSettings(ColumnSurvey column, Entry entry, String why) {
    this.column = column;
    this.entry = entry;
    this.why = new StringBuilder(why);
  }

  /**
   * The guess.
   *
   * @param most the system of most units of the table
   * @param choices finds what words mean
   */
  ColumnGuess guess(HeaderWords header, UnitSystem most, ChoiceWords choices) {
    if (entry.index() == 0 && !column.isAllDifferent() && column.filled() > 1) {
      doubts.add(
          "it stands on several rows: where they are parts of one record, set rows to"
              + " \"one record an id\", and layers, if rows hold them");
    }
    @Nullable Unit unit = null;
    boolean areDays = false;
    Map<String, String> words = new LinkedHashMap<>();
    String dates = "";
    int pivot = 0;
    if (entry.kind() == Kind.DATE) {
      dates = column.dateOrder();
      pivot = column.hasTwoDigitYears() ? PIVOT : 0;
      areDays = column.areDayNumbers();
      if (areDays) {
        why.append("; its numbers are days as a spreadsheet counts them from 1900");
      }
      dateDoubts(dates);
      dateSentinels();
    } else if (entry.kind().isAmount()) {
      unit = unit(header, most);
      numberSentinels(unit);
      if (!column.thousandPoint().isEmpty()) {
        doubts.add(
            column.thousandPoint()
                + " may be in thousands, as other columns have decimal commas, and is not read: set"
                + " comma to thousands where the point is a decimal one, else export it without");
      }
      if (column.unsureCommas() > 0) {
        doubts.add(
            column.unsureCommas()
                + " figures such as 1,250 may be decimal or in thousands; set comma to one of them");
      }
    } else if (entry.kind() == Kind.CHOICE || entry.kind() == Kind.YES_NO) {
      choices.find(entry, column, words, unknown, doubts);
    }
    WrittenGuess written =
        new WrittenGuess(unit, isUnitUnsaid, "", dates, pivot, areDays, unknown, words);
    return new ColumnGuess(column, entry, written, why.toString(), doubts);
  }

  private void dateDoubts(String dates) {
    if (column.hasBothDateOrders()) {
      doubts.add("days stand first in some dates and months in others; mend the export");
    } else if (dates.isEmpty() && column.dated() > 0) {
      doubts.add(
          "no date shows whether the day or the month stands first; set dates to day first or"
              + " month first");
    }
    if (column.hasTwoDigitYears()) {
      doubts.add("years of two digits are taken from " + PIVOT + " on; set pivot otherwise");
    }
  }

  private void dateSentinels() {
    for (String text : column.texts().keySet()) {
      if (EMPTY_DATES.matcher(text).find()) {
        unknown.add(text);
      }
    }
  }

  private @Nullable Unit unit(HeaderWords header, UnitSystem most) {
    Unit us = entry.unit(UnitSystem.US);
    Unit metric = entry.unit(UnitSystem.METRIC);
    if (us == null || metric == null || us.symbol().isEmpty()) {
      return null;
    }
    if (column.units().keySet().stream().map(Unit::system).distinct().count() > 1) {
      doubts.add("cells name units of both systems: " + symbols());
    }
    Unit stated = header.unit();
    if (stated != null) {
      why.append("; it states ").append(stated.symbol());
      implausible(stated);
      return stated;
    }
    if (us.equals(metric)) {
      return us;
    }
    @Nullable Unit smaller = smaller(us, metric, most);
    if (smaller != null) {
      why.append("; its figures lie where they should in ").append(smaller.symbol());
      doubts.add("nothing states its unit; in " + us.symbol() + " its figures would be too large");
      return smaller;
    }
    double inUs = plausible(us);
    double inMetric = plausible(metric);
    if (Math.abs(inUs - inMetric) > 0.2) {
      Unit better = inUs > inMetric ? us : metric;
      why.append("; its figures lie where they should only in ").append(better.symbol());
      return better;
    }
    Unit guessed = most == UnitSystem.METRIC ? metric : us;
    isUnitUnsaid = true;
    implausible(guessed);
    return guessed;
  }

  /** Inches or centimetres, where hardly a figure could be in feet or metres but all in those. */
  private @Nullable Unit smaller(Unit us, Unit metric, UnitSystem most) {
    if (!us.symbol().equals("ft") || plausible(us) > FEW || plausible(metric) > FEW) {
      return null;
    }
    return Units.named(most == UnitSystem.METRIC ? "cm" : "in")
        .filter(unit -> plausible(unit) > 1 - FEW)
        .orElse(null);
  }

  /** Says so where hardly a figure could be in the unit. */
  private void implausible(Unit unit) {
    if (column.numbers().length > 1 && !unit.isReversed() && plausible(unit) < FEW) {
      doubts.add(
          "hardly a figure is what it could be in "
              + unit.symbol()
              + ": another unit, or a scale, such as 0.001 for thousandths?");
    }
  }

  private String symbols() {
    List<String> symbols = new ArrayList<>();
    column.units().forEach((unit, count) -> symbols.add(unit.symbol() + " (" + count + ")"));
    return String.join(", ", symbols);
  }

  private double plausible(Unit unit) {
    double[] numbers = column.numbers();
    if (numbers.length == 0 || unit.isReversed()) {
      return 0;
    }
    int inside = 0;
    for (double number : numbers) {
      double si = unit.toSi(number);
      inside += si >= entry.plausible().lo() && si <= entry.plausible().hi() ? 1 : 0;
    }
    return (double) inside / numbers.length;
  }

  /** Figures that mean unknown: nines and the like beyond what is plausible, zeros for blanks. */
  private void numberSentinels(@Nullable Unit unit) {
    Interval plausible = entry.plausible();
    double factor = unit == null || unit.isReversed() ? 1 : unit.factor();
    for (Map.Entry<String, Integer> text : column.mostCommon()) {
      String written = text.getKey();
      boolean isNines = NINES.matcher(written).matches();
      if (written.matches("0+(\\.0+)?")) {
        if (plausible.lo() > 0 && text.getValue() > 1) {
          unknown.add(written);
        } else if (!UsualZeros.isUsual(entry)
            && text.getValue() > Math.max(3, column.filled() / 20)) {
          doubts.add(
              "0 stands in "
                  + text.getValue()
                  + " cells: where it means unknown, add it to unknown");
        }
      } else if (isNines) {
        double value = Double.parseDouble(written.replace(',', '.')) * factor;
        if (value < plausible.lo() || value > plausible.hi() || written.startsWith("-999")) {
          unknown.add(written);
        } else if (text.getValue() > 1 && written.length() > 2) {
          doubts.add(written + " stands in " + text.getValue() + " cells: a figure, or unknown?");
        }
      }
    }
  }
}
