package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.ChunkTally;
import org.wellcurb.intake.CodeCounts;
import org.wellcurb.intake.Column;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.report.CodeLine;
import org.wellcurb.report.ColumnDoubt;
import org.wellcurb.report.ColumnLine;

/** Puts the counts of cells of one input beside its columns. */
final class ColumnCounts {
  private ColumnCounts() {}

  /** The columns of a table. */
  static List<ColumnLine> of(List<Column> columns, ChunkTally cells) {
    List<ColumnLine> lines = new ArrayList<>();
    for (Column column : columns) {
      Entry entry = column.entry();
      Unit unit = column.unit();
      String nearest = column.nearest();
      String said =
          !column.problem().isEmpty()
              ? column.problem()
              : nearest != null ? "nearest: " + nearest : column.use();
      lines.add(
          line(
              column.name(),
              entry == null ? "" : entry.key(),
              unit == null ? "" : unit.symbol(),
              said,
              column.index(),
              cells.cells(column.index(), ChunkTally.BLANK),
              doubts(column, cells),
              cells));
    }
    return lines;
  }

  private static List<ColumnDoubt> doubts(Column column, ChunkTally cells) {
    List<ColumnDoubt> doubts = new ArrayList<>(Doubts.of(column.index(), cells));
    long differing = cells.rowsDiffering(column.index());
    if (differing > 0) {
      doubts.add(new ColumnDoubt("rows_differ", differing, List.of()));
    }
    long contradicting = cells.unitsContradicting(column.index());
    if (contradicting > 0) {
      doubts.add(new ColumnDoubt("unit_contradicts", contradicting, List.of()));
    }
    long ofMap = cells.unitsOfMap(column.index());
    Unit mapped = column.unit();
    if (ofMap > 0) {
      doubts.add(
          mapped == null
              ? new ColumnDoubt("unit_of_record", ofMap, List.of())
              : new ColumnDoubt("unit_of_map", ofMap, List.of(mapped.symbol())));
    }
    Entry entry = column.entry();
    // Depths of layers and distances fill no entry of their own; all are lengths.
    Unit us = entry == null ? Units.named("ft").orElse(null) : entry.unit(UnitSystem.US);
    if (us == null) {
      return doubts;
    }
    long bare =
        column.isUnitUnsaid() ? cells.units(column.index(), us) : cells.unitsUnsaid(column.index());
    if (bare > 0) {
      doubts.add(new ColumnDoubt("unit_unsaid", bare, List.of(us.symbol())));
    }
    return doubts;
  }

  /** The entries that any record of a JSON input names, and the names that no entry has. */
  static List<ColumnLine> ofJson(ChunkTally cells) {
    List<ColumnLine> lines = new ArrayList<>();
    for (Entry entry : Catalogue.standard().entries()) {
      long named = 0;
      for (int state = ChunkTally.UNKNOWN; state <= ChunkTally.UNREADABLE; state++) {
        named += cells.cells(entry.index(), state);
      }
      if (named > 0) {
        long blank = cells.records() - named;
        List<ColumnDoubt> doubts = Doubts.of(entry.index(), cells);
        lines.add(line(entry.key(), entry.key(), "", "", entry.index(), blank, doubts, cells));
      }
    }
    cells
        .unknownNames()
        .forEach(
            (name, count) ->
                lines.add(
                    new ColumnLine(
                        name,
                        "",
                        "",
                        "",
                        count,
                        Math.max(0, cells.records() - count),
                        0,
                        0,
                        0,
                        Map.of(),
                        Map.of(),
                        List.of(),
                        List.of())));
    return lines;
  }

  private static ColumnLine line(
      String name,
      String entry,
      String unit,
      String said,
      int column,
      long blank,
      List<ColumnDoubt> doubts,
      ChunkTally cells) {
    return new ColumnLine(
        name,
        entry,
        unit,
        said,
        cells.cells(column, ChunkTally.GIVEN),
        blank,
        cells.cells(column, ChunkTally.UNKNOWN),
        cells.cells(column, ChunkTally.NOT_APPLICABLE),
        cells.cells(column, ChunkTally.UNREADABLE),
        units(column, cells),
        notes(column, cells),
        doubts,
        codes(column, cells));
  }

  /** Codes, those met most often first, then as met. */
  private static List<CodeLine> codes(int column, ChunkTally cells) {
    @Nullable CodeCounts counts = cells.codes(column);
    if (counts == null) {
      return List.of();
    }
    List<CodeLine> codes = new ArrayList<>();
    counts.met().forEach(met -> codes.add(new CodeLine(met.written(), met.read(), met.cells())));
    codes.sort(Comparator.comparingLong(code -> -code.cells()));
    if (counts.more() > 0) {
      codes.add(new CodeLine("", "", counts.more()));
    }
    return codes;
  }

  /** Units in which values were written; nothing where all were in one. */
  private static Map<String, Long> units(int column, ChunkTally cells) {
    Map<String, Long> units = new LinkedHashMap<>();
    for (Unit unit : Units.all()) {
      long count = cells.units(column, unit);
      if (count > 0 && !unit.symbol().isEmpty()) {
        units.put(unit.symbol(), count);
      }
    }
    return units.size() > 1 ? units : Map.of();
  }

  private static Map<String, Long> notes(int column, ChunkTally cells) {
    Map<String, Long> notes = new LinkedHashMap<>();
    for (Note note : Note.values()) {
      long count = note == Note.NONE ? 0 : cells.notes(column, note);
      if (count > 0) {
        notes.put("note." + note.name().toLowerCase(Locale.ROOT), count);
      }
    }
    return notes;
  }
}
