package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.wellcurb.report.Cap;
import org.wellcurb.report.ContractorLine;
import org.wellcurb.report.KindCounts;
import org.wellcurb.rulepack.FindingKind;

/**
 * Records and findings by licence. Counts of parts add up; a licence is shown as first written. At
 * most {@link Cap#LICENCES_COUNTED} licences are counted one by one.
 */
final class LicenceCounts {
  private final Map<String, Count> byLicence = new LinkedHashMap<>();
  private boolean cut;

  /** Counts of one licence. */
  private static final class Count {
    final String written;
    long records;
    long withFindings;
    KindCounts kinds = KindCounts.NONE;

    /** The record counted last, so that two findings of one record count one record. */
    long lastRecord = -1;

    Count(String written) {
      this.written = written;
    }
  }

  /** A record that names this licence, empty where it names none. */
  void record(String licence) {
    Count count = count(licence);
    if (count != null) {
      count.records++;
    }
  }

  /**
   * A finding that falls to this licence.
   *
   * @param record a number that tells the records of one part apart
   */
  void finding(String licence, FindingKind kind, long record) {
    Count count = count(licence);
    if (count != null) {
      count.kinds = count.kinds.and(kind);
      if (count.lastRecord != record) {
        count.lastRecord = record;
        count.withFindings++;
      }
    }
  }

  /** Adds the counts of the next part. */
  void add(LicenceCounts next) {
    for (Count part : next.byLicence.values()) {
      Count count = count(part.written);
      if (count != null) {
        count.records += part.records;
        count.withFindings += part.withFindings;
        count.kinds = count.kinds.plus(part.kinds);
      }
    }
    cut |= next.cut;
  }

  void clear() {
    byLicence.clear();
    cut = false;
  }

  /** True if some licences were met after the cap was reached. */
  boolean isCut() {
    return cut;
  }

  /** All licences counted, most findings first. */
  List<ContractorLine> lines() {
    List<ContractorLine> lines = new ArrayList<>();
    for (Count count : byLicence.values()) {
      lines.add(
          new ContractorLine(count.written, count.records, count.withFindings, count.kinds, ""));
    }
    lines.sort(ContractorLine.MOST_FIRST);
    return lines;
  }

  private @org.jspecify.annotations.Nullable Count count(String licence) {
    String key = licence.strip().toLowerCase(Locale.ROOT);
    Count known = byLicence.get(key);
    if (known != null) {
      return known;
    }
    if (byLicence.size() >= Cap.LICENCES_COUNTED.most()) {
      cut = true;
      return null;
    }
    Count count = new Count(licence);
    byLicence.put(key, count);
    return count;
  }
}
