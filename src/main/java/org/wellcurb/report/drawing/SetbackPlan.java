package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Entry;

/**
 * The well from above, with what stands around it at its distance. The form gives no directions, so
 * that they are spread evenly, and it says so. A bar across a spoke is the limit.
 */
final class SetbackPlan {
  static final String ID = "plan";
  private static final int WIDTH = 372;
  private static final int HEIGHT = 352;
  private static final double X = 186;
  private static final double Y = 176;
  private static final double REACH = 112;

  /** Where the numbers stand. */
  private static final double SEALS = REACH + 16;

  /** More than this many times the middle distance is drawn at the edge. */
  private static final double FAR = 4;

  private record Spoke(String key, double distance, double limit) {}

  private final Sketch sketch;
  private final List<Spoke> spokes = new ArrayList<>();

  SetbackPlan(Sketch sketch) {
    this.sketch = sketch;
  }

  @Nullable Drawing drawing() {
    for (Entry entry : sketch.record().catalogue().entries()) {
      double distance = sketch.value(entry.key());
      if (entry.key().startsWith("setback.") && distance >= 0 && distance < 1e9) {
        double limit = sketch.limit(entry.key());
        spokes.add(new Spoke(entry.key(), distance, limit > 0 ? limit : Double.NaN));
      }
    }
    if (spokes.isEmpty()) {
      return null;
    }
    double most = most();
    Svg svg = new Svg(ID, WIDTH, sketch.say("plan.title"));
    rings(svg, most, false);
    Set<String> keys = new TreeSet<>();
    spokes.forEach(spoke -> keys.add(spoke.key()));
    Marks marks = new Marks(sketch.marks(), keys);
    for (int i = 0; i < spokes.size(); i++) {
      spoke(svg, i, most, marks);
    }
    rings(svg, most, true);
    svg.circle("casing", X, Y, 7);
    svg.circle("hub", X, Y, 2.5);
    return new Drawing(
        ID, sketch.say("plan.title"), svg.close(HEIGHT), legend(svg), inWords(), marks.drawn());
  }

  /** The distance at the edge: all of it, unless a few are so far that the rest would vanish. */
  private double most() {
    List<Double> all = new ArrayList<>();
    spokes.forEach(
        spoke -> {
          all.add(spoke.distance());
          if (!Double.isNaN(spoke.limit())) {
            all.add(spoke.limit());
          }
        });
    all.sort(Comparator.naturalOrder());
    double middle = all.get(all.size() / 2);
    double cap = Math.max(FAR * middle, 3);
    double most = 1;
    for (double each : all) {
      most = each <= cap ? Math.max(most, each) : most;
    }
    return most;
  }

  /** Rings of equal distance, or what they are; the words stand over the spokes. */
  private void rings(Svg svg, double most, boolean isWords) {
    Ruler ruler = Ruler.of(0, most, 0, 0, 0, REACH);
    double unit = sketch.unit("setback.septic_tank").factor();
    for (double tick : ruler.ticks(unit)) {
      if (tick > 0 && isWords) {
        String text =
            sketch.number(tick / unit) + " " + sketch.unit("setback.septic_tank").symbol();
        svg.text("ring-text", X, Y - ruler.y(tick) + 5, text);
      } else if (tick > 0) {
        svg.circle("ring", X, Y, ruler.y(tick));
      }
    }
  }

