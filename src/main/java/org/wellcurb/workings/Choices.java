package org.wellcurb.workings;

import java.util.Objects;
import org.wellcurb.record.Catalogue;

/** The places of choices in the entry catalogue, by which functions know them. */
final class Choices {
  private Choices() {}

  /** The place of a choice that must exist. */
  static double place(String key, String choice) {
    int place =
        Objects.requireNonNull(Catalogue.standard().find(key), () -> "no entry " + key)
            .choice(choice);
    if (place < 0) {
      throw new IllegalStateException(key + " has no choice " + choice);
    }
    return place;
  }
}
