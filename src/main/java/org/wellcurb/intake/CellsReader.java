package org.wellcurb.intake;

import java.math.BigDecimal;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.ColumnReader;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/** Reads the cells of one row into entries, as a plan says. */
final class CellsReader {
  private static final int UNITS = Catalogue.standard().index("record.units");

  private final CellReader reader;
  private final IdentityHashMap<ColumnPlan, ColumnReader[]> byPlan = new IdentityHashMap<>();
  private @Nullable ColumnPlan last;
  private ColumnReader[] columns = new ColumnReader[0];

  CellsReader(CellReader reader) {
    this.reader = reader;
  }

  /** The readers of the columns that are read where they lie. */
  private ColumnReader[] columns(ColumnPlan plan) {
    if (plan != last) {
      last = plan;
      columns = byPlan.computeIfAbsent(plan, this::readers);
    }
    return columns;
  }

  private ColumnReader[] readers(ColumnPlan plan) {
    ColumnReader[] readers = new ColumnReader[plan.plain.length];
    for (int i = 0; i < readers.length; i++) {
      readers[i] = new ColumnReader(reader, plan.entry[i], plan.unit[i], plan.style[i]);
    }
    return readers;
  }

  /** True if the record says in which units it is written. */
  static boolean saysUnits(WellRecord record) {
    return record.isGiven(UNITS);
  }

  /** Reads everything but the id and the units of one row. */
  void rest(ColumnPlan plan, RowView row, RecordFiller into, UnitSystem system, ChunkTally tally) {
    OpenRow only = new OpenRow(row, into);
    only.system = system;
    rest(plan, new OpenRow[] {only}, 1, tally);
  }

  /**
   * The same of some rows, column by column: what is remembered and counted of one column is far
   * less than of all, so it is at hand for the next row.
   *
   * @param rows the first {@code count} of them are read
   */
  void rest(ColumnPlan plan, OpenRow[] rows, int count, ChunkTally tally) {
    ColumnReader[] readers = columns(plan);
    for (int i = 0; i < readers.length; i++) {
      column(plan, i, readers[i], rows, count);
    }
    for (int k = 0; k < count; k++) {
      for (Step step : plan.steps) {
        step(step, rows[k].view, rows[k].filler, rows[k].system);
      }
    }
    // Counted when all is read: a later cell may say what an earlier one means.
    for (int i = 0; i < readers.length; i++) {
      count(plan.plain[i], plan.entry[i], rows, count, tally);
    }
    for (int k = 0; k < count; k++) {
      for (Step step : plan.steps) {
        count(step, rows[k].view, rows[k].record(), tally);
      }
    }
  }

  private void column(ColumnPlan plan, int place, ColumnReader cells, OpenRow[] rows, int count) {
    int column = plan.plain[place];
    for (int k = 0; k < count; k++) {
      OpenRow row = rows[k];
      RowView view = row.view;
      if (view.length(column) == 0) {
        continue;
      }
      if (view.isText()) {
        int entry = plan.entry[place];
        String text = view.text(column);
        reader.read(row.filler, entry, text, plan.unit[place], row.system, plan.style[place]);
      } else {
        cells.read(row.filler, view.bytes(), view.from(column), view.to(column), row.system);
      }
    }
  }

  private static void count(int column, int entry, OpenRow[] rows, int count, ChunkTally tally) {
    for (int k = 0; k < count; k++) {
      if (rows[k].view.length(column) == 0) {
        tally.blank(column);
      } else {
        tally.cell(column, rows[k].record(), entry);
      }
    }
  }

