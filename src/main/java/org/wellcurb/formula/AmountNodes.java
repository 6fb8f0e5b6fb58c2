package org.wellcurb.formula;

import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.WellRecord;

/** The kinds of compiled amounts, but for tables and workings. */
final class AmountNodes {
  private AmountNodes() {}

  static final class Fixed extends AmountNode {
    private final double value;

    Fixed(double value) {
      this.value = value;
    }

    @Override
    void eval(Frame f, int at) {
      f.lo[at] = value;
      f.hi[at] = value;
      f.isVoid[at] = false;
    }
  }

  /** The as-of date of the run; where none is set it may be any day. */
  static final class AsOfDay extends AmountNode {
    @Override
    void eval(Frame f, int at) {
      boolean isSet = !Double.isNaN(f.asOf());
      f.lo[at] = isSet ? f.asOf() : Double.NEGATIVE_INFINITY;
      f.hi[at] = isSet ? f.asOf() : Double.POSITIVE_INFINITY;
      f.isVoid[at] = false;
    }
  }

  /**
   * The bracketed side holds only where all that the comparison reads was written in its system.
   */
  static final class DualLimit extends AmountNode {
    private final double primary;
    private final double bracket;
    private final UnitSystem bracketSystem;

    DualLimit(Expr.Dual dual) {
      primary = dual.primary();
      bracket = dual.bracket();
      bracketSystem = dual.bracketUnit().system();
    }

    @Override
    void eval(Frame f, int at) {
      double value = f.written == bracketSystem ? bracket : primary;
      f.lo[at] = value;
      f.hi[at] = value;
      f.isVoid[at] = false;
    }
  }

  /** An entry, brought to ground level where it is a depth. */
  static final class OfEntry extends AmountNode {
    private final int entry;
    private final int datum;

    OfEntry(Expr.EntryAmount e) {
      entry = e.entry().index();
      datum = e.entry().datum().ordinal();
    }

    @Override
    void eval(Frame f, int at) {
      WellRecord record = f.record();
      double shift = f.shift[datum];
      f.lo[at] = shift == 0 ? record.lo(entry) : Intervals.sum(record.lo(entry), -shift);
      f.hi[at] = shift == 0 ? record.hi(entry) : Intervals.sum(record.hi(entry), -shift);
      f.isVoid[at] = f.state(entry) == WellRecord.NOT_APPLICABLE;
    }
  }

  static final class Sum extends AmountNode {
    private final char sign;
    private final AmountNode a;
    private final AmountNode b;
    private final double scaleOfB;

    Sum(char sign, AmountNode a, AmountNode b, double scaleOfB) {
      this.sign = sign;
      this.a = a;
      this.b = b;
      this.scaleOfB = scaleOfB;
    }

    @Override
    void eval(Frame f, int at) {
      a.eval(f, at);
      b.eval(f, at + 1);
      f.isVoid[at] |= f.isVoid[at + 1];
      f.lo[at + 1] *= scaleOfB;
      f.hi[at + 1] *= scaleOfB;
      switch (sign) {
        case '+' -> Intervals.add(f, at, at + 1);
        case '-' -> Intervals.subtract(f, at, at + 1);
        case '*' -> Intervals.multiply(f, at, at + 1);
        default -> Intervals.divide(f, at, at + 1);
      }
    }
  }

  /** Days between two dates, in seconds. */
  static final class Days extends AmountNode {
    private final AmountNode difference;

    Days(AmountNode difference) {
      this.difference = difference;
    }

    @Override
    void eval(Frame f, int at) {
      difference.eval(f, at);
      f.lo[at] *= 86400;
      f.hi[at] *= 86400;
    }
  }

  static final class Negated extends AmountNode {
    private final AmountNode a;

    Negated(AmountNode a) {
      this.a = a;
    }

    @Override
    void eval(Frame f, int at) {
      a.eval(f, at);
      double lo = f.lo[at];
      f.lo[at] = -f.hi[at];
      f.hi[at] = -lo;
    }
  }

  static final class Size extends AmountNode {
    private final AmountNode a;

    Size(AmountNode a) {
      this.a = a;
    }

    @Override
    void eval(Frame f, int at) {
      a.eval(f, at);
      double lo = f.lo[at];
      double hi = f.hi[at];
      f.hi[at] = Math.max(Math.abs(lo), Math.abs(hi));
      f.lo[at] = lo <= 0 && hi >= 0 ? 0 : Math.min(Math.abs(lo), Math.abs(hi));
    }
  }

  static final class LeastOrGreatest extends AmountNode {
    private final boolean isGreatest;
    private final AmountNode[] of;

    LeastOrGreatest(boolean isGreatest, AmountNode[] of) {
      this.isGreatest = isGreatest;
      this.of = of;
    }

    @Override
    void eval(Frame f, int at) {
      of[0].eval(f, at);
      for (int i = 1; i < of.length; i++) {
        of[i].eval(f, at + 1);
        f.isVoid[at] |= f.isVoid[at + 1];
        if (isGreatest) {
          f.lo[at] = Math.max(f.lo[at], f.lo[at + 1]);
          f.hi[at] = Math.max(f.hi[at], f.hi[at + 1]);
        } else {
          f.lo[at] = Math.min(f.lo[at], f.lo[at + 1]);
          f.hi[at] = Math.min(f.hi[at], f.hi[at + 1]);
        }
      }
    }
  }

  static final class ToStep extends AmountNode {
    private final AmountNode a;
    private final double step;

    ToStep(AmountNode a, double step) {
      this.a = a;
      this.step = step;
    }

    @Override
    void eval(Frame f, int at) {
      a.eval(f, at);
      f.lo[at] = Intervals.round(f.lo[at], step);
      f.hi[at] = Intervals.round(f.hi[at], step);
    }
  }

  /** Where the test is unknown, the hull of both branches; void where the test is void. */
  static final class Choose extends AmountNode {
    private final TruthNode test;
    private final AmountNode then;
    private final AmountNode otherwise;

    Choose(TruthNode test, AmountNode then, AmountNode otherwise) {
      this.test = test;
      this.then = then;
      this.otherwise = otherwise;
    }

    @Override
    void eval(Frame f, int at) {
      switch (test.eval(f, at)) {
        case Truth.TRUE -> then.eval(f, at);
        case Truth.FALSE -> otherwise.eval(f, at);
        case Truth.VOID -> {
          Intervals.set(f, at, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
          f.isVoid[at] = true;
        }
        default -> hull(f, at);
      }
    }

    private void hull(Frame f, int at) {
      then.eval(f, at);
      otherwise.eval(f, at + 1);
      if (f.isVoid[at] != f.isVoid[at + 1]) {
        // It may or may not apply: nothing can be said of it.
        Intervals.set(f, at, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        f.isVoid[at] = false;
      } else {
        f.lo[at] = Math.min(f.lo[at], f.lo[at + 1]);
        f.hi[at] = Math.max(f.hi[at], f.hi[at + 1]);
      }
    }
  }
}
