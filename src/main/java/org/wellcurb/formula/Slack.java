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

  /**
   * The truth of a comparison, false as written, with the slack: true, or still false; unknown
   * where the limit is one of several and the slack would do for some.
   */
  int turned(Frame f, Relation relation, double value, double lo, double hi) {
    WellRecord record = f.record();
    double half = record.halfPlace(entry);
    if (half <= 0 || record.lo(entry) != record.hi(entry)) {
      return Truth.FALSE;
    }
    UnitSystem written = record.system(entry);
    if (written == UnitSystem.NEUTRAL || written == plain) {
      return Truth.FALSE;
    }
    // Whether it would help is quickly told; the system of a limit may have to be looked up.
    int helped = helped(relation, value, half, lo, hi);
    if (helped == Truth.FALSE) {
      return Truth.FALSE;
    }
    @Nullable UnitSystem system = Written.ofLimit(limit, f);
    return system != null && system != UnitSystem.NEUTRAL && system != written
        ? helped
        : Truth.FALSE;
  }

  private static int helped(Relation relation, double value, double half, double lo, double hi) {
    return switch (relation) {
      case AT_LEAST, MORE -> holds(relation, value + half, lo, hi);
      case AT_MOST, LESS -> holds(relation, value - half, lo, hi);
      case EQUAL ->
          Truth.and(
              holds(Relation.AT_LEAST, value + half, lo, hi),
              holds(Relation.AT_MOST, value - half, lo, hi));
      case NOT_EQUAL -> Truth.FALSE;
    };
  }

  private static int holds(Relation relation, double value, double lo, double hi) {
    return relation.holds(value, value, lo, hi);
  }
}