  /** Reads what one line of the map says. */
  void step(Step step, RowView row, RecordFiller into, UnitSystem system) {
    String text = Combining.text(step, row);
    if (text.isEmpty()) {
      return;
    }
    if (Combining.hasSignWithin(step, row)) {
      unreadable(step, into, text, Note.NOT_A_NUMBER);
      return;
    }
    if (step.unit.isUnknown(row)) {
      unreadable(step, into, text + " " + step.unit.said(row), Note.UNKNOWN_UNIT);
      return;
    }
    @Nullable Unit stated = step.unit.stated(row);
    List<Target> targets = step.mapped.targets();
    if (targets.size() == 1) {
      Target only = targets.get(0);
      int entry = only.entry().index();
      boolean isZero = Combining.isZeroForBlank(step, row) && reader.doubtsZero(entry);
      String read = isZero ? "0" : Combining.pointed(step, text);
      target(only, read, stated, into, system);
      if (!read.equals(text)) {
        into.written(entry, text);
      }
      return;
    }
    if (reader.saysNoValue(targets.get(0).entry().index(), text, targets.get(0).style())) {
      targets.forEach(target -> target(target, text, stated, into, system));
      return;
    }
    List<String> parts = Splitting.parts(text, step.mapped.splits(), targets.size());
    if (parts.isEmpty()) {
      unreadable(step, into, text, Note.PARTS_MISSING);
      return;
    }
    for (int i = 0; i < parts.size(); i++) {
      target(targets.get(i), parts.get(i), stated, into, system);
    }
  }

  private void target(
      Target target, String text, @Nullable Unit stated, RecordFiller into, UnitSystem system) {
    String word = target.words().get(HeaderKey.strip(text).toLowerCase(Locale.ROOT));
    int entry = target.entry().index();
    Unit unit = stated == null ? target.unit() : stated;
    String meant = word == null ? text : word;
    boolean scaled = target.scale() != 1 && isPlainNumber(meant);
    if (scaled) {
      // In figures, so that its last written place is scaled too, and bounds hold for the result.
      BigDecimal number = new BigDecimal(meant).multiply(BigDecimal.valueOf(target.scale()));
      meant = number.toPlainString();
    }
    reader.read(into, entry, meant, unit, system, target.style());
    if (target.scale() != 1 && !scaled && into.record().isGiven(entry)) {
      char last = meant.charAt(meant.length() - 1);
      boolean bare = (last >= '0' && last <= '9') || "+.,".indexOf(last) >= 0;
      if (bare || word != null || turnsSign(target, meant)) {
        into.scale(entry, target.scale());
      } else {
        into.absent(entry, WellRecord.UNREADABLE, Note.SCALE_AND_UNIT);
      }
    }
    if (!meant.equals(text)) {
      into.written(entry, text);
    }
  }

  /**
   * True of degrees that a column has with the other sign: the marks of degrees, minutes and
   * seconds say nothing of it, but a letter of the compass does.
   */
  private static boolean turnsSign(Target target, String text) {
    return target.scale() == -1
        && Dimension.ANGLE.equals(target.entry().kind().dimension())
        && text.chars().noneMatch(Character::isLetter);
  }

  private static boolean isPlainNumber(String text) {
    boolean digit = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      digit |= c >= '0' && c <= '9';
      boolean sign = c == '-' && i == 0;
      if (!sign && c != '.' && (c < '0' || c > '9')) {
        return false;
      }
    }
    return digit && text.indexOf('.') == text.lastIndexOf('.');
  }

  private static void unreadable(Step step, RecordFiller into, String text, Note note) {
    for (Target target : step.mapped.targets()) {
      into.written(target.entry().index(), text);
      into.absent(target.entry().index(), WellRecord.UNREADABLE, note);
    }
  }

  /** Counts the cells of a step: each that is not blank as what became of the entry. */
  static void count(Step step, RowView row, WellRecord record, ChunkTally tally) {
    boolean first = true;
    for (int column : step.columns) {
      if (column < 0) {
        continue;
      }
      if (row.trimmed(column).isEmpty()) {
        tally.blank(column);
      } else if (first) {
        int entry = step.target().entry().index();
        tally.cell(column, record, entry);
        step.unit.count(row, column, record, entry, saysUnits(record), false, tally);
        first = false;
      } else {
        tally.kept(column);
      }
    }
  }
}
