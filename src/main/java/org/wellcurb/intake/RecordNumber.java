package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wellcurb.record.Entry;

/** Which column holds the number of the record, where no header says so well enough. */
final class RecordNumber {
  /** Columns that are named beside the one taken. */
  private static final int MOST_NAMED = 3;

  /** Rows from which numbers one after the other only count them. */
  private static final int COUNTED = 3;

  private final Entry id;

  /**
   * For a catalogue.
   *
   * @param id its entry of the number
   */
  RecordNumber(Entry id) {
    this.id = id;
  }

  /** Words by which a header says that its column tells things apart. */
  private static final Set<String> TELLING =
      Set.of("ref", "reference", "id", "number", "file", "tag", "key", "permit", "well", "folio");

  private static final Set<String> WELLS =
      Set.of(
          "well",
          "bore",
          "borehole",
          "wellid",
          "wellno",
          "wellnum",
          "boreid",
          "boreno",
          "puits",
          "forage",
          "pozo",
          "brunnen");

  private static boolean tellsRowsApart(ColumnSurvey column) {
    return column.isAllDifferent() && column.filled() == column.rows();
  }

  /**
   * A number that stands on several rows gives way to one that does not: a sheet has many wells.
   */
  void preferUnique(
      List<ColumnSurvey> columns,
      List<HeaderWords> headers,
      Map<Integer, ColumnMatch> byColumn,
      Map<Entry, Integer> byEntry) {
    Integer taken = byEntry.get(id);
    if (taken == null || columns.get(taken).isAllDifferent() || columns.get(taken).filled() < 2) {
      return;
    }
    for (int i = 0; i < columns.size(); i++) {
      ColumnSurvey column = columns.get(i);
      boolean tells = headers.get(i).words().stream().anyMatch(TELLING::contains);
      if (!byColumn.containsKey(i) && tells && tellsRowsApart(column)) {
        byColumn.remove(taken);
        byColumn.put(i, new ColumnMatch(i, id, HeaderWords.of(columns.get(i).name()), 0));
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
  String identity(
      List<ColumnSurvey> columns, Map<Integer, ColumnMatch> byColumn, Map<Entry, Integer> byEntry) {
    Integer said = byEntry.get(id);
    if (said != null) {
      return furtherLeft(said, columns, byColumn);
    }
    // OBJECTID numbers the lines of a list, WELL REF the wells.
    List<Integer> telling = new ArrayList<>();
    List<Integer> counting = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      HeaderWords header = HeaderWords.of(columns.get(i).name());
      boolean mayBe =
          !byColumn.containsKey(i) && header.unit() == null && !HeaderWeight.isGeneral(header);
      if (mayBe && tellsRowsApart(columns.get(i)) && isNumberLike(columns.get(i))) {
        if (header.words().stream().anyMatch(WELLS::contains)) {
          byColumn.put(i, new ColumnMatch(i, id, HeaderWords.of(columns.get(i).name()), 0));
          return "";
        }
        (columns.get(i).counts(COUNTED) ? counting : telling).add(i);
      }
    }
    int shared = sharedByFew(columns, byColumn);
    if (shared >= 0) {
      byColumn.put(
          shared, new ColumnMatch(shared, id, HeaderWords.of(columns.get(shared).name()), 0));
      return "";
    }
    telling.addAll(counting);
    if (!telling.isEmpty()) {
      int taken = telling.get(0);
      byColumn.put(taken, new ColumnMatch(taken, id, HeaderWords.of(columns.get(taken).name()), 0));
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
      byColumn.put(best, new ColumnMatch(best, id, HeaderWords.of(columns.get(best).name()), 0));
    }
    return "";
  }

  /** What tells rows apart, too, and stands where numbers of records do: FOLIO before PERMIT. */
  private static String furtherLeft(
      int taken, List<ColumnSurvey> columns, Map<Integer, ColumnMatch> byColumn) {
    for (int i = 0; i < taken; i++) {
      ColumnSurvey column = columns.get(i);
      boolean tells = HeaderWords.of(column.name()).words().stream().anyMatch(TELLING::contains);
      boolean isFree = !byColumn.containsKey(i) && !column.counts(COUNTED) && isNumberLike(column);
      if (tells && isFree && column.filled() > 1 && tellsRowsApart(column)) {
        return "each row of " + column.name() + " differs, too: which is the number of the record?";
      }
    }
    return "";
  }

  /** Neither days nor figures with decimals: no office numbers its wells so. */
  private static boolean isNumberLike(ColumnSurvey column) {
    boolean isMeasured =
        column.numeric() >= CellsFit.OF_KIND
            && Arrays.stream(column.numbers()).anyMatch(n -> n != Math.rint(n));
    return !isMeasured && column.dated() < CellsFit.OF_KIND;
  }

  /** A number of wells by its header that a few rows share: a well that was deepened, say. */
  private static int sharedByFew(List<ColumnSurvey> columns, Map<Integer, ColumnMatch> byColumn) {
    for (int i = 0; i < columns.size(); i++) {
      ColumnSurvey column = columns.get(i);
      HeaderWords header = HeaderWords.of(column.name());
      if (!byColumn.containsKey(i)
          && header.unit() == null
          && header.words().stream().anyMatch(WELLS::contains)
          && column.filled() > 1
          && column.filled() == column.rows()
          && (column.isManyTexts() || column.texts().size() * 2L >= column.rows())
          && isNumberLike(column)) {
        return i;
      }
    }
    return -1;
  }

  /** Where rows share a number, as layers of a well do: the first filled column of many texts. */
  private static int repeated(List<ColumnSurvey> columns, Map<Integer, ColumnMatch> byColumn) {
    for (int i = 0; i < columns.size(); i++) {
      ColumnSurvey column = columns.get(i);
      boolean isMany = column.isManyTexts() || column.texts().size() * 10L >= column.rows();
      if (!byColumn.containsKey(i)
          && column.filled() > 1
          && column.filled() == column.rows()
          && isMany
          && column.numeric() < CellsFit.OF_KIND
          && isNumberLike(column)) {
        return i;
      }
    }
    return -1;
  }
}
