package org.wellcurb.intake;

import java.util.Arrays;
import java.util.BitSet;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.ColumnReader;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Extra;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/** Reads the objects of chunks of JSON. */
final class ObjectsReader {
  private final Catalogue catalogue;
  private final RecordFiller filler;
  private final CellReader reader;
  private final ColumnReader[] columns;
  private final JsonParsing parsing;
  private final CellStyle style;
  private final RowListsReader lists;
  private final int unitsEntry;
  private final int layersEntry;

  /** Entries of the record at hand that its list of distances names. */
  private final BitSet distances = new BitSet();

  private final RawRow raw = this::raw;

  private String file = "";
  private CutRows chunk;
  private int row;

  @SuppressWarnings("NullAway.Init")
  ObjectsReader(Catalogue catalogue, CellStyle style) {
    this.catalogue = catalogue;
    this.style = style;
    filler = new RecordFiller(catalogue);
    reader = new CellReader(catalogue);
    columns = new ColumnReader[catalogue.size()];
    for (int entry = 0; entry < columns.length; entry++) {
      columns[entry] = new ColumnReader(reader, entry, null, style);
    }
    parsing = new JsonParsing(catalogue);
    lists = new RowListsReader(catalogue, reader);
    unitsEntry = catalogue.index("record.units");
    layersEntry = catalogue.index("layers");
  }

  ChunkTally read(JsonChunk objects, RecordSink sink) {
    chunk = objects.rows();
    file = objects.source().file();
    RowMarks marks = chunk.marks;
    ChunkTally tally = new ChunkTally(catalogue.size());
    for (row = 0; row < marks.count(); row++) {
      try {
        if (marks.status(row) != RowMarks.PLAIN) {
          throw new RecordFault("", fault(marks.status(row)));
        }
        parsing.read(chunk.bytes, marks.from(row), marks.to(row));
        fill(tally);
        tally.record();
        sink.record(filler.record(), raw);
      } catch (RecordFault fault) {
        tally.asideRow();
        sink.setAside(new SetAside(file, chunk.line(row), fault.pointer(), fault.reason(), raw()));
      }
    }
    return tally;
  }

  private String fault(byte status) {
    return status == RowMarks.NOT_CLOSED
        ? RowFault.OBJECT_NOT_CLOSED
        : RowFault.of(status, chunk.marks.fault());
  }

  private byte[] raw() {
    return Arrays.copyOfRange(chunk.bytes, chunk.marks.from(row), chunk.marks.to(row));
  }

  private void fill(ChunkTally tally) throws RecordFault {
    filler.clear(file, chunk.line(row));
    JsonCells cells = parsing.cells;
    WellRecord record = filler.record();
    cell(0, UnitSystem.US);
    if (!record.isGiven(0)) {
      boolean isDotted =
          parsing.extras.stream().anyMatch(extra -> extra.name().equalsIgnoreCase("record.id"));
      throw new RecordFault("/record/id", isDotted ? RowFault.DOTTED_ID : RowFault.NO_ID);
    }
    cell(unitsEntry, UnitSystem.US);
    UnitSystem system =
        "metric".equals(record.choice(unitsEntry)) ? UnitSystem.METRIC : UnitSystem.US;
    for (int i = 0; i < cells.count(); i++) {
      int entry = cells.entry(i);
      if (entry != 0 && entry != unitsEntry) {
        cell(entry, system);
      }
    }
    lists(system, tally);
    // When all is read: a later name may say what an earlier value means.
    for (int i = 0; i < cells.count(); i++) {
      count(cells.entry(i), tally);
      distances.clear(cells.entry(i));
    }
    distances.stream().forEach(entry -> count(entry, tally));
    filler.extras(parsing.extras);
    for (Extra extra : parsing.extras) {
      tally.unknown(extra.name());
    }
  }

  private void count(int entry, ChunkTally tally) {
    if (filler.record().isWritten(entry)) {
      tally.cell(entry, filler.record(), entry);
    } else {
      tally.blank(entry);
    }
  }

  private void cell(int entry, UnitSystem system) {
    JsonCells cells = parsing.cells;
    String text = cells.text(entry);
    if (text != null) {
      reader.read(filler, entry, text, null, system, style);
    } else if (cells.to(entry) > cells.from(entry)) {
      columns[entry].read(filler, chunk.bytes, cells.from(entry), cells.to(entry), system);
    }
  }

  private void lists(UnitSystem system, ChunkTally tally) {
    lists.clear();
    boolean sound = true;
    for (JsonParsing.RawLayer layer : parsing.layers) {
      sound &= lists.layer(layer.from(), layer.to(), layer.material(), system);
    }
    lists.fill(filler);
    if (!parsing.layers.isEmpty()) {
      if (sound) {
        tally.kept(layersEntry);
      } else {
        tally.unreadable(layersEntry, Note.NOT_A_NUMBER);
      }
    }
    distances.clear();
    for (JsonParsing.RawSetback setback : parsing.setbacks) {
      Entry entry = lists.setback(setback.from(), setback.distance(), filler, system);
      if (entry == null) {
        parsing.extras.add(new Extra("setbacks." + setback.from(), setback.distance()));
      } else {
        distances.set(entry.index());
      }
    }
  }
}
