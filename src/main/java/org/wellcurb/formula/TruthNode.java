package org.wellcurb.formula;

/** A compiled condition. */
abstract class TruthNode {
  /** One of the values of {@link Truth}; slots from {@code at} on may be used on the way. */
  abstract int eval(Frame f, int at);
}
