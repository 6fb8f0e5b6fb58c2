package org.wellcurb.record;

import java.util.Set;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;

/**
 * A bare {@code 0} in a field of numbers is, far more often than not, what a program wrote for a
 * blank. Where a real well hardly has a zero it is taken for unknown, with a note that says so; a
 * zero with its unit behind it ({@code 0 ft}) is a figure that somebody wrote, and counts.
 *
 * <p>Doubted are: amounts whose plausible range begins above zero, the foot of what was put into
 * the hole, distances to sources of contamination, positions, sizes of wire (where it would be 1/0,
 * which nobody writes so by itself), and water levels. A level of 0 counts where the record says
 * that the well flows, whichever of the two is read first.
 */
final class DoubtedZeros {
  private static final Set<String> OTHERS =
      Set.of(
          "well.outer_casing_depth",
          "well.liner_bottom",
          "well.filter_pack_bottom",
          "grout.bottom",
          "site.latitude",
          "site.longitude",
          "site.septic_latitude",
          "site.septic_longitude");

  /** What a well may touch. */
  private static final Set<String> MAY_TOUCH =
      Set.of(
          "setback.property_line",
          "setback.building",
          "setback.road",
          "setback.crop_field",
          "setback.overhead_line");

  private final int flowing;
  private final int[] levels;

  DoubtedZeros(Catalogue catalogue) {
    flowing = catalogue.index("water.flowing");
    levels = waterLevels(catalogue);
  }

  /** Levels of water, in which words may stand. */
  static int[] waterLevels(Catalogue catalogue) {
    return catalogue.entries().stream()
        .filter(DoubtedZeros::isWaterLevel)
        .mapToInt(Entry::index)
        .toArray();
  }

  /** True if a bare zero is doubted in this entry. */
  static boolean isDoubted(Entry entry) {
    boolean amount = entry.kind().isAmount() && entry.kind() != Kind.TEMPERATURE;
    return amount
        && (entry.plausible().lo() > 0
            || isWaterLevel(entry)
            || entry.kind() == Kind.AWG
            || OTHERS.contains(entry.key())
            || (entry.key().startsWith("setback.") && !MAY_TOUCH.contains(entry.key())));
  }

  private static boolean isWaterLevel(Entry entry) {
    return entry.datum() == Datum.WATER && entry.kind() == Kind.LENGTH;
  }

  /** Fills an entry in which a bare zero is doubted. */
  void fill(RecordFiller into, EntryReading reading, double halfPlace, Unit unit) {
    int entry = reading.index();
    WellRecord record = into.record();
    into.amount(entry, 0, 0, halfPlace, unit, Note.NONE);
    if (!reading.isWaterLevel() || !isSaidToFlow(record)) {
      into.absent(entry, WellRecord.UNKNOWN, Note.DOUBTED_ZERO);
    }
  }

  private boolean isSaidToFlow(WellRecord record) {
    return record.isGiven(flowing) && record.lo(flowing) == 1;
  }

  /** Where the record says that the well flows, levels of 0 that were read before count. */
  void flows(RecordFiller into) {
    WellRecord record = into.record();
    if (!isSaidToFlow(record)) {
      return;
    }
    for (int level : levels) {
      Unit unit = record.unit(level);
      if (record.note(level) == Note.DOUBTED_ZERO && unit != null) {
        into.amount(level, 0, 0, record.halfPlace(level), unit, Note.NONE);
      }
    }
  }

  /** True if this entry is the one that says that the well flows. */
  boolean isFlowing(int entry) {
    return entry == flowing;
  }
}
