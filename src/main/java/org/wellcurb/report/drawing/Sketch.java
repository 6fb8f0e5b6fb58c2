package org.wellcurb.report.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Scope;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.words.Amounts;
import org.wellcurb.report.words.Numerals;
import org.wellcurb.report.words.Words;

/** What all drawings of one record are made from. */
public final class Sketch {
  /** Drawings, each with an entry of the part of the form that it draws, and what it takes. */
  private static final List<String[]> NEEDED =
      List.of(
          new String[] {WellSection.ID, "well.depth", "section.missing"},
          new String[] {PressureLadder.ID, "pressure.cut_in", "ladder.missing"},
          new String[] {SetbackPlan.ID, "setback.septic_tank", "plan.missing"},
          new String[] {DailyWater.ID, "water.yield", "water.missing"});

  private final WellRecord record;
  private final Words words;
  private final Amounts amounts;
  private final List<Mark> marks;
  private final Map<String, Limit> limits;
  private final Scope scope;
  private @Nullable List<Drawing> made;

  /**
   * @param record the record
   * @param scope what the pack that judged it sets
   * @param words the language
   * @param amounts how amounts are printed
   * @param marks the findings, in the order of the page
   * @param limits limits by entry, where a rule has one
   */
  public Sketch(
      WellRecord record,
      Scope scope,
      Words words,
      Amounts amounts,
      List<Mark> marks,
      Map<String, Limit> limits) {
    this.record = record;
    this.scope = scope;
    this.limits = limits;
    this.words = words;
    this.amounts = amounts;
    this.marks = List.copyOf(marks);
  }

  /** The drawings that the record gives enough for; made once. */
  public List<Drawing> drawings() {
    @Nullable List<Drawing> done = made;
    if (done == null) {
      done = make();
      made = done;
    }
    return done;
  }

  private List<Drawing> make() {
    List<Drawing> drawings = new ArrayList<>();
    for (@Nullable Drawing drawing :
        new @Nullable Drawing[] {
          new WellSection(this).drawing(),
          new PressureLadder(this).drawing(),
          new SetbackPlan(this).drawing(),
          new DailyWater(this, scope).drawing()
        }) {
      if (drawing != null) {
        drawings.add(drawing);
      }
    }
    return List.copyOf(drawings);
  }

