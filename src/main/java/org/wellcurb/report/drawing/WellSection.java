package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Layer;

/**
 * The well cut open: depths below the ground to scale (broken once where the shallow part would be
 * hidden, and then it says so), widths not to scale.
 */
final class WellSection {
  static final String ID = "section";
  static final int WIDTH = 372;
  static final int TOP = 30;
  static final int BOTTOM = 560;
  private static final int AXIS = 46;
  private static final int LABELS = 196;
  private static final int LEADS = (int) SectionParts.RIGHT;

  private static final String DRILLED = "well.drilled_depth";

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
          new String[] {DRILLED, "section.drilled"});

  /** What a rule may hold against a frost that the form does not give. */
  private static final Set<String> FROST_PROOF =
      Set.of("pitless.depth", "service_line.burial_depth");

  /** No rule asks for more (m). */
  private static final double MOST_LIMIT = 400;

  private final Sketch sketch;
  private final Depths depths;
  private final WellHead head;
  private final List<Tag> tags = new ArrayList<>();
  private final Set<String> left = new TreeSet<>();

  WellSection(Sketch sketch) {
    this.sketch = sketch;
    depths = new Depths(sketch);
    head = new WellHead(sketch);
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
      Interval up = sketch.interval("well.stickup");
      tag("well.stickup", new Interval(-up.hi(), -up.lo()), "section.top");
    }
    tags.addAll(head.tags(Double.isNaN(top) ? 0 : -top));
    for (String[] each : LABELLED) {
      double depth = depths.of(each[0]);
      if (!Double.isNaN(depth)) {
        tag(each[0], depths.range(each[0]), each[1]);
        limit(each[0], each[1]);
      } else if (depths.isOff(each[0])) {
        left.add(sketch.say("section.off", sketch.say(each[1], "").trim()));
      }
    }
    // The same depth said twice says nothing more, unless a finding stands there.
    if (depths.of(DRILLED) == depths.of("well.depth") && !isMarked(DRILLED)) {
      tags.removeIf(tag -> tag.key().equals(DRILLED));
    }
    tags.sort(Comparator.comparingDouble(Tag::amount));
  }

  private boolean isMarked(String key) {
    return sketch.marks().stream().anyMatch(mark -> mark.entries().contains(key));
  }

  private void tag(String key, Interval depth, String words) {
    // A depth that was not moved stands as the form has it.
    boolean isAsGiven = key.equals("well.stickup") || !isMoved(key);
    boolean isUp = depth.lo() < 0 && depth.hi() <= 0 && !key.equals("well.stickup");
    String shown =
        isUp
            ? sketch.say("section.up", above(key, depth, isAsGiven))
            : isAsGiven ? sketch.shown(key) : sketch.span(depth, sketch.unit("well.depth"));
    tags.add(new Tag(key, depth, sketch.say(words, shown)));
  }

  /** How far above the ground, without a sign. */
  private String above(String key, Interval depth, boolean isAsGiven) {
    Interval height = new Interval(-depth.hi(), -depth.lo());
    return isAsGiven ? sketch.shown(key, height) : sketch.span(height, sketch.unit("well.depth"));
  }

  /** The limit where a depth falls short of it, and that of what must lie below the frost. */
  private void limit(String key, String words) {
    double limit = sketch.limit(key);
    boolean isShown = FROST_PROOF.contains(key) || sketch.fallsShort(key);
    if (!isShown || !(limit > 0 && limit <= MOST_LIMIT) || isMoved(key)) {
      return;
    }
    // One frost stands against both.
    boolean isBoth =
        FROST_PROOF.contains(key)
            && FROST_PROOF.stream().allMatch(each -> sketch.limit(each) == limit && !isMoved(each));
    String shown = sketch.print(limit, key);
    String text =
        isBoth
            ? sketch.say("section.limit.both", shown)
            : sketch.say("section.limit", sketch.say(words, shown));
    Tag tag = new Tag(Tag.LIMIT, Interval.point(limit), text);
    if (!tags.contains(tag)) {
      tags.add(tag);
    }
  }

  /** True where a depth on the form is not from the ground. */
  private boolean isMoved(String key) {
    return depths.shift(sketch.entry(key).datum()) != 0;
  }

  private double deepest() {
    double deepest = 0;
    for (Tag tag : tags) {
      deepest = Math.max(deepest, tag.most());
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
    // A flowing level has its height above the ground, unless it would press the well together.
    double flowing = Math.min(-depths.of("water.static_level"), Math.max(2, deepest / 4));
    double from = -Math.max(Double.isNaN(top) ? 0.6 : top, Double.isNaN(flowing) ? 0 : flowing);
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
    Labels labels = new Labels(LEADS, LABELS, WIDTH - LABELS - 2);
    for (Tag tag : tags) {
      double y = ruler.y(tag.amount());
      if (tag.isLimit()) {
        svg.line("limit", LEADS - 8, y, LEADS + 4, y);
      } else if (!tag.range().isPoint()) {
        between(svg, tag.range(), ruler);
      }
      labels.add(y, tag.text(), marks.at(tag.key()));
    }
    return Math.max(BOTTOM, labels.draw(svg, TOP - 10)) + 20;
  }

  /** An upright over all that a depth may be; it has no foot where the form sets no end. */
  private static void between(Svg svg, Interval range, Ruler ruler) {
    double from = ruler.y(range.lo());
    double to = ruler.y(range.hi());
    svg.line("span", LEADS, from, LEADS, to);
    if (!Double.isInfinite(range.lo())) {
      svg.line("span", LEADS - 5, from, LEADS + 5, from);
    }
    if (!Double.isInfinite(range.hi())) {
      svg.line("span", LEADS - 5, to, LEADS + 5, to);
    }
  }

  private List<Sign> legend(Svg svg, Ruler ruler) {
    Legend legend = new Legend(svg);
    new SectionLayers(sketch, depths).legend(legend);
    SectionParts.legend(legend, sketch);
    head.legend(legend, svg);
    legend.across("limit", sketch.say("section.sign.limit"));
    legend.sign("span", sketch.say("sign.between"), WellSection::upright);
    legend.line(sketch.say("section.scale"));
    if (ruler.isBroken()) {
      legend.line(sketch.say("section.broken", sketch.about(ruler.breakAt(), "well.depth")));
    }
    return legend.line(depths.remark()).lines(List.copyOf(left)).all();
  }

  private static void upright(Svg svg) {
    double x = Legend.WIDTH / 2.0;
    svg.line("span", x, 2, x, Legend.HEIGHT - 2);
    svg.line("span", x - 5, 2, x + 5, 2);
    svg.line("span", x - 5, Legend.HEIGHT - 2, x + 5, Legend.HEIGHT - 2);
  }

  private List<String> inWords() {
    List<String> lines = new ArrayList<>();
    for (Tag tag : tags) {
      lines.add(
          tag.isLimit() ? tag.text() : sketch.say("section.words", tag.text(), written(tag.key())));
    }
    return lines;
  }

  private String written(String key) {
    return sketch.record().written(sketch.entry(key).index());
  }
}
