package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/**
 * Lays the headers of a table beside the entries: which column fills which, and what is left open.
 * One per table.
 */
final class HeaderMatches {
  /** Likeness from which choices may all be in words that nobody knows. */
  private static final double SURE = 0.9;

  /** Likenesses that are no further apart leave it open which is meant. */
  private static final double TIE = 0.03;

  /** What a letter says less than the word that it may stand for. */
  private static final double LETTER = 0.05;

  /** Columns named in one way from which a letter is taken to say the same in all. */
  private static final int TOGETHER = 3;

  /** Entries that are named of a column that is left open. */
  private static final int MOST_NAMED = 3;

  private static final Comparator<ColumnMatch> ORDER =
      Comparator.comparingDouble((ColumnMatch match) -> -match.likeness())
          .thenComparingInt(ColumnMatch::column)
          .thenComparingInt(match -> match.entry().index());

  private final List<ColumnSurvey> columns;
  private final List<HeaderWords> headers;
  private final UnitSystem most;
  private final List<ColumnMatch> sure = new ArrayList<>();
  private final List<ColumnMatch> weak = new ArrayList<>();
  private final Map<Integer, ColumnMatch> byColumn = new LinkedHashMap<>();
  private final Map<Entry, Integer> byEntry = new LinkedHashMap<>();
  private final Map<Integer, String> open = new LinkedHashMap<>();
  private final Map<Integer, ColumnMatch> first = new LinkedHashMap<>();
  private final String ofNumber;

  HeaderMatches(
      List<ColumnSurvey> columns,
      List<HeaderWords> headers,
      Catalogue catalogue,
      HeaderPhrases phrases,
      UnitSystem most) {
    this.most = most;
    this.columns = columns;
    this.headers = headers;
    compare(catalogue, phrases);
    decide();
    RecordNumber number = new RecordNumber(catalogue.entry(0));
    number.preferUnique(columns, headers, byColumn, byEntry);
    noteTaken();
    noteWeak();
    byColumn.keySet().forEach(open::remove);
    ofNumber = number.identity(columns, byColumn, byEntry);
  }

  /** What a column fills, or is most like if that is left open; null if it is like nothing. */
  @Nullable ColumnMatch of(int column) {
    return byColumn.containsKey(column) ? byColumn.get(column) : first.get(column);
  }

  /** Why it is left open what a column fills; empty if it is not. */
  String open(int column) {
    return open.getOrDefault(column, "");
  }

  /** Columns that may fill several entries, or share one with others. */
  List<Integer> leftOpen() {
    return first.keySet().stream().filter(column -> !byColumn.containsKey(column)).toList();
  }

  /** What is to be looked at of the number of the record; empty where a header says it. */
  String ofNumber() {
    return ofNumber;
  }

  private void compare(Catalogue catalogue, HeaderPhrases phrases) {
    for (int i = 0; i < headers.size(); i++) {
      for (Entry entry : catalogue.entries()) {
        compare(i, entry, headers.get(i), false, phrases);
      }
      for (HeaderWords reading : LoneLetters.readings(headers.get(i))) {
        for (Entry entry : catalogue.entries()) {
          compare(i, entry, reading, true, phrases);
        }
      }
    }
    onlyTogether();
    sure.sort(ORDER);
    weak.sort(ORDER);
  }

  /**
   * A D before what stands about a well is a distance where several columns are named so: one
   * alone, {@code D_FIELD}, may be anything, and any figure is a distance.
   */
  private void onlyTogether() {
    List<ColumnMatch> distances = sure.stream().filter(this::isDistanceByLetter).toList();
    if (distances.stream().map(ColumnMatch::column).distinct().count() < TOGETHER) {
      sure.removeAll(distances);
    }
  }

  private boolean isDistanceByLetter(ColumnMatch match) {
    List<String> written = headers.get(match.column()).words();
    return match.entry().key().startsWith("setback.")
        && !match.header().equals(headers.get(match.column()))
        && (written.get(0).equals("d") || written.get(written.size() - 1).equals("d"));
  }

  private void compare(
      int i, Entry entry, HeaderWords header, boolean isByLetter, HeaderPhrases phrases) {
    double least = isByLetter ? SURE : HeaderWeight.least(entry, header);
    HeaderWords.Likeness words = phrases.likeness(entry, header, least);
    double like = words.value();
    ColumnSurvey column = columns.get(i);
    boolean isKey = HeaderKey.of(column.name()).key().equalsIgnoreCase(entry.key());
    if ((isKey || like >= least)
        && CellsFit.fits(entry, column, header)
        && (!isByLetter || CellsFit.bearOut(entry, column, header, most))
        && (isKey || (like >= SURE && !isByLetter) || ChoiceWords.areIn(column, entry))) {
      double more = HeaderWeight.more(entry, header) - (isByLetter ? LETTER : 0);
      boolean isWeak = !isKey && words.isWeak();
      if (!isByLetter || !isWeak) {
        (isWeak ? weak : sure).add(new ColumnMatch(i, entry, header, isKey ? 2 : like + more));
      }
    }
  }

  private void decide() {
    // What one column fills is no longer open for another: again, until nothing more is told.
    for (int before = -1; before < byColumn.size(); ) {
      before = byColumn.size();
      open.clear();
      for (ColumnMatch match : sure) {
        if (!byColumn.containsKey(match.column())
            && !byEntry.containsKey(match.entry())
            && !open.containsKey(match.column())
            && !isLeftOpen(match)) {
          byColumn.put(match.column(), match);
          byEntry.put(match.entry(), match.column());
        }
      }
    }
    sure.stream()
        .filter(match -> open.containsKey(match.column()))
        .forEach(match -> first.putIfAbsent(match.column(), match));
  }

  /** Notes of columns what they may mean that another one fills. */
  private void noteTaken() {
    for (ColumnMatch match : sure) {
      @Nullable Integer taken = byEntry.get(match.entry());
      if (taken != null && match.entry().index() != 0) {
        String name = columns.get(taken).name();
        String may = "its header may mean " + match.entry().key() + ", which " + name + " fills";
        open.putIfAbsent(match.column(), may);
      }
    }
  }

  /** Notes what headers may mean that say it in part, or with one word beside another. */
  private void noteWeak() {
    Map<Integer, List<String>> entries = new LinkedHashMap<>();
    for (ColumnMatch match : weak) {
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
  private boolean isLeftOpen(ColumnMatch match) {
    if (match.likeness() >= 2 || match.entry().index() == 0) {
      return false;
    }
    List<String> entries = new ArrayList<>(List.of(match.entry().key()));
    List<Integer> rivals = new ArrayList<>();
    for (ColumnMatch other : sure) {
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
}
