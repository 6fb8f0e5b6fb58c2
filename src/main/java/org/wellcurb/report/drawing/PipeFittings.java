package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;

/**
 * Check valves or torque arresters on the drop pipe: where their number and spacing put them, up
 * from the pump, or why they cannot be placed. Practice: the first of either stands at the pump.
 */
final class PipeFittings {
  private static final int MOST = 40;

  /** Nobody fits two closer (m). */
  private static final double CLOSEST = 0.3;

  private final Sketch sketch;
  private final String kind;
  private final String one;
  private final String name;
  private final String count;
  private final String spacing;
  private final List<Double> above = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private long many;
  private boolean isUnspaced;

  private PipeFittings(
      Sketch sketch, String kind, String one, String name, String count, String spacing) {
    this.sketch = sketch;
    this.kind = kind;
    this.one = one;
    this.name = name;
    this.count = count;
    this.spacing = spacing;
  }

  /**
   * @param start depth at which the pipe begins (m)
   * @param intake depth of the pump's intake (m); NaN where it is not known
   */
  static List<PipeFittings> of(Sketch sketch, double start, double intake) {
    PipeFittings valves =
        new PipeFittings(
            sketch,
            "valve",
            sketch.say("section.sign.valve"),
            sketch.say("section.valves"),
            "pump.check_valves",
            "pump.check_valve_spacing");
    PipeFittings arresters =
        new PipeFittings(
            sketch,
            "arrester",
            sketch.say("section.sign.arrester"),
            sketch.say("section.arresters"),
            "pump.torque_arresters",
            "pump.torque_arrester_spacing");
    valves.place(start, intake);
    arresters.place(start, intake);
    return List.of(valves, arresters);
  }

  private void place(double start, double intake) {
    if (!sketch.isGiven(count)) {
      if (sketch.isGiven(spacing)) {
        notes.add(sketch.say("section.fitting.uncounted", name, sketch.both(spacing)));
      }
      return;
    }
    Interval number = sketch.interval(count);
    if (number.hi() <= 0) {
      return;
    }
    if (!DropPipe.isPumpBelow(sketch)) {
      notes.add(sketch.say("section.fitting.above", name, sketch.read(count)));
      return;
    }
    if (!number.isPoint() || number.lo() > 1e6 || !(intake > start)) {
      notes.add(sketch.say("section.fitting.unplaced", name, sketch.read(count)));
      return;
    }
    many = Math.round(number.lo());
    Interval each = sketch.interval(spacing);
    boolean isSpaced = each.isPoint() && each.lo() >= CLOSEST;
    if (many > 1 && !isSpaced) {
      isUnspaced = true;
      notes.add(sketch.say("section.fitting.unspaced", name, sketch.read(count)));
      return;
    }
    for (int i = 1; i < Math.min(many, MOST) && intake - i * each.lo() > start; i++) {
      above.add(intake - i * each.lo());
    }
    long left = many - 1 - above.size();
    if (left > 0) {
      notes.add(sketch.say("section.fitting.left", name, left));
    }
  }

  /** The key of the spacing of fittings whose number has this key; null for any other. */
  static @Nullable String spacingOf(String count) {
    return switch (count) {
      case "pump.check_valves" -> "pump.check_valve_spacing";
      case "pump.torque_arresters" -> "pump.torque_arrester_spacing";
      default -> null;
    };
  }

  String kind() {
    return kind;
  }

  /** True where one stands at the pump. */
  boolean isAtPump() {
    return many > 0;
  }

  /** Depths of those above the pump, from it up (m). */
  List<Double> above() {
    return above;
  }

  /** What is not drawn of them, and why. */
  List<String> notes() {
    return notes;
  }

  /** Labels: each that is drawn, or where they are many the one at the pump and the topmost. */
  List<Tag> tags(double intake) {
    List<Tag> tags = new ArrayList<>();
    if (!isAtPump()) {
      return tags;
    }
    String atPump = isUnspaced ? unspaced() : sketch.say("section.fitting.label.pump", one);
    tags.add(new Tag(count, Interval.point(intake), atPump));
    boolean isEach = above.size() <= 2;
    for (int i = isEach ? 0 : above.size() - 1; i < above.size(); i++) {
      String about = sketch.about(above.get(i), "well.depth");
      String text =
          isEach
              ? sketch.say("section.fitting.label.at", one, about)
              : sketch.say("section.fitting.label.topmost", name, above.size() + 1, about);
      tags.add(new Tag(Tag.DRAWN, Interval.point(above.get(i)), text));
    }
    return tags;
  }

  private String unspaced() {
    return sketch.say("section.fitting.label.unspaced", name, sketch.read(count));
  }

  /** All that are drawn, from the pump up, and what is not. */
  List<String> words() {
    List<String> words = new ArrayList<>();
    if (isUnspaced) {
      words.add(unspaced());
    } else if (isAtPump()) {
      StringBuilder places = new StringBuilder(sketch.say("section.fitting.pump"));
      for (double depth : above) {
        places.append(sketch.say("section.fitting.next", sketch.about(depth, "well.depth")));
      }
      words.add(
          above.isEmpty()
              ? sketch.say("section.fitting.words", one, places)
              : sketch.say("section.fitting.words.spaced", name, places, sketch.both(spacing)));
    }
    words.addAll(notes);
    return words;
  }
}
