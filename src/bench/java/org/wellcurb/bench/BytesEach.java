package org.wellcurb.bench;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.Working;
import org.wellcurb.workings.WorkingCatalogue;

/**
 * Bytes that one evaluation of each working makes, and nanoseconds that it takes, at a point inside
 * the plausible ranges of its entries. All should make none.
 */
public final class BytesEach {
  private static final int RUNS = 1_000_000;
  private static final int WARM = 3;

  private BytesEach() {}

  public static void main(String[] arguments) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    System.out.printf(Locale.ROOT, "%-32s %10s %10s%n", "working", "bytes", "ns");
    for (Working working : WorkingCatalogue.standard().workings()) {
      double[] x = point(working);
      double sum = 0;
      for (int i = 0; i < WARM; i++) {
        sum += run(working, x);
      }
      long bytes = threads.getCurrentThreadAllocatedBytes();
      long start = System.nanoTime();
      sum += run(working, x);
      double nanos = (System.nanoTime() - start) / (double) RUNS;
      double each = (threads.getCurrentThreadAllocatedBytes() - bytes) / (double) RUNS;
      // The sum is looked at, so that no evaluation can be left out.
      String name = Double.isInfinite(sum) ? working.name() + " (unbounded)" : working.name();
      System.out.printf(Locale.ROOT, "%-32s %10.1f %10.1f%n", name, each, nanos);
    }
  }

  private static double run(Working working, double[] x) {
    double sum = 0;
    for (int i = 0; i < RUNS; i++) {
      sum += working.function().at(x);
    }
    return sum;
  }

  private static double[] point(Working working) {
    int inputs = working.inputs().size();
    double[] x = new double[inputs + working.figures().size()];
    for (int i = 0; i < inputs; i++) {
      @Nullable Entry entry = Catalogue.standard().find(working.inputs().get(i).key());
      Interval all = entry == null ? new Interval(0, 0) : entry.plausible();
      // Not the same share of each, so that two positions are not one place.
      x[i] = all.isAll() ? 0 : all.lo() + (all.hi() - all.lo()) * (0.1 + 0.0001 * i);
    }
    for (int i = inputs; i < x.length; i++) {
      @Nullable Figure figure =
          WorkingCatalogue.standard().figure(working.figures().get(i - inputs));
      x[i] = figure == null ? 0 : figure.value();
    }
    return x;
  }
}
