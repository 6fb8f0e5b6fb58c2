package org.wellcurb.desk;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Layer;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;

/**
 * A record as JSON of its own format, which reads back as the same record: every value as it was
 * written, with its unit where only the column gave that.
 */
final class RecordJson {
  private static final JsonMapper JSON = new JsonMapper();

  private RecordJson() {}

  /**
   * @param stated the entries of which the file states the unit of bare numbers
   */
  static ObjectNode of(WellRecord record, Set<Entry> stated) {
    ObjectNode out = JSON.createObjectNode();
    String units = record.written(record.catalogue().index("record.units"));
    for (Entry entry : record.catalogue().entries()) {
      String text = text(record, entry, units, stated.contains(entry));
      if (!text.isEmpty() && entry.key().contains(".")) {
        int dot = entry.key().indexOf('.');
        out.withObjectProperty(entry.key().substring(0, dot))
            .put(entry.key().substring(dot + 1), text);
      }
    }
    if (!record.layers().isEmpty()) {
      ArrayNode layers = out.putArray("layers");
      for (Layer layer : record.layers()) {
        layers
            .addObject()
            .put("from", metres(layer.from()))
            .put("to", metres(layer.to()))
            .put("material", layer.material());
      }
    }
    return out;
  }

  private static String text(WellRecord record, Entry entry, String units, boolean isStated) {
    int i = entry.index();
    String written = record.written(i);
    @Nullable Unit unit = record.unit(i);
    if (written.isEmpty() || unit == null || !record.isGiven(i) || unit.symbol().isEmpty()) {
      return written;
    }
    boolean isOwn =
        readsAlike(record, entry, written, "us") && readsAlike(record, entry, written, "metric");
    if (isOwn || (!isStated && readsAlike(record, entry, written, units))) {
      return written;
    }
    String withUnit = written + " " + unit.symbol();
    return readsAlike(record, entry, withUnit, units)
        ? withUnit
        : number(unit.fromSi(record.lo(i))) + " " + unit.symbol();
  }

  private static boolean readsAlike(WellRecord record, Entry entry, String text, String units) {
    WellRecord again = RecordReader.of(Map.of("record.units", units, entry.key(), text));
    int i = entry.index();
    return again.state(i) == record.state(i)
        && again.lo(i) == record.lo(i)
        && again.hi(i) == record.hi(i)
        && again.system(i) == record.system(i);
  }

  private static String metres(Interval depth) {
    if (depth.isPoint()) {
      return number(depth.lo()) + " m";
    }
    // An end that is not known, or known on one side only, is said as a form would say it.
    boolean isOpenDown = Double.isInfinite(depth.lo());
    boolean isOpenUp = Double.isInfinite(depth.hi());
    if (isOpenDown || isOpenUp) {
      return isOpenDown && isOpenUp
          ? "unknown"
          : isOpenUp ? ">" + number(depth.lo()) + " m" : "<" + number(depth.hi()) + " m";
    }
    return number(depth.lo()) + "-" + number(depth.hi()) + " m";
  }

  private static String number(double value) {
    return new java.math.BigDecimal(value)
        .round(new java.math.MathContext(9))
        .stripTrailingZeros()
        .toPlainString();
  }
}
