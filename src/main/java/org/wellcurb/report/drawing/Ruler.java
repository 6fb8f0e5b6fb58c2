package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Brings amounts to heights in a drawing. To scale, or broken once: up to {@link #breakAt()} with
 * one scale, from there with another, where one scale alone would hide the lesser part.
 */
final class Ruler {
  private final double from;
  private final double to;
  private final double breakAt;
  private final double top;
  private final double breakY;
  private final double bottom;

  private Ruler(double from, double to, double breakAt, double top, double breakY, double bottom) {
    this.from = from;
    this.to = to;
    this.breakAt = breakAt;
    this.top = top;
    this.breakY = breakY;
    this.bottom = bottom;
  }

  /**
   * A ruler from one amount to another.
   *
   * @param from amount at {@code top}
   * @param to amount at {@code bottom}, more than {@code from}
   * @param part end of the part near {@code from} that must not be hidden
   * @param share least share of the height for that part
   */
  static Ruler of(double from, double to, double part, double share, double top, double bottom) {
    boolean isBroken = part > from && part < to && (part - from) / (to - from) < share;
    double breakY = isBroken ? top + share * (bottom - top) : bottom;
    return new Ruler(from, to, isBroken ? part : to, top, breakY, bottom);
  }

  boolean isBroken() {
    return breakAt < to;
  }

  /** Where the scale is broken. */
  double breakAt() {
    return breakAt;
  }

  /** The height at which it is broken. */
  double breakY() {
    return breakY;
  }

  /** The height of an amount; amounts beyond the ruler stand at its ends. */
  double y(double amount) {
    double a = Math.max(from, Math.min(to, amount));
    if (a <= breakAt) {
      return top + (a - from) / (breakAt - from) * (breakY - top);
    }
    return breakY + (a - breakAt) / (to - breakAt) * (bottom - breakY);
  }

  /** Round amounts for ticks, in a unit of this size: some in each part of the ruler. */
  List<Double> ticks(double unit) {
    return ticks(unit, 45);
  }

  /** The same, no closer than about this height. */
  List<Double> ticks(double unit, double gap) {
    List<Double> ticks = new ArrayList<>();
    ticks(from, breakAt, unit, Math.abs(breakY - top) / gap, ticks);
    if (isBroken()) {
      ticks(breakAt, to, unit, Math.abs(bottom - breakY) / gap, ticks);
    }
    return ticks;
  }

  private static void ticks(double lo, double hi, double unit, double most, List<Double> ticks) {
    double step = step((hi - lo) / unit / Math.max(1, most)) * unit;
    for (double k = Math.ceil(lo / step - 1e-9); k * step <= hi * (1 + 1e-12); k++) {
      double tick = k * step;
      if (ticks.isEmpty() || tick > ticks.get(ticks.size() - 1) + step / 2) {
        ticks.add(tick + 0.0);
      }
      if (ticks.size() > 60) {
        return;
      }
    }
  }

  /** The next of 1, 2, 5, 10, 20, ... */
  private static double step(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(Math.max(least, 1e-3))));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= least * (1 - 1e-9)) {
        return factor * power;
      }
    }
    return 10 * power;
  }
}
