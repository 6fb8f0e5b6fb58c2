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
  private static final Set<String> NOT_FLOWING =
      Set.of("not flowing", "non flowing", "non-flowing", "does not flow", "non jaillissant");
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
    @Nullable String rest = behindFlowing(said);
    if (rest == null || (!rest.isEmpty() && rate(rest, comma) == null)) {
      return false;
    }
    fill(into, entry, bare);
    freeFlow(into, rest, comma);
    return true;
  }

  /**
   * Reads what stands where the record says whether the well flows: {@code flowing}, with its rate
   * or without, is yes, and {@code not flowing} is no; false, with nothing filled, if it is
   * something else.
   */
  boolean readSaid(RecordFiller into, int entry, String text, Comma comma) {
    if (entry != flowing) {
      return false;
    }
    String said = CellText.fold(text);
    if (NOT_FLOWING.contains(said)) {
      into.choice(entry, 0);
      return true;
    }
    @Nullable String rest = behindFlowing(said);
    if (rest == null || (!rest.isEmpty() && rate(rest, comma) == null)) {
      return false;
    }
    into.choice(entry, 1);
    freeFlow(into, rest, comma);
    return true;
  }

  /** What stands behind a word for flowing; null if the text begins with none. */
  private static @Nullable String behindFlowing(String said) {
    for (String word : FLOWING) {
      if (said.startsWith(word)) {
        return CellText.trim(said.substring(word.length()));
      }
    }
    return null;
  }

  /** The rate behind a word for flowing; null if it is none, or states no unit. */
  private static Reading.@Nullable Amount rate(String rest, Comma comma) {
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
    boolean stated = !rate.isEmpty() && Character.isLetter(rate.charAt(rate.length() - 1));
    Reading reading = AmountReader.read(rate, RATE, Units.GPM, comma);
    return stated && reading instanceof Reading.Amount amount ? amount : null;
  }

  private void freeFlow(RecordFiller into, String rest, Comma comma) {
    Reading.@Nullable Amount a = rate(rest, comma);
    if (a != null && into.record().state(freeFlow) == WellRecord.UNKNOWN) {
      into.amount(freeFlow, a.lo(), a.hi(), a.halfPlace(), a.unit(), Note.FLOWING);
    }
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
