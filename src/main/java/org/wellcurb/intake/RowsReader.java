package org.wellcurb.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Iterator;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;

/**
 * Reads the rows of chunks. A row without quotes is cut at its delimiters where it lies, and its
 * cells are read from the bytes; rows with quotes go through the CSV library.
 */
final class RowsReader {
  private final RowMaker maker;
  private final RawRow raw = this::raw;

  private @Nullable TableSource source;
  private ColumnPlan plan;
  private CutRows chunk;
  private ChunkTally tally;

  /** The row that the sink is being told of. */
  private int told;

  @SuppressWarnings("NullAway.Init")
  RowsReader(Catalogue catalogue) {
    maker = new RowMaker(catalogue);
  }

  ChunkTally read(RowsChunk rows, RecordSink sink) {
    use(rows);
    RowMarks marks = chunk.marks;
    int i = 0;
    while (i < marks.count()) {
      if (marks.status(i) == RowMarks.QUOTED) {
        i = quotedRun(i, sink);
      } else {
        plainRow(i++, sink);
      }
    }
    finish(sink);
    return tally;
  }

  private void use(RowsChunk rows) {
    chunk = rows.rows();
    if (source != rows.source()) {
      source = rows.source();
      plan = source.plan();
      maker.use(source);
    }
    maker.clear();
    tally = new ChunkTally(plan.columns);
    LostCharacters.count(chunk, tally);
  }

  private void plainRow(int row, RecordSink sink) {
    RowMarks marks = chunk.marks;
    if (marks.status(row) != RowMarks.PLAIN) {
      aside(row, sink, Fault.row(RowFault.of(marks.status(row), marks.fault())));
    } else {
      RowView view = maker.next().view;
      int count = view.slice(chunk.bytes, marks.from(row), marks.to(row), plan.delimiter);
      cells(row, count, view, sink);
    }
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
      for (int row = first; row < end; row++) {
        RowView view = maker.next().view;
        cells(row, view.take(records.next()), view, sink);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return end;
  }

  private void cells(int row, int count, RowView view, RecordSink sink) {
    @Nullable Fault fault = RowFault.ofCells(count, view, plan);
    if (fault != null) {
      aside(row, sink, fault);
      return;
    }
    if (plan.isBeyond(count)) {
      tally.endedBeyond();
    }
    if (!plan.takes(view)) {
      leaveOut(view);
      return;
    }
    fault = maker.begin(chunk.line(row), row, tally);
    if (fault != null) {
      aside(row, sink, fault);
    } else if (maker.isFull()) {
      finish(sink);
    }
  }

  /** What other tables say of a row that the map leaves out is left out with it. */
  private void leaveOut(RowView view) {
    tally.leftOut();
    if (source != null && !source.joins().isEmpty()) {
      String id = Combining.text(plan.id(), view);
      source.joins().forEach(joined -> joined.table().leaveOut(joined.key(id, view)));
    }
  }

  /** Makes records of the rows that wait, and tells the sink. */
  private void finish(RecordSink sink) {
    maker.read(tally);
    for (int i = 0; i < maker.waiting(); i++) {
      if (maker.finish(i, tally)) {
        tally.record();
        told = maker.row(i).place;
        sink.record(maker.row(i).record(), raw);
      } else {
        tally.joined();
      }
    }
    maker.clear();
  }

  private byte[] raw() {
    return raw(told);
  }

  private byte[] raw(int row) {
    return Arrays.copyOfRange(chunk.bytes, chunk.marks.from(row), chunk.marks.to(row));
  }

  private void aside(int row, RecordSink sink, Fault fault) {
    // The sink is told of rows in their order.
    finish(sink);
    tally.asideRow();
    if (fault.reason().startsWith(RowFault.BROKEN)) {
      tally.brokenOff();
    }
    String file = source == null ? "" : source.file();
    sink.setAside(new SetAside(file, chunk.line(row), fault.column(), fault.reason(), raw(row)));
  }
}
