package org.wellcurb.report.words;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Counterpart;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;

/**
 * Amounts as pages print them: in the units asked for, with the record's own beside them in square
 * brackets where the two differ.
 */
public final class Amounts {
  /** Days beyond which a date is a slip of the pen: the years 0 and 9999. */
  private static final double FIRST_DAY = -719528;

  private static final double LAST_DAY = 2932896;

  private final Words words;
  private final UnitsShown shown;

  public Amounts(Words words, UnitsShown shown) {
    this.words = words;
    this.shown = shown;
  }

  /** The system that pages print, where one was asked for; else the record's own. */
  public UnitSystem system(WellRecord record) {
    return switch (shown) {
      case US -> UnitSystem.US;
      case METRIC -> UnitSystem.METRIC;
      case AS_WRITTEN -> Recorded.system(record);
    };
  }

  /** The unit in which an amount written in this one is printed. */
  public Unit shown(Unit written) {
    return switch (shown) {
      case US -> Counterpart.of(written, UnitSystem.US);
      case METRIC -> Counterpart.of(written, UnitSystem.METRIC);
      case AS_WRITTEN -> written;
    };
  }

  /** An amount of {@code value} of this unit, such as {@code 49.9 ft}; a NaN is words. */
  public String amount(double value, Unit written) {
    return amount(value, written, Numerals.FULL);
  }

  /** The same of what was worked out, with the digits that a person can use. */
  public String tidy(double value, Unit written) {
    return amount(value, written, Numerals.TIDY);
  }

  private String amount(double value, Unit written, int digits) {
    if (Double.isNaN(value)) {
      return words.say("amount.unknown");
    }
    String own = plain(value, written, digits);
    Unit unit = shown(written);
    return unit.equals(written)
        ? own
        : plain(unit.fromSi(written.toSi(value)), unit, Numerals.TIDY) + " [" + own + "]";
  }

  /** The size of a difference of {@code value} of this unit (without the zero point). */
  public String difference(double value, Unit written) {
    Unit unit = shown(written);
    return unit.isReversed() || written.isReversed()
        ? plain(value, written, Numerals.TIDY)
        : plain(
            unit.differenceFromSi(value * written.factor()),
            unit,
            unit.equals(written) ? Numerals.TIDY : Numerals.ROUGH);
  }

  /**
   * How far two amounts are apart as they are shown, so that whoever subtracts the one from the
   * other comes to the same; a difference of shares is one of points.
   */
  public String apart(
      double value, boolean isValueTidy, double limit, boolean isLimitTidy, Unit written) {
    if (!shown(written).equals(written) || written.isReversed()) {
      return difference(Math.abs(value - limit), written);
    }
    BigDecimal apart =
        Numerals.rounded(value, isValueTidy ? Numerals.TIDY : Numerals.FULL)
            .subtract(Numerals.rounded(limit, isLimitTidy ? Numerals.TIDY : Numerals.FULL))
            .abs();
    String text = plain(apart.doubleValue(), written, Numerals.FULL);
    return written.equals(Units.PERCENT)
        ? words.say(
            "amount.points", Numerals.of(apart.doubleValue(), Numerals.FULL, words.language()))
        : text;
  }

  /** The size of a difference that is at least and at most so much. */
  public String difference(double least, double most, Unit written) {
    String to = difference(most, written);
    String from = difference(least, written);
    if (from.equals(to)) {
      return to;
    }
    if (written.equals(Units.DAY)) {
      return words.say("amount.range", from.substring(0, from.lastIndexOf(' ')), to);
    }
    // The unit is said once: 15 to 35 ft.
    String tail = " " + symbol(shown(written));
    boolean isSame = from.endsWith(tail) && to.endsWith(tail);
    return words.say(
        "amount.range", isSame ? from.substring(0, from.length() - tail.length()) : from, to);
  }

  /** A day, such as {@code 2012-05-01}. */
  public String day(double day) {
    if (Double.isNaN(day) || day < FIRST_DAY || day > LAST_DAY) {
      return words.say("amount.unknown");
    }
    return LocalDate.ofEpochDay((long) Math.floor(day)).toString();
  }

