package org.wellcurb.rulepack;

import java.util.Map;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;

/**
 * Reads what examples give as a form would have it, with depths from the ground unless an example
 * says otherwise. Packs have hundreds of examples: the reader of cells is made once. Not shared by
 * threads.
 */
final class ExampleForms {
  private static final String DATUM = "record.datum";

  private final Catalogue catalogue = Catalogue.standard();
  private final CellReader cells = new CellReader(catalogue);

  /** The record of an example. */
  WellRecord record(Example example) {
    RecordFiller filler = new RecordFiller(catalogue);
    filler.clear("", 0);
    Map<String, String> given = example.given();
    UnitSystem system = RecordReader.units(given.get("record.units"));
    given.forEach((key, text) -> read(filler, key, text, system));
    if (!given.containsKey(DATUM)) {
      read(filler, DATUM, "ground", system);
    }
    return filler.record();
  }

  private void read(RecordFiller filler, String key, String text, UnitSystem system) {
    cells.read(filler, catalogue.index(key), text, null, system, CellStyle.PLAIN);
  }
}
