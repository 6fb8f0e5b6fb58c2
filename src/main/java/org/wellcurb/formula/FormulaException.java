package org.wellcurb.formula;

import java.util.ArrayList;
import java.util.List;

/** A formula that cannot be used: where in its text, what, and what would mend it. */
public final class FormulaException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int from;
  private final int to;
  private final String mend;

  /**
   * @param from first character of the place in the formula's text, from 0
   * @param to character after the last
   * @param what what is wrong
   * @param mend what would mend it; may be empty
   */
  public FormulaException(int from, int to, String what, String mend) {
    super(what);
    this.from = from;
    this.to = to;
    this.mend = mend;
  }

  /**
   * The first of several faults of one formula, which tells of the others too.
   *
   * @param faults at least one, in the order of their places
   */
  static FormulaException of(List<FormulaException> faults) {
    FormulaException first = faults.get(0);
    faults.subList(1, faults.size()).forEach(first::addSuppressed);
    return first;
  }

  /** This fault and those that stand in the same formula apart from it. */
  public List<FormulaException> all() {
    List<FormulaException> all = new ArrayList<>(List.of(this));
    for (Throwable other : getSuppressed()) {
      if (other instanceof FormulaException fault) {
        all.add(fault);
      }
    }
    return List.copyOf(all);
  }

  public int from() {
    return from;
  }

  public int to() {
    return to;
  }

  public String mend() {
    return mend;
  }

  /** What is wrong, without the mend. */
  public String what() {
    String message = getMessage();
    return message == null ? "" : message;
  }
}
