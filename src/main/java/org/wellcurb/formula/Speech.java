package org.wellcurb.formula;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.MessageFormat;
import java.time.LocalDate;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.function.Function;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.Working;

/** How rules, amounts and entries are put into words: the language, the units, the labels. */
public final class Speech {
  private static final MathContext SHOWN = new MathContext(5);

  /** What a limit is in the other system is said beside it, for whoever measures in that. */
  private static final MathContext BESIDE = new MathContext(3);

  /** A position needs more digits: six decimals of a degree are a tenth of a metre. */
  private static final int DECIMALS_OF_DEGREE = 6;

  private final Locale locale;
  private final UnitSystem units;
  private final Function<Entry, String> labels;
  private final Function<String, String> choices;
  private final ResourceBundle phrases;

  /** Whether units have the signs of pages, and not those of files. */
  private final boolean isOfPages;

  /**
   * How a page speaks.
   *
   * @param locale English or French
   * @param units the system that amounts are shown in; {@link UnitSystem#NEUTRAL} for as written
   * @param labels what entries are called
   * @param choices what the choices of entries are called
   */
  public Speech(
      Locale locale,
      UnitSystem units,
      Function<Entry, String> labels,
      Function<String, String> choices) {
    this(locale, units, labels, choices, /* isOfPages= */ true);
  }

