package org.wellcurb.rulepack;

import java.util.Collection;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Nearest;

/** What would mend a name that is not known. */
final class Mends {
  /** Most names that a message lists. */
  private static final int MOST_LISTED = 12;

  private Mends() {}

  /** The nearest name, or the names there are. */
  static String nearest(String name, Collection<String> names, String ifNone) {
    String nearest = Nearest.of(name, names);
    if (nearest != null) {
      return "did you mean " + nearest + "?";
    }
    return names.isEmpty() || names.size() > MOST_LISTED
        ? ifNone
        : "one of: " + String.join(", ", names);
  }

  /** The nearest key of an entry. */
  static String nearestKey(Catalogue catalogue, String key) {
    String nearest = catalogue.nearest(key);
    return nearest != null ? "did you mean " + nearest + "?" : "the entry reference lists all keys";
  }
}
