package org.wellcurb.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVParser;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;

/** Why a row is no record, in words: each reason stands here once. */
final class RowFault {
  static final String NUL = "holds NUL bytes; export it again as text";
  static final String CELL = "a cell is longer than " + Bounds.CELL + " bytes";
  static final String NO_ID = "no record.id";
  static final String DOTTED_ID =
      "no record.id; in JSON it is the name id within record, not one name with a dot";
  static final String HEADER_AGAIN = "the header again";
  static final String REMARK_ALONE = "only a remark stands in it";
  static final String TOTAL = "looks like a total, not like a record";

  /** What stands before a sum, in the languages of the pages and some others. */
  private static final Set<String> TOTALS =
      Set.of(
          "total",
          "totals",
          "grand total",
          "subtotal",
          "sub-total",
          "sum",
          "total général",
          "sous-total",
          "somme",
          "summe",
          "gesamt",
          "gesamtsumme",
          "suma",
          "totale",
          "totaal");

  /** The ASCII characters with which such a word may begin, in either case or behind blanks. */
  private static final boolean[] BEGINS_TOTAL = new boolean[128];

  static {
    Arrays.fill(BEGINS_TOTAL, 0, ' ' + 1, true);
    for (String word : TOTALS) {
      BEGINS_TOTAL[word.charAt(0)] = true;
      BEGINS_TOTAL[Character.toUpperCase(word.charAt(0))] = true;
    }
  }

  private static final Set<String> COUNTED = Set.of("wells", "records", "rows", "count", "number");

  /** Behind the count of cells, where it is a habit of the file. */
  private static final String AS_MOST =
      ", as in nearly all rows; see the file under how the files were read";

  static final String TEXT_AFTER_QUOTE =
      "text follows a closing quote; double the quotes within a quoted cell";
  static final String SWALLOWS =
      "a quoted cell runs on into the rows after it; close or remove its quote";
  static final String NOT_CLOSED =
      "a quoted cell is not closed within " + Bounds.ROW + " bytes; close or remove its quote";
  static final String TOO_LONG =
      "longer than " + Bounds.ROW + " bytes; only the beginning is kept here";

  static final String OBJECT_NOT_CLOSED =
      "the object does not end before the file does, or not within "
          + Bounds.ROW
          + " bytes; look for a missing brace or quote, and whether the file was cut off";
  static final String NOT_AN_OBJECT = "is not a JSON object";
  static final String NO_RECORD = "belongs to no record that was read";
  private static final String SEVERAL_RECORDS =
      ", and nothing says to which of them it belongs; give each record a number of its own, here"
          + " too";
  static final String BROKEN = "the rest of the file could not be read: ";
  static final String AFTER_END = "follows the end of the array";

  /** A longer text of several words that stands alone in a row is no id, nor are words alone. */
  private static final int REMARK = 20;

  /** {@code Page 2}, {@code Seite 2 von 9}: what stands where one printed page ends. */
  private static final Pattern PAGE =
      Pattern.compile(
          "(?i)(page|seite|p\u00e1gina|pagina) *[0-9]+ *((of|sur|von|de|di|/) *[0-9]+)?");

  /** What its words begin with. */
  private static final String PAGE_LETTERS = "pPsS";

  private RowFault() {}

  /**
   * Why a row of which only the id is filled is none; null if nothing speaks against it.
   *
   * @param column the column of the id
   */
  static @Nullable Fault ofRemark(String id, int column, RowView view, ColumnPlan plan) {
    boolean isLong = hasBlanks(id) && (id.length() >= REMARK || isProse(id));
    if (!isLong && !mayBePage(id)) {
      return null;
    }
    for (int c = 0; c < plan.columns; c++) {
      if (c != column && !view.trimmed(c).isEmpty()) {
        return null;
      }
    }
    return plan.columns > 2 ? Fault.row(REMARK_ALONE) : null;
  }

  /** True of words without a figure: {@code END OF FILE}. */
  private static boolean isProse(String id) {
    return id.chars().noneMatch(c -> c >= '0' && c <= '9');
  }

  /** True of a text with two blanks or more. */
  private static boolean hasBlanks(String id) {
    int first = id.indexOf(' ');
    return first >= 0 && id.indexOf(' ', first + 1) >= 0;
  }

  /** The pattern is asked of hardly any id: nearly all begin with another letter than its words. */
  private static boolean mayBePage(String id) {
    return !id.isEmpty() && PAGE_LETTERS.indexOf(id.charAt(0)) >= 0 && PAGE.matcher(id).matches();
  }

  /** Why a row with this id is none; null if nothing speaks against it. */
  static @Nullable Fault ofId(String id, String idHeader) {
    if (id.equals(idHeader)) {
      return Fault.row(HEADER_AGAIN);
    }
    return isTotal(id) ? Fault.row(TOTAL) : null;
  }