  private Speech(
      Locale locale,
      UnitSystem units,
      Function<Entry, String> labels,
      Function<String, String> choices,
      boolean isOfPages) {
    this.isOfPages = isOfPages;
    this.choices = choices;
    this.locale = locale;
    this.units = units;
    this.labels = labels;
    phrases =
        ResourceBundle.getBundle(
            "org.wellcurb.formula.phrases",
            locale,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /** The same, with amounts in a system beside what they are written in. */
  Speech in(UnitSystem system) {
    return new Speech(locale, system, labels, choices, isOfPages);
  }

  /** Plain English, amounts as written, entries called by their keys in words. */
  public static Speech plain() {
    return new Speech(
        Locale.ROOT,
        UnitSystem.NEUTRAL,
        Speech::plainLabel,
        Function.identity(),
        /* isOfPages= */ false);
  }

  /** An entry's key in words: {@code pump.intake_depth} is pump intake depth. */
  public static String plainLabel(Entry entry) {
    return entry.key().replace("record.", "").replace('.', ' ').replace('_', ' ');
  }

  public Locale locale() {
    return locale;
  }

  /** The system that amounts are shown in; {@link UnitSystem#NEUTRAL} for as written. */
  public UnitSystem units() {
    return units;
  }

  /** What a choice of an entry is called; the word itself where it is none. */
  public String choice(String word) {
    return choices.apply(word);
  }

  /** What a record says in words of an entry; a choice as pages call it, in whatever case it is. */
  String said(WellRecord record, Entry entry) {
    String chosen = record.choice(entry.index());
    if (entry.kind() == Kind.YES_NO && record.isGiven(entry.index())) {
      chosen = record.lo(entry.index()) == 1 ? "yes" : "no";
    }
    return choice(chosen == null ? record.written(entry.index()) : chosen);
  }

  /** An entry with what a record says of it. */
  public String beside(WellRecord record, Entry entry) {
    return phrase("with.value", label(entry), said(record, entry));
  }

  public String label(Entry entry) {
    return labels.apply(entry);
  }

  /** What a working is called: the bundle's words for it, or its name in words. */
  public String label(Working working) {
    return word("working." + working.name(), working.name().replace('_', ' '));
  }

  /** What a figure is called: the bundle's words for it, or its name in words. */
  String label(Figure figure) {
    return figure(figure.name());
  }

  /** What a figure is called. */
  String label(Expr.FigureAmount figure) {
    return figure(figure.name());
  }

  private String figure(String name) {
    return word("figure." + name, name.replace('_', ' '));
  }

  /** A phrase of the bundle with its places filled; what fills them is text already. */
  public String phrase(String key, Object... fill) {
    return new MessageFormat(FrenchSpaces.in(locale, phrases.getString(key)), locale).format(fill);
  }

  /** A word of the bundle, or the word itself where the bundle has none. */
  public String word(String key) {
    return word(key, key);
  }

  /** A word of the bundle, or another where the bundle has none. */
  String word(String key, String otherwise) {
    return phrases.containsKey(key) ? FrenchSpaces.in(locale, phrases.getString(key)) : otherwise;
  }

  /** An amount in this unit, or in the system asked for with this unit's beside it. */
  public String amount(double si, Unit unit) {
    if (unit.equals(Units.DAY)) {
      double days = unit.fromSi(si);
      return phrase(Math.abs(days) == 1 ? "day.one" : "day.many", number(days));
    }
    if (unit.equals(Units.DEGREE)) {
      return written(new BigDecimal(si).setScale(DECIMALS_OF_DEGREE, RoundingMode.HALF_EVEN))
          + suffix(unit);
    }
    Unit shown = units == UnitSystem.NEUTRAL ? unit : Counterpart.of(unit, units);
    String own = number(unit.fromSi(si)) + suffix(unit);
    return shown.equals(unit) ? own : number(shown.fromSi(si)) + suffix(shown) + " [" + own + "]";
  }

  /**
   * A limit as it is written, in its own unit, with what it comes to in the system asked for beside
   * it, rounded: the law's own figure is the one that holds, so it stands first.
   */
  public String limit(double si, Unit unit) {
    Unit shown = units == UnitSystem.NEUTRAL ? unit : Counterpart.of(unit, units);
    if (shown.equals(unit) || unit.equals(Units.DAY) || unit.equals(Units.DEGREE)) {
      return amount(si, unit);
    }
    if (si == 0 && shown.fromSi(0) == 0) {
      // Nothing is nothing in every unit.
      return number(unit.fromSi(0)) + suffix(unit);
    }
    BigDecimal beside = new BigDecimal(shown.fromSi(si)).round(BESIDE);
    return number(unit.fromSi(si)) + suffix(unit) + " [" + written(beside) + suffix(shown) + "]";
  }

  /** An interval: exact, at least, at most, or from and to. */
  public String interval(Interval interval, Unit unit) {
    if (interval.isPoint()) {
      return amount(interval.lo(), unit);
    }
    if (interval.isAll()) {
      return phrase("unknown");
    }
    boolean isReversed = unit.isReversed();
    double lo = isReversed ? interval.hi() : interval.lo();
    double hi = isReversed ? interval.lo() : interval.hi();
    if (interval.equals(Interval.MORE_THAN_NOTHING)) {
      return phrase("more.than", amount(0, unit));
    }
    if (Double.isInfinite(hi)) {
      return phrase("or.more", amount(lo, unit));
    }
    if (Double.isInfinite(lo)) {
      return phrase("or.less", amount(hi, unit));
    }
    return phrase("from.to", amount(lo, unit), amount(hi, unit));
  }

  /** A day, or the days it may be. */
  public String days(double first, double last) {
    if (first == last) {
      return day(first);
    }
    if (Double.isInfinite(first) && Double.isInfinite(last)) {
      return phrase("unknown");
    }
    if (Double.isInfinite(last)) {
      return phrase("or.later", day(first));
    }
    if (Double.isInfinite(first)) {
      return phrase("or.earlier", day(last));
    }
    return phrase("from.to", day(first), day(last));
  }

  public static String day(double days) {
    return LocalDate.ofEpochDay((long) Math.floor(days)).toString();
  }

  /** Five significant digits, no exponent, the decimal sign of the language. */
  public String number(double value) {
    if (Double.isInfinite(value) || Double.isNaN(value)) {
      return phrase("unknown");
    }
    return written(new BigDecimal(value).round(SHOWN));
  }

  private String written(BigDecimal rounded) {
    String text = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    return decimals(text);
  }

  /** The decimal sign of the language in a figure. */
  String decimals(String figure) {
    return locale.getLanguage().equals("fr") ? FrenchSpaces.number(figure) : figure;
  }

  /** The sign of a unit. */
  String symbol(Unit unit) {
    return isOfPages ? Symbols.of(unit, locale) : unit.symbol();
  }

  private String suffix(Unit unit) {
    return unit.symbol().isEmpty() ? "" : " " + symbol(unit);
  }
}
