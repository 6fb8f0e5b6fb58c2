package org.wellcurb.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.Extra;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/**
 * Reads the rows of chunks. A row without quotes is cut at its delimiters where it lies, and its
 * cells are read from the bytes; rows with quotes go through the CSV library.
 */
final class RowsReader {
  private static final int HAS_NUL = -1;

  private final Catalogue catalogue;
  private final RecordFiller filler;
  private final CellReader reader;
  private final int unitsEntry;
  private final RawRow raw = this::raw;
  private final Supplier<List<Extra>> extras = this::extras;

  private @Nullable TableSource source;
  private ColumnPlan plan;
  private CutRows chunk;
  private String file = "";
  private int row;
  private int[] from = new int[0];
  private int[] to = new int[0];
  private @Nullable CSVRecord quoted;

  @SuppressWarnings("NullAway.Init")
  RowsReader(Catalogue catalogue) {
    this.catalogue = catalogue;
    this.filler = new RecordFiller(catalogue);
    this.reader = new CellReader(catalogue);
    this.unitsEntry = catalogue.index("record.units");
  }

  ChunkTally read(RowsChunk rows, RecordSink sink) {
    use(rows);
    ChunkTally tally = new ChunkTally(plan.columns);
    RowMarks marks = chunk.marks;
    int i = 0;
    while (i < marks.count()) {
      if (marks.status(i) == RowMarks.QUOTED) {
        i = quotedRun(i, tally, sink);
      } else {
        row = i++;
        plainRow(marks.status(row), tally, sink);
      }
    }
    return tally;
  }

  private void use(RowsChunk rows) {
    chunk = rows.rows();
    if (source != rows.source()) {
      source = rows.source();
      file = source.file();
      plan = new ColumnPlan(rows.source().layout(), catalogue);
      from = new int[plan.columns];
      to = new int[plan.columns];
    }
  }

  private void plainRow(byte status, ChunkTally tally, RecordSink sink) {
    quoted = null;
    if (status != RowMarks.PLAIN) {
      aside(tally, sink, "", RowFault.of(status, chunk.marks.fault()));
      return;
    }
    int cells = slice();
    if (cells == HAS_NUL) {
      aside(tally, sink, "", RowFault.NUL);
      return;
    }
    cells(cells, tally, sink);
  }

  /**
   * Cuts the row at its delimiters; gives the number of cells, of which only as many as columns are
   * kept.
   */
  private int slice() {
    byte[] bytes = chunk.bytes;
    int end = chunk.marks.to(row);
    int start = chunk.marks.from(row);
    byte delimiter = plan.delimiter;
    int columns = plan.columns;
    int n = 0;
    for (int i = start; i < end; i++) {
      byte b = bytes[i];
      if (b == delimiter) {
        if (n < columns) {
          from[n] = start;
          to[n] = i;
        }
        n++;
        start = i + 1;
      } else if (b == 0) {
        return HAS_NUL;
      }
    }
    if (n < columns) {
      from[n] = start;
      to[n] = end;
    }
    return n + 1;
  }

  /**
   * Reads the rows from {@code first} on that hold quotes; gives the place of the next other row.
   */
  private int quotedRun(int first, ChunkTally tally, RecordSink sink) {
    RowMarks marks = chunk.marks;
    int end = first + 1;
    while (end < marks.count() && marks.status(end) == RowMarks.QUOTED) {
      end++;
    }
    try (CSVParser parser =
        RowCells.parser(
            chunk.bytes, marks.from(first), marks.to(end - 1), RowCells.format(plan.delimiter))) {
      Iterator<CSVRecord> records = parser.iterator();
      for (row = first; row < end; row++) {
        quoted = records.next();
        if (hasNul()) {
          aside(tally, sink, "", RowFault.NUL);
        } else {
          cells(quoted.size(), tally, sink);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    quoted = null;
    return end;
  }

  private boolean hasNul() {
    for (int i = chunk.marks.from(row); i < chunk.marks.to(row); i++) {
      if (chunk.bytes[i] == 0) {
        return true;
      }
    }
    return false;
  }

  private void cells(int cells, ChunkTally tally, RecordSink sink) {
    if (cells != plan.columns) {
      aside(tally, sink, "", RowFault.cellCount(cells, plan.columns));
      return;
    }
    for (int c = 0; c < cells; c++) {
      if (length(c) > Bounds.CELL) {
        aside(tally, sink, name(c), RowFault.CELL);
        return;
      }
    }
    filler.clear(file, chunk.line(row));
    WellRecord record = filler.record();
    cell(plan.id, UnitSystem.US);
    if (!record.isGiven(0)) {
      aside(tally, sink, name(plan.id), RowFault.NO_ID);
      return;
    }
    if (record.id().equals(name(plan.id))) {
      aside(tally, sink, "", RowFault.HEADER_AGAIN);
      return;
    }
    UnitSystem system = UnitSystem.US;
    if (plan.units >= 0) {
      cell(plan.units, system);
      count(plan.units, tally);
      system = "metric".equals(record.choice(unitsEntry)) ? UnitSystem.METRIC : system;
    }
    count(plan.id, tally);
    for (int c : plan.others) {
      if (length(c) == 0) {
        tally.blank(c);
      } else {
        cell(c, system);
        tally.cell(c, record, plan.entry[c]);
      }
    }
    keepUnknown(tally);
    tally.record();
    sink.record(record, raw);
  }

  private void cell(int c, UnitSystem system) {
    if (quoted == null) {
      reader.read(
          filler, plan.entry[c], chunk.bytes, from[c], to[c], plan.unit[c], system, plan.style[c]);
    } else {
      reader.read(filler, plan.entry[c], quoted.get(c), plan.unit[c], system, plan.style[c]);
    }
  }

  private void count(int c, ChunkTally tally) {
    if (length(c) == 0) {
      tally.blank(c);
    } else {
      tally.cell(c, filler.record(), plan.entry[c]);
    }
  }

  private int length(int c) {
    return quoted == null ? to[c] - from[c] : quoted.get(c).length();
  }

  private String text(int c) {
    return quoted == null
        ? new String(chunk.bytes, from[c], to[c] - from[c], StandardCharsets.UTF_8)
        : quoted.get(c);
  }

  private String name(int c) {
    return plan.layout.columns().get(c).name();
  }

  /** Cells that no entry takes are kept with the record; their texts are made when asked for. */
  private void keepUnknown(ChunkTally tally) {
    for (int c : plan.unknown) {
      if (length(c) == 0) {
        tally.blank(c);
      } else {
        tally.kept(c);
      }
    }
    if (plan.unknown.length > 0) {
      filler.extras(extras);
    }
  }

  private List<Extra> extras() {
    List<Extra> extras = new ArrayList<>();
    for (int c : plan.unknown) {
      if (length(c) > 0) {
        extras.add(new Extra(name(c), text(c)));
      }
    }
    return extras;
  }

  private byte[] raw() {
    return Arrays.copyOfRange(chunk.bytes, chunk.marks.from(row), chunk.marks.to(row));
  }

  private void aside(ChunkTally tally, RecordSink sink, String column, String reason) {
    tally.asideRow();
    sink.setAside(new SetAside(file, chunk.line(row), column, reason, raw()));
  }
}
