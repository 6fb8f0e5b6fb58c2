package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/** No working makes an object while it computes: millions of records make no garbage of it. */
class AllocationTest {
  private static final int RUNS = 20_000;

  /** The geodesic library makes objects; few forms give two positions. */
  private static final String BY_LIBRARY = "septic_distance";

  @Test
  void workingsAllocateNothing() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    List<String> wasteful = new ArrayList<>();
    for (Working working : WorkingCatalogue.standard().workings()) {
      double[] x = point(working);
      double sum = 0;
      for (int warm = 0; warm < 12; warm++) {
        sum += run(working, x);
      }
      long before = threads.getCurrentThreadAllocatedBytes();
      sum += run(working, x);
      double each = (threads.getCurrentThreadAllocatedBytes() - before) / (double) RUNS;
      if (each >= 1 && !working.name().startsWith(BY_LIBRARY)) {
        wasteful.add(working.name() + ": " + each + " bytes (" + sum + ")");
      }
    }
    assertTrue(wasteful.isEmpty(), wasteful::toString);
  }

  private static double run(Working working, double[] x) {
    double sum = 0;
    for (int i = 0; i < RUNS; i++) {
      sum += working.function().at(x);
    }
    return sum;
  }

  private static double[] point(Working working) {
    double[] x = new double[working.inputs().size() + working.figures().size()];
    for (int i = 0; i < working.inputs().size(); i++) {
      String key = working.inputs().get(i).key();
      Entry entry = Objects.requireNonNull(Catalogue.standard().find(key));
      Interval all = entry.plausible();
      x[i] = all.isAll() ? 0 : all.lo() + (all.hi() - all.lo()) * 0.1;
    }
    for (int i = working.inputs().size(); i < x.length; i++) {
      String name = working.figures().get(i - working.inputs().size());
      x[i] = Objects.requireNonNull(WorkingCatalogue.standard().figure(name)).value();
    }
    return x;
  }
}
