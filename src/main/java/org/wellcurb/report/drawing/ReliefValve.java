package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.quantity.Interval;

/**
 * What the form says of the relief valve that its setting alone does not show: that there is none,
 * that a shut-off valve can cut it off, and how it stands to the ratings of what it is to protect.
 */
final class ReliefValve {
  static final String SETTING = "relief.setting";
  static final String FITTED = "relief.fitted";
  static final String BETWEEN = "relief.valve_between";

  /** What bursts where it does not open in time, each with its words. */
  private static final List<String[]> RATED =
      List.of(
          new String[] {"tank.pressure_rating", "ladder.rated.tank"},
          new String[] {"service_line.pressure_rating", "ladder.rated.line"});

  private final Sketch sketch;

  ReliefValve(Sketch sketch) {
    this.sketch = sketch;
  }

  /** True where the form says that none is fitted. */
  boolean isNone() {
    return sketch.isNo(FITTED);
  }

  /** True where the form has a shut-off valve between the pump and it. */
  boolean isCutOff() {
    return sketch.isYes(BETWEEN) && !isNone();
  }

  /** True where its setting must not be drawn as one that holds. */
  boolean isOpenQuestion() {
    return isCutOff() || isNone();
  }

  /** Its setting in words, with what takes it away. */
  String label(String setting) {
    return isNone()
        ? sketch.say("ladder.relief.unfitted", setting)
        : isCutOff() ? sketch.say("ladder.relief.cut", setting) : setting;
  }

  /** What stands at the top of the ladder where it has no setting to stand at; may be empty. */
  String unplaced() {
    return isNone()
        ? sketch.say("ladder.relief.none")
        : isCutOff() ? sketch.say("ladder.relief.unset") : "";
  }

  /** Sentences beside the ladder. */
  List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    boolean isSet = sketch.isGiven(SETTING);
    if (isNone()) {
      remarks.add(sketch.say("ladder.remark.none"));
      return remarks;
    }
    if (isCutOff()) {
      remarks.add(sketch.say("ladder.remark.cut"));
    } else if (isSet && sketch.isBlank(BETWEEN)) {
      remarks.add(sketch.say("ladder.remark.unsaid"));
    }
    if (isSet) {
      for (String[] each : RATED) {
        if (sketch.isGiven(each[0])) {
          remarks.add(against(sketch.interval(each[0]), sketch.say(each[1])));
        }
      }
    }
    return remarks;
  }

  /** How it stands to a rating; two ranges that overlap leave that open. */
  private String against(Interval rating, String rated) {
    Interval opens = sketch.interval(SETTING);
    double over = opens.lo() - rating.hi();
    double under = rating.lo() - opens.hi();
    if (over > 0) {
      return sketch.say("ladder.remark.above", apart(over, opens.hi() - rating.lo()), rated);
    }
    if (under > 0) {
      return sketch.say(
          isCutOff() ? "ladder.remark.below.cut" : "ladder.remark.below",
          apart(under, rating.hi() - opens.lo()),
          rated);
    }
    return over == 0 && under == 0 && opens.isPoint()
        ? sketch.say("ladder.remark.at", rated)
        : sketch.say("ladder.remark.open", rated);
  }

  private String apart(double least, double most) {
    return sketch.span(new Interval(least, most), sketch.unit(SETTING));
  }
}
