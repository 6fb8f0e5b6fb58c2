package org.wellcurb.report.words;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The units that pages print, always with the record's own beside them. */
public enum UnitsShown {
  US,
  METRIC,
  /** Each amount in the unit in which it was written. */
  AS_WRITTEN;

  /** What {@code --units} calls it, such as {@code as-written}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The choice that {@code --units} calls so; null if there is none. */
  public static @Nullable UnitsShown of(String code) {
    for (UnitsShown units : values()) {
      if (units.code().equals(code)) {
        return units;
      }
    }
    return null;
  }
}
