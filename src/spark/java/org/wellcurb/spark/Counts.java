package org.wellcurb.spark;

import java.io.Serializable;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.Tally;

/** What one task counted, as it travels. Sums, so that the order of tasks does not matter. */
final class Counts implements Serializable {
  private static final long serialVersionUID = 1L;

  private final long[] carried;
  private final long setAside;

  Counts(Tally tally, long setAside) {
    this(tally.carried(), setAside);
  }

  private Counts(long[] carried, long setAside) {
    this.carried = carried;
    this.setAside = setAside;
  }

  /** Both together; neither is changed. */
  Counts plus(Counts other) {
    long[] sum = carried.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += other.carried[i];
    }
    return new Counts(sum, setAside + other.setAside);
  }

  /** The outcomes, by rule. */
  Tally tally(Pack pack) {
    Tally tally = new Tally(pack);
    tally.add(carried);
    return tally;
  }

  /** Rows that are no records. */
  long setAside() {
    return setAside;
  }
}
