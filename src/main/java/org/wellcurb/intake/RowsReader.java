package org.wellcurb.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
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
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Extra;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/**
 * Reads the rows of chunks. A row without quotes is cut at its delimiters where it lies, and its
 * cells are read from the bytes; rows with quotes go through the CSV library.
 */
final class RowsReader {
  private final RecordFiller filler;
  private final CellReader reader;
  private final CellsReader cells;
  private final RowListsReader lists;
  private final int unitsEntry;
  private final RawRow raw = this::raw;
  private final Supplier<List<Extra>> extras = this::extras;

  private @Nullable TableSource source;
  private ColumnPlan plan;
  private RowView view;
  private CutRows chunk;
  private ChunkTally tally;
  private int row;

  @SuppressWarnings("NullAway.Init")
  RowsReader(Catalogue catalogue) {
    filler = new RecordFiller(catalogue);
    reader = new CellReader(catalogue);
    cells = new CellsReader(reader);
    lists = new RowListsReader(catalogue, reader);
    unitsEntry = catalogue.index("record.units");
  }

  ChunkTally read(RowsChunk rows, RecordSink sink) {
    use(rows);
    RowMarks marks = chunk.marks;
    int i = 0;
    while (i < marks.count()) {
      if (marks.status(i) == RowMarks.QUOTED) {
        i = quotedRun(i, sink);
      } else {
        row = i++;
        plainRow(marks.status(row), sink);
      }
    }
    return tally;
  }

  private void use(RowsChunk rows) {
    chunk = rows.rows();
    if (source != rows.source()) {
      source = rows.source();
      plan = source.plan();
      view = new RowView(plan.columns);
    }
    tally = new ChunkTally(plan.columns);
  }

  private void plainRow(byte status, RecordSink sink) {
    if (status != RowMarks.PLAIN) {
      aside(sink, "", RowFault.of(status, chunk.marks.fault()));
      return;
    }
    RowMarks marks = chunk.marks;
    cells(view.slice(chunk.bytes, marks.from(row), marks.to(row), plan.delimiter), sink);
  }

  /**
   * Reads the rows from {@code first} on that hold quotes; gives the place of the next other row.
   */
  private int quotedRun(int first, RecordSink sink) {
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
        cells(view.take(records.next()), sink);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return end;
  }

  private void cells(int count, RecordSink sink) {
    if (count == RowView.HAS_NUL) {
      aside(sink, "", RowFault.NUL);
      return;
    }
    if (count != plan.columns) {
      aside(sink, "", RowFault.cellCount(count, plan.columns));
      return;
    }
    for (int c = 0; c < count; c++) {
      if (view.length(c) > Bounds.CELL) {
        aside(sink, plan.name(c), RowFault.CELL);
        return;
      }
    }
    for (int f = 0; f < plan.filters.length; f++) {
      if (!plan.filters[f].takes(view.text(plan.filterColumns[f]))) {
        tally.leftOut();
        return;
      }
    }
    record(sink);
  }

  private void record(RecordSink sink) {
    filler.clear(file(), chunk.line(row));
    WellRecord record = filler.record();
    Step id = plan.id();
    first(id, UnitSystem.US);
    if (!record.isGiven(0)) {
      aside(sink, plan.name(id.column()), RowFault.NO_ID);
      return;
    }
    String fault = RowFault.ofId(record.id(), plan.name(id.column()));
    if (!fault.isEmpty()) {
      aside(sink, "", fault);
      return;
    }
    CellsReader.count(id, view, record, tally);
    for (HeaderMap.Constant constant : plan.constants) {
      reader.read(filler, constant.entry(), constant.text(), null, UnitSystem.US, CellStyle.PLAIN);
    }
    if (plan.units != null) {
      first(plan.units, UnitSystem.US);
      CellsReader.count(plan.units, view, record, tally);
    }
    UnitSystem system =
        "metric".equals(record.choice(unitsEntry)) ? UnitSystem.METRIC : UnitSystem.US;
    cells.rest(plan, view, filler, system, tally);
    lists.clear();
    lists.read(plan, view, filler, system);
    lists.fill(filler);
    keepUnknown();
    tally.record();
    sink.record(record, raw);
  }

  /** Reads what must be known before the rest. */
  private void first(Step step, UnitSystem system) {
    int column = step.column();
    if (!step.isPlain() || view.isText()) {
      cells.step(step, view, filler, system);
      return;
    }
    Target target = step.target();
    reader.read(
        filler,
        target.entry().index(),
        view.bytes(),
        view.from(column),
        view.to(column),
        target.unit(),
        system,
        target.style());
  }

  /** Cells that nothing takes are kept with the record; their texts are made when asked for. */
  private void keepUnknown() {
    for (int c : plan.unknown) {
      if (view.length(c) == 0) {
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
    List<Extra> kept = new ArrayList<>();
    for (int c : plan.unknown) {
      if (view.length(c) > 0) {
        kept.add(new Extra(plan.name(c), view.text(c)));
      }
    }
    return kept;
  }

  private String file() {
    return source == null ? "" : source.file();
  }

  private byte[] raw() {
    return Arrays.copyOfRange(chunk.bytes, chunk.marks.from(row), chunk.marks.to(row));
  }

  private void aside(RecordSink sink, String column, String reason) {
    tally.asideRow();
    sink.setAside(new SetAside(file(), chunk.line(row), column, reason, raw()));
  }
}
