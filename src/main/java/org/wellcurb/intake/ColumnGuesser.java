package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** Guesses which entry each column fills, from its header and from what stands in it. */
final class ColumnGuesser {
  /** Likeness of a header from which an entry is considered. */
  private static final double LIKE = 0.66;

  /** The same of dates and texts: what stands in the column hardly tells one from another. */
  private static final double WIDE = 0.79;

  /** Likeness from which choices may all be in words that nobody knows. */
  private static final double SURE = 0.9;

  /** Likenesses that are no further apart leave it open which is meant. */
  private static final double TIE = 0.03;

  /** What the unit of a header adds to the likeness of an entry that is usually in it. */
  private static final double USUAL_UNIT = 0.1;

  /** Share of cells that must be of the entry's kind. */
  private static final double OF_KIND = 0.5;

  /** Codes for choices are small numbers. */
  private static final int MOST_CODES = 9;

  private static final int MOST_DIFFERENT = 6;

  /** Entries that are named of a column that is left open. */
  private static final int MOST_NAMED = 3;

  /** Rows from which numbers one after the other only count them. */
  private static final int COUNTED = 3;

  private final Catalogue catalogue;
  private final HeaderPhrases phrases;
  private final Unread unread;
  private final ChoiceWords choices;
  private List<String> forUnknown = List.of();

  ColumnGuesser(Catalogue catalogue) {
    this.catalogue = catalogue;
    phrases = new HeaderPhrases(catalogue);
    unread = new Unread(catalogue);
    choices = new ChoiceWords(unread);
  }

  /** A column and an entry, and how alike they are. */
  private record Match(int column, Entry entry, double likeness) {}

