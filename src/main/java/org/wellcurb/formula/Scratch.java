package org.wellcurb.formula;

/** Room for the inputs of a working while its corners are tried. */
final class Scratch {
  private static final int INPUTS = 64;

  final double[] x = new double[INPUTS];
  final double[] lo = new double[INPUTS];
  final double[] hi = new double[INPUTS];

  /** Least and greatest of a working that finds both itself. */
  final double[] ends = new double[2];
}
