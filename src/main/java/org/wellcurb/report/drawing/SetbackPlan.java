package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Cap;

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
  private static final double FAR = 6;

  /** Where a distance of nothing stands: at the edge of the well's sign. */
  private static final double NEAR = 17;

  /** The scale is broken where most of what is drawn would lie within this share of it. */
  private static final double CROWDED = 0.4;

  /** Further than anyone measures (m): beyond it nothing is drawn. */
  private static final double MOST = 1e5;

  /** The angle that the numbers of the rings take at the top, however many spokes there are. */
  private static final double WORDS = 0.9;

  private static final double NEAR_SHARE = 0.64;
  private static final int LETTERS = 2;

  private record Spoke(String key, double distance, Limit limit) {
    /** All limits that can be drawn, in SI. */
    List<Double> limits() {
      List<Double> all = new ArrayList<>();
      limit.ways().forEach(way -> all.add(way.si()));
      if (all.isEmpty()) {
        all.add(limit.si());
      }
      all.removeIf(each -> !(each > 0));
      return all;
    }
  }

  private final Sketch sketch;
  private final List<Spoke> spokes = new ArrayList<>();
  private final List<String> left = new ArrayList<>();
  private final List<String> none = new ArrayList<>();

  SetbackPlan(Sketch sketch) {
    this.sketch = sketch;
  }

  @Nullable Drawing drawing() {
    for (Entry entry : sketch.record().catalogue().entries()) {
      double distance = sketch.value(entry.key());
      if (!entry.key().startsWith("setback.") || entry.usUnit() == null) {
        continue;
      }
      if (Double.isNaN(distance)) {
        undrawn(entry);
        continue;
      }
      if (distance >= 0 && distance <= MOST) {
        spokes.add(new Spoke(entry.key(), distance, sketch.limit(entry.key())));
      } else {
        left.add(sketch.say("plan.off", place(entry.key())));
      }
    }
    if (spokes.isEmpty()) {
      return null;
    }
    double most = most();
    Ruler ruler = ruler(most);
    Svg svg = new Svg(ID, WIDTH, sketch.say("plan.title"));
    rings(svg, ruler, false);
    Set<String> keys = new TreeSet<>();
    spokes.forEach(spoke -> keys.add(spoke.key()));
    Marks marks = new Marks(sketch.marks(), keys);
    for (int i = 0; i < spokes.size(); i++) {
      spoke(svg, i, most, ruler, marks.at(spokes.get(i).key()));
    }
    rings(svg, ruler, true);
    svg.circle("casing", X, Y, 7);
    svg.circle("hub", X, Y, 2.5);
    List<Sign> legend = legend(svg, ruler, marks);
    List<String> words = inWords();
    String picture = svg.close(HEIGHT, sketch.says(words, marks.drawn()));
    return new Drawing(ID, sketch.say("plan.title"), picture, legend, words, marks.drawn());
  }

  /** What stands on the form in place of a distance; nothing where it says nothing. */
  private void undrawn(Entry entry) {
    boolean isNone = sketch.record().state(entry.index()) == WellRecord.NOT_APPLICABLE;
    String written = sketch.record().written(entry.index()).strip();
    if (!isNone && written.isEmpty()) {
      return;
    }
    if (isNone) {
      none.add(place(entry.key()));
    } else {
      left.add(sketch.say("plan.unknown", place(entry.key()), Cap.QUOTED_LETTERS.cut(written)));
    }
  }

  private List<Double> amounts() {
    List<Double> all = new ArrayList<>();
    for (Spoke spoke : spokes) {
      all.add(spoke.distance());
      all.addAll(spoke.limits());
    }
    all.sort(Comparator.naturalOrder());
    return all;
  }

  /** The distance at the edge: all of it, unless a few are so far that the rest would vanish. */
  private double most() {
    List<Double> all = amounts();
    double cap = Math.max(FAR * all.get(all.size() / 2), 3);
    double most = 1;
    for (double each : all) {
      most = each <= cap ? Math.max(most, each) : most;
    }
    return most;
  }

  /** From the well to the edge, larger near the well where most stands there. */
  private Ruler ruler(double most) {
    List<Double> all = amounts();
    double part = all.get((all.size() - 1) * 3 / 5) * 1.15;
    boolean isCrowded = part < CROWDED * most;
    return Ruler.of(0, most, isCrowded ? part : 0, NEAR_SHARE, NEAR, REACH);
  }

  /** Rings of equal distance, or what they are; the words stand over the spokes. */
  private void rings(Svg svg, Ruler ruler, boolean isWords) {
    double unit = sketch.unit("setback.septic_tank").factor();
    double last = NEAR;
    for (double tick : ruler.ticks(unit, 24)) {
      double r = ruler.y(tick);
      if (tick > 0 && isWords && r - last >= 16) {
        String text =
            sketch.number(tick / unit) + " " + sketch.symbol(sketch.unit("setback.septic_tank"));
        svg.text("ring-text", X, Y - r + 5, text);
        last = r;
      } else if (tick > 0 && !isWords) {
        svg.circle("ring", X, Y, r);
      }
    }
    if (ruler.isBroken() && !isWords) {
      svg.circle("break-ring", X, Y, ruler.breakY());
    }
  }

  private void spoke(Svg svg, int i, double most, Ruler ruler, List<Mark> marks) {
    Spoke spoke = spokes.get(i);
    double angle = gap() / 2 + i * step() - Math.PI / 2;
    double dx = Math.cos(angle);
    double dy = Math.sin(angle);
    boolean isFar = spoke.distance() > most;
    double r = ruler.y(spoke.distance());
    svg.line("spoke", X + NEAR * dx, Y + NEAR * dy, X + r * dx, Y + r * dy);
    for (double limit : spoke.limits()) {
      if (limit <= most) {
        boolean binds = limit == spoke.limit().si() && !spoke.limit().isOpen();
        across(svg, binds ? "limit" : "limit-if", ruler.y(limit), dx, dy);
      }
    }
    double lacking = lacking(spoke);
    if (lacking > 0) {
      double end = ruler.y(spoke.limit().si());
      svg.line("short", X + r * dx, Y + r * dy, X + end * dx, Y + end * dy);
    }
    if (isFar) {
      across(svg, "cut", REACH - 14, dx, dy);
    }
    if (sketch.interval(spoke.key()).isPoint()) {
      svg.circle("hub", X + r * dx, Y + r * dy, 3);
    }
    between(svg, sketch.interval(spoke.key()), ruler, dx, dy);
    // Numbers stand in a ring of their own, where they never meet.
    svg.line("beyond", X + r * dx, Y + r * dy, X + (SEALS - 11) * dx, Y + (SEALS - 11) * dy);
    double x = X + SEALS * dx;
    double y = Y + SEALS * dy;
    svg.circle("seal", x, y, 11);
    svg.text("seal-number", x, y + 5, String.valueOf(i + 1));
    letters(svg, x, y, dx, dy, marks.subList(0, Math.min(LETTERS, marks.size())));
  }

  /** The angle that no spoke enters: at the top, where the rings have their numbers. */
  private double gap() {
    return Math.max(2 * Math.PI / spokes.size(), WORDS);
  }

  /** The angle from each spoke to the next. */
  private double step() {
    return (2 * Math.PI - gap()) / Math.max(1, spokes.size() - 1);
  }

  /**
   * How much nearer than the limit it may stand at the most (m); NaN where it falls short of none,
   * or of one of several.
   */
  private double lacking(Spoke spoke) {
    Limit limit = spoke.limit();
    double lacking = limit.si() - Math.max(0, sketch.interval(spoke.key()).lo());
    return sketch.fallsShort(spoke.key()) && !limit.isOneWay() && lacking > 0
        ? lacking
        : Double.NaN;
  }

  /** A bar across a spoke, so short that it does not come to the next one. */
  private void across(Svg svg, String kind, double r, double dx, double dy) {
    double room = r * Math.tan(Math.min(Math.PI / 3, step() / 2)) - 2;
    double half = Math.max(3, Math.min(kind.equals("cut") ? 6 : 11, room));
    svg.line(
        kind,
        X + r * dx - half * dy,
        Y + r * dy + half * dx,
        X + r * dx + half * dy,
        Y + r * dy - half * dx);
  }

  /** A thick line over all that a distance may be, to the edge where the form sets no end. */
  private static void between(Svg svg, Interval range, Ruler ruler, double dx, double dy) {
    if (!range.isPoint()) {
      double lo = ruler.y(Math.max(0, range.lo()));
      double hi = ruler.y(range.hi());
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

  private List<Sign> legend(Svg svg, Ruler ruler, Marks marks) {
    Legend legend = new Legend(svg);
    for (int i = 0; i < spokes.size(); i++) {
      String number = String.valueOf(i + 1);
      List<Mark> all = marks.at(spokes.get(i).key());
      String line = line(spokes.get(i));
      String letters = String.join(", ", all.stream().map(Mark::letter).toList());
      legend.sign(
          "seal",
          all.size() > LETTERS ? sketch.say("plan.letters", line, letters) : line,
          small -> numbered(small, number));
    }
    if (ruler.isBroken()) {
      legend.line(sketch.say("plan.broken", sketch.about(ruler.breakAt(), "setback.septic_tank")));
    }
    return legend
        .sign("limit", sketch.say("plan.sign.limit"), small -> limit(small, "limit"))
        .sign("limit-if", sketch.say("plan.sign.limit.if"), small -> limit(small, "limit-if"))
        .across("short", sketch.say("plan.sign.short"))
        .sign("cut", sketch.say("plan.sign.far"), SetbackPlan::far)
        .across("range", sketch.say("sign.between"))
        .line(sketch.say("plan.signs"))
        .line(none.isEmpty() ? "" : sketch.say("plan.none", String.join(", ", none)))
        .lines(left)
        .all();
  }

  private static void numbered(Svg svg, String number) {
    svg.circle("seal", Legend.WIDTH / 2.0, Legend.MIDDLE, 8.5);
    svg.text("seal-number", Legend.WIDTH / 2.0, Legend.MIDDLE + 5, number);
  }

  private static void limit(Svg svg, String kind) {
    svg.line("spoke", 0, Legend.MIDDLE, Legend.WIDTH, Legend.MIDDLE);
    svg.line(kind, Legend.WIDTH / 2.0, 1, Legend.WIDTH / 2.0, Legend.HEIGHT - 1);
  }

  private static void far(Svg svg) {
    svg.line("spoke", 0, Legend.MIDDLE, Legend.WIDTH, Legend.MIDDLE);
    svg.line("cut", Legend.WIDTH - 10, 3, Legend.WIDTH - 10, Legend.HEIGHT - 3);
  }

  private String line(Spoke spoke) {
    String place = place(spoke.key());
    String read = sketch.both(spoke.key());
    Limit limit = spoke.limit();
    if (!limit.requirement().isEmpty()) {
      return sketch.say("plan.line.said", place, read, limit.requirement());
    }
    if (!(limit.si() > 0)) {
      return sketch.say("plan.line", place, read);
    }
    String limits = "";
    for (Limit.Way way : limit.ways()) {
      String said = way(spoke.key(), way);
      limits = limits.isEmpty() ? said : sketch.say("plan.or", limits, said);
    }
    String all = limits.isEmpty() ? sketch.limitBoth(limit.si(), spoke.key()) : limits;
    String lacking = lackingShown(spoke);
    return lacking.isEmpty()
        ? sketch.say("plan.line.limit", place, read, all)
        : sketch.say("plan.line.short", place, read, all, lacking);
  }

  /** What lacks to the limit, in words; empty where nothing does that figures would show. */
  private String lackingShown(Spoke spoke) {
    double most = lacking(spoke);
    if (Double.isNaN(most)) {
      return "";
    }
    Unit unit = sketch.unit(spoke.key());
    double least = spoke.limit().si() - sketch.interval(spoke.key()).hi();
    // A distance that is so much or less lacks so much or more.
    boolean isOpen = sketch.interval(spoke.key()).lo() <= 0 && least > 0 && least < most;
    Interval lacking =
        new Interval(least > 0 ? least : most, isOpen ? Double.POSITIVE_INFINITY : most);
    return sketch.round(unit.fromSi(most)).equals("0") ? "" : sketch.span(lacking, unit);
  }

  private String place(String key) {
    return sketch.say("place." + key.substring("setback.".length()));
  }

  private String way(String key, Limit.Way way) {
    if (Double.isNaN(way.si())) {
      return sketch.say("plan.way.none", way.where());
    }
    String shown = sketch.limitBoth(way.si(), key);
    return way.where().isEmpty() ? shown : sketch.say("plan.way", shown, way.where());
  }

  private List<String> inWords() {
    return spokes.stream().map(this::line).toList();
  }
}
