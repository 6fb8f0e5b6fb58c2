package org.wellcurb.report.drawing;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Datum;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/** Depths of a record below the ground, as far as the form lets one say. */
final class Depths {
  /** Deeper than any well, and higher than any casing: beyond it nothing is drawn. */
  private static final double DEEPEST = 4000;

  private static final double HIGHEST = -300;

  private final Sketch sketch;

  Depths(Sketch sketch) {
    this.sketch = sketch;
  }

  /** Metres below the ground; NaN where it is not given or cannot be drawn. */
  double of(String key) {
    Entry entry = sketch.entry(key);
    double metres = sketch.value(key) + shift(entry.datum());
    return metres >= HIGHEST && metres <= DEEPEST ? metres : Double.NaN;
  }

  /**
   * All that a depth may be, in metres below the ground; everything where it is not given or cannot
   * be drawn.
   */
  Interval range(String key) {
    if (Double.isNaN(of(key))) {
      return Interval.ALL;
    }
    Interval read = sketch.interval(key);
    double shift = shift(sketch.entry(key).datum());
    // An end that no well has says no more than that there is none.
    double lo = read.lo() + shift < HIGHEST ? Double.NEGATIVE_INFINITY : read.lo() + shift;
    double hi = read.hi() + shift > DEEPEST ? Double.POSITIVE_INFINITY : read.hi() + shift;
    return new Interval(lo, hi);
  }

  /** The least depth that a part surely reaches; NaN where it is not known. */
  double least(String key) {
    Interval range = range(key);
    return range.isAll() ? Double.NaN : range.leastKnown();
  }

  /** The depth below which a part surely begins; NaN where it is not known. */
  double most(String key) {
    Interval range = range(key);
    return range.isAll() ? Double.NaN : range.greatestKnown();
  }

  /** True where a depth is given that no drawing can hold. */
  boolean isOff(String key) {
    return sketch.isGiven(key) && !Double.isNaN(sketch.value(key)) && Double.isNaN(of(key));
  }

  /** What is added to a depth from this datum to make it a depth below the ground. */
  double shift(Datum datum) {
    String from =
        switch (datum) {
          case WATER -> own("water.datum");
          case PUMP -> own("pump.datum");
          case RECORD -> choice("record.datum");
          case NONE, GROUND -> "ground";
        };
    return switch (from) {
      case "casing top" -> -known(sketch.value("well.stickup"));
      case "pitless" -> known(sketch.value("pitless.depth"));
      default -> 0;
    };
  }

  /** How depths were brought to the ground, as a sentence; empty where they are from the ground. */
  String remark() {
    return (ofRecord() + " " + (isUnread("water.datum") ? sketch.say("section.datum.water") : ""))
        .strip()
        .concat(isUnread("pump.datum") ? " " + sketch.say("section.datum.pump") : "")
        .strip();
  }

  private String ofRecord() {
    String from = choice("record.datum");
    if (from.isEmpty()) {
      return sketch.say(
          isUnread("record.datum") ? "section.datum.unread" : "section.datum.unknown");
    }
    if (!from.equals("casing top")) {
      return "";
    }
    Interval up = sketch.interval("well.stickup");
    if (Double.isNaN(Sketch.middle(up))) {
      return sketch.say("section.datum.stickup");
    }
    return up.hi() < 0
        ? sketch.say(
            "section.datum.moved.down",
            sketch.both("well.stickup", new Interval(-up.hi(), -up.lo())))
        : sketch.say("section.datum.moved", sketch.both("well.stickup"));
  }

  private String choice(String key) {
    @Nullable String choice = sketch.record().choice(sketch.entry(key).index());
    return choice == null ? "" : choice;
  }

  /**
   * The datum of a group of depths: its own, or the record's where it is blank. One that could not
   * be read is not the record's: such depths are drawn as they stand, and it is said.
   */
  private String own(String key) {
    String own = choice(key);
    return own.isEmpty() && !isUnread(key) ? choice("record.datum") : own;
  }

  private boolean isUnread(String key) {
    return sketch.record().state(sketch.entry(key).index()) == WellRecord.UNREADABLE;
  }

  private static double known(double x) {
    return Double.isNaN(x) ? 0 : x;
  }
}
