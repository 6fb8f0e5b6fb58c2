package org.wellcurb.formula;

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
