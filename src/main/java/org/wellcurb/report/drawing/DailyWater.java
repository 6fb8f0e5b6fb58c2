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
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.record.WhatIf;
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

  private static final String YIELD = "water.yield";

  /** Stands for all that the draw of a household and what lacks of it are reckoned from. */
  private static final String HOUSEHOLD = "+household";

  private final Sketch sketch;
  private final Scope scope;
  private final Evaluation at;
  private final List<String> words = new ArrayList<>();
  private int y = 8;

  DailyWater(Sketch sketch, Scope scope) {
    this.sketch = sketch;
    this.scope = scope;
    at = evaluation(sketch.record());
  }

  private Evaluation evaluation(WellRecord record) {
    Frame frame = new Frame(record.catalogue());
    frame.take(record);
    Depths depths = new Depths(sketch);
    for (Datum datum : Datum.values()) {
      frame.shift(datum, -depths.shift(datum));
    }
    return new Evaluation(frame, scope);
  }

  @Nullable Drawing drawing() {
    Interval need = perDay(working("daily_need"));
    Interval supply = perDay(working("daily_supply"));
    double draw = scope.figure("peak_rate") * homes() * scope.figure("peak_length");
    Interval lacking = working("peak_shortfall");
    boolean isDay = isDrawn(need) && isDrawn(supply) && most(need, supply) > 0;
    boolean isPeak =
        isDrawn(lacking) && draw > 0 && draw <= MOST && lacking.lo() <= draw && isDrawn(could());
    if (!isDay && !isPeak) {
      return null;
    }
    Svg svg = new Svg(ID, WIDTH, sketch.say("water.title"));
    svg.pattern("lack", 7, "<path class=\"fine\" d=\"M0 7L7 0\"/>");
    svg.pattern("maybe", 7, "<circle class=\"dot\" cx=\"3\" cy=\"3\" r=\"1\"/>");
    Marks marks = new Marks(ofWater(), Set.of(YIELD, HOUSEHOLD));
    if (isDay) {
      day(svg, need, supply, marks);
    }
    if (isPeak) {
      peak(svg, new PeakWater(draw, could(), lacking, leastLackingAtLeastYield(lacking)), marks);
    }
    String picture = svg.close(y, sketch.says(words, marks.drawn()));
    return new Drawing(
        ID, sketch.say("water.title"), picture, legend(svg, isPeak), words, marks.drawn());
  }

  /** How many homes draw at once; NaN where the form leaves it open. */
  private double homes() {
    Interval homes = sketch.interval("site.dwellings");
    if (homes.isAll()) {
      return 1;
    }
    return homes.isPoint() ? Math.max(1, homes.lo()) : Double.NaN;
  }

  /** What the yield could give in the busiest period; all where it is not known. */
  private Interval could() {
    return times(sketch.interval("water.yield"), scope.figure("peak_length"));
  }

  /** What lacks at the least, should the yield be the least that the form allows. */
  private double leastLackingAtLeastYield(Interval lacking) {
    Entry entry = sketch.entry("water.yield");
    Interval stated = sketch.interval("water.yield");
    if (stated.isPoint() || Double.isInfinite(stated.lo())) {
      return lacking.lo();
    }
    WhatIf trial = new WhatIf(sketch.record().catalogue());
    trial.from(sketch.record());
    trial.set(entry.index(), Math.max(0, stated.lo()), Units.GPM);
    Interval then = working(evaluation(trial.record()), "peak_shortfall");
    return Math.max(lacking.lo(), then.isAll() ? lacking.lo() : then.lo());
  }

  private static Interval perDay(Interval rate) {
    return times(rate, 86400);
  }

  /** At least nothing, for no house draws less. */
  private static Interval times(Interval rate, double seconds) {
    return rate.hi() < 0
        ? rate
        : new Interval(Math.max(0, rate.lo() * seconds), rate.hi() * seconds);
  }

  private static boolean isDrawn(Interval x) {
    boolean isKnown = !x.isAll() && !(x.lo() == 0 && Double.isInfinite(x.hi()));
    return isKnown
        && x.lo() >= 0
        && x.lo() <= MOST
        && (Double.isInfinite(x.hi()) || x.hi() <= MOST);
  }

  private Interval working(String name) {
    return working(at, name);
  }

  private Interval working(Evaluation at, String name) {
    @Nullable Working working = scope.workings().find(name);
    if (working == null) {
      return Interval.ALL;
    }
    @Nullable Interval interval = at.amount(new Expr.WorkingAmount(working), null);
    return interval == null ? Interval.ALL : interval;
  }

  /** The greatest of the ends that are known. */
  private static double most(Interval a, Interval b) {
    return Math.max(a.greatestKnown(), b.greatestKnown());
  }

  private void day(Svg svg, Interval need, Interval supply, Marks marks) {
    // What has no upper end runs on to the edge, past all that is known.
    boolean isOpen = Double.isInfinite(need.hi()) || Double.isInfinite(supply.hi());
    double most = most(need, supply) * (isOpen ? 1.25 : 1);
    heading(svg, sketch.say("water.day"), most);
    range(svg, "need", need, most);
    label(svg, sketch.say("water.need", print(need)));
    range(svg, "given", supply, most);
    label(svg, sketch.say("water.supply", said(supply)), marks.at(YIELD));
  }

  /** A bar up to the least that it may be, and a dotted one on to the most. */
  private void range(Svg svg, String kind, Interval x, double most) {
    bar(svg, kind, 0, x.lo() / most);
    maybe(svg, x.lo() / most, Math.min(1, x.hi() / most));
  }

  /** What may be there or not, at the height of the last bar. */
  private void maybe(Svg svg, double from, double to) {
    if (to > from) {
      svg.filled("maybe", LEFT + FULL * from, y - BAR, y, FULL * (to - from));
      svg.box("either", LEFT + FULL * from, y - BAR, y, FULL * (to - from));
    }
  }

  /** What is drawn, and where it comes from: the yield, water in store, nowhere. */
  private void peak(Svg svg, PeakWater peak, Marks marks) {
    double length = scope.figure("peak_length");
    double draw = peak.draw();
    Interval byYield = peak.byYield();
    Interval stored = peak.stored();
    Interval lacking = peak.lacking();
    // The yield is drawn in full where it is more than is drawn: two equal bars would say it is
    // not.
    boolean isMore = lacking.hi() <= 0 && stored.hi() <= 0 && peak.could().greatestKnown() > draw;
    double most = isMore ? peak.could().greatestKnown() : draw;
    String hours = sketch.number(length / 3600);
    heading(svg, sketch.say("water.peak", hours, sketch.symbol(Units.HOUR)), most);
    bar(svg, "need", 0, draw / most);
    label(svg, sketch.say("water.draw", print(Interval.point(draw))));
    if (isMore) {
      range(svg, "given", peak.could(), most);
    } else {
      bar(svg, "given", 0, byYield.lo() / draw);
      share(svg, "stored", byYield.lo() / draw, stored.lo() / draw);
      maybe(svg, (byYield.lo() + stored.lo()) / draw, 1 - lacking.lo() / draw);
      if (lacking.lo() > 0) {
        double x = LEFT + FULL * (1 - lacking.lo() / draw);
        svg.filled("lack", x, y - BAR, y, FULL * lacking.lo() / draw);
        svg.box("lacking", x, y - BAR, y, FULL * lacking.lo() / draw);
      }
    }
    label(
        svg,
        peak.could().hi() > byYield.hi() * 1.001
            ? sketch.say("water.covers.less", said(byYield), said(peak.could()))
            : sketch.say("water.covers", said(byYield)));
    label(svg, sketch.say("water.stored", said(stored)));
    label(
        svg,
        sketch.say(lacking.hi() > 0 ? "water.lacking" : "water.enough", print(lacking)),
        marks.at(HOUSEHOLD));
  }

  /** A further part of the last bar. */
  private void share(Svg svg, String kind, double from, double share) {
    if (share > 0) {
      y -= BAR;
      bar(svg, kind, from, share);
    }
  }

  /** What a pair of bars is about, and its scale: each pair has its own. */
  private void heading(Svg svg, String text, double most) {
    words.add(text);
    y += 12;
    svg.text("title", LEFT, y, text);
    y += 4;
    label(svg, sketch.say("water.scale", print(Interval.point(most))));
    y -= 4;
  }

  private void bar(Svg svg, String kind, double from, double share) {
    svg.box(kind, LEFT + FULL * from, y, y + BAR, FULL * share);
    y += BAR;
  }

  private void label(Svg svg, String text) {
    label(svg, text, List.of());
  }

  /** A text in as many rows as it takes, then letters, on rows of their own where none is left. */
  private void label(Svg svg, String text, List<Mark> marks) {
    words.add(text);
    double room = WIDTH - 2.0 * LEFT;
    String last = "";
    for (String row : rows(text, room)) {
      y += last.isEmpty() ? 0 : 18;
      svg.text("label", LEFT, y + 16, row);
      last = row;
    }
    double x = LEFT + 4 + Lettering.width(last);
    for (Mark mark : marks) {
      double wide = Svg.width(List.of(mark));
      if (x + wide > WIDTH) {
        x = LEFT;
        y += 20;
      }
      x = svg.marks(x, y + 16, List.of(mark));
    }
    y += 28;
  }

  /** What is in brackets goes on a row of its own where both are too wide for one. */
  private static List<String> rows(String text, double room) {
    int bracket = text.indexOf(" (");
    if (bracket <= 0 || Lettering.width(text) <= room) {
      return Lettering.wrap(text, room, room);
    }
    List<String> rows = new ArrayList<>(Lettering.wrap(text.substring(0, bracket), room, room));
    rows.addAll(Lettering.wrap(text.substring(bracket + 1), room, room));
    return rows;
  }

  /**
   * The findings on water, each with what it stands at in this drawing: on the yield at what the
   * well gives, on what is reckoned from it and the household at what lacks.
   */
  private List<Mark> ofWater() {
    List<Mark> all = new ArrayList<>();
    for (Mark mark : sketch.marks()) {
      String at = mark.decided();
      boolean isReckoned =
          (at.startsWith("site.") || at.startsWith("storage.")) && mark.entries().contains(YIELD);
      String shown = isReckoned ? HOUSEHOLD : at;
      all.add(new Mark(mark.letter(), mark.anchor(), mark.sentence(), List.of(shown)));
    }
    return all;
  }

  /** What a well gives as people say it: from nothing to so much is so much or less. */
  private String said(Interval cubicMetres) {
    boolean isOpen = cubicMetres.lo() <= 0 && cubicMetres.hi() > 0;
    return isOpen && Double.isFinite(cubicMetres.hi())
        ? print(new Interval(Double.NEGATIVE_INFINITY, cubicMetres.hi()))
        : print(cubicMetres);
  }

  private String print(Interval cubicMetres) {
    Unit unit = sketch.system() == UnitSystem.METRIC ? Units.LITRE : Units.US_GALLON;
    return sketch.span(cubicMetres, unit);
  }

  private List<Sign> legend(Svg svg, boolean isPeak) {
    Legend legend =
        new Legend(svg)
            .box("need", sketch.say("water.sign.need"))
            .box("given", sketch.say("water.sign.given"))
            .box("stored", sketch.say("water.sign.stored"))
            .pattern("lack", sketch.say("water.sign.lacking"))
            .pattern("maybe", sketch.say("sign.between"));
    if (!isPeak && Double.isNaN(homes())) {
      legend.line(sketch.say("water.homes"));
    }
    List<String> figures =
        isPeak
            ? List.of("use_per_person", "use_per_bedroom", "peak_rate", "peak_length")
            : List.of("use_per_person", "use_per_bedroom");
    for (String name : figures) {
      @Nullable Figure figure = scope.workings().figure(name);
      if (figure != null) {
        Unit unit = Counterpart.of(figure.unit(), sketch.system());
        String amount = sketch.round(unit.fromSi(scope.figure(name))) + " " + sketch.symbol(unit);
        legend.line(sketch.say("water.figure." + name, amount, sketch.said(figure.source())));
      }
    }
    return legend.all();
  }
}