  /** {@code Total}, {@code Total: 25}, {@code Total wells 25}. */
  private static boolean isTotal(String id) {
    // Nearly all ids begin with another letter, and are not looked at any further.
    if (!id.isEmpty() && id.charAt(0) < BEGINS_TOTAL.length && !BEGINS_TOTAL[id.charAt(0)]) {
      return false;
    }
    String text = HeaderKey.strip(id).toLowerCase(Locale.ROOT);
    int colon = text.indexOf(':');
    String word = HeaderKey.strip(colon < 0 ? text : text.substring(0, colon));
    if (TOTALS.contains(word)) {
      return true;
    }
    int blank = word.indexOf(' ');
    int second = blank < 0 ? -1 : word.indexOf(' ', blank + 1);
    return blank > 0
        && TOTALS.contains(word.substring(0, blank))
        && COUNTED.contains(word.substring(blank + 1, second < 0 ? word.length() : second));
  }

  /**
   * Why a row is none of which it is not known where its id stands: each cell that is filled is its
   * header, or the first of them says that sums follow. Null if nothing speaks against it.
   */
  static @Nullable Fault ofHeaderOrTotal(RowView view, ColumnPlan plan) {
    int first = -1;
    boolean again = true;
    for (int c = 0; c < plan.columns && again; c++) {
      String cell = view.trimmed(c);
      if (!cell.isEmpty()) {
        first = first < 0 ? c : first;
        again = cell.equals(plan.name(c)) || plan.name(c).endsWith(" " + cell);
      }
    }
    if (first < 0) {
      return null;
    }
    @Nullable Fault remark = ofRemark(view.trimmed(first), first, view, plan);
    if (remark != null) {
      return remark;
    }
    return again ? Fault.row(HEADER_AGAIN) : isTotal(view.trimmed(first)) ? Fault.row(TOTAL) : null;
  }

  /** Why a row of a joined table belongs to none of the records that have its number. */
  static String severalRecords(String id) {
    return "several records have the number " + id + SEVERAL_RECORDS;
  }

  /** What is to be said of a table whose rows go on beyond its header. */
  static String surplus(int columns, int more) {
    return "nearly all rows have "
        + (columns + more)
        + " cells and the header "
        + columns
        + ", so they are set aside; where the cells at the end have no name, let the header map say"
        + " moreColumns "
        + more
        + " under table, as the draft of headers does; where a comma or the like within a cell parts it in two,"
        + " quote that cell";
  }

  /** The same of a table whose rows do so by more cells here and fewer there. */
  static String ragged(int columns, int least, int most) {
    return "nearly all rows have more cells than the header, from "
        + least
        + " to "
        + most
        + " where it has "
        + columns
        + ", so they are set aside; most likely a comma or the like within cells parts them: export"
        + " the table with quotes, or with another delimiter";
  }

  static String cellCount(int cells, int columns) {
    return "has " + cells + (cells == 1 ? " cell" : " cells") + ", the header has " + columns;
  }

  /** Why a row of so many cells is none; null if nothing speaks against it. */
  static @Nullable Fault ofCells(int count, RowView view, ColumnPlan plan) {
    if (count == RowView.HAS_NUL) {
      return Fault.row(NUL);
    }
    boolean isBeyond = plan.isBeyond(count) && view.isBlankBeyond();
    if (count != plan.columns && !isBeyond && !plan.endsWithHeader(count)) {
      String said = cellCount(count, plan.columns);
      boolean isUsual = plan.surplus > 0 && count == plan.columns + plan.surplus;
      return Fault.row(isUsual ? said + AS_MOST : said);
    }
    for (int c = 0; view.size() > Bounds.CELL && c < plan.columns; c++) {
      if (view.length(c) > Bounds.CELL) {
        return new Fault(plan.name(c), CELL);
      }
    }
    return null;
  }

  /** Moves a view to a row; why that is none, or null if nothing speaks against it. */
  static @Nullable Fault show(CutRows rows, int place, RowView view, ColumnPlan plan) {
    RowMarks marks = rows.marks;
    byte status = marks.status(place);
    int from = marks.from(place);
    int to = marks.to(place);
    if (status == RowMarks.PLAIN) {
      return ofCells(view.slice(rows.bytes, from, to, plan.delimiter), view, plan);
    }
    if (status != RowMarks.QUOTED) {
      return Fault.row(of(status, marks.fault()));
    }
    try (CSVParser parser =
        RowCells.parser(rows.bytes, from, to, RowCells.format(plan.delimiter))) {
      return ofCells(view.take(parser.iterator().next()), view, plan);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The reason for a status of {@link RowMarks} that is no sound row. */
  static String of(byte status, String cut) {
    return switch (status) {
      case RowMarks.NOT_CLOSED -> NOT_CLOSED;
      case RowMarks.TEXT_AFTER_QUOTE -> TEXT_AFTER_QUOTE;
      case RowMarks.TOO_LONG -> TOO_LONG;
      case RowMarks.SWALLOWS -> SWALLOWS;
      case RowMarks.NOT_AN_OBJECT -> NOT_AN_OBJECT;
      case RowMarks.AFTER_END -> AFTER_END;
      default -> BROKEN + cut;
    };
  }
}
