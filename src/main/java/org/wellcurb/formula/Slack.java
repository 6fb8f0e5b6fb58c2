package org.wellcurb.formula;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.WellRecord;

/**
 * The slack of rounding: a single exact entry against a limit that holds no entry, written in
 * another unit system than the limit, has half a unit of its last written decimal place in its
 * favour before it is said to fall short. Codes and forms convert and round (15.2 m for 50 ft); in
 * the limit's own system there is none.
 */
final class Slack {
  private final int entry;
  private final Expr limit;

  /** The system of a limit that is one figure: most are; null for others. */
  private final @Nullable UnitSystem plain;

  private Slack(int entry, Expr limit) {
    this.entry = entry;
    this.limit = limit;
    plain = limit instanceof Expr.Literal figure ? figure.unit().system() : null;
  }

  /** The slack of {@code side} against {@code limit}; null where the form allows none. */
  static @Nullable Slack of(Expr side, Expr limit) {
    return side instanceof Expr.EntryAmount e && Written.holdsNoEntry(limit)
        ? new Slack(e.entry().index(), limit)
        : null;
  }

  /** True if the comparison, false as written, holds with the slack. */
  boolean turns(Frame f, Relation relation, double value, double lo, double hi) {
    WellRecord record = f.record();
    double half = record.halfPlace(entry);
    if (half <= 0 || record.lo(entry) != record.hi(entry)) {
      return false;
    }
    UnitSystem written = record.system(entry);
    if (written == UnitSystem.NEUTRAL || written == plain) {
      return false;
    }
    // Whether it would help is quickly told; the system of a limit may have to be looked up.
    if (!helps(relation, value, half, lo, hi)) {
      return false;
    }
    @Nullable UnitSystem system = Written.ofLimit(limit, f);
    return system != null && system != UnitSystem.NEUTRAL && system != written;
  }

  private static boolean helps(Relation relation, double value, double half, double lo, double hi) {
    return switch (relation) {
      case AT_LEAST, MORE -> holds(relation, value + half, lo, hi);
      case AT_MOST, LESS -> holds(relation, value - half, lo, hi);
      case EQUAL ->
          holds(Relation.AT_LEAST, value + half, lo, hi)
              && holds(Relation.AT_MOST, value - half, lo, hi);
      case NOT_EQUAL -> false;
    };
  }

  private static boolean holds(Relation relation, double value, double lo, double hi) {
    return relation.holds(value, value, lo, hi) == Truth.TRUE;
  }
}
