package org.wellcurb.report.drawing;

import java.util.List;
import org.wellcurb.quantity.Interval;

/** The built parts of a well in section. Widths stand for which is inside which, not for sizes. */
final class SectionParts {
  private static final double CENTRE = 128;
  private static final double BORE = 36;
  private static final double OUTER = 31;
  private static final double CASING = 23;
  private static final double OPEN = 27;
  private static final double LINER = 17;

  /** Where the ground and the lines from outside begin and end. */
  private static final double LEFT = 84;

  static final double RIGHT = 168;
  private static final double PIPE = 4;
  private static final int MOST_FITTINGS = 40;
  private static final String VALVE_SIGN = "M7 4h16l-16 10h16z";

  private final Sketch sketch;
  private final Depths depths;
  private final Ruler ruler;
  private final double deepest;
  private final WellHead head;

  SectionParts(Sketch sketch, Depths depths, Ruler ruler, double deepest) {
    this.sketch = sketch;
    this.depths = depths;
    this.ruler = ruler;
    this.deepest = deepest;
    head = new WellHead(sketch);
  }

  void draw(Svg svg) {
    double bottom = bottom();
    double foot = or(depths.least("well.casing_depth"), bottom);
    double ground = ruler.y(0);
    svg.box("bore", CENTRE - BORE, ground, ruler.y(Math.max(0, Math.min(foot, bottom))), 2 * BORE);
    if (foot < bottom) {
      svg.box("bore", CENTRE - OPEN, ruler.y(Math.max(0, foot)), ruler.y(bottom), 2 * OPEN);
    }
    annulus(svg);
    head.ground(svg, LEFT, RIGHT, CENTRE, ground);
    frost(svg);
    water(svg, foot, bottom);
    walls(svg, "casing", "well.outer_casing_depth", OUTER, 0);
    casing(svg, foot);
    liner(svg, bottom);
    screen(svg);
    pump(svg);
    svg.line("floor", CENTRE - OPEN, ruler.y(bottom), CENTRE + OPEN, ruler.y(bottom));
    double drilled = depths.least("well.drilled_depth");
    if (drilled > bottom) {
      svg.box("fallen", CENTRE - OPEN, ruler.y(bottom), ruler.y(drilled), 2 * OPEN);
    }
  }

  private double bottom() {
    double bottom = or(depths.least("well.depth"), depths.least("well.drilled_depth"));
    return bottom > 0 ? bottom : deepest;
  }

  private void annulus(Svg svg) {
    both(svg, "sand", depths.most("well.filter_pack_top"), depths.least("well.filter_pack_bottom"));
    if (!sketch.is("grout.material", "none")) {
      both(svg, "grout", depths.most("grout.top"), depths.least("grout.bottom"));
    }
  }

  private void both(Svg svg, String pattern, double top, double bottom) {
    if (top < bottom) {
      svg.filled(pattern, CENTRE - BORE, ruler.y(top), ruler.y(bottom), BORE - CASING);
      svg.filled(pattern, CENTRE + CASING, ruler.y(top), ruler.y(bottom), BORE - CASING);
    }
  }

  private void frost(Svg svg) {
    Interval frost = depths.range("site.frost_depth");
    for (double end : new double[] {frost.lo(), frost.hi()}) {
      if (end > 0 && !Double.isInfinite(end)) {
        svg.line("frost", LEFT, ruler.y(end), RIGHT, ruler.y(end));
      }
    }
  }

  /** Still water up to the static level, no higher than the casing top. */
  private void water(Svg svg, double foot, double bottom) {
    double level = depths.most("water.static_level");
    if (!Double.isNaN(level) && level < bottom) {
      double top = Math.max(level, -or(depths.of("well.stickup"), 0));
      double wet = ruler.y(top);
      double step = ruler.y(Math.max(top, Math.min(foot, bottom)));
      svg.filled("water", CENTRE - CASING, wet, step, 2 * CASING);
      if (foot < bottom) {
        svg.filled("water", CENTRE - OPEN, ruler.y(Math.max(top, foot)), ruler.y(bottom), 2 * OPEN);
      }
    }
    level(svg, "water.static_level", "still");
    level(svg, "water.pumping_level", "drawn-down");
  }

  private void level(Svg svg, String key, String kind) {
    Interval level = depths.range(key);
    if (!level.isAll()) {
      line(svg, kind, level.lo());
      line(svg, kind, level.isPoint() ? Double.NaN : level.hi());
    }
  }

  private void line(Svg svg, String kind, double depth) {
    if (!Double.isNaN(depth) && !Double.isInfinite(depth)) {
      svg.line(kind, CENTRE - BORE, ruler.y(depth), CENTRE + BORE, ruler.y(depth));
    }
  }

  private void walls(Svg svg, String kind, String key, double half, double top) {
    double foot = depths.least(key);
    if (foot > top) {
      svg.line(kind, CENTRE - half, ruler.y(top), CENTRE - half, ruler.y(foot));
      svg.line(kind, CENTRE + half, ruler.y(top), CENTRE + half, ruler.y(foot));
    }
  }

