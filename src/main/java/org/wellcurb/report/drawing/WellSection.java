package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;

/**
 * The well cut open: depths below the ground to scale (broken once where the shallow part would be
 * hidden, and then it says so), widths not to scale.
 */
final class WellSection {
  static final String ID = "section";
  static final int WIDTH = 372;
  static final int TOP = 30;
  static final int BOTTOM = 456;
  private static final int AXIS = 49;
  private static final int LABELS = 196;
  private static final int LEADS = (int) SectionParts.RIGHT;

  /** How far apart uprights stand, how far the last may stand from the first, half their feet. */
  private static final double LANE = 9;

  private static final double LANES = 40;
  private static final double FOOT = 4;

  private final Sketch sketch;
  private final Depths depths;
  private final WellHead head;
  private final DropPipe pipe;
  private final SectionLayers layers;
  private final SectionTags tags;

  WellSection(Sketch sketch) {
    this.sketch = sketch;
    depths = new Depths(sketch);
    head = new WellHead(sketch);
    pipe = new DropPipe(sketch, depths);
    layers = new SectionLayers(sketch, depths);
    tags = new SectionTags(sketch, depths, head, pipe);
  }

  @Nullable Drawing drawing() {
    double deepest = deepest();
    if (!(deepest > 0)) {
      return null;
    }
    Ruler ruler = ruler(deepest);
    Svg svg = new Svg(ID, WIDTH, sketch.say("section.title"));
    patterns(svg);
    layers.draw(svg, ruler, deepest);
    new SectionParts(sketch, depths, pipe, ruler, deepest).draw(svg);
    axis(svg, ruler);
    Set<String> keys = new TreeSet<>();
    for (Tag tag : tags.all()) {
      keys.add(tag.key());
      @Nullable String spacing = PipeFittings.spacingOf(tag.key());
      if (spacing != null) {
        keys.add(spacing);
      }
    }
    Marks marks = new Marks(sketch.marks(), keys);
    double height = labels(svg, ruler, marks);
    List<Sign> legend = legend(svg, ruler, deepest);
    List<String> words = inWords();
    String picture = svg.close(height, sketch.says(words, marks.drawn()));
    return new Drawing(ID, sketch.say("section.title"), picture, legend, words, marks.drawn());
  }

  /** The deepest of the well's parts, and of its layers unless they would press it together. */
  private double deepest() {
    double parts = tags.deepest();
    return parts > 0 ? Math.max(parts, Math.min(layers.deepest(), parts * 1.25)) : layers.deepest();
  }

  private Ruler ruler(double deepest) {
    double top = Math.max(0.6, depths.of("well.stickup"));
    double shallow = 2;
    for (String key : List.of("site.frost_depth", "pitless.depth", "service_line.burial_depth")) {
      double depth = depths.of(key);
      shallow = depth > shallow ? depth : shallow;
    }
    // A flowing level has its height above the ground, unless it would press the well together.
    double flowing = Math.min(-depths.of("water.static_level"), Math.max(2, deepest / 4));
    double from = -Math.max(Double.isNaN(top) ? 0.6 : top, Double.isNaN(flowing) ? 0 : flowing);
    return Ruler.of(from, Math.max(3, deepest * 1.02), shallow * 1.3, 0.28, TOP, BOTTOM);
  }

  private static void patterns(Svg svg) {
    svg.pattern("grout", 6, "<path class=\"fine\" d=\"M0 6L6 0M0 0L6 6\"/>")
        .pattern("sand", 7, "<circle class=\"dot\" cx=\"2\" cy=\"2\" r=\"1.2\"/>")
        .pattern("void", 9, "<path class=\"fine\" d=\"M2 4l2 -2l2 2l-2 2z\"/>")
        .pattern("water", 8, "<path class=\"fine-water\" d=\"M0 4H8\"/>");
    SectionLayers.patterns(svg);
  }

  private void axis(Svg svg, Ruler ruler) {
    svg.line("rule", AXIS, TOP, AXIS, BOTTOM);
    for (double tick : ruler.ticks(sketch.unit("well.depth").factor())) {
      double y = ruler.y(tick);
      svg.line("rule", AXIS - 5, y, AXIS, y);
      String unit = tick == 0 ? " " + sketch.symbol(sketch.unit("well.depth")) : "";
      double shown = tick / sketch.unit("well.depth").factor();
      svg.text("tick", AXIS - 8, y + 4, sketch.number(shown) + unit);
    }
    if (ruler.isBroken()) {
      double y = ruler.breakY();
      svg.path("break", "M" + (AXIS - 9) + " " + Svg.number(y + 3) + "l6 -6l6 6l6 -6");
    }
  }

