package org.wellcurb.report.drawing;

import java.util.ArrayList;
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

  private final Sketch sketch;
  private final Depths depths;
  private final Ruler ruler;
  private final double deepest;
  private final WellHead head;
  private final DropPipe pipe;

  SectionParts(Sketch sketch, Depths depths, DropPipe pipe, Ruler ruler, double deepest) {
    this.pipe = pipe;
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
    bore(svg, foot, bottom);
    annulus(svg, Math.min(bottom, or(wide(foot), foot)));
    head.ground(svg, LEFT, RIGHT, CENTRE, isTight() ? CASING : BORE, ground, casingTopY());
    rock(svg);
    frost(svg);
    water(svg, foot, bottom);
    walls(svg, "casing", "well.outer_casing_depth", OUTER, 0);
    casing(svg, foot);
    liner(svg, bottom);
    screen(svg);
    pipe.draw(svg, ruler, bottom, LEFT, CENTRE, CENTRE - (isTight() ? CASING : BORE));
    floor(svg, bottom);
    double drilled = depths.least("well.drilled_depth");
    if (drilled > bottom) {
      svg.box("fallen", CENTRE - OPEN, ruler.y(bottom), ruler.y(drilled), 2 * OPEN);
    }
  }

  /** The height at which the casing ends. */
  private double casingTopY() {
    return ruler.y(-or(depths.of("well.stickup"), 0));
  }

  /** A casing that was driven has no hole around it. */
  private boolean isTight() {
    boolean isDriven = sketch.is("well.method", "driven") || sketch.is("well.method", "jetted");
    return isDriven && !sketch.isGiven("well.bore_diameter") && !sketch.isGiven("grout.bottom");
  }

  /** The foot of the casing, or of the screen below it, which stands in the same wide hole. */
  private double wide(double foot) {
    double screen = depths.least("well.screen_bottom");
    return screen > foot ? screen : foot;
  }

  private void bore(Svg svg, double foot, double bottom) {
    double half = isTight() ? CASING : BORE;
    double wide = Math.max(0, Math.min(wide(foot), bottom));
    svg.box("bore", CENTRE - half, ruler.y(0), ruler.y(wide), 2 * half);
    if (wide < bottom) {
      double open = Math.min(half, OPEN);
      svg.box("bore", CENTRE - open, ruler.y(wide), ruler.y(bottom), 2 * open);
    }
  }

  /** The bottom; of a driven well its point. */
  private void floor(Svg svg, double bottom) {
    double y = ruler.y(bottom);
    if (sketch.is("well.method", "driven")) {
      String at = "M" + Svg.number(CENTRE - CASING) + " " + Svg.number(y);
      svg.path("point", at + "h" + Svg.number(2 * CASING) + "l" + Svg.number(-CASING) + " 16z");
    } else {
      svg.line("floor", CENTRE - OPEN, y, CENTRE + OPEN, y);
    }
  }

  private void rock(Svg svg) {
    Interval rock = depths.range("well.rock_depth");
    for (double end : new double[] {rock.lo(), rock.hi()}) {
      if (end > 0 && !Double.isInfinite(end)) {
        double half = isTight() ? CASING : BORE;
        svg.line("rock", SectionLayers.LEFT, ruler.y(end), CENTRE - half, ruler.y(end));
      }
    }
  }

  private double bottom() {
    double bottom = or(depths.least("well.depth"), depths.least("well.drilled_depth"));
    return bottom > 0 ? bottom : deepest;
  }

  private void annulus(Svg svg, double foot) {
    boolean isGrouted = !sketch.is("grout.material", "none");
    double sandTop = depths.most("well.filter_pack_top");
    double sandFoot = depths.least("well.filter_pack_bottom");
    double groutTop = isGrouted ? depths.most("grout.top") : Double.NaN;
    double groutFoot = isGrouted ? depths.least("grout.bottom") : Double.NaN;
    if (!isTight() && !Double.isNaN(depths.of("well.casing_depth"))) {
      // Whatever is left between what is filled, from the ground to the foot.
      double at = 0;
      boolean isGroutFirst = !(sandTop < groutTop);
      double[] filled =
          isGroutFirst
              ? new double[] {groutTop, groutFoot, sandTop, sandFoot}
              : new double[] {sandTop, sandFoot, groutTop, groutFoot};
      for (int i = 0; i < 4; i += 2) {
        if (filled[i] < filled[i + 1]) {
          both(svg, "void", at, Math.min(foot, filled[i]));
          at = Math.max(at, filled[i + 1]);
        }
      }
      both(svg, "void", at, foot);
    }
    both(svg, "sand", sandTop, sandFoot);
    both(svg, "grout", groutTop, groutFoot);
  }

  private void both(Svg svg, String pattern, double top, double bottom) {
    if (top < bottom) {
      svg.filled(pattern, CENTRE - BORE, ruler.y(top), ruler.y(bottom), BORE - CASING);
      svg.filled(pattern, CENTRE + CASING, ruler.y(top), ruler.y(bottom), BORE - CASING);
    }
  }

  private void frost(Svg svg) {
    Interval frost = depths.range("site.frost_depth");
    List<Double> ends = new ArrayList<>(List.of(frost.lo(), frost.hi()));
    for (String key : SectionTags.FROST_PROOF) {
      Limit limit = sketch.limit(key);
      ends.add(limit.isFrost() ? limit.si() : Double.NaN);
    }
    for (double end : ends) {
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
    boolean isMeasured = SectionTags.testWithout(sketch).isEmpty();
    level(svg, "water.pumping_level", isMeasured ? "drawn-down" : "told");
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

  /** What the signs of the parts that were drawn mean. */
  static void legend(Legend legend, Sketch sketch) {
    legend
        .sign("casing", sketch.say("section.sign.casing"), svg -> upright(svg, "casing"))
        .sign("screen", sketch.say("section.sign.screen"), SectionParts::slots)
        .pattern("grout", sketch.say("section.sign.grout"))
        .pattern("sand", sketch.say("section.sign.filter"))
        .pattern("void", sketch.say("section.sign.void"))
        .pattern("water", sketch.say("section.sign.water"))
        .across("still", sketch.say("section.sign.static"))
        .across("drawn-down", sketch.say("section.sign.pumping"))
        .across("told", sketch.say("section.sign.told"))
        .across("rock", sketch.say("section.sign.rock"))
        .across("frost", sketch.say("section.sign.frost"))
        .sign("liner", sketch.say("section.sign.liner"), svg -> upright(svg, "liner"))
        .sign("point", sketch.say("section.sign.point"), SectionParts::point)
        .box("fallen", sketch.say("section.sign.fallen"));
  }

  private static void point(Svg svg) {
    svg.path("point", "M3 3h24l-12 12z");
  }

  private static void slots(Svg svg) {
    svg.box("screen", 4, 1, Legend.HEIGHT - 1, Legend.WIDTH - 8);
    for (int y = 5; y < Legend.HEIGHT - 1; y += 4) {
      svg.line("slot", 4, y, 11, y);
      svg.line("slot", Legend.WIDTH - 11, y, Legend.WIDTH - 4, y);
    }
  }

  private static void upright(Svg svg, String kind) {
    svg.line(kind, Legend.WIDTH / 2.0, 0, Legend.WIDTH / 2.0, Legend.HEIGHT);
  }

  private static double or(double first, double second) {
    return Double.isNaN(first) ? second : first;
  }
}
