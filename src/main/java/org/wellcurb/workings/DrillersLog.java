package org.wellcurb.workings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Layer;

/**
 * What the layers of a driller's log say of its depths. Metres below the datum of the record.
 *
 * <p>A depth that is not known is passed over: a log that gives bottoms only has no gaps.
 */
public final class DrillersLog {
  private static final String LAYERS = "layers";

  private DrillersLog() {}

  /** The least depth of all; NaN in both ends where no layer gives one. */
  public static void top(List<Layer> layers, double[] out) {
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.POSITIVE_INFINITY;
    for (int i = 0; i < layers.size(); i++) {
      lo = Math.min(lo, upper(layers.get(i)));
      hi = Math.min(hi, upperAtMost(layers.get(i)));
    }
    put(out, lo, hi, lo == Double.POSITIVE_INFINITY);
  }

  /** The greatest depth of all; NaN in both ends where no layer gives one. */
  public static void bottom(List<Layer> layers, double[] out) {
    double lo = Double.NEGATIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < layers.size(); i++) {
      lo = Math.max(lo, lowerAtLeast(layers.get(i)));
      hi = Math.max(hi, lower(layers.get(i)));
    }
    put(out, lo, hi, hi == Double.NEGATIVE_INFINITY);
  }

  /**
   * The widest stretch between the bottom of all layers so far and the top of the next deeper one;
   * 0 where there is none, or where one of the two depths is not known.
   */
  public static void gap(List<Layer> layers, double[] out) {
    List<Layer> sorted = downward(layers);
    double lo = 0;
    double hi = 0;
    // How far the layers so far reach down; nowhere known before the first and below an open one.
    double reachLo = Double.NaN;
    double reachHi = Double.NaN;
    for (int i = 0; i < sorted.size(); i++) {
      Layer layer = sorted.get(i);
      if (layer.to().isAll()) {
        reachLo = layer.from().isAll() ? reachLo : Double.NaN;
        reachHi = layer.from().isAll() ? reachHi : Double.NaN;
        continue;
      }
      boolean isReached = !Double.isNaN(reachHi);
      if (isReached && !layer.from().isAll()) {
        lo = Math.max(lo, upper(layer) - reachHi);
        hi = Math.max(hi, upperAtMost(layer) - reachLo);
      }
      reachLo = isReached ? Math.max(reachLo, lowerAtLeast(layer)) : lowerAtLeast(layer);
      reachHi = isReached ? Math.max(reachHi, lower(layer)) : lower(layer);
    }
    put(out, lo, Math.max(lo, hi), false);
  }

  /** How far the top of a layer lies below its own bottom, at the most; 0 where none does. */
  public static void overturn(List<Layer> layers, double[] out) {
    double lo = 0;
    double hi = 0;
    for (int i = 0; i < layers.size(); i++) {
      Layer layer = layers.get(i);
      if (!layer.from().isAll() && !layer.to().isAll()) {
        lo = Math.max(lo, layer.from().lo() - layer.to().hi());
        hi = Math.max(hi, layer.from().hi() - layer.to().lo());
      }
    }
    put(out, lo, hi, false);
  }

  private static void put(double[] out, double lo, double hi, boolean isUnknown) {
    out[0] = isUnknown ? Double.NaN : lo;
    out[1] = isUnknown ? Double.NaN : hi;
  }

  /** The layers from above downward: as they stand, which they nearly always do, else sorted. */
  private static List<Layer> downward(List<Layer> layers) {
    for (int i = 1; i < layers.size(); i++) {
      if (upper(layers.get(i)) < upper(layers.get(i - 1))) {
        List<Layer> sorted = new ArrayList<>(layers);
        sorted.sort(Comparator.comparingDouble(DrillersLog::upper));
        return sorted;
      }
    }
    return layers;
  }

  /** The upper of its two depths, at the least; infinite where it has none. */
  private static double upper(Layer layer) {
    return Math.min(least(layer.from()), least(layer.to()));
  }

  private static double upperAtMost(Layer layer) {
    double from = layer.from().isAll() ? Double.POSITIVE_INFINITY : layer.from().hi();
    double to = layer.to().isAll() ? Double.POSITIVE_INFINITY : layer.to().hi();
    return Math.min(from, to);
  }

  /** The lower of its two depths, at the most; infinitely high where it has none. */
  private static double lower(Layer layer) {
    return Math.max(greatest(layer.from()), greatest(layer.to()));
  }

  private static double lowerAtLeast(Layer layer) {
    double from = layer.from().isAll() ? Double.NEGATIVE_INFINITY : layer.from().lo();
    double to = layer.to().isAll() ? Double.NEGATIVE_INFINITY : layer.to().lo();
    return Math.max(from, to);
  }

  private static double least(Interval depth) {
    return depth.isAll() ? Double.POSITIVE_INFINITY : depth.lo();
  }

  private static double greatest(Interval depth) {
    return depth.isAll() ? Double.NEGATIVE_INFINITY : depth.hi();
  }

  private static Working working(String name, String meaning, String step, Input.Take take) {
    Unit us = Units.FOOT;
    Unit metric = Units.METRE;
    return Draft.of(name, us, metric, meaning)
        .formula("{" + step + "}")
        .reads(new Input(LAYERS, Input.Need.REQUIRED, take, null))
        .step(step, us, metric, x -> x[0])
        .by(x -> x[0]);
  }

  static List<Working> workings() {
    return List.of(
        working(
            "log_top",
            "depth at which the layers of the driller's log begin",
            "least depth in the log",
            Input.Take.LOG_TOP),
        working(
            "log_bottom",
            "depth to which the layers of the driller's log reach",
            "greatest depth in the log",
            Input.Take.LOG_BOTTOM),
        working(
            "log_gap",
            "widest stretch that the layers of the driller's log leave out between them",
            "widest gap in the log",
            Input.Take.LOG_GAP),
        working(
            "log_overturn",
            "how far the top of a layer is stated below its own bottom, at the most",
            "most that a layer is upside down",
            Input.Take.LOG_OVERTURN));
  }
}
