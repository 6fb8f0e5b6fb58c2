package org.wellcurb.intake;

import java.util.Set;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** How much the words of a header must say for an entry, and what speaks for one of two. */
final class HeaderWeight {
  /** Likeness of a header from which an entry is considered. */
  private static final double LIKE = 0.66;

  /** The same of dates and texts: what stands in the column hardly tells one from another. */
  private static final double WIDE = 0.79;

  /** What the unit of a header adds to the likeness of an entry that is usually in it. */
  private static final double USUAL_UNIT = 0.1;

  private HeaderWeight() {}

  /** Likeness from which an entry is considered for a header. */
  static double least(Entry entry, HeaderWords header) {
    return isWide(entry) || isGeneral(header) ? WIDE : LIKE;
  }

  /** What speaks for an entry beside the likeness of its words. */
  static double more(Entry entry, HeaderWords header) {
    return usual(entry, header) + finished(entry, header);
  }

  /** A little for the entry that is usually in the unit of the header: no depth is in inches. */
  private static double usual(Entry entry, HeaderWords header) {
    Unit stated = header.unit();
    boolean isUsual =
        stated != null
            && (stated.equals(entry.unit(UnitSystem.US))
                || stated.equals(entry.unit(UnitSystem.METRIC)));
    return isUsual ? USUAL_UNIT : 0;
  }

  /** Words that say nothing alone: FROM may be that of a casing, a screen, a layer. */
  private static final Set<String> GENERAL =
      Set.of("from", "to", "top", "bottom", "upper", "lower", "start", "end", "base", "date");

  /** Words that say little alone, unless a unit stands beside them: TANK_GAL is a volume. */
  private static final Set<String> VAGUE =
      Set.of("pump", "screen", "tank", "relief", "water", "well", "test", "motor");

  /** True for a header whose word says nothing, or little, alone. */
  static boolean isGeneral(HeaderWords header) {
    String only = header.words().size() == 1 ? header.words().get(0) : "";
    return GENERAL.contains(only) || (header.unit() == null && VAGUE.contains(only));
  }

  private static boolean isWide(Entry entry) {
    return entry.kind() == Kind.DATE || entry.kind() == Kind.TEXT;
  }

  /** Words for the depth of the well, where another column has that of the hole. */
  private static final Set<String> FINISHED = Set.of("finished", "completed", "final");

  /** A little for the depth of the finished well, so that it goes before the total depth. */
  private static double finished(Entry entry, HeaderWords header) {
    boolean isFinished =
        entry.key().equals("well.depth") && header.words().stream().anyMatch(FINISHED::contains);
    return isFinished ? 2 * USUAL_UNIT : 0;
  }
}
