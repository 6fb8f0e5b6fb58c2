package org.wellcurb.formula;

/** A compiled amount. It leaves its interval, in SI, in a slot of the frame. */
abstract class AmountNode {
  /** Evaluates into slot {@code at}; slots above it may be used on the way. */
  abstract void eval(Frame f, int at);
}
