package org.wellcurb.rulepack;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;

/**
 * What a figure might have been by a slip: so near to it that an example which tells the two apart
 * shows where the figure lies. An example of 5 ft and one of 500 ft fall on both sides of 50 ft,
 * and would on both sides of 100 ft too.
 */
final class Neighbours {
  /** As a share of the greater of the two. */
  private static final double TENTH = 0.1;

  /** A hair more, so that an example just a tenth off counts. */
  private static final double HAIR = 1e-6;

  private static final double DAYS = 8;
  private static final double SECONDS_OF_DAY = 86400;
  private static final double KELVIN = 6 * (1 + HAIR);
  private static final double COUNT = 1 + HAIR;

  /** Wires are made in every second size. */
  private static final double GAUGES = 2 + HAIR;

  private Neighbours() {}

  /**
   * One less and one more than a figure; none of what is no figure, and none of nought, which has
   * no tenth.
   *
   * @param compared dimension of the comparison that it stands in
   * @param isFactor true within a product or quotient
   */
  static List<Expr.Amount> of(Expr.Amount amount, Dimension compared, boolean isFactor) {
    if (amount instanceof Expr.Literal e && e.value() != 0) {
      double least = least(e.dimension(), compared, isFactor);
      return List.of(
          new Expr.Literal(other(e.value(), least, false, e.dimension()), e.unit()),
          new Expr.Literal(other(e.value(), least, true, e.dimension()), e.unit()));
    } else if (amount instanceof Expr.Dual e && e.primary() != 0) {
      double least = least(e.dimension(), compared, isFactor);
      return List.of(dual(e, least, false), dual(e, least, true));
    } else if (amount instanceof Expr.Day e) {
      return List.of(new Expr.Day(e.value() - DAYS), new Expr.Day(e.value() + DAYS));
    } else if (amount instanceof Expr.FigureAmount e && e.value() != 0) {
      double least = least(e.dimension(), compared, isFactor);
      return List.of(
          new Expr.FigureAmount(e.name(), other(e.value(), least, false, e.dimension()), e.unit()),
          new Expr.FigureAmount(e.name(), other(e.value(), least, true, e.dimension()), e.unit()));
    }
    return List.of();
  }

  /** One less and one more than an end that is an entry, or the day of the run; none of another. */
  static List<Expr.Amount> ofEnd(Expr.Amount end) {
    if (!(end instanceof Expr.EntryAmount) && !(end instanceof Expr.AsOf)) {
      return List.of();
    }
    Dimension dimension = end.dimension();
    if (dimension.equals(Dimension.DATE)) {
      Expr.Amount days = new Expr.Literal(DAYS * SECONDS_OF_DAY, Units.DAY);
      return List.of(
          new Expr.Arithmetic('-', end, days, dimension),
          new Expr.Arithmetic('+', end, days, dimension));
    }
    if (dimension.equals(Dimension.TEMPERATURE) || dimension.equals(Dimension.WIRE_GAUGE)) {
      return List.of();
    }
    return List.of(
        new Expr.Arithmetic('*', end, new Expr.Literal(1 - TENTH - HAIR, Units.ONE), dimension),
        new Expr.Arithmetic('*', end, new Expr.Literal(1 + TENTH + HAIR, Units.ONE), dimension));
  }

  /** How a neighbour is called: to three digits, without what stands in brackets. */
  static String said(Expr.Amount other) {
    if (other instanceof Expr.Literal e) {
      return said(e.value(), e.unit());
    } else if (other instanceof Expr.Dual e) {
      return said(e.primary(), e.unit());
    } else if (other instanceof Expr.FigureAmount e) {
      return said(e.value(), e.unit());
    }
    if (other instanceof Expr.Arithmetic e && e.sign() == '*') {
      Speech speech = Speech.plain();
      boolean isMore = e.b() instanceof Expr.Literal factor && factor.value() > 1;
      return Sentence.of(e.a(), speech) + " and a tenth " + (isMore ? "more" : "less");
    }
    return Sentence.of(other, Speech.plain());
  }

  private static String said(double si, Unit unit) {
    double rounded = DualProof.round3(unit.fromSi(si));
    return Speech.plain().amount(unit.toSi(rounded), unit);
  }

  private static Expr.Dual dual(Expr.Dual e, double least, boolean isMore) {
    return new Expr.Dual(
        other(e.primary(), least, isMore, e.dimension()),
        e.unit(),
        other(e.bracket(), least, isMore, e.dimension()),
        e.bracketUnit());
  }

  /**
   * One less and one more than what a row of a table gives.
   *
   * @param asked the words that the rule asks of the table by their name
   */
  static List<Table.Value> of(Table.Value value, Set<String> asked) {
    if (value instanceof Table.Word word) {
      // A word has no neighbours: one that is asked for will do, or one that no form can hold.
      boolean isOther = asked.isEmpty() || asked.contains(word.word());
      String other = isOther ? "\n" + word.word() : asked.iterator().next();
      return List.of(new Table.Word(other, other));
    }
    Table.Amount e = (Table.Amount) value;
    if (e.primary() == 0) {
      // Nothing is asked: only more than nothing can be told from it.
      return List.of(new Table.Amount(e.unit().toSi(1), e.unit(), Double.NaN, null));
    }
    return List.of(amount(e, false), amount(e, true));
  }

  private static Table.Amount amount(Table.Amount e, boolean isMore) {
    Dimension dimension = e.unit().dimension();
    double least = least(dimension, dimension, false);
    @Nullable Unit other = e.bracketUnit();
    return new Table.Amount(
        other(e.primary(), least, isMore, dimension),
        e.unit(),
        other == null ? Double.NaN : other(e.bracket(), least, isMore, dimension),
        other);
  }

  /** The least step that is worth telling apart, in SI. */
  private static double least(Dimension own, Dimension compared, boolean isFactor) {
    if (own.equals(Dimension.WIRE_GAUGE)) {
      return GAUGES;
    }
    if (compared.equals(Dimension.DATE)) {
      return DAYS * SECONDS_OF_DAY;
    }
    return own.equals(Dimension.NUMBER) && compared.equals(Dimension.NUMBER) && !isFactor
        ? COUNT
        : 0;
  }

  private static double other(double value, double least, boolean isMore, Dimension dimension) {
    double sign = isMore ? 1 : -1;
    if (dimension.equals(Dimension.TEMPERATURE)) {
      return value + sign * KELVIN;
    }
    if (dimension.equals(Dimension.WIRE_GAUGE)) {
      return value + sign * GAUGES;
    }
    boolean isAway = isMore == (value > 0);
    double share = isAway ? value / (1 - TENTH) * (1 + HAIR) : value * (1 - TENTH) * (1 - HAIR);
    return Math.abs(share - value) >= least ? share : value + sign * least;
  }
}
