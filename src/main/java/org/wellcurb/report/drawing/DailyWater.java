package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Counterpart;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Frame;
import org.wellcurb.formula.Scope;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Datum;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.Working;

/** What a household draws against what the well gives: over a day, and in the busiest period. */
final class DailyWater {
  static final String ID = "water";
  private static final int WIDTH = 372;
  private static final int LEFT = 6;
  private static final int FULL = 360;
  private static final int BAR = 22;

  /** More than any house or well (m3): beyond it nothing is drawn. */
  private static final double MOST = 1e5;

  private final Sketch sketch;
  private final Scope scope;
  private final Evaluation at;
  private final List<String> words = new ArrayList<>();
  private int y = 8;

  DailyWater(Sketch sketch, Scope scope) {
    this.sketch = sketch;
    this.scope = scope;
    Frame frame = new Frame(sketch.record().catalogue());
    frame.take(sketch.record());
    Depths depths = new Depths(sketch);
    for (Datum datum : Datum.values()) {
      frame.shift(datum, -depths.shift(datum));
    }
    at = new Evaluation(frame, scope);
  }

  @Nullable Drawing drawing() {
    double need = 86400 * working("daily_need");
    double supply = 86400 * working("daily_supply");
    double draw = scope.figure("peak_rate") * homes() * scope.figure("peak_length");
    double lacking = working("peak_shortfall");
    boolean isDay = isDrawn(need) && isDrawn(supply) && need + supply > 0;
    boolean isPeak = isDrawn(lacking) && isDrawn(draw) && draw > 0 && lacking <= draw;
    if (!isDay && !isPeak) {
      return null;
    }
    Svg svg = new Svg(ID, WIDTH, sketch.say("water.title"));
    svg.pattern("lack", 7, "<path class=\"fine\" d=\"M0 7L7 0\"/>");
    Marks marks = new Marks(sketch.marks(), Set.of("water.yield", "storage.volume"));
    if (isDay) {
      day(svg, need, supply, marks);
    }
    if (isPeak) {
      peak(svg, draw, lacking);
    }
    return new Drawing(
        ID, sketch.say("water.title"), svg.close(y), legend(svg, isPeak), words, marks.drawn());
  }

  private double homes() {
    double homes = sketch.value("site.dwellings");
    return homes >= 1 ? homes : 1;
  }

  private static boolean isDrawn(double x) {
    return x >= 0 && x <= MOST;
  }

  private double working(String name) {
    @Nullable Working working = scope.workings().find(name);
    if (working == null) {
      return Double.NaN;
    }
    @Nullable Interval interval = at.amount(new Expr.WorkingAmount(working), null);
    return interval == null ? Double.NaN : Sketch.middle(interval);
  }

  private void day(Svg svg, double need, double supply, Marks marks) {
    double most = Math.max(need, supply);
    heading(svg, sketch.say("water.day"));
    bar(svg, "need", 0, need / most);
    label(svg, sketch.say("water.need", print(need)));
    bar(svg, "given", 0, supply / most);
    String text = label(svg, sketch.say("water.supply", print(supply)));
    svg.marks(LEFT + 4 + Lettering.width(text), y - 12, marks.at("water.yield"));
  }

  /** What is drawn, and where it comes from: the yield, water in store, nowhere. */
  private void peak(Svg svg, double draw, double lacking) {
    double length = scope.figure("peak_length");
    double could = sketch.value("water.yield") * length;
    double byYield = Math.min(draw - lacking, could);
    double stored = Math.max(0, draw - lacking - byYield);
    // The yield is drawn in full where it is more than is drawn: two equal bars would say it is
    // not.
    boolean isMore = lacking <= 0 && stored <= 0 && could > draw && could <= MOST;
    double most = isMore ? could : draw;
    heading(svg, sketch.say("water.peak", sketch.number(length / 3600), Units.HOUR.symbol()));
    bar(svg, "need", 0, draw / most);
    label(svg, sketch.say("water.draw", print(draw)));
    bar(svg, "given", 0, isMore ? 1 : byYield / draw);
    y -= BAR;
    if (stored > 0) {
      bar(svg, "stored", byYield / draw, stored / draw);
    } else {
      y += BAR;
    }
    if (lacking > 0) {
      double x = LEFT + FULL * (1 - lacking / draw);
      svg.filled("lack", x, y - BAR, y, FULL * lacking / draw);
      svg.box("lacking", x, y - BAR, y, FULL * lacking / draw);
    }
    label(
        svg,
        could > byYield * 1.001 && could <= MOST
            ? sketch.say("water.covers.less", print(byYield), print(could))
            : sketch.say("water.covers", print(byYield)));
    label(svg, sketch.say("water.stored", print(stored)));
    label(svg, sketch.say(lacking > 0 ? "water.lacking" : "water.enough", print(lacking)));
  }

  private void heading(Svg svg, String text) {
    y += 12;
    svg.text("title", LEFT, y, text);
    y += 8;
  }

  private void bar(Svg svg, String kind, double from, double share) {
    svg.box(kind, LEFT + FULL * from, y, y + BAR, FULL * share);
    y += BAR;
  }

  private String label(Svg svg, String text) {
    words.add(text);
    // What is in brackets goes on a line of its own where both are too wide for one.
    int bracket = text.indexOf(" (");
    boolean isTwo = bracket > 0 && Lettering.width(text) > WIDTH - LEFT;
    String last = isTwo ? text.substring(bracket + 1) : text;
    if (isTwo) {
      svg.text("label", LEFT, y + 16, text.substring(0, bracket));
      y += 18;
    }
    svg.text("label", LEFT, y + 16, last);
    y += 28;
    return last;
  }

  private String print(double cubicMetres) {
    Unit unit = sketch.system() == UnitSystem.METRIC ? Units.LITRE : Units.US_GALLON;
    return sketch.round(unit.fromSi(cubicMetres)) + " " + unit.symbol();
  }

  private List<Sign> legend(Svg svg, boolean isPeak) {
    Legend legend =
        new Legend(svg)
            .box("need", sketch.say("water.sign.need"))
            .box("given", sketch.say("water.sign.given"))
            .box("stored", sketch.say("water.sign.stored"))
            .pattern("lack", sketch.say("water.sign.lacking"));
    List<String> figures =
        isPeak
            ? List.of("use_per_person", "use_per_bedroom", "peak_rate", "peak_length")
            : List.of("use_per_person", "use_per_bedroom");
    for (String name : figures) {
      @Nullable Figure figure = scope.workings().figure(name);
      if (figure != null) {
        Unit unit = Counterpart.of(figure.unit(), sketch.system());
        String amount = sketch.round(unit.fromSi(scope.figure(name))) + " " + unit.symbol();
        legend.line(sketch.say("water.figure." + name, amount, figure.source()));
      }
    }
    return legend.all();
  }
}
