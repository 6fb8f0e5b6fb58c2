package org.wellcurb.judgement;

import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Near;
import org.wellcurb.formula.Relation;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.formula.UnitOf;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/**
 * How far a comparison is from its limit: value less limit in the favourable direction, in the unit
 * that the entry was written in; of ranges the worse end; of dates days.
 */
final class Margins {
  private final Evaluation at;
  private final Speech speech;

  /** What was compared, in words, which are the same on every record. */
  private final IdentityHashMap<Expr, String> named = new IdentityHashMap<>();

  Margins(Evaluation at, Speech speech) {
    this.at = at;
    this.speech = speech;
  }

  /** A single comparison, word or yes-no as findings show it. */
  Deciding of(Expr.Condition c) {
    if (c instanceof Expr.Compare e) {
      return compare(c, e.relation(), e.a(), e.b());
    } else if (c instanceof Expr.Between e) {
      Deciding least = compare(c, Relation.AT_LEAST, e.a(), e.least());
      Deciding greatest = compare(c, Relation.AT_MOST, e.a(), e.greatest());
      return greatest.margin() < least.margin() || Double.isNaN(least.margin()) ? greatest : least;
    } else if (c instanceof Expr.YesNo e) {
      return words(e.entry(), e.expected() ? "yes" : "no");
    } else if (c instanceof Expr.IsApplicable e) {
      return words(e.entry(), "");
    } else if (c instanceof Expr.Known e) {
      return words(e.entry(), Wanted.GIVEN);
    } else if (c instanceof Expr.Applies e) {
      return words(e.entry(), Wanted.GIVEN);
    } else if (c instanceof Expr.IsOneOf e) {
      // What a table says of several entries is asked of none of them by itself.
      boolean isOfTable = e.word() instanceof Expr.TableWord;
      return words(first(e), isOfTable ? "" : Wanted.oneOf(e.shown(), e.isNegated()));
    } else if (c instanceof Expr.SameWord e) {
      return sameWord(e);
    }
    return words(first(c), "");
  }

  /**
   * An entry against the word that a table gives: that word is its limit, where one row is sure.
   */
  private Deciding sameWord(Expr.SameWord e) {
    Expr.Word own = e.a() instanceof Expr.EntryWord ? e.a() : e.b();
    Expr.Word other = own.equals(e.a()) ? e.b() : e.a();
    if (!(own instanceof Expr.EntryWord word) || !(other instanceof Expr.TableWord table)) {
      return words(first(e), "");
    }
    int row = at.row(table.table());
    return words(
        word.entry(),
        row >= 0 && table.table().rows().get(row).value() instanceof Table.Word given
            ? Wanted.oneOf(List.of(given.shown()), e.isNegated())
            : "");
  }

  private @Nullable Entry first(Expr expr) {
    Iterator<Entry> reads = at.reads(expr).iterator();
    return reads.hasNext() ? reads.next() : null;
  }

  private Deciding words(@Nullable Entry entry, String limit) {
    String written = entry == null ? "" : at.record().written(entry.index());
    return new Deciding(
        entry == null ? "" : entry.key(),
        written,
        Double.NaN,
        null,
        Double.NaN,
        Double.NaN,
        entry == null ? "" : said(entry, written),
        limit,
        false);
  }

  /** What the words of the form were taken for, where they are a choice. */
  private String said(Entry entry, String written) {
    if (!at.record().isGiven(entry.index())) {
      return written;
    }
    String choice = at.record().choice(entry.index());
    if (choice != null) {
      return choice;
    }
    boolean isYesNo = entry.kind() == Kind.YES_NO;
    return isYesNo ? (at.record().lo(entry.index()) == 1 ? "yes" : "no") : written;
  }

  private Deciding compare(Expr.Condition whole, Relation relation, Expr.Amount a, Expr.Amount b) {
    return isSubject(b, a)
        ? between(whole, relation.mirrored(), b, a)
        : between(whole, relation, a, b);
  }

  /** True if the right side is what the comparison is about, and not the left. */
  private boolean isSubject(Expr.Amount right, Expr.Amount left) {
    if (left instanceof Expr.EntryAmount) {
      return false;
    }
    return right instanceof Expr.EntryAmount || (first(left) == null && first(right) != null);
  }

