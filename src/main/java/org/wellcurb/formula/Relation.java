package org.wellcurb.formula;

/** The six comparisons, over closed intervals: true for all pairs, false for none, else unknown. */
public enum Relation {
  EQUAL("="),
  NOT_EQUAL("<>"),
  LESS("<"),
  AT_MOST("<="),
  MORE(">"),
  AT_LEAST(">=");

  private final String sign;

  Relation(String sign) {
    this.sign = sign;
  }

  /** How the rule language writes it. */
  public String sign() {
    return sign;
  }

  /** The same comparison with its sides changed over. */
  public Relation mirrored() {
    return switch (this) {
      case LESS -> MORE;
      case AT_MOST -> AT_LEAST;
      case MORE -> LESS;
      case AT_LEAST -> AT_MOST;
      default -> this;
    };
  }

  /** The comparison that is true where this one is false. */
  Relation opposite() {
    return switch (this) {
      case EQUAL -> NOT_EQUAL;
      case NOT_EQUAL -> EQUAL;
      case LESS -> AT_LEAST;
      case AT_MOST -> MORE;
      case MORE -> AT_MOST;
      case AT_LEAST -> LESS;
    };
  }

  /** The truth of {@code [alo, ahi] this [blo, bhi]}. */
  public int holds(double alo, double ahi, double blo, double bhi) {
    return switch (this) {
      case AT_LEAST -> atLeast(alo, ahi, blo, bhi);
      case AT_MOST -> atLeast(blo, bhi, alo, ahi);
      case MORE -> Truth.not(atLeast(blo, bhi, alo, ahi));
      case LESS -> Truth.not(atLeast(alo, ahi, blo, bhi));
      case EQUAL -> equal(alo, ahi, blo, bhi);
      case NOT_EQUAL -> Truth.not(equal(alo, ahi, blo, bhi));
    };
  }

  private static int atLeast(double alo, double ahi, double blo, double bhi) {
    if (!Near.less(alo, bhi)) {
      return Truth.TRUE;
    }
    return Near.less(ahi, blo) ? Truth.FALSE : Truth.UNKNOWN;
  }

  private static int equal(double alo, double ahi, double blo, double bhi) {
    if (Near.less(ahi, blo) || Near.less(bhi, alo)) {
      return Truth.FALSE;
    }
    return alo == ahi && blo == bhi ? Truth.TRUE : Truth.UNKNOWN;
  }
}
