package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Extra;
import org.wellcurb.record.Layer;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/** Gathers layers and distances, from the rows of a table or the lists of a JSON record. */
final class RowListsReader {
  private final Catalogue catalogue;
  private final CellReader reader;
  private final RecordFiller scratch;
  private final RecordFiller second;
  private final int depthEntry;
  private final List<Layer> layers = new ArrayList<>();
  private final List<Extra> strays = new ArrayList<>();

  RowListsReader(Catalogue catalogue, CellReader reader) {
    this.catalogue = catalogue;
    this.reader = reader;
    this.scratch = new RecordFiller(catalogue);
    this.second = new RecordFiller(catalogue);
    // A log begins at 0, and of this entry no bare zero is doubted.
    this.depthEntry = catalogue.index("grout.top");
  }

  /** Begins a new record. */
  void clear() {
    layers.clear();
    strays.clear();
  }

  /**
   * Takes what a row holds, and counts what became of its cells.
   *
   * @param tally null where they have been counted
   */
  void read(
      ColumnPlan plan,
      RowView row,
      RecordFiller into,
      UnitSystem system,
      @Nullable ChunkTally tally) {
    for (ColumnPlan.LayerPlan layer : plan.layers) {
      depths(layer, row, system);
      if (tally != null && !layer.isInterval()) {
        count(layer.from(), scratch, depthEntry, layer.unit(), row, into, tally);
      }
      if (tally != null) {
        count(layer.to(), second, depthEntry, layer.unit(), row, into, tally);
      }
      add(
          row.trimmed(layer.isInterval() ? -1 : layer.from()),
          row.trimmed(layer.to()),
          row.trimmed(layer.material()));
    }
    if (plan.setbacks != null) {
      setback(plan.setbacks, row, into, system, tally);
    }
  }

  private void setback(
      ColumnPlan.SetbackPlan setback,
      RowView row,
      RecordFiller into,
      UnitSystem system,
      @Nullable ChunkTally tally) {
    String from = row.trimmed(setback.from());
    @Nullable Entry entry = entry(setback.columns().meant(from));
    String distance = row.trimmed(setback.distance());
    boolean isOfNothing = entry == null && from.isEmpty();
    if (!isOfNothing) {
      distance(setback, entry == null ? depthEntry : entry.index(), row, system);
    }
    if (tally != null) {
      countSource(setback.from(), from, entry, tally);
      if (isOfNothing && !distance.isEmpty()) {
        tally.unreadable(setback.distance(), Note.NOT_A_CHOICE);
      } else {
        int read = entry == null ? depthEntry : entry.index();
        count(setback.distance(), scratch, read, setback.unit(), row, into, tally);
      }
    }
    if (entry != null) {
      nearest(entry.index(), into);
    } else if (!distance.isEmpty()) {
      strays.add(new Extra("setbacks." + from, distance));
    }
  }

  /** Counts the cell that says what a distance is measured from. */
  private static void countSource(
      int column, String from, @Nullable Entry entry, ChunkTally tally) {
    if (column < 0) {
      return;
    }
    if (from.isEmpty()) {
      tally.blank(column);
    } else if (entry == null) {
      tally.unreadable(column, Note.NOT_A_CHOICE);
    } else {
      tally.kept(column);
    }
  }

  /** Distances of the record from what no entry is called. */
  List<Extra> strays() {
    return List.copyOf(strays);
  }

  boolean hasStrays() {
    return !strays.isEmpty();
  }

  private static void count(
      int column,
      RecordFiller read,
      int entry,
      RowUnit unit,
      RowView row,
      RecordFiller of,
      ChunkTally tally) {
    if (column < 0) {
      return;
    }
    if (row.trimmed(column).isEmpty()) {
      tally.blank(column);
      return;
    }
    WellRecord record = read.record();
    tally.counted(column, record, entry);
    boolean saysUnits = CellsReader.saysUnits(of.record());
    unit.count(row, column, record, entry, saysUnits, true, tally);
  }

  /** Reads both depths of a layer: the top to {@link #scratch}, the bottom to {@link #second}. */
  private void depths(ColumnPlan.LayerPlan layer, RowView row, UnitSystem system) {
    String to = row.trimmed(layer.to());
    read(second, depthEntry, to, layer.unit(), row, system, layer.toStyle());
    if (layer.isInterval()) {
      split();
    } else {
      String from = row.trimmed(layer.from());
      read(scratch, depthEntry, from, layer.unit(), row, system, layer.fromStyle());
    }
    judge();
  }

