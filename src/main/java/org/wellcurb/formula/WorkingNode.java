package org.wellcurb.formula;

import java.util.List;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Datum;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.workings.Input;
import org.wellcurb.workings.Turn;
import org.wellcurb.workings.Working;

/**
 * A working over the record: at one point where all inputs are exact, else at every corner of its
 * inputs and at the turning points inside. Where a required input is blank it is unknown.
 */
final class WorkingNode extends AmountNode {
  private final Working working;
  private final int[] entries;
  private final int[] datums;
  private final boolean[] isRequired;
  private final double[] figures;
  private final Turn[] turns;

  WorkingNode(Working working, Scope scope) {
    this.working = working;
    Catalogue catalogue = scope.catalogue();
    List<Input> inputs = working.inputs();
    entries = new int[inputs.size()];
    datums = new int[inputs.size()];
    isRequired = new boolean[inputs.size()];
    for (int i = 0; i < entries.length; i++) {
      Entry entry = catalogue.entry(catalogue.index(inputs.get(i).key()));
      entries[i] = entry.index();
      datums[i] = entry.datum().isMovable() ? entry.datum().ordinal() : Datum.NONE.ordinal();
      isRequired[i] = inputs.get(i).isRequired();
    }
    figures = working.figures().stream().mapToDouble(scope::figure).toArray();
    turns = working.turns().toArray(new Turn[0]);
  }

  @Override
  void eval(Frame f, int at) {
    f.isVoid[at] = false;
    f.lo[at] = Double.NEGATIVE_INFINITY;
    f.hi[at] = Double.POSITIVE_INFINITY;
    boolean isMissing = false;
    for (int i = 0; i < entries.length; i++) {
      byte state = f.state(entries[i]);
      if (state != WellRecord.GIVEN && isRequired[i]) {
        isMissing = true;
        f.isVoid[at] |= state == WellRecord.NOT_APPLICABLE;
      }
    }
    if (!isMissing) {
      compute(f, at);
    }
  }

  private void compute(Frame f, int at) {
    Scratch s = f.scratch();
    WellRecord record = f.record();
    boolean isExact = true;
    for (int i = 0; i < entries.length; i++) {
      int entry = entries[i];
      if (f.state(entry) != WellRecord.GIVEN) {
        s.lo[i] = Double.NaN;
        s.hi[i] = Double.NaN;
      } else {
        double shift = f.shift[datums[i]];
        s.lo[i] = record.lo(entry) - shift;
        s.hi[i] = record.hi(entry) - shift;
        isExact &= s.lo[i] == s.hi[i];
      }
      s.x[i] = s.lo[i];
    }
    System.arraycopy(figures, 0, s.x, entries.length, figures.length);
    if (isExact) {
      double value = working.function().at(s.x);
      if (!Double.isNaN(value)) {
        f.lo[at] = value;
        f.hi[at] = value;
      }
      return;
    }
    f.lo[at] = Double.POSITIVE_INFINITY;
    f.hi[at] = Double.NEGATIVE_INFINITY;
    if (!corners(f, at, s, 0)) {
      f.lo[at] = Double.NEGATIVE_INFINITY;
      f.hi[at] = Double.POSITIVE_INFINITY;
    }
  }

  /** Tries every value of the inputs from {@code i} on; false as soon as one cannot be known. */
  private boolean corners(Frame f, int at, Scratch s, int i) {
    if (i == entries.length) {
      double value = working.function().at(s.x);
      if (Double.isNaN(value)) {
        return false;
      }
      f.lo[at] = Math.min(f.lo[at], value);
      f.hi[at] = Math.max(f.hi[at], value);
      return true;
    }
    if (!(s.lo[i] < s.hi[i])) {
      return corners(f, at, s, i + 1);
    }
    return trial(f, at, s, i, s.lo[i]) && trial(f, at, s, i, s.hi[i]) && turning(f, at, s, i);
  }

  private boolean trial(Frame f, int at, Scratch s, int i, double value) {
    s.x[i] = value;
    boolean isKnown = corners(f, at, s, i + 1);
    s.x[i] = s.lo[i];
    return isKnown;
  }

  private boolean turning(Frame f, int at, Scratch s, int i) {
    boolean isKnown = true;
    for (Turn turn : turns) {
      if (turn.input() == i) {
        double first = turn.at() < 0 ? turn.value() : s.lo[turn.at()];
        double last = turn.at() < 0 ? turn.value() : s.hi[turn.at()];
        if (first > s.lo[i] && first < s.hi[i]) {
          isKnown &= trial(f, at, s, i, first);
        }
        if (last != first && last > s.lo[i] && last < s.hi[i]) {
          isKnown &= trial(f, at, s, i, last);
        }
      }
    }
    return isKnown;
  }
}
