package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;

/** Requirements and limits with their figures in both unit systems, as a rulebook prints them. */
final class BothUnits {
  private final Words words;
  private final Speech written;
  private final Speech us;
  private final Speech metric;

  private final List<Speech> beside;

  /** Each limit with the other system's figure beside it. */
  BothUnits(Words words) {
    this(words, UnitsShown.AS_WRITTEN);
  }

  /**
   * Each limit as it is written, with the figure in another system beside it.
   *
   * @param shown the system that is printed beside; {@link UnitsShown#AS_WRITTEN} for whichever the
   *     limit is not in
   */
  BothUnits(Words words, UnitsShown shown) {
    this(
        words,
        switch (shown) {
          case US -> List.of(UnitSystem.US);
          case METRIC -> List.of(UnitSystem.METRIC);
          case AS_WRITTEN -> List.of(UnitSystem.METRIC, UnitSystem.US);
        });
  }

  private BothUnits(Words words, List<UnitSystem> systems) {
    this.words = words;
    written = speech(UnitSystem.NEUTRAL);
    us = speech(UnitSystem.US);
    metric = speech(UnitSystem.METRIC);
    beside = systems.stream().map(system -> system == UnitSystem.US ? us : metric).toList();
  }

  /** Each limit as it is written, with nothing beside it. */
  static BothUnits asWritten(Words words) {
    return new BothUnits(words, List.of());
  }

  private Speech speech(UnitSystem system) {
    Locale locale = words.language() == Language.FR ? Locale.FRENCH : Locale.ROOT;
    return new Speech(locale, system, entry -> words.entry(entry.key()), words::choice);
  }

  /** The condition without limits brought to other units. */
  String plain(Formula formula) {
    return Sentence.of(formula.tree(), written);
  }

  /** The condition; where its figures are of one system, with the other's beside each. */
  List<String> sentences(Formula formula) {
    Expr.Condition tree = formula.tree();
    String plain = Sentence.of(tree, written);
    List<String> sentences = new ArrayList<>();
    for (Speech speech : beside) {
      String sentence = Sentence.of(tree, speech);
      if (!sentence.equals(plain)) {
        sentences.add(sentence);
      }
    }
    return sentences.isEmpty() ? List.of(plain) : sentences;
  }

  /** What a row of a table gives. */
  String value(Table.Value value) {
    if (value instanceof Table.Amount amount) {
      Unit bracket = amount.bracketUnit();
      String primary = written.amount(amount.primary(), amount.unit());
      return bracket == null
          ? amount(amount.primary(), amount.unit())
          : primary + " (" + written.amount(amount.bracket(), bracket) + ")";
    }
    return words.choice(((Table.Word) value).shown());
  }

  /** What a cell of a table matches, for a key in this unit. */
  String cell(Table.Cell cell, Unit unit) {
    if (cell instanceof Table.Words some) {
      return String.join(", ", some.shown().stream().map(words::choice).toList());
    }
    if (cell instanceof Table.Range range) {
      Interval ends = range.range();
      String lo = Double.isInfinite(ends.lo()) ? "" : amount(ends.lo(), unit);
      String hi = Double.isInfinite(ends.hi()) ? "" : amount(ends.hi(), unit);
      return ends(lo, hi, range);
    }
    return words.say("table.any");
  }

  /** A figure that a pack sets. */
  String figure(Expr.FigureAmount figure) {
    return Sentence.of(figure, written);
  }

  private String ends(String lo, String hi, Table.Range range) {
    if (!lo.isEmpty() && !hi.isEmpty() && range.loIncluded() && range.hiIncluded()) {
      return range.range().isPoint() ? lo : words.say("end.both", lo, hi);
    }
    String from = lo.isEmpty() ? "" : words.say(range.loIncluded() ? "end.from" : "end.over", lo);
    String to = hi.isEmpty() ? "" : words.say(range.hiIncluded() ? "end.upto" : "end.under", hi);
    return from.isEmpty() || to.isEmpty() ? from + to : from + ", " + to;
  }

  private String amount(double si, Unit unit) {
    Speech other = unit.system() == UnitSystem.US ? metric : us;
    return (beside.contains(other) ? other : written).limit(si, unit);
  }
}
