package org.wellcurb.workings;

import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/** Whole days between dates. Dates in days since 1970-01-01, results in seconds. */
public final class Days {
  private static final double SECONDS = 86400;

  private Days() {}

  /** Time from one date to another (s); negative where the second is the earlier. */
  public static double between(double from, double to) {
    return (to - from) * SECONDS;
  }

  static List<Working> workings() {
    return List.of(
        Draft.of(
                "filing_days",
                Units.DAY,
                Units.DAY,
                "days from completion until the authority received the record")
            .formula("{dates.received} - {dates.completed}")
            .reads(required("dates.received"), required("dates.completed"))
            .by(x -> between(x[1], x[0])),
        Draft.of(
                "sample_age",
                Units.DAY,
                Units.DAY,
                "age of the water sample when the authority received the record")
            .formula("{dates.received} - {dates.sampled}")
            .reads(required("dates.received"), required("dates.sampled"))
            .by(x -> between(x[1], x[0])));
  }
}
