package org.wellcurb.formula;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/** A formula as a plain sentence: bare, or with a record's numbers put in. */
public final class Sentence {
  private final Speech speech;
  private final @Nullable Evaluation evaluation;
  private @Nullable UnitSystem written;

  /** Whether what is said now must hold for the whole to hold: then a word is asked for. */
  private boolean isAsked = true;

  /** Whether what is compared is a share, which is said in per cent on both sides. */
  private boolean isShare;

  private Sentence(Speech speech, @Nullable Evaluation evaluation) {
    this.speech = speech;
    this.evaluation = evaluation;
  }

  /** The condition in words. */
  public static String of(Expr.Condition condition, Speech speech) {
    return new Sentence(speech, null).condition(condition);
  }

  /** An amount in words. */
  public static String of(Expr.Amount amount, Speech speech) {
    return new Sentence(speech, null).amount(amount);
  }

  /**
   * An amount that is worked out, in words with the numbers of the record at hand: of a difference
   * either way the two that it is between.
   */
  public static String difference(Expr.Absolute amount, Speech speech, Evaluation evaluation) {
    Sentence sentence = new Sentence(speech, evaluation);
    if (amount.a() instanceof Expr.Arithmetic e && e.sign() == '-') {
      Expr.Amount first = e;
      List<String> others = new ArrayList<>();
      while (first instanceof Expr.Arithmetic inner && inner.sign() == '-') {
        others.add(0, sentence.operand(inner.b(), true));
        first = inner.a();
      }
      String rest = others.get(0);
      for (String other : others.subList(1, others.size())) {
        rest = speech.phrase("sum", rest, other);
      }
      return speech.phrase("apart", sentence.amount(first), rest);
    }
    return sentence.amount(amount);
  }

  /** The entries and sums that are known in an amount, each in words with what it is. */
  public static List<String> sides(Expr.Amount amount, Speech speech, Evaluation evaluation) {
    List<String> sides = new ArrayList<>();
    new Sentence(speech, evaluation).sides(amount, sides);
    return sides;
  }

  private void sides(Expr expr, List<String> sides) {
    if (expr instanceof Expr.EntryAmount || expr instanceof Expr.WorkingAmount) {
      Evaluation at = evaluation;
      @Nullable Interval known = at == null ? null : at.amount((Expr.Amount) expr, written);
      String said = amount((Expr.Amount) expr);
      if (known != null && !known.isAll() && !sides.contains(said)) {
        sides.add(said);
      }
      return;
    }
    if (!(expr instanceof Expr.Condition)) {
      Parts.of(expr).forEach(part -> sides(part, sides));
    }
  }

  /** The condition in words, with the numbers of the record at hand. */
  public static String withNumbers(Expr.Condition condition, Speech speech, Evaluation evaluation) {
    return new Sentence(speech, evaluation).condition(condition);
  }

  private String condition(Expr.Condition c) {
    if (c instanceof Expr.Compare e) {
      return compared(e, e.relation());
    } else if (c instanceof Expr.Between e) {
      enter(c, e.a(), e.least());
      return speech.phrase("between", left(e.a()), left(e.least()), side(e.greatest()));
    } else if (c instanceof Expr.YesNo e) {
      return yesNo(e, e.expected());
    } else if (c instanceof Expr.Constant e) {
      return speech.phrase(e.value() ? "always" : "never");
    } else if (c instanceof Expr.Known e) {
      return known(e, true);
    } else if (c instanceof Expr.IsApplicable e) {
      return speech.phrase("applies", word(e.entry()));
    } else if (c instanceof Expr.Applies e) {
      return speech.phrase("applies", speech.label(e.entry()));
    } else if (c instanceof Expr.IsOneOf e) {
      return isOneOf(e, e.isNegated());
    } else if (c instanceof Expr.SameWord e) {
      return sameWord(e, e.isNegated());
    } else if (c instanceof Expr.Not e) {
      return not(e.a());
    } else if (c instanceof Expr.And e) {
      return joined("and", e.all());
    } else if (c instanceof Expr.Or e) {
      return joined("or", e.any());
    }
    Expr.ConditionIf e = (Expr.ConditionIf) c;
    return speech.phrase(
        "if", unasked(SaidTest.of(e.test())), condition(e.then()), condition(e.otherwise()));
  }