  /** What is not drawn of what the form has room for, and what it takes. */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    List<String> drawn = drawings().stream().map(Drawing::id).toList();
    for (String[] each : NEEDED) {
      boolean applies =
          record.state(entry(each[1]).index()) != WellRecord.NOT_APPLICABLE
              && !(each[0].equals(DailyWater.ID) && is("well.use", "monitoring"));
      if (applies && !drawn.contains(each[0])) {
        missing.add(say(each[2]));
      }
    }
    return missing;
  }

  /**
   * What a drawing shows, for those who do not see it: how many things it holds, and what of them
   * falls short.
   */
  String says(List<String> held, List<Mark> drawn) {
    String holds = count("drawing.holds", held.size());
    StringBuilder says = new StringBuilder(holds).append(' ');
    if (drawn.isEmpty()) {
      return says.append(say("drawing.unmarked")).toString();
    }
    says.append(count("drawing.marked", drawn.size()));
    drawn.forEach(
        mark -> says.append(' ').append(say("drawing.mark", mark.letter(), mark.sentence())));
    return says.toString();
  }

  WellRecord record() {
    return record;
  }

  List<Mark> marks() {
    return marks;
  }

  UnitSystem system() {
    return amounts.system(record);
  }

  String say(String key, Object... arguments) {
    return words.say(key, arguments);
  }

  String count(String key, long many) {
    return words.count(key, many);
  }

  Entry entry(String key) {
    return record.catalogue().entry(record.catalogue().index(key));
  }

  boolean isGiven(String key) {
    return record.isGiven(entry(key).index());
  }

  boolean is(String key, String choice) {
    return choice.equals(record.choice(entry(key).index()));
  }

  boolean isYes(String key) {
    int i = entry(key).index();
    return record.isGiven(i) && record.lo(i) == 1;
  }

  /** True where the form says nothing of an entry that may apply, or nothing that can be read. */
  boolean isBlank(String key) {
    return !isGiven(key) && record.state(entry(key).index()) != WellRecord.NOT_APPLICABLE;
  }

  boolean isNo(String key) {
    int i = entry(key).index();
    return record.isGiven(i) && record.hi(i) == 0;
  }

  /** One value in SI to draw an entry at: the middle of a range, the end of half a one; or NaN. */
  double value(String key) {
    int i = entry(key).index();
    return record.isGiven(i) ? middle(record.interval(i)) : Double.NaN;
  }

  /** All that an entry may be, in SI; everything where it is not given. */
  Interval interval(String key) {
    int i = entry(key).index();
    return record.isGiven(i) ? record.interval(i) : Interval.ALL;
  }

  /** From the least to the most of an amount in SI, rounded for people: {@code 0 to 1440 gal}. */
  String span(Interval si, Unit unit) {
    return span(si, unit, round(unit.fromSi(si.lo())), round(unit.fromSi(si.hi())));
  }

  /**
   * The same of an entry's amount to which another was added: in the unit of the form the sum comes
   * out as it does by hand.
   */
  String sum(String key, Interval si, Unit unit) {
    @Nullable Unit written = record.unit(entry(key).index());
    if (!unit.equals(written)) {
      return span(si, unit);
    }
    return span(si, unit, number(unit.fromSi(si.lo())), number(unit.fromSi(si.hi())));
  }

  private String span(Interval si, Unit unit, String lo, String hi) {
    String last = " " + symbol(unit);
    if (Double.isInfinite(si.hi())) {
      return say("amount.least", lo + last);
    }
    if (Double.isInfinite(si.lo())) {
      return say("amount.most", hi + last);
    }
    return lo.equals(hi) ? lo + last : say("amount.range", lo, hi + last);
  }

  static double middle(Interval interval) {
    double lo = interval.lo();
    double hi = interval.hi();
    if (Double.isInfinite(lo)) {
      return Double.isInfinite(hi) ? Double.NaN : hi;
    }
    return Double.isInfinite(hi) ? lo : lo + (hi - lo) / 2;
  }

  /** What an entry was read as, in the units of the page. */
  String read(String key) {
    return amounts.read(record, entry(key));
  }

  /** The limit that a rule sets to an entry as it stands. */
  Limit limit(String key) {
    return limits.getOrDefault(key, Limit.NONE);
  }

  /**
   * A rounded amount in the page's unit with the record's own beside it, where that is another. So
   * that a label in metres can be found on a form in feet.
   */
  String both(String key) {
    return both(key, interval(key));
  }

  /** The same of another amount of the entry's kind, such as a depth turned into a height. */
  String both(String key, Interval si) {
    @Nullable Unit written = record.unit(entry(key).index());
    return written == null || amounts.shown(written).equals(written)
        ? shown(key, si)
        : say("amount.beside", shown(key, si), amounts.own(si, entry(key), written));
  }

  /** A limit rounded, with the same in the record's unit beside it, where that is another. */
  String limitBoth(double si, String key) {
    @Nullable Unit written = record.unit(entry(key).index());
    return written == null || amounts.shown(written).equals(written)
        ? print(si, key)
        : say(
            "amount.beside", print(si, key), amounts.own(Interval.point(si), entry(key), written));
  }

  /** True if a finding was decided by this entry. */
  boolean fallsShort(String key) {
    return marks.stream().anyMatch(mark -> mark.decided().equals(key));
  }

  /** A text of the program's own in the language of the page, where that language says it. */
  String said(String english) {
    String own = words.said(english);
    return own.isEmpty() ? english : own;
  }

  /** The sign of a unit in the language of the page. */
  String symbol(Unit unit) {
    return amounts.symbol(unit);
  }

  /** An amount in SI of the kind of an entry, in the unit of the page, rounded for people. */
  String print(double si, String likeEntry) {
    Unit unit = unit(likeEntry);
    return round(unit.fromSi(si)) + " " + symbol(unit);
  }

  /**
   * What an entry was read as: as it was written where that is in the page's unit, else rounded for
   * people, for a figure brought from another unit has digits that nobody measured.
   */
  String shown(String key) {
    return shown(key, interval(key));
  }

  /** The same of another amount of the entry's kind, such as a depth turned into a height. */
  String shown(String key, Interval si) {
    Entry entry = entry(key);
    @Nullable Unit written = record.unit(entry.index());
    return written != null
            && !amounts.shown(written).equals(written)
            && !amounts.shown(written).isReversed()
        ? span(entry.said(si), amounts.shown(written))
        : amounts.range(si, entry, written);
  }

  /** The same in two numerals: for a place that the drawing chose and no record says. */
  String about(double si, String likeEntry) {
    Unit unit = unit(likeEntry);
    double shown =
        new BigDecimal(unit.fromSi(si))
            .round(new MathContext(2, RoundingMode.HALF_UP))
            .doubleValue();
    return number(shown) + " " + symbol(unit);
  }

  /** The unit of the page for an entry's kind. */
  Unit unit(String key) {
    Unit unit = entry(key).unit(system());
    if (unit == null) {
      throw new IllegalArgumentException(key + " has no unit");
    }
    return unit;
  }

  /** A number as a person would say it: hundredths below 1, tenths below 100, else whole. */
  String round(double x) {
    double size = Math.abs(x);
    int places = size < 0.995 ? 2 : size < 99.95 ? 1 : 0;
    double step = Math.pow(10, places);
    return size < 1e9 ? number(Math.rint(x * step) / step, 9) : number(x);
  }

  /** A plain number. */
  String number(double x) {
    return number(x, 4);
  }

  private String number(double x, int numerals) {
    return Numerals.of(x, numerals, words.language());
  }
}
