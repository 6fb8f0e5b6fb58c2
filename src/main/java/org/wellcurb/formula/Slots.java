package org.wellcurb.formula;

/** Room for what is being computed, by slot: least, greatest, and whether it is void. */
final class Slots {
  private static final int COUNT = 64;

  final double[] lo = new double[COUNT];
  final double[] hi = new double[COUNT];
  final boolean[] isVoid = new boolean[COUNT];
}