  private String compared(Expr.Compare e, Relation relation) {
    enter(e, e.a(), e.b());
    boolean isDate = e.a().dimension().equals(Dimension.DATE);
    boolean isZero = isZero(e.b());
    String key = (isDate ? "date." : isZero ? "zero." : "relation.") + relation.name();
    return speech.phrase(key, left(e.a()), side(e.b()));
  }

  /** Nothing at all, in one system or in both: "at most 0" would make a reader look for less. */
  private static boolean isZero(Expr.Amount limit) {
    return (limit instanceof Expr.Literal literal && literal.value() == 0)
        || (limit instanceof Expr.Dual dual && dual.primary() == 0 && dual.bracket() == 0);
  }

  private String sameWord(Expr.SameWord e, boolean isNegated) {
    return speech.phrase(isNegated ? "is.not.one" : "is.one", word(e.a()), word(e.b()));
  }

  private void enter(Expr.Condition comparison, Expr.Amount a, Expr.Amount b) {
    written = evaluation == null ? null : evaluation.written(comparison);
    isShare = isShare(a) || isShare(b);
  }

  private static boolean isShare(Expr.Amount a) {
    return a instanceof Expr.WorkingAmount e
        && e.working().unit(UnitSystem.METRIC).equals(Units.PERCENT);
  }

  /** True where the record's word and the one asked for are set beside each other. */
  private boolean setsBeside() {
    return isAsked && evaluation != null;
  }

  private String yesNo(Expr.YesNo e, boolean expected) {
    return setsBeside()
        ? beside(e.entry(), choice(expected ? "yes" : "no"))
        : speech.phrase(expected ? "is.yes" : "is.no", word(e.entry()));
  }

  private String known(Expr.Known e, boolean isWanted) {
    boolean holds =
        evaluation != null && evaluation.truth(e) == (isWanted ? Truth.TRUE : Truth.FALSE);
    if (setsBeside() && !holds) {
      return beside(e.entry(), speech.phrase(isWanted ? "asked.given" : "asked.nothing"));
    }
    String given = speech.phrase("known", word(e.entry()));
    return isWanted ? given : speech.phrase("known.not", word(e.entry()));
  }

  private String isOneOf(Expr.IsOneOf e, boolean isNegated) {
    if (e.word() instanceof Expr.TableWord table) {
      String name = table.table().name();
      return speech.phrase(isNegated ? "table.gives.not" : "table.gives", name, list(e.shown()));
    }
    return setsBeside() && e.word() instanceof Expr.EntryWord w
        ? isNegated
            ? speech.phrase("asked.not", speech.label(w.entry()), said(w.entry()), list(e.shown()))
            : beside(w.entry(), list(e.shown()))
        : speech.phrase(isNegated ? "is.not.one" : "is.one", word(e.word()), list(e.shown()));
  }

  private String beside(Entry entry, String asked) {
    return speech.phrase("asked", speech.label(entry), said(entry), asked);
  }

  /** What is not so, said as plainly as what it is allows. */
  private String not(Expr.Condition c) {
    if (c instanceof Expr.Compare e) {
      return compared(e, e.relation().opposite());
    } else if (c instanceof Expr.YesNo e) {
      return yesNo(e, !e.expected());
    } else if (c instanceof Expr.Known e) {
      return known(e, false);
    } else if (c instanceof Expr.IsApplicable e) {
      return speech.phrase("applies.not", word(e.entry()));
    } else if (c instanceof Expr.IsOneOf e) {
      return isOneOf(e, !e.isNegated());
    } else if (c instanceof Expr.SameWord e) {
      return sameWord(e, !e.isNegated());
    } else if (c instanceof Expr.Not e) {
      return condition(e.a());
    }
    boolean wasAsked = isAsked;
    isAsked = false;
    String text = speech.phrase("not", grouped(c));
    isAsked = wasAsked;
    return text;
  }

  private String unasked(Expr.Condition c) {
    boolean wasAsked = isAsked;
    isAsked = false;
    String text = condition(c);
    isAsked = wasAsked;
    return text;
  }

