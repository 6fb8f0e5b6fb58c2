package org.wellcurb.intake;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** What a header that is a key means. */
final class HeaderEntry {
  private HeaderEntry() {}

  /**
   * How a column is taken.
   *
   * @param usable false if it cannot be
   * @param unit its unit; null if it states none
   * @param problem what is wrong; empty if nothing is
   */
  record Taken(boolean usable, @Nullable Unit unit, String problem) {}

  static @Nullable Entry find(Catalogue catalogue, String key) {
    return catalogue.find(key.toLowerCase(Locale.ROOT));
  }

  static Taken take(Entry entry, String unitText) {
    if (entry.kind() == Kind.LIST && !entry.key().equals("record.variances")) {
      return new Taken(false, null, entry.key() + " is a list, and no cell can hold that");
    }
    if (unitText.isEmpty()) {
      return new Taken(true, null, "");
    }
    Optional<Unit> unit = Units.named(unitText);
    if (unit.isEmpty()) {
      return new Taken(false, null, "the unit " + unitText + " is not known");
    }
    if (!fits(entry, unit.get())) {
      // Its numbers are then unreadable, each quoted on the sheet, unless the cell has a unit.
      String problem = unit.get().symbol() + " is not a unit of " + entry.kind().label();
      return new Taken(true, unit.get(), problem);
    }
    return new Taken(true, unit.get(), "");
  }

  /** True if amounts of the entry may be in this unit; a pressure is often given as a head. */
  static boolean fits(Entry entry, Unit unit) {
    return unit.dimension().equals(entry.kind().dimension())
        || (entry.kind() == Kind.PRESSURE
            && (unit.id() == Units.FOOT.id() || unit.id() == Units.METRE.id()));
  }
}
