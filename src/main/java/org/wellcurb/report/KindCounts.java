package org.wellcurb.report;

import org.wellcurb.rulepack.FindingKind;

/**
 * Findings counted by kind.
 *
 * @param deficiency limits of the jurisdiction not met
 * @param discrepancy entries that contradict each other or physics
 * @param omission entries that must be there and are not
 * @param advisory common practice not followed
 */
public record KindCounts(long deficiency, long discrepancy, long omission, long advisory) {
  public static final KindCounts NONE = new KindCounts(0, 0, 0, 0);

  /** These and one more of this kind. */
  public KindCounts and(FindingKind kind) {
    return switch (kind) {
      case DEFICIENCY -> new KindCounts(deficiency + 1, discrepancy, omission, advisory);
      case DISCREPANCY -> new KindCounts(deficiency, discrepancy + 1, omission, advisory);
      case OMISSION -> new KindCounts(deficiency, discrepancy, omission + 1, advisory);
      case ADVISORY -> new KindCounts(deficiency, discrepancy, omission, advisory + 1);
    };
  }

  /** The counts of two parts of a batch. */
  public KindCounts plus(KindCounts other) {
    return new KindCounts(
        deficiency + other.deficiency,
        discrepancy + other.discrepancy,
        omission + other.omission,
        advisory + other.advisory);
  }

  public long of(FindingKind kind) {
    return switch (kind) {
      case DEFICIENCY -> deficiency;
      case DISCREPANCY -> discrepancy;
      case OMISSION -> omission;
      case ADVISORY -> advisory;
    };
  }

  public long total() {
    return deficiency + discrepancy + omission + advisory;
  }
}
