package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;

/**
 * Pressures as rungs between two rails, to scale from 0 (broken once where ratings would press the
 * settings together). Settings, readings and ratings have rungs of their own shape.
 */
final class PressureLadder {
  static final String ID = "ladder";
  private static final int WIDTH = 372;
  private static final int TOP = 24;
  private static final int BOTTOM = 380;
  private static final int AXIS = 52;

  /** A sign of a unit with more letters than this is too long for the room beside the axis. */
  private static final int SHORT = 3;

  private static final int RAIL = 72;
  private static final int OTHER_RAIL = 136;
  private static final int LABELS = 174;

  /** More than any pipe holds (20 MPa): beyond it nothing is drawn. */
  private static final double MOST = 2e7;

  /** What has a rung: entry, words, shape. */
  private static final List<String[]> RUNGS =
      List.of(
          new String[] {"tank.precharge", "ladder.precharge", "setting"},
          new String[] {"pressure.cut_in", "ladder.cut_in", "setting"},
          new String[] {"pressure.set_point", "ladder.set_point", "setting"},
          new String[] {"pressure.gauge_reading", "ladder.gauge", "reading"},
          new String[] {"pressure.cut_out", "ladder.cut_out", "setting"},
          new String[] {"relief.setting", "ladder.relief", "setting"},
          new String[] {"tank.pressure_rating", "ladder.tank", "rating"},
          new String[] {"service_line.pressure_rating", "ladder.line", "rating"},
          new String[] {"drop_pipe.pressure_rating", "ladder.pipe", "rating"},
          new String[] {"pump.shutoff_pressure", "ladder.shutoff", "reading"});

  private record Rung(Tag tag, String shape) {}

  private final Sketch sketch;
  private final ReliefValve relief;
  private final List<Rung> rungs = new ArrayList<>();
  private final List<String> left = new ArrayList<>();

  PressureLadder(Sketch sketch) {
    this.sketch = sketch;
    relief = new ReliefValve(sketch);
  }

  @Nullable Drawing drawing() {
    for (String[] each : RUNGS) {
      double value = sketch.value(each[0]);
      if (value >= 0 && value <= MOST) {
        rungs.add(rung(each[0], sketch.say(each[1], sketch.both(each[0])), each[2]));
        limit(each[0], each[1]);
      } else if (!Double.isNaN(value)) {
        left.add(sketch.say("ladder.off", sketch.say(each[1], "").trim()));
      }
    }
    if (rungs.size() < 2) {
      return null;
    }
    rungs.sort(Comparator.comparingDouble(rung -> rung.tag().amount()));
    Ruler ruler = ruler();
    Svg svg = new Svg(ID, WIDTH, sketch.say("ladder.title"));
    svg.pattern("maybe", 7, "<circle class=\"dot\" cx=\"3\" cy=\"3\" r=\"1\"/>");
    axis(svg, ruler);
    Set<String> keys = new TreeSet<>();
    rungs.forEach(rung -> keys.add(rung.tag().key()));
    if (keys.contains(ReliefValve.SETTING) || !relief.unplaced().isEmpty()) {
      keys.addAll(List.of(ReliefValve.FITTED, ReliefValve.BETWEEN));
    }
    Marks marks = new Marks(sketch.marks(), keys);
    double height = rungs(svg, ruler, marks);
    List<Sign> legend = legend(svg, ruler);
    List<String> words = inWords();
    String picture = svg.close(height, sketch.says(words, marks.drawn()));
    return new Drawing(ID, sketch.say("ladder.title"), picture, legend, words, marks.drawn());
  }

  /** A relief valve that something takes away has a rung of its own shape. */
  private Rung rung(String key, String text, String shape) {
    Interval at = sketch.interval(key);
    return key.equals(ReliefValve.SETTING) && relief.isOpenQuestion()
        ? new Rung(new Tag(key, at, relief.label(text)), "cut-off")
        : new Rung(new Tag(key, at, text), shape);
  }

  private boolean isDrawn(String key) {
    return rungs.stream().anyMatch(rung -> rung.tag().key().equals(key));
  }