  private Deciding between(
      Expr.Condition whole, Relation relation, Expr.Amount subject, Expr.Amount limit) {
    @Nullable UnitSystem written = at.written(whole);
    @Nullable Interval v = at.amount(subject, written);
    @Nullable Interval l = at.amount(limit, written);
    Set<Entry> reads = at.reads(subject);
    String key = reads.isEmpty() ? "" : reads.iterator().next().key();
    String text = reads.isEmpty() ? "" : at.record().written(reads.iterator().next().index());
    if (v == null || l == null) {
      return new Deciding(
          key, text, Double.NaN, null, Double.NaN, Double.NaN, "", "", false, named(subject));
    }
    boolean wantsMore = relation == Relation.AT_LEAST || relation == Relation.MORE;
    boolean wantsLess = relation == Relation.AT_MOST || relation == Relation.LESS;
    boolean worseIsLow = wantsMore || (!wantsLess && l.hi() - v.lo() > v.hi() - l.lo());
    double value = worseIsLow ? v.lo() : v.hi();
    double bound = worseIsLow ? l.hi() : l.lo();
    double margin = margin(relation, value, bound);
    double betterValue = worseIsLow ? v.hi() : v.lo();
    double betterBound = worseIsLow ? l.lo() : l.hi();
    double least = margin(relation, betterValue, betterBound);
    boolean isStrict = isStrict(relation);
    if (subject.dimension().equals(Dimension.DATE)) {
      return new Deciding(
          key,
          text,
          finite(value),
          null,
          finite(bound),
          finite(margin),
          v.isPoint() ? "" : speech.days(v.lo(), v.hi()),
          l.isPoint() || Double.isInfinite(l.lo()) || Double.isInfinite(l.hi())
              ? ""
              : speech.days(l.lo(), l.hi()),
          true,
          named(subject),
          limitName(limit),
          isStrict,
          Double.isInfinite(least) ? finite(margin) : least,
          beside(subject, limit));
    }
    Unit unit = UnitOf.amount(subject, at);
    double shown = inUnit(margin, value, bound, unit);
    return new Deciding(
        key,
        text,
        finite(unit.fromSi(value)),
        unit,
        finite(unit.fromSi(bound)),
        shown,
        v.isPoint() ? "" : speech.interval(said(subject, v), unit),
        l.isPoint() || l.isAll() ? "" : speech.interval(l, unit),
        false,
        named(subject),
        isNamed(limit) ? limitName(limit) : "",
        isStrict,
        Double.isInfinite(least) ? shown : inUnit(least, betterValue, betterBound, unit),
        beside(subject, limit));
  }

  /** What an entry has as people say it; what was worked out as it came. */
  private static Interval said(Expr.Amount subject, Interval si) {
    return subject instanceof Expr.EntryAmount e ? e.entry().said(si) : si;
  }

  /** Value less limit in the favourable direction; where there is none, how far from equal. */
  private static double margin(Relation relation, double value, double bound) {
    return switch (relation) {
      case MORE, AT_LEAST -> value - bound;
      case LESS, AT_MOST -> bound - value;
      case EQUAL -> -Math.abs(value - bound);
      case NOT_EQUAL -> Math.abs(value - bound);
    };
  }

  private static double inUnit(double margin, double value, double bound, Unit unit) {
    // What counts as equal in a comparison is at no distance from its limit.
    double sign = Near.equal(value, bound) ? 0 : Math.signum(margin);
    return finite(sign * Math.abs(unit.fromSi(value) - unit.fromSi(bound)));
  }

  /** True where the limit itself would not do. Turned about, it says the same of the opposite. */
  private static boolean isStrict(Relation relation) {
    return switch (relation) {
      case LESS, MORE, NOT_EQUAL -> true;
      case AT_MOST, AT_LEAST, EQUAL -> false;
    };
  }

  /** What an entry is held against; of a sum of several the sum itself says it. */
  private List<String> beside(Expr.Amount subject, Expr.Amount limit) {
    return subject instanceof Expr.EntryAmount e
        ? Sentence.sides(limit, speech, at).stream()
            .filter(side -> !side.startsWith(speech.label(e.entry())))
            .toList()
        : List.of();
  }

  /**
   * A limit that is one entry, or one figure worked out of several: its number tells nobody why.
   */
  private static boolean isNamed(Expr.Amount limit) {
    return limit instanceof Expr.EntryAmount || limit instanceof Expr.WorkingAmount;
  }

  /** What a limit is that hangs on entries of the form or on the day; empty for a figure. */
  private String limitName(Expr.Amount limit) {
    if (limit instanceof Expr.AsOf) {
      return speech.phrase("as.of");
    }
    return at.reads(limit).isEmpty()
        ? ""
        : named.computeIfAbsent(limit, any -> Sentence.of(limit, speech));
  }

  /** What was compared, where it is more than an entry. */
  private String named(Expr.Amount subject) {
    if (subject instanceof Expr.EntryAmount) {
      return "";
    }
    if (subject instanceof Expr.Absolute e) {
      return Sentence.difference(e, speech, at);
    }
    return named.computeIfAbsent(subject, any -> Sentence.of(subject, speech));
  }

  private static double finite(double x) {
    return Double.isInfinite(x) ? Double.NaN : x;
  }

  /** The conditions whose margins may be compared: those over one dimension. */
  static boolean sameDimension(List<Deciding> all) {
    @Nullable Unit first = all.get(0).unit();
    for (Deciding one : all) {
      @Nullable Unit unit = one.unit();
      boolean fits =
          first != null
              && unit != null
              && unit.dimension().equals(first.dimension())
              && !Double.isNaN(one.margin());
      boolean isDate = one.isDate() && all.get(0).isDate();
      if (!fits && !isDate) {
        return false;
      }
    }
    return true;
  }
}
