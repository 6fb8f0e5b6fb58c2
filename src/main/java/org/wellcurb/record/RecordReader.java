package org.wellcurb.record;

import java.util.Map;
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
    for (Map.Entry<String, String> text : texts.entrySet()) {
      cells.read(filler, entry(catalogue, text.getKey()), text.getValue(), null, system, style);
    }
    return filler.record();
  }

  /** The unit system that {@code record.units} states: US where it is blank or not a choice. */
  public static UnitSystem units(@Nullable String text) {
    return text != null && CellText.fold(CellText.trim(text)).equals("metric")
        ? UnitSystem.METRIC
        : UnitSystem.US;
  }

  private static int entry(Catalogue catalogue, String key) {
    Entry entry = catalogue.find(key);
    if (entry != null) {
      return entry.index();
    }
    String nearest = catalogue.nearest(key);
    throw new IllegalArgumentException(
        "no entry '" + key + "'" + (nearest == null ? "" : "; did you mean '" + nearest + "'?"));
  }
}