  private void spoke(Svg svg, int i, double most, Marks marks) {
    Spoke spoke = spokes.get(i);
    // The first stands half a step from the top, where the rings have their numbers.
    double angle = 2 * Math.PI * (i + 0.5) / spokes.size() - Math.PI / 2;
    double dx = Math.cos(angle);
    double dy = Math.sin(angle);
    boolean isFar = spoke.distance() > most;
    double r = isFar ? REACH : spoke.distance() / most * REACH;
    svg.line("spoke", X, Y, X + r * dx, Y + r * dy);
    if (!Double.isNaN(spoke.limit()) && spoke.limit() <= most) {
      double l = spoke.limit() / most * REACH;
      svg.line(
          "limit",
          X + l * dx - 11 * dy,
          Y + l * dy + 11 * dx,
          X + l * dx + 11 * dy,
          Y + l * dy - 11 * dx);
    }
    if (isFar) {
      double cut = REACH - 14;
      svg.line(
          "cut",
          X + cut * dx - 6 * dy,
          Y + cut * dy + 6 * dx,
          X + cut * dx + 6 * dy,
          Y + cut * dy - 6 * dx);
    }
    if (sketch.interval(spoke.key()).isPoint()) {
      svg.circle("hub", X + r * dx, Y + r * dy, 3);
    }
    between(svg, sketch.interval(spoke.key()), most, dx, dy);
    // Numbers stand in a ring of their own, where they never meet.
    svg.line("beyond", X + r * dx, Y + r * dy, X + (SEALS - 11) * dx, Y + (SEALS - 11) * dy);
    double x = X + SEALS * dx;
    double y = Y + SEALS * dy;
    svg.circle("seal", x, y, 11);
    svg.text("seal-number", x, y + 5, String.valueOf(i + 1));
    letters(svg, x, y, dx, dy, marks.at(spoke.key()));
  }

  /** A thick line over all that a distance may be, to the edge where the form sets no end. */
  private static void between(Svg svg, Interval range, double most, double dx, double dy) {
    if (!range.isPoint()) {
      double lo = Math.min(REACH, Math.max(0, range.lo()) / most * REACH);
      double hi = Math.min(REACH, range.hi() / most * REACH);
      svg.line("range", X + lo * dx, Y + lo * dy, X + hi * dx, Y + hi * dy);
    }
  }

  /** Letters of findings at a number: beside it, at the top and the foot over and under it. */
  private static void letters(Svg svg, double x, double y, double dx, double dy, List<Mark> marks) {
    double width = Svg.width(marks);
    if (Math.abs(dy) > 0.75) {
      svg.marks(Math.min(WIDTH - width, x - width / 2 + 2), y + (dy < 0 ? -16 : 27), marks);
    } else {
      svg.marks(
          dx > 0 ? Math.min(WIDTH - width, x + 13) : Math.max(0, x - 9 - width), y + 5, marks);
    }
  }

  private List<Sign> legend(Svg svg) {
    Legend legend = new Legend(svg);
    for (int i = 0; i < spokes.size(); i++) {
      String number = String.valueOf(i + 1);
      legend.sign("seal", line(spokes.get(i)), small -> numbered(small, number));
    }
    return legend
        .sign("limit", sketch.say("plan.sign.limit"), SetbackPlan::limit)
        .sign("cut", sketch.say("plan.sign.far"), SetbackPlan::far)
        .across("range", sketch.say("sign.between"))
        .line(sketch.say("plan.signs"))
        .all();
  }

  private static void numbered(Svg svg, String number) {
    svg.circle("seal", Legend.WIDTH / 2.0, Legend.MIDDLE, 8.5);
    svg.text("seal-number", Legend.WIDTH / 2.0, Legend.MIDDLE + 5, number);
  }

  private static void limit(Svg svg) {
    svg.line("spoke", 0, Legend.MIDDLE, Legend.WIDTH, Legend.MIDDLE);
    svg.line("limit", Legend.WIDTH / 2.0, 1, Legend.WIDTH / 2.0, Legend.HEIGHT - 1);
  }

  private static void far(Svg svg) {
    svg.line("spoke", 0, Legend.MIDDLE, Legend.WIDTH, Legend.MIDDLE);
    svg.line("cut", Legend.WIDTH - 10, 3, Legend.WIDTH - 10, Legend.HEIGHT - 3);
  }

  private String line(Spoke spoke) {
    String place = sketch.say("place." + spoke.key().substring("setback.".length()));
    String read = sketch.beside(spoke.key());
    return Double.isNaN(spoke.limit())
        ? sketch.say("plan.line", place, read)
        : sketch.say(
            "plan.line.limit", place, read, sketch.limitBeside(spoke.limit(), spoke.key()));
  }

  private List<String> inWords() {
    return spokes.stream().map(this::line).toList();
  }
}
