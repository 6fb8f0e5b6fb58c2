package org.wellcurb.formula;

/**
 * Three truth values and void, as small numbers so that the hot path makes no objects. Void is what
 * a comparison is that reads an entry which does not apply: in {@code and} and {@code or} it leaves
 * the other side as it is.
 */
public final class Truth {
  public static final int FALSE = 0;
  public static final int UNKNOWN = 1;
  public static final int TRUE = 2;
  public static final int VOID = 3;

  private Truth() {}

  public static int of(boolean value) {
    return value ? TRUE : FALSE;
  }

  /** Kleene's and; void leaves the other side. */
  public static int and(int a, int b) {
    if (a == VOID) {
      return b;
    }
    return b == VOID ? a : Math.min(a, b);
  }

  /** Kleene's or; void leaves the other side. */
  public static int or(int a, int b) {
    if (a == VOID) {
      return b;
    }
    return b == VOID ? a : Math.max(a, b);
  }

  /** Kleene's not; void stays void. */
  public static int not(int a) {
    return a == VOID ? VOID : TRUE - a;
  }
}
