package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Interval;

/**
 * How a well ends at the top: as the form says and no better. What it does not say is not drawn.
 */
final class WellHead {
  private static final String CAP = "well.cap";
  private static final String HEAD = "well.head";
  private static final double PIT = 26;
  private static final double WALL = 40;

  private final Sketch sketch;

  WellHead(Sketch sketch) {
    this.sketch = sketch;
  }

  /** True where the form says that something closes the casing. */
  boolean isClosed() {
    return sketch.isGiven(CAP) && !sketch.is(CAP, "none");
  }

  boolean isPit() {
    return sketch.is(HEAD, "pit");
  }

  /** What stands in words at this height: no cap, a pit, and whatever a finding is about. */
  List<Tag> tags(double top) {
    List<Tag> tags = new ArrayList<>();
    boolean isOdd = isPit() || sketch.is(HEAD, "buried");
    add(tags, HEAD, "section.head", top, isOdd);
    add(tags, CAP, "section.cap", top, sketch.is(CAP, "none"));
    return tags;
  }

  private void add(List<Tag> tags, String key, String words, double top, boolean isOdd) {
    if (isOdd || (sketch.isGiven(key) && sketch.fallsShort(key))) {
      tags.add(new Tag(key, Interval.point(top), sketch.say(words, sketch.read(key))));
    }
  }

  /** The casing's end: a bar over it, or none. */
  void cap(Svg svg, double centre, double half, double y) {
    if (isClosed()) {
      svg.line("casing", centre - half - 5, y, centre + half + 5, y);
    } else if (sketch.isGiven(CAP)) {
      svg.line("open", centre - half, y, centre + half, y);
    }
  }

  /**
   * The ground on both sides, or a pit in it.
   *
   * @param half half the width of the hole
   * @param y height of the ground
   * @param casing height at which the casing ends, which a pit goes down to
   */
  void ground(
      Svg svg, double left, double right, double centre, double half, double y, double casing) {
    if (isPit()) {
      double floor = Math.max(y + PIT, casing + 10);
      svg.line("pit", left, y, centre - WALL, y);
      svg.line("pit", centre - WALL, y, centre - WALL, floor);
      svg.line("pit", centre - WALL, floor, centre - half, floor);
      svg.line("pit", centre + half, floor, centre + WALL, floor);
      svg.line("pit", centre + WALL, y, centre + WALL, floor);
      svg.line("pit", centre + WALL, y, right, y);
    } else {
      svg.line("ground", left, y, centre - half, y);
      svg.line("ground", centre + half, y, right, y);
    }
  }

  void legend(Legend legend, Svg svg) {
    legend.across("open", sketch.say("section.sign.open"));
    legend.sign("pit", sketch.say("section.sign.pit"), WellHead::pit);
    if (svg.has("casing") && !sketch.isGiven(CAP)) {
      legend.line(sketch.say("section.cap.unsaid"));
    }
  }

  private static void pit(Svg svg) {
    double right = Legend.WIDTH - 8;
    svg.line("pit", 8, 2, 8, Legend.HEIGHT - 3);
    svg.line("pit", 8, Legend.HEIGHT - 3, right, Legend.HEIGHT - 3);
    svg.line("pit", right, 2, right, Legend.HEIGHT - 3);
  }
}
