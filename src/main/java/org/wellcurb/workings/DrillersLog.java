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

  /** The least depth of all; unknown ({@link Interval#ALL}) where no layer gives one. */
  public static Interval top(List<Layer> layers) {
    double lo = Double.POSITIVE_INFINITY;
    double hi = Double.POSITIVE_INFINITY;
    for (Interval depth : depths(layers)) {
      lo = Math.min(lo, depth.lo());
      hi = Math.min(hi, depth.hi());
    }
    return lo == Double.POSITIVE_INFINITY ? Interval.ALL : new Interval(lo, hi);
  }

  /** The greatest depth of all; unknown ({@link Interval#ALL}) where no layer gives one. */
  public static Interval bottom(List<Layer> layers) {
    double lo = Double.NEGATIVE_INFINITY;
    double hi = Double.NEGATIVE_INFINITY;
    for (Interval depth : depths(layers)) {
      lo = Math.max(lo, depth.lo());
      hi = Math.max(hi, depth.hi());
    }
    return hi == Double.NEGATIVE_INFINITY ? Interval.ALL : new Interval(lo, hi);
  }

  /**
   * The widest stretch between the bottom of all layers so far and the top of the next deeper one;
   * 0 where there is none, or where one of the two depths is not known.
   */
  public static Interval gap(List<Layer> layers) {
    List<Layer> sorted = new ArrayList<>(layers);
    sorted.removeIf(layer -> layer.from().isAll() && layer.to().isAll());
    sorted.sort(Comparator.comparingDouble(DrillersLog::upper));
    double lo = 0;
    double hi = 0;
    double reachLo = Double.POSITIVE_INFINITY;
    double reachHi = Double.POSITIVE_INFINITY;
    for (Layer layer : sorted) {
      Interval top = least(layer);
      if (!layer.from().isAll() && !layer.to().isAll()) {
        lo = Math.max(lo, top.lo() - reachHi);
        hi = Math.max(hi, top.hi() - reachLo);
      }
      Interval bottom = layer.to().isAll() ? Interval.ALL : greatest(layer);
      boolean isFirst = reachHi == Double.POSITIVE_INFINITY;
      boolean isOpen = bottom.isAll();
      reachLo =
          isOpen
              ? Double.POSITIVE_INFINITY
              : isFirst ? bottom.lo() : Math.max(reachLo, bottom.lo());
      reachHi =
          isOpen
              ? Double.POSITIVE_INFINITY
              : isFirst ? bottom.hi() : Math.max(reachHi, bottom.hi());
    }
    return new Interval(lo, Math.max(lo, hi));
  }

  /** How far the top of a layer lies below its own bottom, at the most; 0 where none does. */
  public static Interval overturn(List<Layer> layers) {
    double lo = 0;
    double hi = 0;
    for (Layer layer : layers) {
      if (!layer.from().isAll() && !layer.to().isAll()) {
        lo = Math.max(lo, layer.from().lo() - layer.to().hi());
        hi = Math.max(hi, layer.from().hi() - layer.to().lo());
      }
    }
    return new Interval(lo, hi);
  }

  private static double upper(Layer layer) {
    return least(layer).lo();
  }

  private static Interval least(Layer layer) {
    return top(List.of(layer));
  }

  private static Interval greatest(Layer layer) {
    return bottom(List.of(layer));
  }

  private static List<Interval> depths(List<Layer> layers) {
    List<Interval> depths = new ArrayList<>();
    for (Layer layer : layers) {
      depths.add(layer.from());
      depths.add(layer.to());
    }
    depths.removeIf(Interval::isAll);
    return depths;
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
