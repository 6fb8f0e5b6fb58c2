package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/**
 * Over generated ranges of its entries, whatever a working can come to lies inside its interval.
 * Points are drawn at random within the box, at its corners and near its edges.
 */
class ExtremesTest {
  private static final long SEED = 20260101;

  /** Boxes over which a working is known and has two ends are drawn until there are so many. */
  private static final int BOUNDED = 60;

  private static final int LEAST_BOXES = 400;
  private static final int MOST_BOXES = 40_000;
  private static final int POINTS = 150;

  static List<String> names() {
    return WorkingCatalogue.standard().workings().stream().map(Working::name).toList();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyPointLiesInside(String name) {
    Working working = Objects.requireNonNull(WorkingCatalogue.standard().find(name));
    Random random = new Random(SEED + name.hashCode());
    int bounded = 0;
    long inside = 0;
    for (int box = 0; box < MOST_BOXES; box++) {
      if (box >= LEAST_BOXES && bounded >= BOUNDED) {
        break;
      }
      double[] lo = new double[working.inputs().size() + working.figures().size()];
      double[] hi = new double[lo.length];
      box(working, random, lo, hi);
      double[] out = Corners.over(working, lo, hi);
      if (Double.isNaN(out[0]) || Double.isNaN(out[1])) {
        continue;
      }
      bounded += Double.isInfinite(out[0]) || Double.isInfinite(out[1]) ? 0 : 1;
      for (int point = 0; point < POINTS; point++) {
        double[] x = point(random, lo, hi);
        double least = working.function().at(x);
        Working.Function most = working.greatest();
        double greatest = most == null ? least : most.at(x);
        if (Double.isNaN(least) || Double.isNaN(greatest)) {
          continue;
        }
        inside++;
        // In m3/s a billionth is much; what is lost of a difference of depths is less.
        double slack = 1e-12 + 1e-9 * Math.max(Math.abs(least), Math.abs(greatest));
        assertTrue(
            least >= out[0] - slack && greatest <= out[1] + slack,
            () -> said(working, box(lo, hi), x, least, greatest, out));
      }
    }
    String said = name + ", seed " + SEED + ": ";
    assertTrue(bounded >= BOUNDED, said + bounded + " ranges with two ends");
    assertTrue(inside >= BOUNDED * POINTS / 2, said + inside + " points are known");
  }

  private static String box(double[] lo, double[] hi) {
    List<String> text = new ArrayList<>();
    for (int i = 0; i < lo.length; i++) {
      text.add(lo[i] == hi[i] ? "" + lo[i] : lo[i] + " to " + hi[i]);
    }
    return text.toString();
  }

  private static String said(
      Working working, String box, double[] x, double least, double greatest, double[] out) {
    return working.name()
        + " seed "
        + SEED
        + ": at "
        + java.util.Arrays.toString(x)
        + " it is "
        + least
        + " to "
        + greatest
        + ", outside "
        + out[0]
        + " to "
        + out[1]
        + " over "
        + working.inputs().stream().map(Input::key).toList()
        + box;
  }

  private static double[] point(Random random, double[] lo, double[] hi) {
    double[] x = new double[lo.length];
    for (int i = 0; i < x.length; i++) {
      x[i] =
          switch (random.nextInt(5)) {
            case 0 -> lo[i];
            case 1 -> hi[i];
            default -> lo[i] + (hi[i] - lo[i]) * random.nextDouble();
          };
    }
    return x;
  }

  private static void box(Working working, Random random, double[] lo, double[] hi) {
    List<Input> inputs = working.inputs();
    for (int i = 0; i < inputs.size(); i++) {
      Entry entry = Objects.requireNonNull(Catalogue.standard().find(inputs.get(i).key()));
      boolean isText = inputs.get(i).take() == Input.Take.TEXT_CODE;
      boolean isLeftOut = !isText && !inputs.get(i).isRequired() && random.nextInt(4) == 0;
      if (isLeftOut) {
        lo[i] = Double.NaN;
      } else if (inputs.get(i).take() == Input.Take.SIZE) {
        lo[i] = (1 + random.nextInt(24)) * 0.0254;
      } else if (inputs.get(i).take() == Input.Take.HALF_PLACE) {
        lo[i] = random.nextDouble() * 0.05;
      } else if (inputs.get(i).take() == Input.Take.TEXT_CODE) {
        code(inputs.get(i), random, lo, hi, i);
        continue;
      } else if (entry.kind() == Kind.LIST) {
        lo[i] = random.nextDouble() * 100;
        hi[i] = lo[i] + random.nextInt(2) * random.nextDouble() * 10;
        continue;
      } else if (entry.kind() == Kind.CHOICE) {
        lo[i] = random.nextInt(entry.choices().size());
      } else if (entry.kind() == Kind.YES_NO) {
        lo[i] = random.nextInt(2);
      } else if (entry.kind() == Kind.DATE) {
        lo[i] = 18000 + random.nextInt(400);
      } else {
        range(entry, random, lo, hi, i);
        continue;
      }
      hi[i] = lo[i];
    }
    for (int i = inputs.size(); i < lo.length; i++) {
      String figure = working.figures().get(i - inputs.size());
      lo[i] = Objects.requireNonNull(WorkingCatalogue.standard().figure(figure)).value();
      hi[i] = lo[i];
    }
  }

  /** A schedule, a ratio, or not said. */
  private static void code(Input input, Random random, double[] lo, double[] hi, int i) {
    String[] said = {"sch 40", "sch 80", "sdr 21", "17 lb", ".25", "as usual", "", "no mark"};
    lo[i] = input.number(said[random.nextInt(said.length)]);
    hi[i] = lo[i];
    if (Double.isNaN(lo[i])) {
      lo[i] = input.leastUnsaid();
      hi[i] = input.greatestUnsaid();
    }
  }

  /** A range within what real wells are; half of them narrow, some a single value. */
  private static void range(Entry entry, Random random, double[] lo, double[] hi, int i) {
    Interval all = entry.plausible();
    double least = Double.isInfinite(all.lo()) ? -10 : all.lo();
    double most = Double.isInfinite(all.hi()) ? 100 : all.hi();
    // Real figures stand near the lower end of these ranges more often than not.
    double middle = least + (most - least) * Math.pow(random.nextDouble(), 3);
    double width =
        switch (random.nextInt(4)) {
          case 0 -> 0;
          case 1 -> (most - least) * random.nextDouble() * 0.5;
          default -> (most - least) * 0.02 * random.nextDouble();
        };
    lo[i] = Math.max(least, middle - width / 2);
    hi[i] = Math.min(most, middle + width / 2);
    if (entry.kind() == Kind.COUNT) {
      lo[i] = Math.rint(lo[i]);
      hi[i] = Math.max(lo[i], Math.rint(hi[i]));
    }
  }
}