  private double labels(Svg svg, Ruler ruler, Marks marks) {
    int lanes = (int) tags.all().stream().filter(tag -> !tag.range().isPoint()).count();
    // Uprights stand side by side, as far as there is room, each with a dot that its label is led
    // from: on one line nobody could tell where which of them ends.
    double step = lanes > 1 ? Math.min(LANE, LANES / (lanes - 1)) : 0;
    double last = LEADS + step * Math.max(0, lanes - 1);
    double left = LABELS + last - LEADS;
    Labels labels = new Labels(last, left, WIDTH - left - 2);
    int lane = 0;
    for (Tag tag : tags.all()) {
      double y = ruler.y(tag.amount());
      if (tag.isLimit()) {
        svg.path("limit-at", wedge(LEADS - 10, y));
      }
      double x = LEADS;
      if (!tag.range().isPoint()) {
        x += step * lane++;
        between(svg, tag.range(), ruler, x);
        svg.circle("hub", x, y, lanes > 1 ? 2.5 : 0);
      }
      if (x < last) {
        svg.line("lead", x, y, last, y);
      }
      labels.add(y, tag.text(), marksAt(tag.key(), marks));
    }
    return Math.max(BOTTOM, labels.draw(svg, TOP - 10)) + 20;
  }

  /** The findings at an entry; of fittings those on their spacing too, which has no label. */
  private static List<Mark> marksAt(String key, Marks marks) {
    List<Mark> all = new ArrayList<>(marks.at(key));
    @Nullable String spacing = PipeFittings.spacingOf(key);
    if (spacing != null) {
      all.addAll(marks.at(spacing));
    }
    return all;
  }

  /** A wedge that points to the left. */
  static String wedge(double x, double y) {
    return "M" + Svg.number(x) + " " + Svg.number(y) + "l14 -5v10z";
  }

  /** An upright over all that a depth may be; it has no foot where the form sets no end. */
  private static void between(Svg svg, Interval range, Ruler ruler, double x) {
    double from = ruler.y(range.lo());
    double to = ruler.y(range.hi());
    svg.line("span", x, from, x, to);
    if (!Double.isInfinite(range.lo())) {
      svg.line("span", x - FOOT, from, x + FOOT, from);
    }
    if (!Double.isInfinite(range.hi())) {
      svg.line("span", x - FOOT, to, x + FOOT, to);
    }
  }

  private List<Sign> legend(Svg svg, Ruler ruler, double deepest) {
    Legend legend = new Legend(svg);
    layers.legend(legend, deepest);
    SectionParts.legend(legend, sketch);
    pipe.legend(legend);
    head.legend(legend, svg);
    legend.sign("limit-at", sketch.say("section.sign.limit"), WellSection::limit);
    legend.sign("span", sketch.say("sign.between"), WellSection::upright);
    legend.line(flowing());
    legend.line(sketch.say("section.scale"));
    if (ruler.isBroken()) {
      legend.line(sketch.say("section.broken", sketch.about(ruler.breakAt(), "well.depth")));
    }
    return legend.line(depths.remark()).lines(tags.remarks()).lines(tags.left()).all();
  }

  /** That the well flows, where the form says so or its level stands above the ground. */
  private String flowing() {
    boolean isFlowing =
        sketch.isYes("water.flowing") || depths.range("water.static_level").hi() < 0;
    return isFlowing ? sketch.say("section.flowing") : "";
  }

  static void limit(Svg svg) {
    svg.path("limit-at", wedge(8, Legend.MIDDLE));
  }

  private static void upright(Svg svg) {
    double x = Legend.WIDTH / 2.0;
    svg.line("span", x, 2, x, Legend.HEIGHT - 2);
    svg.line("span", x - 5, 2, x + 5, 2);
    svg.line("span", x - 5, Legend.HEIGHT - 2, x + 5, Legend.HEIGHT - 2);
  }

  private List<String> inWords() {
    List<String> lines = new ArrayList<>();
    for (Tag tag : tags.all()) {
      if (!pipe.tags().contains(tag)) {
        lines.add(
            tag.isOnForm()
                ? sketch.say("section.words", tag.text(), written(tag.key()))
                : tag.text());
      }
    }
    if (!flowing().isEmpty()) {
      lines.add(flowing());
    }
    lines.addAll(tags.remarks());
    lines.addAll(pipe.words());
    lines.addAll(layers.words());
    return lines;
  }

  private String written(String key) {
    return sketch.record().written(sketch.entry(key).index());
  }
}
