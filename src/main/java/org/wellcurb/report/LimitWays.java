package org.wellcurb.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Relation;
import org.wellcurb.formula.SaidTest;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.report.drawing.Limit;

/**
 * What a requirement asks at the least of one entry: a limit, or several, each with what else it
 * asks then. {@code a >= 30 m or (a >= 20 m and b)} is 30 m, or 20 m where b.
 */
final class LimitWays {
  /** A rule with more ways than this is said and not drawn. */
  private static final int MOST = 6;

  private static final String FROST = "site.frost_depth";

  private final String entry;
  private final @Nullable UnitSystem system;
  private final Speech speech;

  /**
   * @param entry key of the entry
   * @param system units in which it was written, which choose the side of a dual limit
   */
  LimitWays(String entry, @Nullable UnitSystem system, Speech speech) {
    this.entry = entry;
    this.system = system;
    this.speech = speech;
  }

  /** The limit; null where the requirement sets none to the entry as it stands. */
  @Nullable Limit of(Expr.Condition require) {
    if (!reads(require)) {
      return null;
    }
    @Nullable List<List<Expr.Condition>> all = ways(require);
    if (all == null) {
      return said(require);
    }
    List<Limit.Way> ways = new ArrayList<>();
    for (List<Expr.Condition> way : all) {
      Limit.@Nullable Way read = way(way);
      if (read == null) {
        return all.size() > 1 ? said(require) : null;
      }
      if (!ways.contains(read)) {
        ways.add(read);
      }
    }
    ways.sort(Comparator.comparingDouble(way -> Double.isNaN(way.si()) ? 1 : -way.si()));
    if (Double.isNaN(ways.get(0).si())) {
      return null;
    }
    return ways.size() == 1 && ways.get(0).where().isEmpty()
        ? Limit.of(ways.get(0).si())
        : all.size() == 1 ? Limit.of(ways.get(0).si()) : Limit.of(ways);
  }

  private Limit said(Expr.Condition require) {
    return Limit.said(Sentence.of(require, speech));
  }

  /** Each way as what must all hold; null where there are too many. */
  private @Nullable List<List<Expr.Condition>> ways(Expr.Condition c) {
    if (!reads(c)) {
      return List.of(List.of(c));
    }
    if (c instanceof Expr.And e) {
      List<List<Expr.Condition>> all = List.of(List.of());
      for (Expr.Condition part : e.all()) {
        @Nullable List<List<Expr.Condition>> more = ways(part);
        if (more == null || all.size() * more.size() > MOST) {
          return null;
        }
        all = product(all, more);
      }
      return all;
    } else if (c instanceof Expr.Or e) {
      List<List<Expr.Condition>> all = new ArrayList<>();
      for (Expr.Condition part : e.any()) {
        @Nullable List<List<Expr.Condition>> more = ways(part);
        if (more == null) {
          return null;
        }
        all.addAll(more);
      }
      return all.size() > MOST ? null : all;
    } else if (c instanceof Expr.ConditionIf e) {
      return either(e.test(), e.then(), e.otherwise());
    } else if (c instanceof Expr.Compare e && e.b() instanceof Expr.AmountIf i) {
      return either(i.test(), instead(e, i.then()), instead(e, i.otherwise()));
    }
    return List.of(List.of(c));
  }

  private static Expr.Condition instead(Expr.Compare of, Expr.Amount limit) {
    return new Expr.Compare(of.relation(), of.a(), limit, of.underNot());
  }

  private @Nullable List<List<Expr.Condition>> either(
      Expr.Condition test, Expr.Condition then, Expr.Condition otherwise) {
    @Nullable List<List<Expr.Condition>> first = ways(then);
    @Nullable List<List<Expr.Condition>> second = ways(otherwise);
    if (first == null || second == null || first.size() + second.size() > MOST || reads(test)) {
      return null;
    }
    Expr.Condition said = SaidTest.of(test);
    List<List<Expr.Condition>> all = new ArrayList<>(product(List.of(List.of(said)), first));
    all.addAll(product(List.of(List.of(new Expr.Not(said))), second));
    return all;
  }

  private static List<List<Expr.Condition>> product(
      List<List<Expr.Condition>> some, List<List<Expr.Condition>> more) {
    List<List<Expr.Condition>> all = new ArrayList<>();
    for (List<Expr.Condition> one : some) {
      for (List<Expr.Condition> other : more) {
        List<Expr.Condition> both = new ArrayList<>(one);
        both.addAll(other);
        all.add(both);
      }
    }
    return all;
  }

  /** The limit of one way and what else must hold; null where it asks of the entry otherwise. */
  private Limit.@Nullable Way way(List<Expr.Condition> all) {
    double limit = Double.NaN;
    List<Expr.Condition> where = new ArrayList<>();
    for (Expr.Condition c : all) {
      if (!reads(c)) {
        where.add(c);
        continue;
      }
      double least = c instanceof Expr.Compare e ? least(e) : Double.NaN;
      if (Double.isNaN(least)) {
        return null;
      }
      limit = Double.isNaN(limit) ? least : Math.max(limit, least);
    }
    String said =
        where.isEmpty()
            ? ""
            : Sentence.of(where.size() == 1 ? where.get(0) : new Expr.And(where), speech);
    return new Limit.Way(limit, said);
  }

  private double least(Expr.Compare c) {
    boolean isLeast = c.relation() == Relation.AT_LEAST || c.relation() == Relation.MORE;
    if (!isLeast || !(c.a() instanceof Expr.EntryAmount a) || !a.entry().key().equals(entry)) {
      return Double.NaN;
    }
    if (c.b() instanceof Expr.Literal b) {
      return b.value();
    } else if (c.b() instanceof Expr.Dual b) {
      return b.bracketUnit().system() == system ? b.bracket() : b.primary();
    }
    return c.b() instanceof Expr.FigureAmount b ? b.value() : Double.NaN;
  }

  /** True where an expression asks for the amount of the entry. */
  private boolean reads(Expr expr) {
    return (expr instanceof Expr.EntryAmount a && a.entry().key().equals(entry))
        || Parts.of(expr).stream().anyMatch(this::reads);
  }

  /**
   * True where what is asked of the entry is to reach below the frost, as the form has it or a
   * table that a pack says stands for it.
   */
  static boolean isFrost(Expr expr, String entry) {
    if (expr instanceof Expr.Compare c
        && c.a() instanceof Expr.EntryAmount a
        && a.entry().key().equals(entry)) {
      return (c.b() instanceof Expr.TableAmount t && t.table().standsFor().equals(FROST))
          || (c.b() instanceof Expr.EntryAmount b && b.entry().key().equals(FROST));
    }
    return Parts.of(expr).stream().anyMatch(part -> isFrost(part, entry));
  }
}