  private String joined(String sign, List<Expr.Condition> all) {
    String text = grouped(all.get(0));
    for (int i = 1; i < all.size(); i++) {
      text = speech.phrase(sign, text, grouped(all.get(i)));
    }
    return text;
  }

  private String grouped(Expr.Condition c) {
    boolean isJoined =
        isCompound(c)
            || (c instanceof Expr.Not e && isCompound(e.a()))
            || (c instanceof Expr.Compare e && e.b() instanceof Expr.AmountIf);
    return isJoined ? speech.phrase("grouped", condition(c)) : condition(c);
  }

  /** Said bare beside another, it could be read as the half of it: "not: A or B". */
  private static boolean isCompound(Expr.Condition c) {
    return c instanceof Expr.And || c instanceof Expr.Or || c instanceof Expr.ConditionIf;
  }

  private String list(List<String> words) {
    String text = choice(words.get(0));
    for (int i = 1; i < words.size(); i++) {
      text =
          speech.phrase(
              i == words.size() - 1 ? "list.or" : "list.comma", text, choice(words.get(i)));
    }
    return text;
  }

  private String choice(String word) {
    return speech.choice(speech.word(word));
  }

  private String word(Expr.Word w) {
    return w instanceof Expr.EntryWord e
        ? word(e.entry())
        : tableWord(((Expr.TableWord) w).table());
  }

  /** What a table of words gives, with the word where one row is sure. */
  private String tableWord(Table table) {
    String text = speech.phrase("table.word", table.name());
    int row = evaluation == null ? -1 : evaluation.row(table);
    return row >= 0 && table.rows().get(row).value() instanceof Table.Word word
        ? speech.phrase("with.value", text, choice(word.shown()))
        : text;
  }

  /** The label of an entry, with what the form says of it. */
  private String word(Entry entry) {
    String label = speech.label(entry);
    return evaluation == null ? label : speech.phrase("with.value", label, said(entry));
  }

  /** What the form says of an entry. */
  private String said(Entry entry) {
    Evaluation at = evaluation;
    if (at == null) {
      return "";
    }
    String said = speech.said(at.record(), entry);
    byte state = at.frame().state(entry.index());
    if (state == WellRecord.NOT_APPLICABLE) {
      said = speech.phrase("void");
    } else if (state != WellRecord.GIVEN && said.isEmpty()) {
      said = speech.phrase("unknown");
    }
    return said;
  }

  /** A side with more of the sentence behind it. */
  private String left(Expr.Amount a) {
    return a instanceof Expr.AmountIf ? speech.phrase("grouped", side(a)) : side(a);
  }

  /** One side of a comparison; a sum shows what it comes to. */
  private String side(Expr.Amount a) {
    String text = amount(a);
    boolean isSum =
        a instanceof Expr.Arithmetic
            || a instanceof Expr.Extreme
            || a instanceof Expr.AmountIf
            || a instanceof Expr.Rounded
            || a instanceof Expr.Absolute;
    if (evaluation == null || !isSum) {
      return text;
    }
    return speech.phrase(a instanceof Expr.AmountIf ? "with.case" : "with.total", text, value(a));
  }

  private String amount(Expr.Amount a) {
    if (a instanceof Expr.Literal e) {
      return literal(e);
    } else if (a instanceof Expr.Day e) {
      return Speech.day(e.value());
    } else if (a instanceof Expr.AsOf) {
      return withValue(speech.phrase("as.of"), a);
    } else if (a instanceof Expr.Dual e) {
      return dual(e.primary(), e.unit(), e.bracket(), e.bracketUnit());
    } else if (a instanceof Expr.EntryAmount e) {
      return withValue(speech.label(e.entry()), a);
    } else if (a instanceof Expr.WorkingAmount e) {
      return withValue(speech.label(e.working()), a);
    } else if (a instanceof Expr.TableAmount e) {
      return withValue(speech.phrase("table", e.table().name()), a);
    } else if (a instanceof Expr.FigureAmount e) {
      return speech.phrase("with.value", speech.label(e), speech.amount(e.value(), e.unit()));
    } else if (a instanceof Expr.Arithmetic e) {
      return arithmetic(e);
    } else if (a instanceof Expr.Negative e) {
      return speech.phrase("negative", amount(e.a()));
    } else if (a instanceof Expr.Absolute e) {
      return speech.phrase("absolute", amount(e.a()));
    } else if (a instanceof Expr.Extreme e) {
      List<String> parts = new ArrayList<>();
      e.of().forEach(part -> parts.add(part(part)));
      return speech.phrase(e.isGreatest() ? "greatest" : "least", String.join(", ", parts));
    } else if (a instanceof Expr.Rounded e) {
      return speech.phrase("rounded", amount(e.a()), amount(e.step()));
    }
    return cases((Expr.AmountIf) a);
  }

