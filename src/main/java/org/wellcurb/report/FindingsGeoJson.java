package org.wellcurb.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.WellRecord;
import org.wellcurb.screening.Finding;

/**
 * {@code findings.geojson} (RFC 7946): a point for each record with findings that gives a position,
 * in input order.
 */
public final class FindingsGeoJson {
  public static final String START = "{\"type\":\"FeatureCollection\",\"features\":[\n";
  public static final String BETWEEN = ",\n";
  public static final String END = "\n]}\n";

  private FindingsGeoJson() {}

  /**
   * Adds one feature, with {@link #BETWEEN} before it unless the text is empty.
   *
   * @param settled how many of the findings someone settled
   * @param place where it stands; nothing is added where it is null
   */
  public static void put(
      ByteText out,
      WellRecord record,
      String pack,
      List<Finding> findings,
      long settled,
      @Nullable Place place) {
    if (place == null) {
      return;
    }
    if (out.length() > 0) {
      out.put(BETWEEN);
    }
    out.put("{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":[");
    place.put(out);
    out.put("]},\"properties\":{\"record_id\":");
    JsonText.written(out, record, 0);
    out.put(",\"file\":");
    JsonText.string(out, record.file());
    out.put(",\"row\":").whole(record.row()).put(",\"pack\":");
    JsonText.string(out, pack);
    out.put(",\"accuracy_m\":");
    Digits.put(out, place.accuracy());
    KindCounts kinds = KindCounts.NONE;
    for (Finding finding : findings) {
      kinds = kinds.and(finding.rule().kind());
    }
    count(out, ",\"deficiency\":", kinds.deficiency());
    count(out, ",\"discrepancy\":", kinds.discrepancy());
    count(out, ",\"omission\":", kinds.omission());
    count(out, ",\"advisory\":", kinds.advisory());
    out.put(",\"rules\":[");
    for (int i = 0; i < findings.size(); i++) {
      if (i > 0) {
        out.put(',');
      }
      JsonText.string(out, findings.get(i).rule().id());
    }
    out.put(']');
    count(out, ",\"settled\":", settled);
    out.put("}}");
  }

  private static void count(ByteText out, String name, long count) {
    out.put(name).whole(count);
  }
}
