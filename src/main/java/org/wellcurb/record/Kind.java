package org.wellcurb.record;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;

/** What kind of thing an entry holds. */
public enum Kind {
  TEXT(null),
  CHOICE(null),
  YES_NO(null),
  LIST(null),
  DATE(Dimension.DATE),
  COUNT(Dimension.NUMBER),
  NUMBER(Dimension.NUMBER),
  LENGTH(Dimension.LENGTH),
  VOLUME(Dimension.VOLUME),
  MASS(Dimension.MASS),
  FLOW(Dimension.FLOW),
  SPECIFIC_CAPACITY(Dimension.SPECIFIC_CAPACITY),
  PRESSURE(Dimension.PRESSURE),
  /** A pressure that may also be written as a head, in plain feet or metres (of water). */
  PRESSURE_OR_HEAD(Dimension.PRESSURE),
  TIME(Dimension.TIME),
  TEMPERATURE(Dimension.TEMPERATURE),
  POWER(Dimension.POWER),
  VOLTAGE(Dimension.VOLTAGE),
  CURRENT(Dimension.CURRENT),
  RESISTANCE(Dimension.RESISTANCE),
  AWG(Dimension.WIRE_GAUGE),
  CONCENTRATION(Dimension.CONCENTRATION),
  TURBIDITY(Dimension.TURBIDITY),
  ANGLE(Dimension.ANGLE);

  private final @Nullable Dimension dimension;

  Kind(@Nullable Dimension dimension) {
    this.dimension = dimension;
  }

  /** The dimension of its amounts; null for words. */
  public @Nullable Dimension dimension() {
    return dimension;
  }

  /** True for kinds whose values are intervals of amounts (dates and counts too). */
  public boolean isAmount() {
    return dimension != null;
  }

  /** How the catalogue writes it, such as {@code yes-no}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The kind that the catalogue writes so. */
  static Kind of(String label) {
    return valueOf(label.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
