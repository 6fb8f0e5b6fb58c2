package org.wellcurb.judgement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.Input;
import org.wellcurb.workings.Working;
import org.wellcurb.workings.WorkingCatalogue;

/**
 * Tries whether a working would be known if the inputs that it requires were filled in, whatever
 * they were: figures from one end of their plausible range to the other stand in for those that are
 * blank. Nothing is judged by them; they only tell whether more is to be asked for.
 */
final class StandIns {
  /** Shares of the plausible range, denser where figures of real wells stand. */
  private static final double[] SHARES = {0.02, 0.05, 0.1, 0.2, 0.4, 0.7, 0.95};

  /** For a range without an end (SI). */
  private static final double WIDE = 100;

  private StandIns() {}

  /**
   * Whether the required inputs alone would give the working.
   *
   * @param entries the working's inputs, in its order
   */
  static boolean wouldDo(Working working, List<Entry> entries, WellRecord record) {
    double[] x = new double[entries.size() + working.figures().size()];
    for (int i = 0; i < working.figures().size(); i++) {
      @Nullable Figure figure = WorkingCatalogue.standard().figure(working.figures().get(i));
      x[entries.size() + i] = figure == null ? Double.NaN : figure.value();
    }
    for (double share : SHARES) {
      for (int i = 0; i < entries.size(); i++) {
        x[i] = value(working.inputs().get(i), entries.get(i), record, share);
      }
      if (!Double.isNaN(working.function().at(x))) {
        return true;
      }
    }
    return false;
  }

  private static double value(Input input, Entry entry, WellRecord record, double share) {
    int i = entry.index();
    boolean isGiven = record.isGiven(i);
    if (input.take() == Input.Take.HALF_PLACE) {
      return isGiven ? record.halfPlace(i) : Double.NaN;
    }
    if (input.take() == Input.Take.TEXT_CODE) {
      String text = isGiven ? record.text(i) : null;
      double code = text == null ? Double.NaN : input.number(text);
      return Double.isNaN(code) ? input.leastUnsaid() : code;
    }
    if (isGiven) {
      return record.lo(i);
    }
    return input.isRequired() ? standIn(entry, share) : Double.NaN;
  }

  private static double standIn(Entry entry, double share) {
    if (entry.kind() == Kind.CHOICE) {
      return Math.floor(share * entry.choices().size());
    }
    if (entry.kind() == Kind.YES_NO) {
      return Math.rint(share);
    }
    Interval plausible = entry.plausible();
    double least = Double.isInfinite(plausible.lo()) ? 0 : plausible.lo();
    double most = Double.isInfinite(plausible.hi()) ? least + WIDE : plausible.hi();
    double value = least + share * (most - least);
    return entry.kind() == Kind.COUNT ? Math.rint(value) : value;
  }
}
