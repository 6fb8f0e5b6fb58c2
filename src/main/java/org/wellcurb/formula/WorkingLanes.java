package org.wellcurb.formula;

import org.wellcurb.workings.Input;
import org.wellcurb.workings.Working;

/**
 * A working over records side by side: at one point for all whose inputs are exact, which are
 * nearly all; the others one by one, as {@link WorkingNode} does for a single record.
 */
final class WorkingLanes extends AmountLanes {
  private final WorkingNode alone;
  private final int[] entries;

  /** What is handed to the working: its inputs, then its figures, which stay. */
  private final double[] x;

  WorkingLanes(WorkingNode alone) {
    this.alone = alone;
    entries = alone.entries;
    x = new double[entries.length + alone.figures.length];
    System.arraycopy(alone.figures, 0, x, entries.length, alone.figures.length);
  }

  /** True if all that it reads are values of entries, as columns hold them. */
  static boolean canTake(Working working) {
    return working.inputs().stream()
        .allMatch(input -> input.take() == Input.Take.VALUE || input.take() == Input.Take.SIZE);
  }

  @Override
  void compute(Lanes lanes, long mask) {
    long areVoid = 0;
    long lacking = 0;
    long ranges = 0;
    for (int i = 0; i < entries.length; i++) {
      EntryLanes of = lanes.entry(entries[i]);
      ranges |= of.given() & ~of.exact();
      if (alone.isRequired[i]) {
        lacking |= ~of.given();
        areVoid |= of.notApplicable();
      }
    }
    for (long left = mask & lacking; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      lo[lane] = Double.NEGATIVE_INFINITY;
      hi[lane] = Double.POSITIVE_INFINITY;
    }
    putVoid(mask & areVoid);
    for (long left = mask & ~lacking & ranges; left != 0; left &= left - 1) {
      int lane = Long.numberOfTrailingZeros(left);
      Frame f = lanes.frame(lane);
      alone.eval(f, 0);
      lo[lane] = f.lo[0];
      hi[lane] = f.hi[0];
    }
    for (long left = mask & ~lacking & ~ranges; left != 0; left &= left - 1) {
      exact(lanes, Long.numberOfTrailingZeros(left));
    }
  }

  private void exact(Lanes lanes, int lane) {
    double[] shift = lanes.frame(lane).shift;
    for (int i = 0; i < entries.length; i++) {
      EntryLanes of = lanes.entry(entries[i]);
      boolean isGiven = (of.given() >>> lane & 1) != 0;
      x[i] = isGiven ? of.lo[lane] - shift[alone.datums[i]] : Double.NaN;
    }
    alone.exact(x, lo, hi, lane);
  }
}