  /** The limit that a setting or a reading falls short of. */
  private void limit(String key, String words) {
    double limit = sketch.limit(key).si();
    if (sketch.fallsShort(key) && limit >= 0 && limit <= MOST) {
      String one = sketch.limit(key).isOneWay() ? "ladder.limit.way" : "ladder.limit";
      String text = sketch.say(one, sketch.say(words, sketch.limitBoth(limit, key)));
      rungs.add(new Rung(new Tag(Tag.LIMIT, Interval.point(limit), text), "limit"));
    }
  }

  /** From the greatest pressure at the top down to 0. */
  private Ruler ruler() {
    double most = 1;
    double set = 1;
    for (Rung rung : rungs) {
      most = Math.max(most, Math.min(MOST, rung.tag().most()));
      if (List.of("setting", "cut-off").contains(rung.shape())) {
        set = Math.max(set, Math.min(MOST, rung.tag().most()));
      }
    }
    return Ruler.of(0, most * 1.05, set * 1.15, 0.6, /* top= */ BOTTOM, /* bottom= */ TOP);
  }

  private void axis(Svg svg, Ruler ruler) {
    svg.line("rail", RAIL, TOP, RAIL, BOTTOM).line("rail", OTHER_RAIL, TOP, OTHER_RAIL, BOTTOM);
    double unit = sketch.unit("pressure.cut_in").factor();
    String symbol = sketch.symbol(sketch.unit("pressure.cut_in"));
    // Beside the 0 there is no room for lb/po²: it stands over the axis.
    boolean isLong = symbol.length() > SHORT;
    if (isLong) {
      svg.text("tick", AXIS - 2, TOP - 12, symbol);
    }
    for (double tick : ruler.ticks(unit)) {
      double y = ruler.y(tick);
      svg.line("rule", AXIS - 5, y, AXIS, y);
      String last = tick == 0 && !isLong ? " " + symbol : "";
      svg.text("tick", AXIS - 8, y + 4, sketch.number(tick / unit) + last);
    }
    svg.line("rule", AXIS, TOP, AXIS, BOTTOM);
    if (ruler.isBroken()) {
      String y = Svg.number(ruler.breakY() + 3);
      svg.path("break", "M" + (AXIS - 9) + " " + y + "l6 -6l6 6l6 -6");
    }
  }

  private double rungs(Svg svg, Ruler ruler, Marks marks) {
    Labels labels = new Labels(OTHER_RAIL + 9, LABELS, WIDTH - LABELS - 2);
    List<Mark> ofValve = new ArrayList<>(marks.at(ReliefValve.FITTED));
    ofValve.addAll(marks.at(ReliefValve.BETWEEN));
    if (!isDrawn(ReliefValve.SETTING) && !relief.unplaced().isEmpty()) {
      labels.add(TOP, relief.unplaced(), ofValve);
    }
    int strips = (int) rungs.stream().filter(rung -> !rung.tag().range().isPoint()).count();
    int strip = 0;
    for (int i = rungs.size() - 1; i >= 0; i--) {
      Rung rung = rungs.get(i);
      double y = ruler.y(rung.tag().amount());
      Interval range = rung.tag().range();
      if (range.isPoint()) {
        rung(svg, rung.shape(), y, RAIL, OTHER_RAIL);
      } else {
        between(svg, rung, ruler, strip++, strips);
      }
      List<Mark> at = new ArrayList<>(marks.at(rung.tag().key()));
      if (rung.tag().key().equals(ReliefValve.SETTING)) {
        at.addAll(ofValve);
      }
      labels.add(y, rung.tag().text(), at);
    }
    return Math.max(BOTTOM, labels.draw(svg, TOP - 8)) + 20;
  }

  /**
   * A band over all that it may be, with a rung at each end that the form gives. Each has a strip
   * of its own and a dot from which its label is led, so that one can be told from another.
   */
  private static void between(Svg svg, Rung rung, Ruler ruler, int strip, int strips) {
    Interval range = rung.tag().range();
    double wide = (OTHER_RAIL - RAIL) / (double) strips;
    double left = RAIL + wide * strip;
    double lo = ruler.y(Math.max(0, range.lo()));
    double hi = ruler.y(range.hi());
    svg.filled("maybe", left, hi, lo, wide);
    svg.box("either", left, hi, lo, wide);
    if (!Double.isInfinite(range.lo())) {
      rung(svg, rung.shape(), lo, left, left + wide);
    }
    if (!Double.isInfinite(range.hi())) {
      rung(svg, rung.shape(), hi, left, left + wide);
    }
    if (strips > 1) {
      double y = ruler.y(rung.tag().amount());
      svg.line("lead", left + wide / 2, y, OTHER_RAIL + 9, y);
      svg.circle("hub", left + wide / 2, y, 2.5);
    }
  }

