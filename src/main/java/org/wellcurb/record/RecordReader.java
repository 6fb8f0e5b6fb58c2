package org.wellcurb.record;

import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;

/** Reads a record from texts by key: a rule's example, a form on a page, a test. */
public final class RecordReader {
  private RecordReader() {}

  /**
   * The record that these texts say, commas for thousands, dates ISO. {@code record.units} counts
   * for all bare numbers; nothing else is assumed.
   *
   * @param texts text by entry key
   * @throws IllegalArgumentException for a key that the catalogue lacks, naming the nearest
   */
  public static WellRecord of(Map<String, String> texts) {
    return of(texts, CellStyle.PLAIN);
  }

  /** The same, for texts written in another style. */
  public static WellRecord of(Map<String, String> texts, CellStyle style) {
    Catalogue catalogue = Catalogue.standard();
    RecordFiller filler = new RecordFiller(catalogue);
    filler.clear("", 0);
    CellReader cells = new CellReader(catalogue);
    UnitSystem system = units(texts.get("record.units"));
    for (String key : new TreeSet<>(texts.keySet())) {
      check(catalogue, key);
    }
    for (Entry entry : catalogue.entries()) {
      String text = texts.get(entry.key());
      if (text != null) {
        cells.read(filler, entry.index(), text, null, system, style);
      }
    }
    return filler.record();
  }

  /** The unit system that {@code record.units} states: US where it is blank or not a choice. */
  public static UnitSystem units(@Nullable String text) {
    Catalogue catalogue = Catalogue.standard();
    Entry units = catalogue.entry(catalogue.index("record.units"));
    return text != null && units.choice(text) == units.choice("metric")
        ? UnitSystem.METRIC
        : UnitSystem.US;
  }

  private static void check(Catalogue catalogue, String key) {
    if (catalogue.find(key) == null) {
      String nearest = catalogue.nearest(key);
      throw new IllegalArgumentException(
          "no entry '" + key + "'" + (nearest == null ? "" : "; did you mean '" + nearest + "'?"));
    }
  }
}
