package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.ChunkTally;
import org.wellcurb.intake.Column;
import org.wellcurb.intake.JoinSource;
import org.wellcurb.intake.JsonSource;
import org.wellcurb.intake.RecordSource;
import org.wellcurb.intake.SetAside;
import org.wellcurb.intake.TableLayout;
import org.wellcurb.intake.TableSource;
import org.wellcurb.report.ColumnLine;
import org.wellcurb.report.InputLine;

/** What one input came to. Of its source only what the report says is kept. */
final class InputCounts {
  private final int place;
  private final String file;
  private final String format;
  private final List<String> notes = new ArrayList<>();
  private final List<Column> columns = new ArrayList<>();
  private final boolean isJson;

  /** True if it was set aside whole. */
  private final boolean isWhole;

  private @Nullable ChunkTally cells;
  private long screened;
  private long setAside;

  InputCounts(int place, RecordSource source) {
    this.place = place;
    this.file = source.file();
    isJson = source instanceof JsonSource;
    SetAside unusable = source.unusable();
    isWhole = unusable != null;
    if (unusable != null) {
      format = "not read";
      notes.add("Set aside whole: " + unusable.reason() + ".");
    } else if (source instanceof TableSource table) {
      format = table.layout().label();
      note(table.layout());
    } else if (source instanceof JsonSource json) {
      format = (json.isLines() ? "JSON lines, " : "JSON, ") + json.encoding().label();
      if (json.passesMapBy()) {
        notes.add(
            "The header map is for tables; the names of JSON are keys, and were read as such.");
      }
    } else if (source instanceof JoinSource join) {
      format = join.layout().label();
      note(join.layout());
      notes.add("Its rows belong to the records of other inputs.");
    } else {
      format = "";
    }
  }

  /** Place among the inputs of the run. */
  int place() {
    return place;
  }

  /** Adds the counts of its next part. */
  void add(ChunkTally part, long screenedRows, long setAsideRows) {
    if (cells == null) {
      cells = part;
    } else {
      cells.add(part);
    }
    screened += screenedRows;
    setAside += setAsideRows;
  }

  /** The input as the report shows it. */
  InputLine line(String sha256) {
    if (cells != null && cells.rowsLeftOut() > 0) {
      notes.add(cells.rowsLeftOut() + " rows were left out, as the header map says.");
    }
    if (cells != null && cells.rowsJoined() > 0) {
      notes.add(cells.rowsJoined() + " rows went into the record of another row.");
    }
    if (cells != null && cells.rowsEndedBeyond() > 0) {
      notes.add(
          cells.rowsEndedBeyond()
              + " rows end with one empty cell more than the header has, which is passed over.");
    }
    if (cells != null && cells.rowsWithLostCharacters() > 0) {
      notes.add(
          cells.rowsWithLostCharacters()
              + " rows hold bytes that are no character in this encoding, the first on line "
              + cells.firstLostCharacter()
              + "; a placeholder stands for each. Export the file again in one encoding, or let"
              + " the header map name it.");
    }
    return new InputLine(
        file,
        format,
        sha256,
        screened + setAside,
        screened,
        setAside,
        cells == null ? 0 : cells.rowsJoined(),
        cells == null ? 0 : cells.records() + cells.rowsJoined(),
        isWhole || (cells != null && cells.isBrokenOff()),
        notes,
        lines());
  }

  private List<ColumnLine> lines() {
    if (cells == null) {
      return List.of();
    }
    return isJson ? ColumnCounts.ofJson(cells) : ColumnCounts.of(columns, cells);
  }

  private void note(TableLayout layout) {
    columns.addAll(layout.columns());
    if (layout.headerLine() > 1) {
      notes.add(
          "The header is line " + layout.headerLine() + "; what stands above was passed over.");
    }
    for (String said : layout.notes()) {
      notes.add(said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1) + ".");
    }
    for (Column column : layout.columns()) {
      if (!column.problem().isEmpty()) {
        notes.add("Column " + column.name() + ": " + column.problem() + ".");
      } else if (column.isUnknown()) {
        notes.add(
            "Column "
                + column.name()
                + " is kept with the record but not read: no entry is called so"
                + (column.nearest() == null ? "." : " (nearest: " + column.nearest() + ")."));
      }
    }
  }
}