  private static void rung(Svg svg, String shape, double y, double left, double right) {
    switch (shape) {
      case "rating" -> {
        svg.line("rating", left - 8, y - 2.5, right + 8, y - 2.5);
        svg.line("rating", left - 8, y + 2.5, right + 8, y + 2.5);
      }
      case "reading" -> {
        svg.line("reading", left, y, right, y);
        svg.circle("reading-dot", (left + right) / 2, y, 5);
      }
      case "cut-off" -> cutOff(svg, left, right, y);
      case "limit" -> svg.path("limit-at", WellSection.wedge(right - 5, y));
      default -> svg.line("setting", left, y, right, y);
    }
  }

  /** A setting that need not hold: a line of dashes, broken in the middle by a shut valve. */
  private static void cutOff(Svg svg, double left, double right, double y) {
    double middle = (left + right) / 2;
    svg.line("cut-off", left, y, middle - 8, y).line("cut-off", middle + 8, y, right, y);
    String at = "M" + Svg.number(middle - 8) + " " + Svg.number(y - 6);
    svg.path("shut-valve", at + "v12l16 -12v12z");
  }

  private List<Sign> legend(Svg svg, Ruler ruler) {
    Legend legend =
        new Legend(svg)
            .across("setting", sketch.say("ladder.sign.setting"))
            .sign(
                "cut-off",
                sketch.say(relief.isNone() ? "ladder.sign.unfitted" : "ladder.sign.cut"),
                small -> cutOff(small, 0, Legend.WIDTH, Legend.MIDDLE))
            .sign("reading", sketch.say("ladder.sign.reading"), PressureLadder::reading)
            .sign("rating", sketch.say("ladder.sign.rating"), PressureLadder::rating)
            .sign("limit-at", sketch.say("section.sign.limit"), WellSection::limit)
            .pattern("maybe", sketch.say("sign.between"));
    if (ruler.isBroken()) {
      legend.line(sketch.say("ladder.broken", sketch.about(ruler.breakAt(), "pressure.cut_in")));
    }
    if (sketch.is("pump.type", "submersible") && isDrawn("pump.shutoff_pressure")) {
      legend.line(sketch.say("ladder.boost"));
    }
    return legend.lines(relief.remarks()).lines(left).all();
  }

  private static void reading(Svg svg) {
    svg.line("reading", 0, Legend.MIDDLE, Legend.WIDTH, Legend.MIDDLE);
    svg.circle("reading-dot", Legend.WIDTH / 2.0, Legend.MIDDLE, 5);
  }

  private static void rating(Svg svg) {
    svg.line("rating", 0, Legend.MIDDLE - 2.5, Legend.WIDTH, Legend.MIDDLE - 2.5);
    svg.line("rating", 0, Legend.MIDDLE + 2.5, Legend.WIDTH, Legend.MIDDLE + 2.5);
  }

  private String apart(Interval step) {
    return sketch.span(step, sketch.unit("pressure.cut_in"));
  }

  /** From the lowest up, with what lies between each and the next. */
  private List<String> inWords() {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < rungs.size(); i++) {
      Tag tag = rungs.get(i).tag();
      if (i == 0) {
        lines.add(tag.text());
        continue;
      }
      Interval below = rungs.get(i - 1).tag().range();
      double least = tag.range().lo() - below.hi();
      // What reaches down to nothing only because it cannot be less sets no end.
      boolean isOpen = below.lo() <= 0 && below.hi() > 0;
      double most = isOpen ? Double.POSITIVE_INFINITY : tag.range().hi() - below.lo();
      // Where one may lie over the other, neither is said to be the higher.
      lines.add(
          least >= 0 && (most > least || tag.range().isPoint())
              ? sketch.say("ladder.step", tag.text(), apart(new Interval(least, most)))
              : tag.text());
    }
    if (!isDrawn(ReliefValve.SETTING) && !relief.unplaced().isEmpty()) {
      lines.add(relief.unplaced());
    }
    lines.addAll(relief.remarks());
    return lines;
  }
}