  /** {@code 6 h where the yield is less than 5 gpm, otherwise 4 h}. */
  private String cases(Expr.AmountIf e) {
    @Nullable UnitSystem outer = written;
    boolean wasAsked = isAsked;
    isAsked = false;
    String test = grouped(SaidTest.of(e.test()));
    isAsked = wasAsked;
    written = outer;
    String first = speech.phrase("if.case", part(e.then()), test);
    return speech.phrase(
        e.otherwise() instanceof Expr.AmountIf ? "if.next" : "if.last",
        first,
        amount(e.otherwise()));
  }

  /** An amount inside another, its cases in brackets. */
  private String part(Expr.Amount a) {
    return a instanceof Expr.AmountIf ? speech.phrase("grouped", amount(a)) : amount(a);
  }

  private String literal(Expr.Literal e) {
    if (isShare && e.unit().equals(Units.ONE)) {
      return speech.amount(e.value(), Units.PERCENT);
    }
    @Nullable UnitSystem system = written;
    if (system != null
        && e.value() != 0
        && speech.units() == UnitSystem.NEUTRAL
        && !e.unit().equals(Counterpart.of(e.unit(), system))) {
      return speech.in(system).limit(e.value(), e.unit());
    }
    // Nothing is nothing in either system: said as the record is written.
    return system != null && e.value() == 0 && !e.unit().isReversed() && e.unit().fromSi(0) == 0
        ? speech.limit(0, Counterpart.of(e.unit(), system))
        : speech.limit(e.value(), e.unit());
  }

  private String arithmetic(Expr.Arithmetic e) {
    String key =
        switch (e.sign()) {
          case '+' -> "sum";
          case '-' -> "difference";
          case '*' -> "product";
          default -> "quotient";
        };
    boolean binds = e.sign() == '*' || e.sign() == '/';
    return speech.phrase(key, operand(e.a(), binds), operand(e.b(), binds || e.sign() == '-'));
  }

  private String operand(Expr.Amount a, boolean binds) {
    return binds && a instanceof Expr.Arithmetic ? speech.phrase("grouped", amount(a)) : part(a);
  }

  private String dual(double primary, Unit unit, double bracket, Unit other) {
    if (evaluation == null) {
      return speech.number(unit.fromSi(primary))
          + " "
          + speech.symbol(unit)
          + " ("
          + speech.number(other.fromSi(bracket))
          + " "
          + speech.symbol(other)
          + ")";
    }
    return written == other.system() ? speech.limit(bracket, other) : speech.limit(primary, unit);
  }

  private String withValue(String label, Expr.Amount a) {
    return evaluation == null ? label : speech.phrase("with.value", label, value(a));
  }

  private String value(Expr.Amount a) {
    Evaluation at = evaluation;
    if (at == null) {
      return "";
    }
    @Nullable Interval interval = at.amount(a, written);
    if (interval == null) {
      return speech.phrase("void");
    }
    if (a.dimension().equals(Dimension.DATE)) {
      return speech.days(interval.lo(), interval.hi());
    }
    Interval said = a instanceof Expr.EntryAmount e ? e.entry().said(interval) : interval;
    return speech.interval(said, unit(a, at));
  }

  /** A limit that hangs on no entry is said in the system of what is held against it. */
  private Unit unit(Expr.Amount a, Evaluation at) {
    Unit unit = UnitOf.amount(a, at);
    return written != null && Written.holdsNoEntry(a) && speech.units() == UnitSystem.NEUTRAL
        ? Counterpart.of(unit, written)
        : unit;
  }
}
