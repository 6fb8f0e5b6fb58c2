package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Layer;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;

/**
 * Reads what examples give as a form would have it, with depths from the ground unless an example
 * says otherwise. Packs have hundreds of examples: the reader of cells is made once. Not shared by
 * threads.
 */
final class ExampleForms {
  private static final Pattern LAYER =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\sto\\s(\\d+(?:\\.\\d+)?)\\s(ft|m)\\b(.*)");
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
    if (key.equals("layers") && !text.isEmpty()) {
      layers(filler, text);
      return;
    }
    cells.read(filler, catalogue.index(key), text, null, system, CellStyle.PLAIN);
  }

  /** A log, such as {@code 0 to 20 ft clay; 20 to 130 ft sand}. */
  private void layers(RecordFiller filler, String text) {
    List<Layer> layers = new ArrayList<>();
    for (String part : text.split(";", -1)) {
      Matcher layer = LAYER.matcher(part.strip());
      if (!layer.matches()) {
        filler.absent(catalogue.index("layers"), WellRecord.UNREADABLE, Note.NOT_A_LIST);
        return;
      }
      Unit unit = layer.group(3).equals("m") ? Units.METRE : Units.FOOT;
      layers.add(
          new Layer(
              depth(layer.group(1), unit), depth(layer.group(2), unit), layer.group(4).strip()));
    }
    filler.layers(layers);
  }

  private static Interval depth(String number, Unit unit) {
    return Interval.point(unit.toSi(Double.parseDouble(number)));
  }
}
