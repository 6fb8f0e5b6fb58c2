package org.wellcurb.formula;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.workings.Working;

/**
 * The parts of a formula evaluated one by one on the record in a frame, for explaining. Slower than
 * {@link Formula#evaluate}, by the same nodes, so that what is shown is what was judged.
 */
public final class Evaluation {
  private static final int SLOT = 0;

  private final Frame frame;
  private final Scope scope;
  private final IdentityHashMap<Expr, TruthNode> truths = new IdentityHashMap<>();
  private final IdentityHashMap<Expr, AmountNode> amounts = new IdentityHashMap<>();

  /** What formulas read, which is the same on every record. */
  private final IdentityHashMap<Expr, Set<Entry>> reads = new IdentityHashMap<>();

  private final IdentityHashMap<Expr, int[]> units = new IdentityHashMap<>();
  private final IdentityHashMap<Working, List<Entry>> inputs = new IdentityHashMap<>();

  public Evaluation(Frame frame, Scope scope) {
    this.frame = frame;
    this.scope = scope;
  }

  public Frame frame() {
    return frame;
  }

  public WellRecord record() {
    return frame.record();
  }

  public Scope scope() {
    return scope;
  }

  /** The truth of a part, one of {@link Truth}. */
  public int truth(Expr.Condition condition) {
    TruthNode node = truths.get(condition);
    if (node == null) {
      node = new Compiler(scope).truth(condition);
      truths.put(condition, node);
    }
    return node.eval(frame, SLOT);
  }

  /** The entries that a part reads, in order of first mention; not to be changed. */
  public Set<Entry> reads(Expr part) {
    Set<Entry> known = reads.get(part);
    if (known == null) {
      known = Reads.of(part, scope.catalogue());
      reads.put(part, known);
    }
    return known;
  }

  /** The entries of a working's inputs, in its order. */
  public List<Entry> inputs(Working working) {
    List<Entry> known = inputs.get(working);
    if (known == null) {
      known =
          working.inputs().stream()
              .map(input -> scope.catalogue().entry(scope.catalogue().index(input.key())))
              .toList();
      inputs.put(working, known);
    }
    return known;
  }

  /**
   * The interval of an amount in SI; null if it is void.
   *
   * @param written the unit system that picks the side of dual limits, as {@link #written} gives it
   */
  public @Nullable Interval amount(Expr.Amount amount, @Nullable UnitSystem written) {
    AmountNode node = amounts.get(amount);
    if (node == null) {
      node = new Compiler(scope).amount(amount);
      amounts.put(amount, node);
    }
    @Nullable UnitSystem outer = frame.written;
    frame.written = written;
    node.eval(frame, SLOT);
    frame.written = outer;
    return frame.isVoid[SLOT] ? null : new Interval(frame.lo[SLOT], frame.hi[SLOT]);
  }

  /**
   * The unit system that all given amounts of a comparison were written in; null if two, or none.
   */
  public @Nullable UnitSystem written(Expr.Condition comparison) {
    int[] known = units.get(comparison);
    if (known == null) {
      known = Written.amounts(Parts.of(comparison), scope.catalogue());
      units.put(comparison, known);
    }
    return Written.common(frame, known);
  }

  /** True if the comparison holds only by the slack of rounding. */
  public boolean usesSlack(Expr.Compare c) {
    return truth(c) == Truth.TRUE && isFalseAsWritten(c, c.relation(), c.a(), c.b());
  }

  /** True if one of the two ends holds only by the slack of rounding. */
  public boolean usesSlack(Expr.Between c) {
    return truth(c) == Truth.TRUE
        && (isFalseAsWritten(c, Relation.AT_LEAST, c.a(), c.least())
            || isFalseAsWritten(c, Relation.AT_MOST, c.a(), c.greatest()));
  }

  private boolean isFalseAsWritten(
      Expr.Condition c, Relation relation, Expr.Amount left, Expr.Amount right) {
    @Nullable UnitSystem written = written(c);
    @Nullable Interval a = amount(left, written);
    @Nullable Interval b = amount(right, written);
    return a != null && b != null && relation.holds(a.lo(), a.hi(), b.lo(), b.hi()) == Truth.FALSE;
  }

  /** The row of a table that surely matches, from 0; -1 if none does, or more than one may. */
  public int row(Table table) {
    TableRows rows = new TableRows(table);
    for (int i = 0; i < table.rows().size(); i++) {
      int match = rows.match(frame, i);
      if (match != Truth.FALSE) {
        return match == Truth.TRUE ? i : -1;
      }
    }
    return -1;
  }

  /** True if no row of the table may match, although all its keys are given. */
  public boolean hasNoRow(Table table) {
    TableRows rows = new TableRows(table);
    List<Table.Row> all = table.rows();
    for (int i = 0; i < all.size(); i++) {
      if (rows.match(frame, i) != Truth.FALSE) {
        return false;
      }
    }
    return true;
  }
}
