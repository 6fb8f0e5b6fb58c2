package org.wellcurb.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.csv.CSVParser;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;

/** Why a row is no record, in words: each reason stands here once. */
final class RowFault {
  static final String NUL = "holds NUL bytes; export it again as text";
  static final String CELL = "a cell is longer than " + Bounds.CELL + " bytes";
  static final String NO_ID = "no record.id";
  static final String HEADER_AGAIN = "the header again";
  static final String TOTAL = "looks like a total, not like a record";
  private static final Set<String> TOTALS =
      Set.of("total", "totals", "grand total", "subtotal", "sum", "total:", "totals:");
  static final String TEXT_AFTER_QUOTE =
      "text follows a closing quote; double the quotes within a quoted cell";
  static final String NOT_CLOSED =
      "a quoted cell is not closed within " + Bounds.ROW + " bytes; close or remove its quote";
  static final String TOO_LONG =
      "longer than " + Bounds.ROW + " bytes; only the beginning is kept here";

  static final String OBJECT_NOT_CLOSED =
      "the object does not end within " + Bounds.ROW + " bytes; look for a missing brace or quote";
  static final String NOT_AN_OBJECT = "is not a JSON object";
  static final String NO_RECORD = "belongs to no record that was read";
  static final String AFTER_END = "follows the end of the array";

  private RowFault() {}

  /** Why a row with this id is none; null if nothing speaks against it. */
  static @Nullable Fault ofId(String id, String idHeader) {
    if (id.equals(idHeader)) {
      return Fault.row(HEADER_AGAIN);
    }
    return TOTALS.contains(id.toLowerCase(Locale.ROOT)) ? Fault.row(TOTAL) : null;
  }

  static String cellCount(int cells, int columns) {
    return "has " + cells + (cells == 1 ? " cell" : " cells") + ", the header has " + columns;
  }

  /** Why a row of so many cells is none; null if nothing speaks against it. */
  static @Nullable Fault ofCells(int count, RowView view, ColumnPlan plan) {
    if (count == RowView.HAS_NUL) {
      return Fault.row(NUL);
    }
    if (count != plan.columns) {
      return Fault.row(cellCount(count, plan.columns));
    }
    for (int c = 0; view.size() > Bounds.CELL && c < count; c++) {
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
      case RowMarks.NOT_AN_OBJECT -> NOT_AN_OBJECT;
      case RowMarks.AFTER_END -> AFTER_END;
      default -> "the rest of the file could not be read: " + cut;
    };
  }
}
