package org.wellcurb.formula;

import java.util.Arrays;
import org.wellcurb.quantity.UnitSystem;

/** The kinds of amounts over records side by side. */
final class LaneAmounts {
  private LaneAmounts() {}

  /** One figure for all records, filled in once. */
  static final class Fixed extends AmountLanes {
    Fixed(double value) {
      Arrays.fill(lo, value);
      Arrays.fill(hi, value);
    }

    @Override
    void compute(Lanes lanes, long mask) {
      // It never changes.
    }
  }

  /** Whatever has no form of its own: one record after the other. */
  static final class EachAlone extends AmountLanes {
    private final AmountNode node;

    EachAlone(AmountNode node) {
      this.node = node;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      long areVoid = 0;
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        Frame f = lanes.frame(lane);
        node.eval(f, 0);
        lo[lane] = f.lo[0];
        hi[lane] = f.hi[0];
        areVoid |= f.isVoid[0] ? 1L << lane : 0;
      }
      putVoid(areVoid);
    }
  }

  /** The bracketed side where the comparison's amounts were written in its system. */
  static final class DualLimit extends AmountLanes {
    private final double primary;
    private final double bracket;
    private final UnitSystem bracketSystem;

    DualLimit(Expr.Dual dual) {
      primary = dual.primary();
      bracket = dual.bracket();
      bracketSystem = dual.bracketUnit().system();
    }

    @Override
    void compute(Lanes lanes, long mask) {
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        double value = lanes.frame(lane).written == bracketSystem ? bracket : primary;
        lo[lane] = value;
        hi[lane] = value;
      }
    }
  }

  /** An entry, brought to ground level where it is a depth. */
  static final class OfEntry extends AmountLanes {
    private final int entry;
    private final int datum;
    private final boolean isMovable;

    OfEntry(Expr.EntryAmount e) {
      entry = e.entry().index();
      datum = e.entry().datum().ordinal();
      isMovable = e.entry().datum().isMovable();
    }

    @Override
    void compute(Lanes lanes, long mask) {
      EntryLanes of = lanes.entry(entry);
      if (!isMovable) {
        System.arraycopy(of.lo, 0, lo, 0, lo.length);
        System.arraycopy(of.hi, 0, hi, 0, hi.length);
        putVoid(mask & of.notApplicable());
        return;
      }
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        double shift = lanes.frame(lane).shift[datum];
        lo[lane] = shift == 0 ? of.lo[lane] : Intervals.sum(of.lo[lane], -shift);
        hi[lane] = shift == 0 ? of.hi[lane] : Intervals.sum(of.hi[lane], -shift);
      }
      putVoid(mask & of.notApplicable());
    }
  }

  /** Sum or difference. */
  static final class Sum extends AmountLanes {
    private final boolean isPlus;
    private final AmountLanes a;
    private final AmountLanes b;
    private final double scaleOfB;

    Sum(boolean isPlus, AmountLanes a, AmountLanes b, double scaleOfB) {
      this.isPlus = isPlus;
      this.a = a;
      this.b = b;
      this.scaleOfB = scaleOfB;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      a.need(lanes, mask);
      b.need(lanes, mask);
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        double least = b.lo[lane] * scaleOfB;
        double most = b.hi[lane] * scaleOfB;
        double from = Intervals.sum(a.lo[lane], isPlus ? least : -most);
        double to = Intervals.sum(a.hi[lane], isPlus ? most : -least);
        lo[lane] = Double.isNaN(from) ? Double.NEGATIVE_INFINITY : from;
        hi[lane] = Double.isNaN(to) ? Double.POSITIVE_INFINITY : to;
      }
      putVoid(mask & (a.isVoid() | b.isVoid()));
    }
  }

  /** Product or quotient. */
  static final class Product extends AmountLanes {
    private final boolean isQuotient;
    private final AmountLanes a;
    private final AmountLanes b;

    Product(boolean isQuotient, AmountLanes a, AmountLanes b) {
      this.isQuotient = isQuotient;
      this.a = a;
      this.b = b;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      a.need(lanes, mask);
      b.need(lanes, mask);
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        Frame f = lanes.frame(lane);
        f.lo[0] = a.lo[lane];
        f.hi[0] = a.hi[lane];
        f.lo[1] = b.lo[lane];
        f.hi[1] = b.hi[lane];
        if (isQuotient) {
          Intervals.divide(f, 0, 1);
        } else {
          Intervals.multiply(f, 0, 1);
        }
        lo[lane] = f.lo[0];
        hi[lane] = f.hi[0];
      }
      putVoid(mask & (a.isVoid() | b.isVoid()));
    }
  }

  /** Days between two dates, in seconds. */
  static final class Days extends AmountLanes {
    private final AmountLanes difference;

    Days(AmountLanes difference) {
      this.difference = difference;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      difference.need(lanes, mask);
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        lo[lane] = difference.lo[lane] * 86400;
        hi[lane] = difference.hi[lane] * 86400;
      }
      putVoid(mask & difference.isVoid());
    }
  }

  /** An amount without its sign. */
  static final class Size extends AmountLanes {
    private final AmountLanes a;

    Size(AmountLanes a) {
      this.a = a;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      a.need(lanes, mask);
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        double least = Math.abs(a.lo[lane]);
        double most = Math.abs(a.hi[lane]);
        hi[lane] = Math.max(least, most);
        lo[lane] = a.lo[lane] <= 0 && a.hi[lane] >= 0 ? 0 : Math.min(least, most);
      }
      putVoid(mask & a.isVoid());
    }
  }

  static final class LeastOrGreatest extends AmountLanes {
    private final boolean isGreatest;
    private final AmountLanes[] of;

    LeastOrGreatest(boolean isGreatest, AmountLanes[] of) {
      this.isGreatest = isGreatest;
      this.of = of;
    }

    @Override
    void compute(Lanes lanes, long mask) {
      long areVoid = 0;
      for (AmountLanes one : of) {
        one.need(lanes, mask);
        areVoid |= one.isVoid();
      }
      for (long left = mask; left != 0; left &= left - 1) {
        int lane = Long.numberOfTrailingZeros(left);
        double least = of[0].lo[lane];
        double most = of[0].hi[lane];
        for (int i = 1; i < of.length; i++) {
          least = isGreatest ? Math.max(least, of[i].lo[lane]) : Math.min(least, of[i].lo[lane]);
          most = isGreatest ? Math.max(most, of[i].hi[lane]) : Math.min(most, of[i].hi[lane]);
        }
        lo[lane] = least;
        hi[lane] = most;
      }
      putVoid(mask & areVoid);
    }
  }
}
