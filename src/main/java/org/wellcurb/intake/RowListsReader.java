package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Layer;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/** Gathers layers and distances, from the rows of a table or the lists of a JSON record. */
final class RowListsReader {
  private final Catalogue catalogue;
  private final CellReader reader;
  private final RecordFiller scratch;
  private final int depthEntry;
  private final List<Layer> layers = new ArrayList<>();

  RowListsReader(Catalogue catalogue, CellReader reader) {
    this.catalogue = catalogue;
    this.reader = reader;
    this.scratch = new RecordFiller(catalogue);
    // A log begins at 0, and of this entry no bare zero is doubted.
    this.depthEntry = catalogue.index("grout.top");
  }

  /** Begins a new record. */
  void clear() {
    layers.clear();
  }

  /** Takes what a row holds. */
  void read(ColumnPlan plan, RowView row, RecordFiller into, UnitSystem system) {
    ColumnPlan.LayerPlan layer = plan.layers;
    if (layer != null) {
      layer(
          row.trimmed(layer.from()),
          row.trimmed(layer.to()),
          row.trimmed(layer.material()),
          layer.unit(),
          system,
          layer.style());
    }
    ColumnPlan.SetbackPlan setback = plan.setbacks;
    if (setback != null) {
      String from = row.trimmed(setback.from());
      String word = setback.columns().words().get(from.toLowerCase(Locale.ROOT));
      setback(
          word == null ? from : word,
          row.trimmed(setback.distance()),
          setback.columns().unit(),
          into,
          system,
          setback.style());
    }
  }

  /** Puts the layers into the record. */
  void fill(RecordFiller into) {
    if (!layers.isEmpty()) {
      into.layers(layers);
    }
  }

  /** A layer, unless nothing of it is written. */
  void layer(
      String from,
      String to,
      String material,
      @Nullable Unit unit,
      UnitSystem system,
      CellStyle style) {
    if (from.isEmpty() && to.isEmpty() && material.isEmpty()) {
      return;
    }
    Interval top = depth(from, unit, system, style);
    layers.add(new Layer(top, depth(to, unit, system, style), material));
  }

  /** A depth that has no entry of its own: it is read as any depth is. */
  private Interval depth(String text, @Nullable Unit unit, UnitSystem system, CellStyle style) {
    scratch.clear("", 0);
    reader.read(scratch, depthEntry, text, unit, system, style);
    return scratch.record().interval(depthEntry);
  }

  /**
   * A distance; of several from one kind of source the nearest counts.
   *
   * @return what was made of it; null if no entry is called so
   */
  @Nullable Entry setback(
      String from,
      String distance,
      @Nullable Unit unit,
      RecordFiller into,
      UnitSystem system,
      CellStyle style) {
    String name = from.trim().toLowerCase(Locale.ROOT).replace(' ', '_');
    Entry entry = catalogue.find("setback." + name);
    if (entry == null) {
      return null;
    }
    int index = entry.index();
    scratch.clear("", 0);
    reader.read(scratch, index, distance, unit, system, style);
    WellRecord before = into.record();
    WellRecord found = scratch.record();
    boolean nearer =
        !before.isGiven(index) || (found.isGiven(index) && found.lo(index) < before.lo(index));
    if (nearer && !found.written(index).isEmpty()) {
      into.take(index, found);
    }
    return entry;
  }
}
