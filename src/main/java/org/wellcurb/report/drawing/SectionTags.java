package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Cap;

/** The labels of a well in section, from the top down, and what cannot be drawn of it. */
final class SectionTags {
  private static final String DRILLED = "well.drilled_depth";
  private static final String PUMPING = "water.pumping_level";
  private static final String STICKUP = "well.stickup";

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
          new String[] {PUMPING, "section.pumping"},
          new String[] {"pump.intake_depth", "section.intake"},
          new String[] {"well.liner_top", "section.liner.top"},
          new String[] {"well.liner_bottom", "section.liner.bottom"},
          new String[] {"well.filter_pack_top", "section.filter"},
          new String[] {"well.filter_pack_bottom", "section.filter.bottom"},
          new String[] {"well.screen_top", "section.screen.top"},
          new String[] {"well.screen_bottom", "section.screen.bottom"},
          new String[] {"well.depth", "section.finished"},
          new String[] {DRILLED, "section.drilled"});

  /** What a rule may hold against a frost that the form does not give. */
  static final List<String> FROST_PROOF = List.of("pitless.depth", "service_line.burial_depth");

  /** No rule asks for more (m). */
  private static final double MOST_LIMIT = 400;

  private final Sketch sketch;
  private final Depths depths;
  private final List<Tag> tags = new ArrayList<>();
  private final Set<String> left = new TreeSet<>();

  SectionTags(Sketch sketch, Depths depths, WellHead head, DropPipe pipe) {
    this.sketch = sketch;
    this.depths = depths;
    double top = depths.of(STICKUP);
    if (!Double.isNaN(top)) {
      casingTop();
    }
    tags.addAll(head.tags(Double.isNaN(top) ? 0 : -top));
    for (String[] each : LABELLED) {
      if (!Double.isNaN(depths.of(each[0]))) {
        tag(each[0], depths.range(each[0]), each[1]);
        limit(each[0], each[1]);
      } else if (depths.isOff(each[0])) {
        left.add(sketch.say("section.off", sketch.say(each[1], "").trim()));
      } else if (isTakenAsUnknown(each[0])) {
        String written =
            Cap.QUOTED_LETTERS.cut(sketch.record().written(sketch.entry(each[0]).index()));
        left.add(sketch.say("section.unknown", sketch.say(each[1], "").trim(), written));
      }
    }
    frost();
    // The same depth said twice says nothing more, unless a finding stands there.
    if (depths.of(DRILLED) == depths.of("well.depth") && !isMarked(DRILLED)) {
      tags.removeIf(tag -> tag.key().equals(DRILLED));
    }
    tags.addAll(pipe.tags());
    tags.sort(Comparator.comparingDouble(Tag::amount));
  }

  List<Tag> all() {
    return tags;
  }

  /** What one would not see of the limits: that a well is not as deep as what is asked of it. */
  List<String> remarks() {
    double bottom = Math.max(known(depths.of("well.depth")), known(depths.of(DRILLED)));
    boolean isBelow = tags.stream().anyMatch(tag -> tag.isLimit() && tag.amount() > bottom);
    return bottom > 0 && isBelow ? List.of(sketch.say("section.limit.below")) : List.of();
  }

  private static double known(double x) {
    return Double.isNaN(x) ? 0 : x;
  }

  /** What no drawing can hold. */
  List<String> left() {
    return List.copyOf(left);
  }

  /** True where the form has something in place of a depth that counts as not known. */
  private boolean isTakenAsUnknown(String key) {
    int i = sketch.entry(key).index();
    return sketch.record().state(i) != WellRecord.NOT_APPLICABLE
        && !sketch.isGiven(key)
        && !sketch.record().written(i).isBlank();
  }

  private boolean isMarked(String key) {
    return sketch.marks().stream().anyMatch(mark -> mark.decided().equals(key));
  }

  private void casingTop() {
    Interval up = sketch.interval(STICKUP);
    boolean isDown = up.hi() < 0;
    Interval depth = new Interval(-up.hi(), -up.lo());
    String shown = sketch.both(STICKUP, isDown ? depth : up);
    tags.add(
        new Tag(STICKUP, depth, sketch.say(isDown ? "section.top.down" : "section.top", shown)));
  }

  private void tag(String key, Interval depth, String words) {
    // A depth that was not moved stands as the form has it.
    boolean isAsGiven = !isMoved(key);
    boolean isUp = depth.lo() < 0 && depth.hi() <= 0;
    String shown =
        isUp
            ? sketch.say("section.up", above(key, depth, isAsGiven))
            : isAsGiven ? sketch.both(key) : sketch.sum(key, depth, sketch.unit("well.depth"));
    String test = key.equals(PUMPING) ? testWithout(sketch) : "";
    tags.add(
        new Tag(
            key,
            depth,
            test.isEmpty() ? sketch.say(words, shown) : sketch.say("section.told", test, shown)));
  }

  /** How the yield was tested, where such a test measures no pumping level; empty otherwise. */
  static String testWithout(Sketch sketch) {
    boolean isSuch =
        List.of("air lift", "bailer", "flow only").stream()
            .anyMatch(method -> sketch.is("water.test_method", method));
    return isSuch ? sketch.read("water.test_method") : "";
  }

  /** How far above the ground, without a sign. */
  private String above(String key, Interval depth, boolean isAsGiven) {
    Interval height = new Interval(-depth.hi(), -depth.lo());
    return isAsGiven
        ? sketch.both(key, height)
        : sketch.sum(key, height, sketch.unit("well.depth"));
  }

  /** The limit where a depth falls short of it, and that of what must lie below the frost. */
  private void limit(String key, String words) {
    Limit limit = sketch.limit(key);
    if (!isShown(key) || isFrost(key)) {
      return;
    }
    // One limit may stand against both.
    boolean isBoth =
        FROST_PROOF.contains(key)
            && FROST_PROOF.stream()
                .allMatch(each -> sketch.limit(each).si() == limit.si() && isShown(each));
    String shown = sketch.limitBoth(limit.si(), key);
    String text =
        isBoth
            ? sketch.say("section.limit.both", shown)
            : sketch.say(key(limit), sketch.say(words, shown));
    Tag tag = new Tag(Tag.LIMIT, Interval.point(limit.si()), text);
    if (!tags.contains(tag)) {
      tags.add(tag);
    }
  }

  private static String key(Limit limit) {
    if (limit.isOpen()) {
      return "section.limit.open";
    }
    return limit.isOneWay() ? "section.limit.way" : "section.limit";
  }

  private boolean isShown(String key) {
    double limit = sketch.limit(key).si();
    return (FROST_PROOF.contains(key) || sketch.fallsShort(key))
        && limit > 0
        && limit <= MOST_LIMIT
        && !isMoved(key);
  }

  private boolean isFrost(String key) {
    return isShown(key) && sketch.limit(key).isFrost();
  }

  /** The frost that the rules have, where the form itself gives none. */
  private void frost() {
    Set<String> said = new TreeSet<>();
    for (String key : FROST_PROOF) {
      double limit = sketch.limit(key).si();
      boolean isGiven = depths.of("site.frost_depth") == limit;
      if (isFrost(key) && !isGiven && said.add(String.valueOf(limit))) {
        String shown = sketch.limitBoth(limit, key);
        tags.add(
            new Tag(Tag.FROST, Interval.point(limit), sketch.say("section.frost.rules", shown)));
      }
    }
  }

  /** True where a depth on the form is not from the ground. */
  private boolean isMoved(String key) {
    return depths.shift(sketch.entry(key).datum()) != 0;
  }

  double deepest() {
    double deepest = 0;
    for (Tag tag : tags) {
      deepest = Math.max(deepest, tag.most());
    }
    return deepest;
  }
}
