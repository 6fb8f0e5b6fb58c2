package org.wellcurb.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.WellRecord;

/**
 * {@code changes.geojson} (RFC 7946): a point for each record with an outcome that differs between
 * two packs and with a position, in input order. Framed as {@link FindingsGeoJson} is.
 */
public final class ChangesGeoJson {
  private ChangesGeoJson() {}

  /**
   * Adds one feature, with {@link FindingsGeoJson#BETWEEN} before it unless the text is empty.
   *
   * @param place where it stands; nothing is added where it is null
   * @param worse rules that fall short only under the pack tried
   * @param better rules that fall short only under the pack in use
   */
  public static void put(
      ByteText out,
      WellRecord record,
      List<String> worse,
      List<String> better,
      @Nullable Place place) {
    if (place == null) {
      return;
    }
    if (out.length() > 0) {
      out.put(FindingsGeoJson.BETWEEN);
    }
    out.put("{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":[");
    place.put(out);
    out.put("]},\"properties\":{\"record_id\":");
    JsonText.string(out, record.id());
    out.put(",\"file\":");
    JsonText.string(out, record.file());
    out.put(",\"row\":").whole(record.row());
    out.put(",\"accuracy_m\":");
    Digits.put(out, place.accuracy());
    rules(out, ",\"newly_short\":[", worse);
    rules(out, ",\"no_longer_short\":[", better);
    out.put("}}");
  }

  private static void rules(ByteText out, String name, List<String> rules) {
    out.put(name);
    for (int i = 0; i < rules.size(); i++) {
      if (i > 0) {
        out.put(',');
      }
      JsonText.string(out, rules.get(i));
    }
    out.put(']');
  }
}
