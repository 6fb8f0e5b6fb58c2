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
  private final WellRecord record;
  private final Words words;
  private final Amounts amounts;
  private final List<Mark> marks;
  private final Map<String, Double> limits;
  private final Scope scope;

  /**
   * @param record the record
   * @param scope what the pack that judged it sets
   * @param words the language
   * @param amounts how amounts are printed
   * @param marks the findings, in the order of the page
   * @param limits limits in SI by entry, where a rule has one
   */
  public Sketch(
      WellRecord record,
      Scope scope,
      Words words,
      Amounts amounts,
      List<Mark> marks,
      Map<String, Double> limits) {
    this.record = record;
    this.scope = scope;
    this.limits = limits;
    this.words = words;
    this.amounts = amounts;
    this.marks = List.copyOf(marks);
  }

  /** The drawings that the record gives enough for. */
  public List<Drawing> drawings() {
    List<Drawing> drawings = new ArrayList<>();
    for (@Nullable Drawing drawing :
        new @Nullable Drawing[] {
          new WellSection(this).drawing(),
          new PressureLadder(this).drawing(),
          new SetbackPlan(this, limits).drawing(),
          new DailyWater(this, scope).drawing()
        }) {
      if (drawing != null) {
        drawings.add(drawing);
      }
    }
    return drawings;
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

  /** One value in SI to draw an entry at: the middle of a range, the end of half a one; or NaN. */
  double value(String key) {
    int i = entry(key).index();
    return record.isGiven(i) ? middle(record.interval(i)) : Double.NaN;
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

  /** The same with the record's own beside it, where that is in other units. */
  String beside(String key) {
    return amounts.beside(record, entry(key));
  }

  /** An amount in SI of the kind of an entry, in the unit of the page. */
  String print(double si, String likeEntry) {
    return amounts.si(si, unit(likeEntry));
  }

  /** The same in two numerals: for a place that the drawing chose and no record says. */
  String about(double si, String likeEntry) {
    Unit unit = unit(likeEntry);
    double shown =
        new BigDecimal(unit.fromSi(si))
            .round(new MathContext(2, RoundingMode.HALF_UP))
            .doubleValue();
    return print(unit.toSi(shown), likeEntry);
  }

  /** The unit of the page for an entry's kind. */
  Unit unit(String key) {
    Unit unit = entry(key).unit(system());
    if (unit == null) {
      throw new IllegalArgumentException(key + " has no unit");
    }
    return unit;
  }

  /** A text of at most so many letters, with a sign where it was cut. */
  static String cut(String text, int letters) {
    return text.length() <= letters ? text : text.substring(0, letters - 1) + "…";
  }

  /** A plain number. */
  String number(double x) {
    return Numerals.of(x, 4, words.language());
  }
}
