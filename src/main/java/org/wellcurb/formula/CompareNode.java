package org.wellcurb.formula;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;

/** A comparison of two amounts, with dual limits and the slack of rounding. */
final class CompareNode extends TruthNode {
  private final Relation relation;
  private final AmountNode a;
  private final AmountNode b;
  private final int @Nullable [] amounts;
  private final @Nullable Slack slackOfA;
  private final @Nullable Slack slackOfB;

  /**
   * @param amounts entries that pick the side of a dual limit; null if none of the limits is dual
   * @param slackOfA slack where {@code a} is the entry and {@code b} the limit; null if none
   * @param slackOfB slack where {@code b} is the entry; null if none
   */
  CompareNode(
      Relation relation,
      AmountNode a,
      AmountNode b,
      int @Nullable [] amounts,
      @Nullable Slack slackOfA,
      @Nullable Slack slackOfB) {
    this.relation = relation;
    this.a = a;
    this.b = b;
    this.amounts = amounts;
    this.slackOfA = slackOfA;
    this.slackOfB = slackOfB;
  }

  @Override
  int eval(Frame f, int at) {
    @Nullable UnitSystem outer = f.written;
    f.written = amounts == null ? null : Written.common(f, amounts);
    a.eval(f, at);
    b.eval(f, at + 1);
    int truth =
        f.isVoid[at] || f.isVoid[at + 1]
            ? Truth.VOID
            : relation.holds(f.lo[at], f.hi[at], f.lo[at + 1], f.hi[at + 1]);
    if (truth == Truth.FALSE) {
      truth = turned(f, f.lo[at], f.hi[at], f.lo[at + 1], f.hi[at + 1]);
    }
    f.written = outer;
    return truth;
  }

  /** What the slack of rounding makes of a comparison that is false as written. */
  int turned(Frame f, double alo, double ahi, double blo, double bhi) {
    if (slackOfA != null) {
      return slackOfA.turned(f, relation, alo, blo, bhi);
    }
    return slackOfB == null ? Truth.FALSE : slackOfB.turned(f, relation.mirrored(), blo, alo, ahi);
  }

  /** Entries that pick the side of a dual limit; null if none of the limits is dual. */
  int @Nullable [] amounts() {
    return amounts;
  }
}
