package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.NameFold;
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

  /** The same by licence as written, so that most need not be folded again. */
  private final Map<String, Count> byWritten = new HashMap<>();

  private boolean cut;

  /** Counts of one licence. */
  private static final class Count {
    final String written;
    long records;
    long withFindings;
    KindCounts kinds = KindCounts.NONE;

    /** Findings by rule, in the row of all packs' rules. */
    final RuleSums byRule = new RuleSums();

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
   * @param rule its place in the row of all packs' rules
   * @param record a number that tells the records of one part apart
   */
  void finding(String licence, FindingKind kind, int rule, long record) {
    Count count = count(licence);
    if (count != null) {
      count.kinds = count.kinds.and(kind);
      count.byRule.add(rule, 1);
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
        count.byRule.add(part.byRule);
      }
    }
    cut |= next.cut;
  }

  void clear() {
    byLicence.clear();
    byWritten.clear();
    cut = false;
  }

  /** True if some licences were met after the cap was reached. */
  boolean isCut() {
    return cut;
  }

  /** Findings by rule of all licences, in the row of all packs' rules. */
  RuleSums byRule() {
    RuleSums all = new RuleSums();
    byLicence.values().forEach(count -> all.add(count.byRule));
    return all;
  }

  /** Findings of one licence by rule; none where it was not counted. */
  RuleSums byRule(String licence) {
    Count count = byLicence.get(NameFold.of(licence));
    return count == null ? new RuleSums() : count.byRule;
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

  private @Nullable Count count(String licence) {
    Count same = byWritten.get(licence);
    if (same != null) {
      return same;
    }
    Count folded = folded(licence);
    if (folded != null && byWritten.size() < Cap.LICENCES_COUNTED.most()) {
      byWritten.put(licence, folded);
    }
    return folded;
  }

  private @Nullable Count folded(String licence) {
    String key = NameFold.of(licence);
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
