package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Layer;

/**
 * The well cut open: depths below the ground to scale (broken once where the shallow part would be
 * hidden, and then it says so), widths not to scale.
 */
final class WellSection {
  static final String ID = "section";
  static final int WIDTH = 460;
  static final int TOP = 30;
  static final int BOTTOM = 560;
  private static final int AXIS = 62;
  private static final int LABELS = 268;
  private static final int GAP = 19;
  private static final int LETTERS = 31;
  private static final double LETTER_WIDTH = 6.3;

  /** Entries with a label, each with the key of its words. */
  private static final List<String[]> LABELLED =
      List.of(
          new String[] {"site.frost_depth", "section.frost"},
          new String[] {"pitless.depth", "section.pitless"},
          new String[] {"service_line.burial_depth", "section.line"},
          new String[] {"grout.top", "section.grout.top"},
          new String[] {"grout.bottom", "section.grout.bottom"},
          new String[] {"well.rock_depth", "section.rock"},
          new String[] {"well.outer_casing_depth", "section.outer"},
          new String[] {"well.casing_depth", "section.casing"},
          new String[] {"water.static_level", "section.static"},
          new String[] {"water.pumping_level", "section.pumping"},
          new String[] {"pump.intake_depth", "section.intake"},
          new String[] {"well.liner_top", "section.liner.top"},
          new String[] {"well.liner_bottom", "section.liner.bottom"},
          new String[] {"well.filter_pack_top", "section.filter"},
          new String[] {"well.screen_top", "section.screen.top"},
          new String[] {"well.screen_bottom", "section.screen.bottom"},
          new String[] {"well.depth", "section.finished"},
          new String[] {"well.drilled_depth", "section.drilled"});

  private final Sketch sketch;
  private final Depths depths;
  private final List<Tag> tags = new ArrayList<>();
  private final Set<String> left = new TreeSet<>();

  WellSection(Sketch sketch) {
    this.sketch = sketch;
    depths = new Depths(sketch);
  }

  @Nullable Drawing drawing() {
    collect();
    double deepest = deepest();
    if (!(deepest > 0)) {
      return null;
    }
    Ruler ruler = ruler(deepest);
    Svg svg = new Svg(ID, WIDTH, sketch.say("section.title"));
    patterns(svg);
    new SectionLayers(sketch, depths).draw(svg, ruler);
    new SectionParts(sketch, depths, ruler, deepest).draw(svg);
    axis(svg, ruler);
    Set<String> keys = new TreeSet<>();
    tags.forEach(tag -> keys.add(tag.key()));
    Marks marks = new Marks(sketch.marks(), keys);
    double height = labels(svg, ruler, marks);
    return new Drawing(
        ID,
        sketch.say("section.title"),
        svg.close(height),
        legend(svg, ruler),
        inWords(),
        marks.drawn());
  }

  private void collect() {
    double top = depths.of("well.stickup");
    if (!Double.isNaN(top)) {
      tag("well.stickup", -top, "section.top");
    }
    for (String[] each : LABELLED) {
      double depth = depths.of(each[0]);
      if (!Double.isNaN(depth)) {
        tag(each[0], depth, each[1]);
      } else if (depths.isOff(each[0])) {
        left.add(sketch.say("section.off", sketch.say(each[1], "").trim()));
      }
    }
    tags.sort(Comparator.comparingDouble(Tag::amount));
  }

  private void tag(String key, double depth, String words) {
    double shown = key.equals("well.stickup") ? -depth : depth;
    tags.add(new Tag(key, depth, sketch.say(words, sketch.print(shown, "well.depth"))));
  }

  private double deepest() {
    double deepest = 0;
    for (Tag tag : tags) {
      deepest = Math.max(deepest, tag.amount());
    }
    for (Layer layer : sketch.record().layers()) {
      double bottom = Sketch.middle(layer.to());
      deepest = bottom > deepest && bottom < 4000 ? bottom : deepest;
    }
    return deepest;
  }

  private Ruler ruler(double deepest) {
    double top = Math.max(0.6, depths.of("well.stickup"));
    double shallow = 2;
    for (String key : List.of("site.frost_depth", "pitless.depth", "service_line.burial_depth")) {
      double depth = depths.of(key);
      shallow = depth > shallow ? depth : shallow;
    }
    double from = Double.isNaN(top) ? -0.6 : -top;
    return Ruler.of(from, Math.max(3, deepest * 1.02), shallow * 1.3, 0.28, TOP, BOTTOM);
  }

  private static void patterns(Svg svg) {
    svg.pattern("grout", 6, "<path class=\"fine\" d=\"M0 6L6 0M0 0L6 6\"/>")
        .pattern("sand", 7, "<circle class=\"dot\" cx=\"2\" cy=\"2\" r=\"1.2\"/>")
        .pattern("water", 8, "<path class=\"fine-water\" d=\"M0 4H8\"/>");
    SectionLayers.patterns(svg);
  }

  private void axis(Svg svg, Ruler ruler) {
    svg.line("rule", AXIS, TOP, AXIS, BOTTOM);
    for (double tick : ruler.ticks(sketch.unit("well.depth").factor())) {
      double y = ruler.y(tick);
      svg.line("rule", AXIS - 5, y, AXIS, y);
      String unit = tick == 0 ? " " + sketch.unit("well.depth").symbol() : "";
      double shown = tick / sketch.unit("well.depth").factor();
      svg.text("tick", AXIS - 8, y + 4, sketch.number(shown) + unit);
    }
    if (ruler.isBroken()) {
      double y = ruler.breakY();
      svg.path("break", "M" + (AXIS - 9) + " " + Svg.number(y + 3) + "l6 -6l6 6l6 -6");
    }
  }

  private double labels(Svg svg, Ruler ruler, Marks marks) {
    List<Double> wanted = new ArrayList<>();
    tags.forEach(tag -> wanted.add(ruler.y(tag.amount())));
    double[] at = Spread.apart(wanted, GAP, TOP - 10);
    for (int i = 0; i < at.length; i++) {
      Tag tag = tags.get(i);
      double y = ruler.y(tag.amount());
      svg.path(
          "lead",
          "M222 "
              + Svg.number(y)
              + "L240 "
              + Svg.number(y)
              + "L"
              + (LABELS - 5)
              + " "
              + Svg.number(at[i]));
      String text = Sketch.cut(tag.text(), LETTERS);
      svg.text("label", LABELS, at[i] + 4, text);
      svg.marks(LABELS + 4 + LETTER_WIDTH * text.length(), at[i] + 4, marks.at(tag.key()));
    }
    double last = at.length == 0 ? BOTTOM : at[at.length - 1];
    return Math.max(BOTTOM, last) + 20;
  }

  private List<Sign> legend(Svg svg, Ruler ruler) {
    Legend legend = new Legend(svg);
    new SectionLayers(sketch, depths).legend(legend);
    SectionParts.legend(legend, sketch);
    legend.line(sketch.say("section.scale"));
    if (ruler.isBroken()) {
      legend.line(sketch.say("section.broken", sketch.about(ruler.breakAt(), "well.depth")));
    }
    return legend.line(depths.remark()).lines(List.copyOf(left)).all();
  }

  private List<String> inWords() {
    List<String> lines = new ArrayList<>();
    for (Tag tag : tags) {
      lines.add(sketch.say("section.words", tag.text(), written(tag.key())));
    }
    return lines;
  }

  private String written(String key) {
    return sketch.record().written(sketch.entry(key).index());
  }
}