  /** Makes both ends of a cell that holds them. */
  private void split() {
    scratch.copyOf(second.record());
    WellRecord both = second.record();
    Unit unit = both.unit(depthEntry);
    if (!both.isGiven(depthEntry) || unit == null) {
      return;
    }
    double lo = both.lo(depthEntry);
    double hi = both.hi(depthEntry);
    if (lo == hi || Double.isInfinite(lo) || Double.isInfinite(hi)) {
      scratch.absent(depthEntry, WellRecord.UNREADABLE, Note.ONE_END);
      second.absent(depthEntry, WellRecord.UNREADABLE, Note.ONE_END);
    } else {
      scratch.amount(depthEntry, lo, lo, 0, unit, both.note(depthEntry));
      second.amount(depthEntry, hi, hi, 0, unit, both.note(depthEntry));
    }
  }

  /** Says of the bottom what no layer can be. */
  private void judge() {
    WellRecord top = scratch.record();
    WellRecord bottom = second.record();
    Unit unit = bottom.unit(depthEntry);
    if (!top.isGiven(depthEntry) || !bottom.isGiven(depthEntry) || unit == null) {
      return;
    }
    double lo = bottom.lo(depthEntry);
    double hi = bottom.hi(depthEntry);
    boolean reversed = hi < top.lo(depthEntry);
    boolean none = lo == hi && lo == top.lo(depthEntry) && lo == top.hi(depthEntry);
    if (reversed || none) {
      Note note = reversed ? Note.REVERSED : Note.NO_THICKNESS;
      second.amount(depthEntry, lo, hi, bottom.halfPlace(depthEntry), unit, note);
    }
  }

  private void distance(ColumnPlan.SetbackPlan setback, int entry, RowView row, UnitSystem system) {
    String text = row.trimmed(setback.distance());
    read(scratch, entry, text, setback.unit(), row, system, setback.style());
  }

  private void read(
      RecordFiller into,
      int entry,
      String text,
      RowUnit unit,
      RowView row,
      UnitSystem system,
      CellStyle style) {
    into.clear("", 0);
    if (!text.isEmpty() && unit.isUnknown(row)) {
      into.written(entry, text + " " + unit.said(row));
      into.absent(entry, WellRecord.UNREADABLE, Note.UNKNOWN_UNIT);
    } else {
      reader.read(into, entry, text, unit.in(row), system, style);
    }
  }

  /** Puts the layers into the record. */
  void fill(RecordFiller into) {
    if (!layers.isEmpty()) {
      into.layers(layers);
    }
  }

  /**
   * A layer of a list, unless nothing of it is written.
   *
   * @return false if a depth of it could not be read
   */
  boolean layer(String from, String to, String material, UnitSystem system) {
    scratch.clear("", 0);
    second.clear("", 0);
    reader.read(scratch, depthEntry, from, null, system, CellStyle.PLAIN);
    reader.read(second, depthEntry, to, null, system, CellStyle.PLAIN);
    judge();
    add(from, to, material);
    return !isUnread(scratch.record()) && !isUnread(second.record());
  }

  /** True if something is written that did not become a depth; it is quoted on the sheet. */
  private boolean isUnread(WellRecord depth) {
    Note note = depth.note(depthEntry);
    return depth.state(depthEntry) == WellRecord.UNREADABLE
        || (!depth.isGiven(depthEntry) && note != Note.NONE && note != Note.SENTINEL);
  }

  /** Adds the layer whose depths were read last. */
  private void add(String from, String to, String material) {
    if (from.isEmpty() && to.isEmpty() && material.isEmpty()) {
      return;
    }
    WellRecord top = scratch.record();
    WellRecord bottom = second.record();
    boolean unread = isUnread(top) || isUnread(bottom);
    Note note = bottom.note(depthEntry);
    String above = top.written(depthEntry);
    String below = bottom.written(depthEntry);
    boolean one = above.isEmpty() || below.isEmpty() || above.equals(below);
    String depths = one ? (above.isEmpty() ? below : above) : above + "; " + below;
    layers.add(
        new Layer(
            top.interval(depthEntry),
            bottom.interval(depthEntry),
            material,
            note == Note.NONE ? top.note(depthEntry) : note,
            unread ? depths : ""));
  }

  /**
   * A distance of a list; of several from one kind of source the nearest counts.
   *
   * @return what was made of it; null if no entry is called so
   */
  @Nullable Entry setback(String from, String distance, RecordFiller into, UnitSystem system) {
    Entry entry = entry(from);
    if (entry != null) {
      scratch.clear("", 0);
      reader.read(scratch, entry.index(), distance, null, system, CellStyle.PLAIN);
      nearest(entry.index(), into);
    }
    return entry;
  }

  private @Nullable Entry entry(String from) {
    String name = from.trim().toLowerCase(Locale.ROOT).replace(' ', '_');
    return name.isEmpty() ? null : catalogue.find("setback." + name);
  }

  /** Takes the distance that was read last, if none nearer is known. */
  private void nearest(int entry, RecordFiller into) {
    WellRecord before = into.record();
    WellRecord found = scratch.record();
    boolean nearer =
        !before.isGiven(entry) || (found.isGiven(entry) && found.lo(entry) < before.lo(entry));
    if (nearer && !found.written(entry).isEmpty()) {
      into.take(entry, found);
    }
  }
}
