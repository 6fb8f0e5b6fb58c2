package org.wellcurb.record;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.AmountReader;
import org.wellcurb.quantity.Comma;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Expected;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Reading;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;

/**
 * {@code flowing} in place of a water level: the level is at or above the datum, and the well
 * flows. A rate behind it ({@code FLOWING @ 3 gpm}) goes to {@code water.free_flow}.
 *
 * <p>{@code dry} in place of a level or a yield says that there was no water to measure: unknown.
 */
final class FlowingWords {
  private static final String[] FLOWING = {
    "free flowing",
    "freely flowing",
    "flowing artesian",
    "artesian flowing",
    "flowing at surface",
    "flowing well",
    "flowing over top",
    "flowing over casing",
    "flowing",
    "flows",
    "flow",
    "overflowing",
    "overflows",
    "overflow",
    "0verflowing",
    "0verflow",
    "over flowing",
    "over flow",
    "over the top",
    "over top",
    "over casing",
    "art\u00E9sien jaillissant",
    "jaillissante",
    "jaillissant",
    "d\u00E9borde"
  };
  private static final Set<String> DRY =
      Set.of("dry", "dry hole", "dry well", "sec", "\u00E0 sec", "puits sec", "trou sec");

  private static final Expected RATE = Expected.of(Dimension.FLOW, false);

  private final int flowing;
  private final int freeFlow;
  private final int[] levels;

  FlowingWords(Catalogue catalogue) {
    flowing = catalogue.index("water.flowing");
    freeFlow = catalogue.index("water.free_flow");
    levels = DoubtedZeros.waterLevels(catalogue);
  }

  /** True if this entry may be filled by what a level says. */
  boolean isSaid(int entry) {
    return entry == flowing || entry == freeFlow;
  }

  /** True if this entry says that the well flows because a level does: blanks do not undo it. */
  boolean keeps(RecordFiller into, int entry) {
    WellRecord record = into.record();
    return isSaid(entry) && record.isGiven(entry) && record.note(entry) == Note.FLOWING;
  }

  /** Reads one of these words; false, with nothing filled, if the text is something else. */
  boolean read(
      RecordFiller into, EntryReading reading, String text, @Nullable Unit bare, CellStyle style) {
    boolean level = reading.isWaterLevel();
    if (!level && reading.kind() != Kind.FLOW) {
      return false;
    }
    String said = CellText.fold(text);
    if (isDry(said)) {
      into.absent(reading.index(), WellRecord.UNKNOWN, Note.DRY);
      return true;
    }
    boolean flows =
        level
            && readFlowing(
                into, reading.index(), said, bare == null ? Units.METRE : bare, style.comma());
    if (flows) {
      disputed(into);
    }
    return flows;
  }

  private static boolean isDry(String said) {
    return DRY.contains(said);
  }

  private boolean readFlowing(RecordFiller into, int entry, String said, Unit bare, Comma comma) {
    for (String word : FLOWING) {
      if (said.startsWith(word)) {
        String rest = CellText.trim(said.substring(word.length()));
        if (rest.isEmpty()) {
          fill(into, entry, bare);
          return true;
        }
        return readRate(into, entry, rest, bare, comma);
      }
    }
    return false;
  }

  private boolean readRate(RecordFiller into, int entry, String rest, Unit bare, Comma comma) {
    String rate = rest;
    for (String sign : new String[] {"@", "at ", ",", "-", "(", "="}) {
      if (rate.startsWith(sign)) {
        rate = CellText.trim(rate.substring(sign.length()));
        break;
      }
    }
    if (rest.startsWith("(") && rate.endsWith(")")) {
      rate = rate.substring(0, rate.length() - 1);
    }
    Reading reading = AmountReader.read(rate, RATE, Units.GPM, comma);
    boolean stated = !rate.isEmpty() && Character.isLetter(rate.charAt(rate.length() - 1));
    if (!stated || !(reading instanceof Reading.Amount a)) {
      return false;
    }
    fill(into, entry, bare);
    if (into.record().state(freeFlow) == WellRecord.UNKNOWN) {
      into.amount(freeFlow, a.lo(), a.hi(), a.halfPlace(), a.unit(), Note.FLOWING);
    }
    return true;
  }

  private void fill(RecordFiller into, int entry, Unit bare) {
    into.amount(entry, Double.NEGATIVE_INFINITY, 0, 0, bare, Note.FLOWING);
    if (into.record().state(flowing) == WellRecord.UNKNOWN) {
      into.implied(flowing, 1, Note.FLOWING);
    }
  }

  /**
   * Where a level says that the well flows and the record that it does not, more than nothing flows
   * by the level: so a rule can lay the one beside the other. A flow that is given stands.
   */
  void disputed(RecordFiller into) {
    WellRecord record = into.record();
    boolean isSaidNot = record.isGiven(flowing) && record.lo(flowing) == 0;
    for (int i = 0; isSaidNot && i < levels.length; i++) {
      int level = levels[i];
      if (record.isGiven(level) && record.note(level) == Note.FLOWING) {
        if (record.state(freeFlow) == WellRecord.UNKNOWN) {
          Interval some = Interval.MORE_THAN_NOTHING;
          into.amount(freeFlow, some.lo(), some.hi(), 0, Units.GPM, Note.FLOWING);
        }
        if (record.isGiven(freeFlow) && record.note(freeFlow) == Note.FLOWING) {
          into.written(freeFlow, record.written(level));
        }
      }
    }
  }
}
