package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.Nearest;

/** Guesses which entry each column fills, from its header and from what stands in it. */
final class ColumnGuesser {
  /** Likeness of a header from which an entry is considered. */
  private static final double LIKE = 0.66;

  /** Likeness from which choices may all be in words that nobody knows. */
  private static final double SURE = 0.9;

  /** What the unit of a header adds to the likeness of an entry that is usually in it. */
  private static final double USUAL_UNIT = 0.1;

  /** Share of cells that must be of the entry's kind. */
  private static final double OF_KIND = 0.5;

  /** Codes for choices are small numbers. */
  private static final int MOST_CODES = 9;

  private final Catalogue catalogue;
  private final HeaderPhrases phrases;
  private final Unread unread;

  ColumnGuesser(Catalogue catalogue) {
    this.catalogue = catalogue;
    phrases = new HeaderPhrases(catalogue);
    unread = new Unread(catalogue);
  }

  /** A column and an entry, and how alike they are. */
  private record Match(int column, Entry entry, double likeness) {}

  /** Guesses of all columns; no entry is guessed twice. */
  List<ColumnGuess> guess(List<ColumnSurvey> columns) {
    List<HeaderWords> headers =
        columns.stream().map(column -> HeaderWords.of(column.name())).toList();
    List<Match> matches = new ArrayList<>();
    for (int i = 0; i < headers.size(); i++) {
      for (Entry entry : catalogue.entries()) {
        double like = phrases.likeness(entry, headers.get(i));
        boolean isKey = HeaderKey.of(columns.get(i).name()).key().equalsIgnoreCase(entry.key());
        if ((isKey || like >= LIKE)
            && fits(entry, columns.get(i), headers.get(i))
            && (isKey || like >= SURE || haveChoices(entry, columns.get(i)))) {
          matches.add(new Match(i, entry, isKey ? 2 : like + usual(entry, headers.get(i))));
        }
      }
    }
    matches.sort(
        java.util.Comparator.comparingDouble((Match match) -> -match.likeness())
            .thenComparingInt(Match::column)
            .thenComparingInt(match -> match.entry().index()));
    Map<Integer, Match> byColumn = new LinkedHashMap<>();
    Map<Entry, Integer> byEntry = new LinkedHashMap<>();
    for (Match match : matches) {
      if (!byColumn.containsKey(match.column()) && !byEntry.containsKey(match.entry())) {
        byColumn.put(match.column(), match);
        byEntry.put(match.entry(), match.column());
      }
    }
    preferUnique(columns, headers, byColumn, byEntry);
    identity(columns, byColumn, byEntry);
    UnitSystem most = system(columns, headers);
    List<ColumnGuess> guesses = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      @Nullable Match match = byColumn.get(i);
      guesses.add(
          match == null
              ? nothing(columns.get(i))
              : described(columns.get(i), headers.get(i), match, most));
    }
    return unread.said(
        Intervals.parted(
            catalogue, UnitColumns.beside(columns, PartColumns.joined(catalogue, guesses))));
  }

  /** A little for the entry that is usually in the unit of the header: no depth is in inches. */
  private static double usual(Entry entry, HeaderWords header) {
    Unit stated = header.unit();
    boolean isUsual =
        stated != null
            && (stated.equals(entry.unit(UnitSystem.US))
                || stated.equals(entry.unit(UnitSystem.METRIC)));
    return isUsual ? USUAL_UNIT : 0;
  }

  /** Words by which a header says that its column tells things apart. */
  private static final Set<String> TELLING =
      Set.of("ref", "reference", "id", "number", "file", "tag", "key", "permit", "well", "folio");

  /**
   * A number that stands on several rows gives way to one that does not: a sheet has many wells.
   */
  private void preferUnique(
      List<ColumnSurvey> columns,
      List<HeaderWords> headers,
      Map<Integer, Match> byColumn,
      Map<Entry, Integer> byEntry) {
    Entry id = catalogue.entry(0);
    Integer taken = byEntry.get(id);
    if (taken == null || columns.get(taken).isAllDifferent() || columns.get(taken).filled() < 2) {
      return;
    }
    for (int i = 0; i < columns.size(); i++) {
      ColumnSurvey column = columns.get(i);
      boolean tells = headers.get(i).words().stream().anyMatch(TELLING::contains);
      if (!byColumn.containsKey(i)
          && tells
          && column.isAllDifferent()
          && column.filled() == column.rows()) {
        byColumn.remove(taken);
        byColumn.put(i, new Match(i, id, 0));
        byEntry.put(id, i);
        return;
      }
    }
  }

  /** A table without a number of the record cannot be read: the first column of all different. */
  private void identity(
      List<ColumnSurvey> columns, Map<Integer, Match> byColumn, Map<Entry, Integer> byEntry) {
    Entry id = catalogue.entry(0);
    if (byEntry.containsKey(id)) {
      return;
    }
    for (int i = 0; i < columns.size(); i++) {
      ColumnSurvey column = columns.get(i);
      if (!byColumn.containsKey(i) && column.isAllDifferent() && column.filled() == column.rows()) {
        byColumn.put(i, new Match(i, id, 0));
        return;
      }
    }
    int best = repeated(columns, byColumn);
    if (best >= 0) {
      byColumn.put(best, new Match(best, id, 0));
    }
  }

  /** Where rows share a number, as layers of a well do: the first filled column of many texts. */
  private static int repeated(List<ColumnSurvey> columns, Map<Integer, Match> byColumn) {
    for (int i = 0; i < columns.size(); i++) {
      ColumnSurvey column = columns.get(i);
      boolean isMany = column.isManyTexts() || column.texts().size() * 10L >= column.rows();
      if (!byColumn.containsKey(i)
          && column.filled() > 1
          && column.filled() == column.rows()
          && isMany
          && column.numeric() < OF_KIND
          && column.dated() < OF_KIND) {
        return i;
      }
    }
    return -1;
  }

  /** True unless the entry is of choices, and none of the texts is like any. */
  private boolean haveChoices(Entry entry, ColumnSurvey column) {
    if (entry.kind() != Kind.CHOICE || column.filled() == 0) {
      return true;
    }
    return column.texts().keySet().stream()
        .anyMatch(
            text ->
                entry.choice(text) >= 0
                    || near(text.toLowerCase(java.util.Locale.ROOT), entry, entry.choices())
                        != null);
  }

  /** True if nothing but yes and no stands in a column. */
  private static boolean isYesNo(ColumnSurvey column) {
    return column.filled() > 0
        && column.texts().keySet().stream()
            .allMatch(text -> text.matches("(?i)y|n|yes|no|t|f|true|false|oui|non"));
  }

  private static boolean fits(Entry entry, ColumnSurvey column, HeaderWords header) {
    if (entry.kind() == Kind.LIST) {
      return false;
    }
    Unit unit = header.unit();
    if (unit != null && !(entry.kind().isAmount() && HeaderEntry.fits(entry, unit))) {
      return false;
    }
    if (column.filled() == 0) {
      return true;
    }
    return switch (entry.kind()) {
      case TEXT -> entry.index() != 0 || column.filled() >= OF_KIND * column.rows();
      case CHOICE ->
          !isYesNo(column) && (column.numeric() < OF_KIND || isCodes(column, MOST_CODES));
      case YES_NO -> column.numeric() < OF_KIND || isCodes(column, 1);
      case DATE ->
          column.dated() >= OF_KIND
              || column.numeric() >= OF_KIND
              || !hasDigits(column)
              || haveYears(column);
      default -> column.dated() < OF_KIND && (column.numeric() >= OF_KIND || isSome(column));
    };
  }

  /** True for a few whole numbers, none above the greatest that a code is likely to be. */
  private static boolean isCodes(ColumnSurvey column, int greatest) {
    return column.texts().size() <= 4
        && Arrays.stream(column.numbers())
            .allMatch(n -> n == Math.rint(n) && n >= 0 && n <= greatest);
  }

  private static final Pattern YEAR =
      Pattern.compile(
          "(^|\\D)(1[89]|20)\\d\\d(\\D|$)|\\d{1,2}[-/.]\\d{1,2}[-/.]\\d\\d$|\\p{L}{3,}\\.?[- ,]+\\d\\d$");

  /** True if a year stands in most cells: {@code Pre 1928}, {@code 1940's}, {@code 12-May-04}. */
  private static boolean haveYears(ColumnSurvey column) {
    long years = 0;
    for (Map.Entry<String, Integer> text : column.texts().entrySet()) {
      years += YEAR.matcher(text.getKey()).find() ? text.getValue() : 0;
    }
    return years >= OF_KIND * column.filled();
  }

  private static boolean hasDigits(ColumnSurvey column) {
    return column.samples().stream().anyMatch(text -> text.matches(".*\\d.*"));
  }

  /** How an amount begins that is no plain number: {@code >14}, {@code est. 40}, {@code 12'}. */
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?i)([~<>+=(.\u2248\u2264\u2265-]|est|approx|about|ca|circa|env|over|under|min|max|up to)*"
              + "[. ]*\\d");

  /** Amounts may be written in ways that are no plain numbers. */
  private static boolean isSome(ColumnSurvey column) {
    long withDigits =
        column.texts().keySet().stream().filter(text -> AMOUNT.matcher(text).lookingAt()).count();
    return withDigits >= OF_KIND * column.texts().size();
  }

  /** The system of most units that headers name. */
  private static UnitSystem system(List<ColumnSurvey> columns, List<HeaderWords> headers) {
    int metric = 0;
    int us = 0;
    for (int i = 0; i < headers.size(); i++) {
      Unit unit = headers.get(i).unit();
      if (unit != null) {
        metric += unit.system() == UnitSystem.METRIC ? 1 : 0;
        us += unit.system() == UnitSystem.US ? 1 : 0;
      }
      for (Unit written : columns.get(i).units().keySet()) {
        metric += written.system() == UnitSystem.METRIC ? 1 : 0;
        us += written.system() == UnitSystem.US ? 1 : 0;
      }
    }
    return metric > us ? UnitSystem.METRIC : UnitSystem.US;
  }

  private static ColumnGuess nothing(ColumnSurvey column) {
    String why =
        column.filled() == 0
            ? "it is blank throughout, and its header is like no entry"
            : "its header is like no entry of its kind";
    return new ColumnGuess(
        column, null, null, "", "", List.of(), null, "", 0, List.of(), Map.of(), why, List.of());
  }

  private ColumnGuess described(
      ColumnSurvey column, HeaderWords header, Match match, UnitSystem most) {
    Entry entry = match.entry();
    List<String> doubts = new ArrayList<>();
    StringBuilder why = new StringBuilder();
    why.append(
        match.likeness() >= 2
            ? "the header is its key"
            : match.likeness() == 0
                ? "the first column that is filled throughout and tells rows apart"
                : "the header says " + String.join(" ", header.words()));
    if (entry.index() == 0 && !column.isAllDifferent() && column.filled() > 1) {
      doubts.add(
          "it stands on several rows: where they are parts of one record, set rows to"
              + " \"one record an id\", and layers, if rows hold them");
    }
    @Nullable Unit unit = null;
    List<String> unknown = new ArrayList<>();
    Map<String, String> words = new LinkedHashMap<>();
    String dates = "";
    int pivot = 0;
    if (entry.kind() == Kind.DATE) {
      dates = column.dateOrder();
      pivot = column.hasTwoDigitYears() ? PIVOT : 0;
      dateDoubts(column, dates, doubts);
      dateSentinels(column, unknown);
    } else if (entry.kind().isAmount()) {
      unit = unit(entry, column, header, most, why, doubts);
      numberSentinels(entry, column, unit, unknown, doubts);
      if (column.unsureCommas() > 0) {
        doubts.add(
            column.unsureCommas()
                + " figures such as 1,250 may be decimal or in thousands; set comma to one of them");
      }
    } else if (entry.kind() == Kind.CHOICE || entry.kind() == Kind.YES_NO) {
      choices(entry, column, words, unknown, doubts);
    }
    return new ColumnGuess(
        column,
        entry,
        unit,
        "",
        "",
        List.of(),
        null,
        dates,
        pivot,
        unknown,
        words,
        why.toString(),
        doubts);
  }

  /** Two-digit years are of the hundred years from this one on. */
  private static final int PIVOT = 1930;

  /** Days of some year of the last hundred, as spreadsheets number them from 1900. */
  private static boolean areDayNumbers(ColumnSurvey column) {
    double[] numbers = column.numbers();
    return numbers.length * 2L >= column.filled()
        && numbers.length > 0
        && Arrays.stream(numbers).allMatch(n -> n == Math.rint(n) && n > 9000 && n < 60000);
  }

  private static void dateDoubts(ColumnSurvey column, String dates, List<String> doubts) {
    if (areDayNumbers(column)) {
      doubts.add("its numbers are days as a spreadsheet counts them; set dayNumbers to from 1900");
    }
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

  /** Days that programs write for no date: the first or last of their calendars, and noughts. */
  private static final Pattern EMPTY_DATES =
      Pattern.compile(
          "^(1899-12-3[01]|1900-0?1-0?[01]|1970-01-01|1753-01-01|0001-01-01|9999-|0000-"
              + "|0?[01][./-]0?1[./-]1900|3[01][./-]12[./-]1899|12[./-]3[01][./-]1899"
              + "|0?1[./-]0?1[./-](1970|1753|0001)|\\d\\d[./-]\\d\\d[./-](9999|0000)|99[./-]99[./-])");

  private static void dateSentinels(ColumnSurvey column, List<String> unknown) {
    for (String text : column.texts().keySet()) {
      if (EMPTY_DATES.matcher(text).find()) {
        unknown.add(text);
      }
    }
  }

  private static @Nullable Unit unit(
      Entry entry,
      ColumnSurvey column,
      HeaderWords header,
      UnitSystem most,
      StringBuilder why,
      List<String> doubts) {
    Unit us = entry.unit(UnitSystem.US);
    Unit metric = entry.unit(UnitSystem.METRIC);
    if (us == null || metric == null || us.symbol().isEmpty()) {
      return null;
    }
    if (column.units().keySet().stream().map(Unit::system).distinct().count() > 1) {
      doubts.add("cells name units of both systems: " + symbols(column));
    }
    if (column.changesUnit()) {
      doubts.add(
          "the last figures lie a factor of about 3.28 from the first: feet above and metres"
              + " below, or the other way?");
    }
    Unit stated = header.unit();
    if (stated != null) {
      why.append("; it states ").append(stated.symbol());
      return stated;
    }
    if (us.equals(metric)) {
      return us;
    }
    double inUs = plausible(entry, column, us);
    double inMetric = plausible(entry, column, metric);
    if (Math.abs(inUs - inMetric) > 0.2) {
      Unit better = inUs > inMetric ? us : metric;
      why.append("; its figures lie where they should only in ").append(better.symbol());
      return better;
    }
    Unit guessed = most == UnitSystem.METRIC ? metric : us;
    doubts.add(ColumnGuess.UNSAID + "; " + guessed.symbol() + " is a guess");
    return guessed;
  }

  private static String symbols(ColumnSurvey column) {
    List<String> symbols = new ArrayList<>();
    column.units().forEach((unit, count) -> symbols.add(unit.symbol() + " (" + count + ")"));
    return String.join(", ", symbols);
  }

  private static double plausible(Entry entry, ColumnSurvey column, Unit unit) {
    double[] numbers = column.numbers();
    if (numbers.length == 0 || unit.isReversed()) {
      return 0;
    }
    int inside = 0;
    for (double number : numbers) {
      double si = number * unit.factor();
      inside += si >= entry.plausible().lo() && si <= entry.plausible().hi() ? 1 : 0;
    }
    return (double) inside / numbers.length;
  }

  /** What programs and people write where a number is wanted and none is known. */
  private static final Pattern NINES =
      Pattern.compile(
          "-?9{2,8}([.,]9*0*)?|-1([.,]0+)?|-8{2,6}([.,]0+)?|-32768|-2147483648|-?1[eE]\\+?[23]\\d");

  /** Figures that mean unknown: nines and the like beyond what is plausible, zeros for blanks. */
  private static void numberSentinels(
      Entry entry,
      ColumnSurvey column,
      @Nullable Unit unit,
      List<String> unknown,
      List<String> doubts) {
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

  private void choices(
      Entry entry,
      ColumnSurvey column,
      Map<String, String> words,
      List<String> unknown,
      List<String> doubts) {
    List<String> choices = entry.kind() == Kind.YES_NO ? List.of("yes", "no") : entry.choices();
    for (Map.Entry<String, Integer> text : column.mostCommon()) {
      String written = text.getKey();
      String lower = written.toLowerCase(java.util.Locale.ROOT);
      if (lower.startsWith("select") || lower.startsWith("choose") || lower.equals("#value!")) {
        unknown.add(written);
        continue;
      }
      if (unread.reads(entry, written) || written.matches("[?.-]+")) {
        continue;
      }
      @Nullable String near = near(lower, entry, choices);
      if (near != null) {
        words.put(written, near);
      } else if (doubts.size() < 4) {
        doubts.add("'" + written + "' is none of its choices: " + String.join(", ", choices));
      }
    }
  }

  /** The one choice that begins so, has these initials, or is a letter or two away. */
  private static @Nullable String near(String written, Entry entry, List<String> choices) {
    TreeSet<String> begins = new TreeSet<>();
    TreeSet<String> initials = new TreeSet<>();
    for (int i = 0; i < choices.size(); i++) {
      List<String> ways = new ArrayList<>(List.of(choices.get(i)));
      ways.addAll(entry.kind() == Kind.YES_NO ? List.of() : entry.spellings().get(i));
      for (String way : ways) {
        if (way.startsWith(written)) {
          begins.add(choices.get(i));
        }
        if (written.length() > 1 && written.equals(way.replaceAll("(\\w)\\w*\\W*", "$1"))) {
          initials.add(choices.get(i));
        }
      }
    }
    if (begins.size() == 1) {
      return begins.first();
    }
    if (begins.isEmpty() && initials.size() == 1) {
      return initials.first();
    }
    return written.length() < 4 ? null : Nearest.of(written, choices);
  }
}