  /** What an entry was read as; empty where nothing is known of it. */
  public String read(WellRecord record, Entry entry) {
    int i = entry.index();
    if (!record.isGiven(i)) {
      return record.state(i) == WellRecord.NOT_APPLICABLE ? words.say("read.na") : "";
    }
    return switch (entry.kind()) {
      case TEXT -> record.meant(i);
      case LIST -> record.written(i);
      case CHOICE -> choice(record, i);
      case YES_NO -> yesNo(record.interval(i));
      default -> range(record.interval(i), entry, record.unit(i));
    };
  }

  /** What an entry was read as, with the record's own in brackets where its unit is another. */
  public String beside(WellRecord record, Entry entry) {
    String read = read(record, entry);
    Unit unit = record.unit(entry.index());
    boolean isOther = unit != null && !shown(unit).equals(unit) && record.isGiven(entry.index());
    String own = isOther ? new Amounts(words, UnitsShown.AS_WRITTEN).read(record, entry) : "";
    return own.isEmpty() ? read : read + " [" + own + "]";
  }

  /** An amount of an entry in the unit in which it was written. */
  public String own(Interval si, Entry entry, Unit written) {
    return new Amounts(words, UnitsShown.AS_WRITTEN).range(si, entry, written);
  }

  /**
   * A range of an entry's values: {@code 10 to 15 gpm}, {@code 100 gpm or more}, {@code 40 ft or
   * less}.
   */
  public String range(Interval amount, Entry entry, @Nullable Unit written) {
    Interval si = entry.said(amount);
    Unit unit = written == null ? entry.unit(UnitSystem.US) : written;
    if (entry.kind() != Kind.DATE && unit == null) {
      return "";
    }
    if (si.isAll()) {
      return words.say("amount.unknown");
    }
    if (si.equals(Interval.MORE_THAN_NOTHING)) {
      return words.say("amount.over", end(0, entry, unit));
    }
    String lo = end(si.lo(), entry, unit);
    String hi = end(si.hi(), entry, unit);
    if (si.isPoint()) {
      return lo;
    }
    if (unit != null && shown(unit).isReversed() != unit.isReversed()) {
      String swap = lo;
      lo = hi;
      hi = swap;
    }
    if (hi.isEmpty()) {
      return words.say(entry.kind() == Kind.DATE ? "amount.from" : "amount.least", lo);
    }
    if (lo.isEmpty()) {
      return words.say(entry.kind() == Kind.DATE ? "amount.until" : "amount.most", hi);
    }
    return words.say("amount.range", lo, hi);
  }

  private String end(double si, Entry entry, @Nullable Unit unit) {
    if (Double.isInfinite(si)) {
      return "";
    }
    return unit == null || entry.kind() == Kind.DATE ? day(si) : inUnit(si, unit, shown(unit));
  }

  private String choice(WellRecord record, int entry) {
    String choice = record.choice(entry);
    return choice == null ? record.written(entry) : words.choice(choice);
  }

  private String yesNo(Interval truth) {
    return words.say(truth.isPoint() ? (truth.lo() == 1 ? "yes" : "no") : "amount.unknown");
  }

  private String inUnit(double si, Unit written, Unit unit) {
    return plain(unit.fromSi(si), unit, unit.equals(written) ? Numerals.FULL : Numerals.TIDY);
  }

  private String plain(double value, Unit unit, int digits) {
    if (unit.dimension().scale() == Dimension.Scale.WIRE_GAUGE && !unit.isReversed()) {
      return gauge(value) + " " + symbol(unit);
    }
    String number = Numerals.of(value, digits, words.language());
    if (unit.equals(Units.DAY)) {
      return words.say(number.equals("1") ? "days.one" : "days.many", number);
    }
    return unit.symbol().isEmpty() ? number : number + " " + symbol(unit);
  }

  /** The sign of a unit on pages of this language. */
  public String symbol(Unit unit) {
    return words.unit(unit);
  }

  /** Sizes above 1 are written 1/0 to 4/0. */
  private String gauge(double number) {
    double whole = Math.rint(number);
    return whole <= 0 && whole >= -3 && Math.abs(number - whole) < 0.3
        ? (int) (1 - whole) + "/0"
        : Numerals.of(number, 3, words.language());
  }
}
