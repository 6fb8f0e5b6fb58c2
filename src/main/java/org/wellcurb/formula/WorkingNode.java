package org.wellcurb.formula;

import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Datum;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.workings.DrillersLog;
import org.wellcurb.workings.Input;
import org.wellcurb.workings.IntervalFunction;
import org.wellcurb.workings.Turn;
import org.wellcurb.workings.Working;

/**
 * A working over the record: at one point where all inputs are exact, else at every corner of its
 * inputs and at the turning points inside, or as the working itself goes over ranges. Where a
 * required input is blank it is unknown.
 */
final class WorkingNode extends AmountNode {
  /** In SI: a millionth of a millionth of a metre, a pascal, a cubic metre a second. */
  private static final double NOTHING = 1e-14;

  private final Working.Function function;
  private final Working.Function greatest;
  private final @Nullable IntervalFunction over;
  private final Input[] inputs;
  final int[] entries;

  /** By input, the datum that its depth is brought to ground from; of what is no depth, none. */
  final int[] datums;

  final boolean[] isRequired;
  final double[] figures;
  private final Turn[] turns;
  private final int sizeIs;

  WorkingNode(Working working, Scope scope) {
    function = working.function();
    Working.Function most = working.greatest();
    greatest = most == null ? function : most;
    over = working.over();
    Catalogue catalogue = scope.catalogue();
    sizeIs = catalogue.index("well.casing_size_is");
    inputs = working.inputs().toArray(new Input[0]);
    entries = new int[inputs.length];
    datums = new int[inputs.length];
    isRequired = new boolean[inputs.length];
    for (int i = 0; i < entries.length; i++) {
      Entry entry = catalogue.entry(catalogue.index(inputs[i].key()));
      entries[i] = entry.index();
      boolean isMoved = inputs[i].take() != Input.Take.SIZE && entry.datum().isMovable();
      datums[i] = isMoved ? entry.datum().ordinal() : Datum.NONE.ordinal();
      isRequired[i] = inputs[i].isRequired();
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
    boolean isExact = true;
    for (int i = 0; i < entries.length; i++) {
      take(f, s, i);
      isExact &= !(s.lo[i] < s.hi[i]);
      s.x[i] = s.lo[i];
    }
    for (int i = 0; i < figures.length; i++) {
      s.x[entries.length + i] = figures[i];
      s.lo[entries.length + i] = figures[i];
      s.hi[entries.length + i] = figures[i];
    }
    if (isExact) {
      exact(s.x, f.lo, f.hi, at);
      return;
    }
    if (over != null) {
      over.over(s.lo, s.hi, s.ends);
      if (!Double.isNaN(s.ends[0]) && !Double.isNaN(s.ends[1])) {
        f.lo[at] = s.ends[0];
        f.hi[at] = s.ends[1];
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

  /** Works it out at one point, all inputs and figures, and puts it into place {@code at}. */
  void exact(double[] x, double[] lo, double[] hi, int at) {
    double least = function.at(x);
    double most = greatest == function ? least : greatest.at(x);
    boolean isKnown = !Double.isNaN(least) && !Double.isNaN(most);
    lo[at] = isKnown ? settled(least) : Double.NEGATIVE_INFINITY;
    hi[at] = isKnown ? settled(most) : Double.POSITIVE_INFINITY;
  }

  /** The least and greatest value of an input, NaN in both where it is not given. */
  private void take(Frame f, Scratch s, int i) {
    WellRecord record = f.record();
    int entry = entries[i];
    s.lo[i] = Double.NaN;
    s.hi[i] = Double.NaN;
    if (f.state(entry) != WellRecord.GIVEN) {
      if (inputs[i].take() == Input.Take.TEXT_CODE) {
        unsaid(s, i);
      }
      return;
    }
    switch (inputs[i].take()) {
      case VALUE -> {
        double shift = f.shift[datums[i]];
        s.lo[i] = record.lo(entry) - shift;
        s.hi[i] = record.hi(entry) - shift;
      }
      case SIZE -> {
        if (record.lo(entry) == record.hi(entry) || isTrueSize(record)) {
          s.lo[i] = record.lo(entry);
          s.hi[i] = record.hi(entry);
        }
      }
      case HALF_PLACE -> {
        s.lo[i] = record.halfPlace(entry);
        s.hi[i] = s.lo[i];
      }
      case TEXT_CODE -> {
        String text = record.text(entry);
        s.lo[i] = text == null ? Double.NaN : inputs[i].number(text);
        s.hi[i] = s.lo[i];
        if (Double.isNaN(s.lo[i])) {
          unsaid(s, i);
        }
      }
      case LOG_TOP -> {
        DrillersLog.top(record.layers(), s.ends);
        put(s, i, f.shift[datums[i]]);
      }
      case LOG_BOTTOM -> {
        DrillersLog.bottom(record.layers(), s.ends);
        put(s, i, f.shift[datums[i]]);
      }
      case LOG_GAP -> {
        DrillersLog.gap(record.layers(), s.ends);
        put(s, i, 0);
      }
      case LOG_OVERTURN -> {
        DrillersLog.overturn(record.layers(), s.ends);
        put(s, i, 0);
      }
    }
  }

  private void unsaid(Scratch s, int i) {
    s.lo[i] = inputs[i].leastUnsaid();
    s.hi[i] = inputs[i].greatestUnsaid();
  }

  /** Takes what the log came to, brought to ground; NaN where it says nothing. */
  private static void put(Scratch s, int i, double shift) {
    s.lo[i] = s.ends[0] - shift;
    s.hi[i] = s.ends[1] - shift;
  }

  /** Whether the record says that its casing's diameter is a measured one. */
  private boolean isTrueSize(WellRecord record) {
    String says = record.choice(sizeIs);
    return says != null && !says.equals("nominal");
  }

  /** Tries every value of the inputs from {@code i} on; false as soon as one cannot be known. */
  private boolean corners(Frame f, int at, Scratch s, int i) {
    if (i == entries.length) {
      double least = function.at(s.x);
      double most = greatest == function ? least : greatest.at(s.x);
      if (Double.isNaN(least) || Double.isNaN(most)) {
        return false;
      }
      f.lo[at] = Math.min(f.lo[at], settled(least));
      f.hi[at] = Math.max(f.hi[at], settled(most));
      return true;
    }
    if (!(s.lo[i] < s.hi[i])) {
      return corners(f, at, s, i + 1);
    }
    return trial(f, at, s, i, s.lo[i]) && trial(f, at, s, i, s.hi[i]) && turning(f, at, s, i);
  }

  /** What binary digits leave of a difference of equal figures is nothing: no form is so fine. */
  private static double settled(double value) {
    return Math.abs(value) < NOTHING ? 0 : value;
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
