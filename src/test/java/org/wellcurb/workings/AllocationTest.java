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
import org.wellcurb.record.Layer;

/** No working makes an object while it computes: millions of records make no garbage of it. */
class AllocationTest {
  private static final int RUNS = 20_000;

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
      if (each >= 1) {
        wasteful.add(working.name() + ": " + each + " bytes (" + sum + ")");
      }
    }
    assertTrue(wasteful.isEmpty(), wasteful::toString);
  }

  @Test
  void workingsThatGoOverRangesThemselvesAllocateNothing() {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    int tried = 0;
    for (Working working : WorkingCatalogue.standard().workings()) {
      IntervalFunction over = working.over();
      if (over == null) {
        continue;
      }
      tried++;
      double[] lo = point(working);
      double[] hi = lo.clone();
      for (int i = 0; i < working.inputs().size(); i++) {
        hi[i] += 0.0001;
      }
      double[] out = new double[2];
      double sum = 0;
      long before = 0;
      for (int run = 0; run < 4; run++) {
        before = threads.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < RUNS / 100; i++) {
          over.over(lo, hi, out);
          sum += out[0] + out[1];
        }
      }
      double each = (threads.getCurrentThreadAllocatedBytes() - before) / (RUNS / 100.0);
      assertTrue(each < 1, working.name() + ": " + each + " bytes (" + sum + ")");
    }
    assertTrue(tried > 0);
  }

  @Test
  void aLogIsReadWithoutMakingAnything() {
    List<Layer> log = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      log.add(new Layer(Interval.point(3 * i), Interval.point(3 * i + 2), "clay"));
    }
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    double[] out = new double[2];
    double sum = 0;
    long before = 0;
    for (int run = 0; run < 12; run++) {
      before = threads.getCurrentThreadAllocatedBytes();
      for (int i = 0; i < RUNS; i++) {
        DrillersLog.top(log, out);
        sum += out[0];
        DrillersLog.bottom(log, out);
        sum += out[0];
        DrillersLog.gap(log, out);
        sum += out[0];
        DrillersLog.overturn(log, out);
        sum += out[0];
      }
    }
    double each = (threads.getCurrentThreadAllocatedBytes() - before) / (double) RUNS;
    assertTrue(each < 1, each + " bytes (" + sum + ")");
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
      // Not the same share of each, so that two positions are not one place.
      x[i] = all.isAll() ? 0 : all.lo() + (all.hi() - all.lo()) * (0.1 + 0.0001 * i);
    }
    for (int i = working.inputs().size(); i < x.length; i++) {
      String name = working.figures().get(i - working.inputs().size());
      x[i] = Objects.requireNonNull(WorkingCatalogue.standard().figure(name)).value();
    }
    return x;
  }
}
