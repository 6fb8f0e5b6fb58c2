package org.wellcurb.formula;

import java.util.Set;
import org.wellcurb.record.Datum;
import org.wellcurb.record.Entry;

/**
 * A condition in the rule language: parsed, its dimensions checked, compiled. Shared by threads.
 */
public final class Formula {
  private final String text;
  private final Expr.Condition tree;
  private final TruthNode node;
  private final Scope scope;
  private final Set<Entry> reads;
  private final int datums;

  private Formula(String text, Expr.Condition tree, Scope scope) {
    this.text = text;
    this.tree = tree;
    this.scope = scope;
    node = new Compiler(scope).truth(tree);
    reads = java.util.Collections.unmodifiableSet(Reads.of(tree, scope.catalogue()));
    int mask = 0;
    for (Entry entry : reads) {
      if (entry.datum().isMovable()) {
        mask |= 1 << entry.datum().ordinal();
      }
    }
    datums = mask;
  }

  /**
   * Parses, checks and compiles a condition.
   *
   * @throws FormulaException where it cannot be read, or its dimensions do not fit
   */
  public static Formula condition(String text, Scope scope) throws FormulaException {
    return new Formula(text, Parser.condition(text, scope), scope);
  }

  /** The condition that an entry, where the form covers it, is not said to be n/a. */
  public static Formula applies(Entry entry, Scope scope) {
    return new Formula(entry.key() + " applies", new Expr.Applies(entry), scope);
  }

  /** The same formula with another tree, for trying what a change of it would do. */
  public Formula with(Expr.Condition changed) {
    return new Formula(text, changed, scope);
  }

  /** The truth, one of {@link Truth}, on the record in the frame. */
  public int evaluate(Frame frame) {
    return node.eval(frame, 0);
  }

  /** Whether its truth may hang on the as-of date. */
  public boolean readsAsOf() {
    return readsAsOf(tree);
  }

  private static boolean readsAsOf(Expr expr) {
    return expr instanceof Expr.AsOf || Parts.of(expr).stream().anyMatch(Formula::readsAsOf);
  }

  /** The text that it was made from. */
  public String text() {
    return text;
  }

  /** The tree, for printing, proving and translating. */
  public Expr.Condition tree() {
    return tree;
  }

  public Scope scope() {
    return scope;
  }

  /** Every entry that it reads, through tables and workings too, in order of first mention. */
  public Set<Entry> reads() {
    return reads;
  }

  /** Which movable datums its depths are measured from, as bits by ordinal of {@link Datum}. */
  public int datums() {
    return datums;
  }

  /** True if it reads a depth that is measured from this datum. */
  public boolean reads(Datum datum) {
    return (datums >> datum.ordinal() & 1) != 0;
  }
}
