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
  private RowView view;
  private CutRows chunk;
  private ChunkTally tally;
  private int row;

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
      maker.use(source, view);
    }
    tally = new ChunkTally(plan.columns);
    LostCharacters.count(chunk, tally);
  }

  private void plainRow(byte status, RecordSink sink) {
    RowMarks marks = chunk.marks;
    if (status != RowMarks.PLAIN) {
      aside(sink, Fault.row(RowFault.of(status, marks.fault())));
    } else {
      cells(view.slice(chunk.bytes, marks.from(row), marks.to(row), plan.delimiter), sink);
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
      for (row = first; row < end; row++) {
        cells(view.take(records.next()), sink);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return end;
  }

  private void cells(int count, RecordSink sink) {
    @Nullable Fault fault = RowFault.ofCells(count, view, plan);
    if (fault != null) {
      aside(sink, fault);
      return;
    }
    if (plan.isBeyond(count)) {
      tally.endedBeyond();
    }
    if (!plan.takes(view)) {
      tally.leftOut();
      return;
    }
    switch (maker.make(chunk.line(row), tally)) {
      case RECORD -> {
        tally.record();
        sink.record(maker.record(), raw);
      }
      case JOINED -> tally.joined();
      case NONE -> {
        fault = maker.fault();
        aside(sink, fault == null ? Fault.row(RowFault.NO_ID) : fault);
      }
    }
  }

  private byte[] raw() {
    return Arrays.copyOfRange(chunk.bytes, chunk.marks.from(row), chunk.marks.to(row));
  }

  private void aside(RecordSink sink, Fault fault) {
    tally.asideRow();
    if (fault.reason().startsWith(RowFault.BROKEN)) {
      tally.brokenOff();
    }
    String file = source == null ? "" : source.file();
    sink.setAside(new SetAside(file, chunk.line(row), fault.column(), fault.reason(), raw()));
  }
}
