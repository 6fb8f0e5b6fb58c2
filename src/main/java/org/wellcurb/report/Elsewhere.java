package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Records that a pack judged, because it was the only one given, though they name a jurisdiction
 * that it is not for.
 */
public final class Elsewhere {
  /** Jurisdictions that are named. */
  private static final int NAMED = 3;

  private final List<String> named = new ArrayList<>();
  private long records;

  /** Counts a record that names this one. */
  public void add(String jurisdiction) {
    records++;
    name(jurisdiction);
  }

  /** Adds what came of the next part. */
  public void add(Elsewhere next) {
    records += next.records;
    next.named.forEach(this::name);
  }

  private void name(String jurisdiction) {
    if (named.size() <= NAMED && named.stream().noneMatch(jurisdiction::equalsIgnoreCase)) {
      named.add(jurisdiction);
    }
  }

  /** Forgets all. */
  public void clear() {
    records = 0;
    named.clear();
  }

  /** How many there are. */
  public long records() {
    return records;
  }

  /** The jurisdictions that they name, the first few in the order met. */
  public String named() {
    List<String> shown = named.stream().limit(NAMED).map(Cap.QUOTED_LETTERS::cut).toList();
    return String.join(", ", shown) + (named.size() > NAMED ? ", " + Cap.ELLIPSIS : "");
  }
}
