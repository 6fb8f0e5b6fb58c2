package org.wellcurb.crosscheck;

import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;

/** The measured entries that are laid side by side over a batch. */
public enum Field {
  DEPTH("well.depth", Units.FOOT, Units.METRE),
  STATIC_LEVEL("water.static_level", Units.FOOT, Units.METRE),
  YIELD("water.yield", Units.GPM, Units.LITRE_PER_MINUTE);

  private final String key;
  private final Unit us;
  private final Unit metric;

  Field(String key, Unit us, Unit metric) {
    this.key = key;
    this.us = us;
    this.metric = metric;
  }

  /** Key of the entry. */
  public String key() {
    return key;
  }

  /** The unit in which written figures are compared. */
  Unit unit(UnitSystem system) {
    return system == UnitSystem.METRIC ? metric : us;
  }
}
