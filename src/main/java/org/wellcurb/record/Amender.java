package org.wellcurb.record;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;

/**
 * Writes some entries of a record anew. The record itself is not touched. Not for several threads.
 */
public final class Amender {
  private final Catalogue catalogue;
  private final RecordFiller filler;
  private final CellReader reader;
  private final int units;

  public Amender(Catalogue catalogue) {
    this.catalogue = catalogue;
    filler = new RecordFiller(catalogue);
    reader = new CellReader(catalogue);
    units = catalogue.index("record.units");
  }

  /**
   * The record with these texts in place of what it has. A number without a unit is in the unit
   * that the record's own amount was written in; where it had none, in that of {@code
   * record.units}.
   *
   * @param texts text by place of the entry in the catalogue
   * @return the same object each time
   */
  public WellRecord amend(WellRecord record, Map<Integer, String> texts) {
    filler.clear(record.file(), record.row());
    for (int entry = 0; entry < catalogue.size(); entry++) {
      if (!texts.containsKey(entry)) {
        filler.take(entry, record);
      }
    }
    filler.layers(record.layers());
    filler.variances(record.variances());
    filler.extras(record.extras());
    @Nullable String corrected = texts.get(units);
    UnitSystem system = RecordReader.units(corrected == null ? record.choice(units) : corrected);
    for (Map.Entry<Integer, String> text : texts.entrySet()) {
      int entry = text.getKey();
      reader.read(filler, entry, text.getValue(), record.unit(entry), system, CellStyle.PLAIN);
    }
    return filler.record();
  }
}
