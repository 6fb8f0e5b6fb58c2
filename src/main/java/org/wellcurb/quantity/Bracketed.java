package org.wellcurb.quantity;

/** What stands in brackets behind an amount: the same in another unit, or a comment. */
final class Bracketed {
  private static final double SLACK = 1e-9;

  private Bracketed() {}

  /** The amount, with a note; or nothing, if the brackets contradict it. */
  static Reading check(Reading.Amount outer, String inside, Expected expected, Comma comma) {
    Words words = new Words(inside);
    if (words.isLast(new String[] {"est", "estimated", "estimate", "approx", "e", "~"}, 0)) {
      return withNote(outer, Note.APPROXIMATE);
    }
    AmountText text = new AmountText(inside, expected, outer.unit(), comma);
    if (text.read() instanceof Reading.Amount inner && text.statesUnit()) {
      return agree(outer, inner) ? outer : new Reading.Unreadable(Note.UNITS_DISAGREE);
    }
    return withNote(outer, outer.note() == Note.NONE ? Note.COMMENT : outer.note());
  }

  private static Reading withNote(Reading.Amount a, Note note) {
    return new Reading.Amount(a.lo(), a.hi(), a.halfPlace(), a.unit(), note);
  }

  /**
   * Each end within what rounding to a whole unit of either side explains: people convert and
   * round.
   */
  private static boolean agree(Reading.Amount a, Reading.Amount b) {
    return near(a.lo(), b.lo(), a, b) && near(a.hi(), b.hi(), a, b);
  }

  private static boolean near(double x, double y, Reading.Amount a, Reading.Amount b) {
    if (x == y) {
      return true;
    }
    double slack = slack(a) + slack(b) + SLACK * Math.max(Math.abs(x), Math.abs(y));
    return Math.abs(x - y) <= slack;
  }

  /** Half the last written place, and half a unit where that is not kept (ranges, fractions). */
  private static double slack(Reading.Amount amount) {
    return amount.halfPlace() > 0 ? amount.halfPlace() : 0.5 * Math.abs(amount.unit().factor());
  }
}
