package org.wellcurb.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import org.wellcurb.record.WellRecord;

/**
 * Numbers of a form that state no unit while none is chosen: they count as US ones, and whoever has
 * a metric form in hand must be told so.
 */
final class BareNumbers {
  private static final JsonMapper JSON = new JsonMapper();

  private BareNumbers() {}

  /**
   * How many there are: those that would be another amount in the other units.
   *
   * @param record the form as read
   * @param body the same as JSON
   * @param read reads such JSON
   */
  static int count(WellRecord record, byte[] body, Function<byte[], List<WellRecord>> read) {
    if (record.isGiven(record.catalogue().index("record.units"))) {
      return 0;
    }
    List<WellRecord> metric = read.apply(inMetric(body));
    if (metric.isEmpty()) {
      return 0;
    }
    WellRecord other = metric.get(0);
    int count = 0;
    for (int i = 0; i < record.catalogue().size(); i++) {
      boolean isAlike = record.lo(i) == other.lo(i) && record.hi(i) == other.hi(i);
      count += record.isGiven(i) && other.isGiven(i) && record.unit(i) != null && !isAlike ? 1 : 0;
    }
    return count + (record.layers().equals(other.layers()) ? 0 : 1);
  }

  private static byte[] inMetric(byte[] body) {
    try {
      JsonNode form = JSON.readTree(body);
      if (form instanceof ObjectNode object) {
        object.withObjectProperty("record").put("units", "metric");
      }
      return JSON.writeValueAsBytes(form);
    } catch (IOException e) {
      throw new IllegalStateException("what was read as a record is JSON", e);
    }
  }
}