  private void casing(Svg svg, double foot) {
    double top = -or(depths.of("well.stickup"), 0);
    if (Double.isNaN(depths.of("well.casing_depth")) || !(foot > top)) {
      return;
    }
    walls(svg, "casing", "well.casing_depth", CASING, top);
    head.cap(svg, CENTRE, CASING, ruler.y(top));
  }

  private void liner(Svg svg, double bottom) {
    double top = depths.most("well.liner_top");
    double foot = or(depths.least("well.liner_bottom"), bottom);
    if (top < foot) {
      svg.line("liner", CENTRE - LINER, ruler.y(top), CENTRE - LINER, ruler.y(foot));
      svg.line("liner", CENTRE + LINER, ruler.y(top), CENTRE + LINER, ruler.y(foot));
    }
  }

  private void screen(Svg svg) {
    double top = depths.most("well.screen_top");
    double bottom = depths.least("well.screen_bottom");
    if (!(top < bottom)) {
      return;
    }
    double from = ruler.y(top);
    double to = ruler.y(bottom);
    svg.box("screen", CENTRE - CASING, from, to, 2 * CASING);
    int slots = (int) Math.max(1, Math.min(40, (to - from) / 5));
    for (int i = 1; i < slots; i++) {
      double y = from + (to - from) * i / slots;
      svg.line("slot", CENTRE - CASING, y, CENTRE - CASING + 12, y);
      svg.line("slot", CENTRE + CASING - 12, y, CENTRE + CASING, y);
    }
  }

  private void pump(Svg svg) {
    double intake = depths.of("pump.intake_depth");
    double pitless = depths.of("pitless.depth");
    double start = or(pitless, 0);
    if (pitless > 0) {
      svg.line("line", LEFT, ruler.y(pitless), CENTRE - PIPE, ruler.y(pitless));
    }
    if (!(intake > start)) {
      return;
    }
    double y = ruler.y(intake);
    // Of a pump above the ground only the pipe hangs in the well.
    boolean isBelow = !sketch.is("pump.type", "jet") && !sketch.is("pump.type", "hand");
    double foot = isBelow ? Math.max(ruler.y(start), y - 16) : y;
    svg.box("pipe", CENTRE - PIPE, ruler.y(start), foot, 2 * PIPE);
    fittings(svg, "valve", "pump.check_valves", "pump.check_valve_spacing", start, intake);
    fittings(
        svg, "arrester", "pump.torque_arresters", "pump.torque_arrester_spacing", start, intake);
    if (isBelow) {
      svg.box("pump", CENTRE - 9, y - 18, y, 18);
    }
    svg.line("intake", CENTRE - 13, y, CENTRE + 13, y);
    if (sketch.is("pump.type", "submersible")) {
      svg.box("motor", CENTRE - 7, y, y + 16, 14);
    }
  }

  /**
   * Marks along the drop pipe, counted up from the pump, as the stated spacing and count have it.
   */
  private void fittings(
      Svg svg, String kind, String count, String spacing, double start, double intake) {
    double many = sketch.value(count);
    double each = sketch.value(spacing);
    double least = Math.max(0.3, (intake - start) / MOST_FITTINGS);
    if (!(many >= 1) || !(each >= least)) {
      return;
    }
    double at = kind.equals("valve") ? intake : intake - each;
    for (int i = 0; i < Math.min(many, MOST_FITTINGS) && at > start; i++) {
      double y = ruler.y(at) - (i == 0 && kind.equals("valve") ? 22 : 0);
      List<Double> x = List.of(CENTRE - 8, CENTRE + 8);
      if (kind.equals("valve")) {
        String data = "M" + Svg.number(x.get(0)) + " " + Svg.number(y - 5) + "h16l-16 10h16z";
        svg.path("valve", data);
      } else {
        svg.line("arrester", CENTRE - 20, y, CENTRE + 20, y);
      }
      at -= each;
    }
  }

  /** What the signs of the parts that were drawn mean. */
  static void legend(Legend legend, Sketch sketch) {
    legend
        .pattern("grout", sketch.say("section.sign.grout"))
        .pattern("sand", sketch.say("section.sign.filter"))
        .pattern("water", sketch.say("section.sign.water"))
        .across("still", sketch.say("section.sign.static"))
        .across("drawn-down", sketch.say("section.sign.pumping"))
        .across("frost", sketch.say("section.sign.frost"))
        .sign("liner", sketch.say("section.sign.liner"), SectionParts::upright)
        .sign("valve", sketch.say("section.sign.valve"), svg -> svg.path("valve", VALVE_SIGN))
        .across("arrester", sketch.say("section.sign.arrester"))
        .box("fallen", sketch.say("section.sign.fallen"));
  }

  private static void upright(Svg svg) {
    svg.line("liner", Legend.WIDTH / 2.0, 0, Legend.WIDTH / 2.0, Legend.HEIGHT);
  }

  private static double or(double first, double second) {
    return Double.isNaN(first) ? second : first;
  }
}
