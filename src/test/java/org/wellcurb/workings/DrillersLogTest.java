package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Layer;

/** Depths that a log says, against logs of which they are known beforehand. */
final class DrillersLogTest {
  private static Interval of(BiConsumer<List<Layer>, double[]> what, List<Layer> log) {
    double[] out = new double[2];
    what.accept(log, out);
    return Double.isNaN(out[0]) ? Interval.ALL : new Interval(out[0], out[1]);
  }

  private static Layer layer(double from, double to) {
    return new Layer(Interval.point(from), Interval.point(to), "clay");
  }

  @Test
  void aWholeLogLeavesNothingOut() {
    List<Layer> log = List.of(layer(0, 6), layer(6, 9), layer(9, 40));
    assertEquals(Interval.point(0), of(DrillersLog::top, log));
    assertEquals(Interval.point(40), of(DrillersLog::bottom, log));
    assertEquals(Interval.point(0), of(DrillersLog::gap, log));
    assertEquals(Interval.point(0), of(DrillersLog::overturn, log));
  }

  @Test
  void aLayerUpsideDownLeavesNoGap() {
    List<Layer> log = List.of(layer(6, 0), layer(6, 40));
    assertEquals(Interval.point(6), of(DrillersLog::overturn, log));
    assertEquals(Interval.point(0), of(DrillersLog::gap, log));
  }

  @Test
  void aLayerWithinAnotherLeavesNoGap() {
    assertEquals(
        Interval.point(0), of(DrillersLog::gap, List.of(layer(0, 40), layer(6, 9), layer(20, 30))));
  }

  @Test
  void bottomsAloneLeaveNoGap() {
    List<Layer> log =
        List.of(
            new Layer(Interval.ALL, Interval.point(6), "clay"),
            new Layer(Interval.ALL, Interval.point(40), "sand"));
    assertEquals(Interval.point(0), of(DrillersLog::gap, log));
    assertEquals(Interval.point(40), of(DrillersLog::bottom, log));
    assertEquals(Interval.ALL, of(DrillersLog::top, List.of()));
    assertEquals(Interval.ALL, of(DrillersLog::bottom, List.of()));
  }

  @Test
  void whatFollowsALayerWithoutBottomLeavesNoGap() {
    List<Layer> log =
        List.of(layer(0, 3), new Layer(Interval.point(3), Interval.ALL, "clay"), layer(20, 30));
    assertEquals(Interval.point(0), of(DrillersLog::gap, log));
  }

  @Test
  void aRangeOfDepthsGivesARangeOfGaps() {
    List<Layer> log =
        List.of(
            new Layer(Interval.point(0), new Interval(5, 6), "clay"),
            new Layer(new Interval(8, 10), Interval.point(40), "sand"));
    assertEquals(new Interval(2, 5), of(DrillersLog::gap, log));
  }

  @Test
  void whatWasLeftOutIsFoundInAnyOrder() {
    long seed = 20261126;
    Random random = new Random(seed);
    for (int log = 0; log < 500; log++) {
      List<Layer> layers = new ArrayList<>();
      double at = random.nextInt(5);
      double first = at;
      double widest = 0;
      for (int i = 0; i <= random.nextInt(12) + 1; i++) {
        double gap = i > 0 && random.nextInt(3) == 0 ? random.nextInt(20) : 0;
        widest = Math.max(widest, gap);
        double thickness = 1 + random.nextInt(30);
        layers.add(layer(at + gap, at + gap + thickness));
        at += gap + thickness;
      }
      Collections.shuffle(layers, random);
      String which = "seed " + seed + ", log " + log + " " + layers;
      assertEquals(Interval.point(widest), of(DrillersLog::gap, layers), which);
      assertEquals(Interval.point(first), of(DrillersLog::top, layers), which);
      assertEquals(Interval.point(at), of(DrillersLog::bottom, layers), which);
    }
  }
}