  /** Guesses of all columns; no entry is guessed twice. */
  List<ColumnGuess> guess(List<ColumnSurvey> columns) {
    List<HeaderWords> headers = columns.stream().map(column -> words(column)).toList();
    List<Match> sure = new ArrayList<>();
    List<Match> weak = new ArrayList<>();
    for (int i = 0; i < headers.size(); i++) {
      for (Entry entry : catalogue.entries()) {
        double least = isWide(entry) || isGeneral(headers.get(i)) ? WIDE : LIKE;
        HeaderWords.Likeness words = phrases.likeness(entry, headers.get(i), least);
        double like = words.value();
        boolean isKey = HeaderKey.of(columns.get(i).name()).key().equalsIgnoreCase(entry.key());
        if ((isKey || like >= least)
            && fits(entry, columns.get(i), headers.get(i))
            && (isKey || like >= SURE || ChoiceWords.areIn(columns.get(i), entry))) {
          double more = usual(entry, headers.get(i)) + finished(entry, headers.get(i));
          boolean isWeak = !isKey && words.isWeak();
          (isWeak ? weak : sure).add(new Match(i, entry, isKey ? 2 : like + more));
        }
      }
    }
    Comparator<Match> order =
        Comparator.comparingDouble((Match match) -> -match.likeness())
            .thenComparingInt(Match::column)
            .thenComparingInt(match -> match.entry().index());
    sure.sort(order);
    weak.sort(order);
    Map<Integer, Match> byColumn = new LinkedHashMap<>();
    Map<Entry, Integer> byEntry = new LinkedHashMap<>();
    Map<Integer, String> open = new LinkedHashMap<>();
    // What one column fills is no longer open for another: again, until nothing more is told.
    for (int before = -1; before < byColumn.size(); ) {
      before = byColumn.size();
      open.clear();
      for (Match match : sure) {
        if (!byColumn.containsKey(match.column())
            && !byEntry.containsKey(match.entry())
            && !open.containsKey(match.column())
            && !isLeftOpen(match, sure, byColumn, byEntry, columns, open)) {
          byColumn.put(match.column(), match);
          byEntry.put(match.entry(), match.column());
        }
      }
    }
    Map<Integer, Match> first = new LinkedHashMap<>();
    sure.stream()
        .filter(match -> open.containsKey(match.column()))
        .forEach(match -> first.putIfAbsent(match.column(), match));
    preferUnique(columns, headers, byColumn, byEntry);
    for (Match match : sure) {
      @Nullable Integer taken = byEntry.get(match.entry());
      if (taken != null && match.entry().index() != 0) {
        String name = columns.get(taken).name();
        String may = "its header may mean " + match.entry().key() + ", which " + name + " fills";
        open.putIfAbsent(match.column(), may);
      }
    }
    weak(weak, open);
    byColumn.keySet().forEach(open::remove);
    String ofNumber = identity(columns, byColumn, byEntry);
    UnitSystem most = system(columns, headers);
    List<ColumnGuess> guesses = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      @Nullable Match match = byColumn.containsKey(i) ? byColumn.get(i) : first.get(i);
      ColumnGuess guess =
          match == null
              ? nothing(columns.get(i), open.getOrDefault(i, ""))
              : described(columns.get(i), headers.get(i), match, most);
      boolean isNumber = match != null && match.likeness() == 0 && !ofNumber.isEmpty();
      guesses.add(isNumber ? guess.withDoubt(ofNumber) : guess);
    }
    List<ColumnGuess> all =
        Intervals.parted(
            catalogue, UnitColumns.beside(columns, PartColumns.joined(catalogue, guesses)));
    forUnknown = unread.common(all);
    List<ColumnGuess> said = new ArrayList<>(unread.said(all, forUnknown));
    for (int i : first.keySet()) {
      boolean isOpen = !byColumn.containsKey(i) && said.get(i).entry() != null;
      said.set(i, isOpen ? said.get(i).leftOpen(open.getOrDefault(i, "")) : said.get(i));
    }
    return said;
  }

  /** Notes what headers may mean that say it in part, or with one word beside another. */
  private static void weak(List<Match> weak, Map<Integer, String> open) {
    Map<Integer, List<String>> entries = new LinkedHashMap<>();
    for (Match match : weak) {
      List<String> all = entries.computeIfAbsent(match.column(), key -> new ArrayList<>());
      if (all.size() < MOST_NAMED) {
        all.add(match.entry().key());
      }
    }
    entries.forEach(
        (column, all) ->
            open.putIfAbsent(
                column,
                "its header may mean " + String.join(" or ", all) + ", but says so only in part"));
  }

  /**
   * Notes why a column is left for a person to decide: its words are as near to another entry, or
   * those of another column are as near to the same one.
   */
  private static boolean isLeftOpen(
      Match match,
      List<Match> matches,
      Map<Integer, Match> byColumn,
      Map<Entry, Integer> byEntry,
      List<ColumnSurvey> columns,
      Map<Integer, String> open) {
    if (match.likeness() >= 2 || match.entry().index() == 0) {
      return false;
    }
    List<String> entries = new ArrayList<>(List.of(match.entry().key()));
    List<Integer> rivals = new ArrayList<>();
    for (Match other : matches) {
      boolean isNear =
          other.likeness() > match.likeness() - TIE && other.likeness() <= match.likeness();
      if (isNear && other.column() == match.column() && !other.entry().equals(match.entry())) {
        if (!byEntry.containsKey(other.entry())
            && !Intervals.fillBoth(match.entry(), other.entry(), columns.get(match.column()))) {
          entries.add(other.entry().key());
        }
      } else if (isNear
          && other.entry().equals(match.entry())
          && other.column() != match.column()
          && !byColumn.containsKey(other.column())
          && !open.containsKey(other.column())) {
        rivals.add(other.column());
      }
    }
    String may = "its header may mean " + String.join(" or ", entries);
    if (entries.size() > 1) {
      open.put(match.column(), may + ", and its words leave open which");
    } else if (!rivals.isEmpty()) {
      rivals.add(0, match.column());
      for (int column : rivals) {
        List<String> others =
            rivals.stream()
                .filter(other -> other != column)
                .map(other -> columns.get(other).name())
                .toList();
        open.put(
            column, may + ", but so may " + String.join(", ", others) + "; put it in one of them");
      }
    }
    return open.containsKey(match.column());
  }

  /** Words of the columns guessed last that seem to mean that nothing is known, in all of them. */
  List<String> forUnknown() {
    return forUnknown;
  }

  /** The words of its header; ON above dates means their day: {@code SAMPLED_ON}. */
  private static HeaderWords words(ColumnSurvey column) {
    HeaderWords header = HeaderWords.of(column.name());
    int last = header.words().size() - 1;
    boolean isOn = last > 0 && header.words().get(last).equals("on") && column.dated() >= OF_KIND;
    if (!isOn) {
      return header;
    }
    List<String> words = new ArrayList<>(header.words().subList(0, last));
    words.add("date");
    return new HeaderWords(words, header.unit());
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

  /** Words that say nothing alone: FROM may be that of a casing, a screen, a layer. */
  private static final Set<String> GENERAL =
      Set.of("from", "to", "top", "bottom", "upper", "lower", "start", "end", "base", "date");

  /** Words that say little alone, unless a unit stands beside them: TANK_GAL is a volume. */
  private static final Set<String> VAGUE =
      Set.of("pump", "screen", "tank", "relief", "water", "well", "test", "motor");

  private static boolean tellsRowsApart(ColumnSurvey column) {
    return column.isAllDifferent() && column.filled() == column.rows();
  }

  private static boolean isGeneral(HeaderWords header) {
    String only = header.words().size() == 1 ? header.words().get(0) : "";
    return GENERAL.contains(only) || (header.unit() == null && VAGUE.contains(only));
  }

  private static boolean isWide(Entry entry) {
    return entry.kind() == Kind.DATE || entry.kind() == Kind.TEXT;
  }

  /** Words for the depth of the well, where another column has that of the hole. */
  private static final Set<String> FINISHED = Set.of("finished", "completed", "final");

  /** A little for the depth of the finished well, so that it goes before the total depth. */
  private static double finished(Entry entry, HeaderWords header) {
    boolean isFinished =
        entry.key().equals("well.depth") && header.words().stream().anyMatch(FINISHED::contains);
    return isFinished ? 2 * USUAL_UNIT : 0;
  }

  /** Words by which a header says that its column tells things apart. */
  private static final Set<String> TELLING =
      Set.of("ref", "reference", "id", "number", "file", "tag", "key", "permit", "well", "folio");

  private static final Set<String> WELLS =
      Set.of("well", "bore", "borehole", "wellid", "boreid", "puits", "forage", "pozo", "brunnen");

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
      if (!byColumn.containsKey(i) && tells && tellsRowsApart(column)) {
        byColumn.remove(taken);
        byColumn.put(i, new Match(i, id, 0));
        byEntry.put(id, i);
        return;
      }
    }
  }

  /**
   * A table without a number of the record cannot be read: the first column of all different, one
   * of the wells before others, and one that only counts the rows last of all.
   *
   * @return what is to be looked at; empty where a header says that it is the number
   */
  private String identity(
      List<ColumnSurvey> columns, Map<Integer, Match> byColumn, Map<Entry, Integer> byEntry) {
    Entry id = catalogue.entry(0);
    if (byEntry.containsKey(id)) {
      return "";
    }
    // OBJECTID numbers the lines of a list, WELL REF the wells.
    List<Integer> telling = new ArrayList<>();
    List<Integer> counting = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      HeaderWords header = HeaderWords.of(columns.get(i).name());
      boolean mayBe = !byColumn.containsKey(i) && header.unit() == null && !isGeneral(header);
      if (mayBe && tellsRowsApart(columns.get(i)) && !isMeasured(columns.get(i))) {
        if (header.words().stream().anyMatch(WELLS::contains)) {
          byColumn.put(i, new Match(i, id, 0));
          return "";
        }
        (columns.get(i).counts(COUNTED) ? counting : telling).add(i);
      }
    }
    telling.addAll(counting);
    if (!telling.isEmpty()) {
      int taken = telling.get(0);
      byColumn.put(taken, new Match(taken, id, 0));
      String others =
          String.join(
              ", ",
              telling.stream().skip(1).limit(MOST_NAMED).map(i -> columns.get(i).name()).toList());
      return (counting.contains(taken)
              ? "it may only count the rows of this export"
              : "its header does not say that it is the number of the record")
          + (others.isEmpty() ? "" : "; each row of these differs, too: " + others);
    }
    int best = repeated(columns, byColumn);
    if (best >= 0) {
      byColumn.put(best, new Match(best, id, 0));
    }
    return "";
  }

  /** True for figures with decimals: no office numbers its wells so. */
  private static boolean isMeasured(ColumnSurvey column) {
    return column.numeric() >= OF_KIND
        && Arrays.stream(column.numbers()).anyMatch(n -> n != Math.rint(n));
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
      case TEXT ->
          !isYesNo(column) && (entry.index() != 0 || column.filled() >= OF_KIND * column.rows());
      case CHOICE ->
          !isYesNo(column)
              && column.dated() < OF_KIND
              && (column.numeric() < OF_KIND || isCodes(column, MOST_CODES));
      case YES_NO -> column.dated() < OF_KIND && (column.numeric() < OF_KIND || isCodes(column, 1));
      case DATE ->
          column.dated() >= OF_KIND
              || column.numeric() >= OF_KIND
              || (!hasDigits(column) && !isYesNo(column))
              || haveYears(column);
      default ->
          column.dated() < OF_KIND
              && (column.numeric() >= OF_KIND || (isSome(column) && !haveYears(column)))
              && (!entry.key().equals("sample.ph") || isWater(column));
    };
  }

  /** True for what water may have: PH above 1 and 3 are the phases of a motor. */
  private static boolean isWater(ColumnSurvey column) {
    double[] numbers = column.numbers();
    long water = Arrays.stream(numbers).filter(n -> n > 4 && n < 11).count();
    return water >= OF_KIND * numbers.length;
  }

  private static boolean isMissing(String text) {
    return text.chars().noneMatch(c -> c >= '0' && c <= '9');
  }

  /** True for a few whole numbers, none above the greatest that a code is likely to be. */
  private static boolean isCodes(ColumnSurvey column, int greatest) {
    long codes = column.texts().keySet().stream().filter(text -> !isMissing(text)).count();
    return codes <= MOST_DIFFERENT
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

  private static ColumnGuess nothing(ColumnSurvey column, String open) {
    if (!open.isEmpty()) {
      return new ColumnGuess(column, null, WrittenGuess.NONE, open, List.of(open));
    }
    String why =
        column.filled() == 0
            ? "it is blank throughout, and its header is like no entry"
            : "its header is like no entry of its kind" + seen(column);
    return new ColumnGuess(column, null, WrittenGuess.NONE, why, List.of());
  }

  /** What its header and its cells say of how it is written, whatever it is. */
  private static String seen(ColumnSurvey column) {
    Unit unit = HeaderWords.of(column.name()).unit();
    if (column.areDayNumbers()) {
      return "; its numbers may be days as a spreadsheet counts them";
    }
    if (column.dated() >= OF_KIND) {
      String order = column.dateOrder();
      return order.isEmpty() ? "; dates" : "; dates, " + order;
    }
    return unit == null || column.numeric() < OF_KIND
        ? ""
        : "; " + unit.symbol() + " by its header";
  }

  private ColumnGuess described(
      ColumnSurvey column, HeaderWords header, Match match, UnitSystem most) {
    String why =
        match.likeness() >= 2
            ? "the header is its key"
            : match.likeness() == 0
                ? "the first column that is filled throughout and tells rows apart"
                : "the header says " + String.join(" ", header.words());
    return new GuessSettings(column, match.entry(), why).guess(header, most, choices);
  }
}
