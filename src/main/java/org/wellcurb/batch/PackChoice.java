package org.wellcurb.batch;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;

/**
 * Which pack judges a record: a single pack judges all; of several, the one that names the record's
 * jurisdiction.
 */
final class PackChoice {
  /** The entry that chooses. */
  static final String ENTRY = "record.jurisdiction";

  private final boolean single;
  private final Map<String, Integer> byJurisdiction = new HashMap<>();
  private final String known;
  private final int entry;

  /**
   * @throws RunFailure if two packs have one name, or name one jurisdiction
   */
  PackChoice(List<Pack> packs, Catalogue catalogue) throws RunFailure {
    single = packs.size() == 1;
    entry = catalogue.index(ENTRY);
    Map<String, Integer> byId = new HashMap<>();
    for (int i = 0; i < packs.size(); i++) {
      Pack pack = packs.get(i);
      if (byId.put(pack.id(), i) != null) {
        throw RunFailure.unusable("--rules: two packs are called " + pack.id() + "; leave one out");
      }
      for (String jurisdiction : pack.jurisdictions()) {
        Integer other = byJurisdiction.put(fold(jurisdiction), i);
        if (other != null && other != i) {
          throw RunFailure.unusable(
              "--rules: "
                  + packs.get(other).id()
                  + " and "
                  + pack.id()
                  + " both judge jurisdiction "
                  + jurisdiction
                  + "; leave one out");
        }
      }
    }
    known = String.join(", ", packs.stream().flatMap(p -> p.jurisdictions().stream()).toList());
  }

  /** Place of the pack that judges this record; -1 if none does. */
  int of(WellRecord record) {
    if (single) {
      return 0;
    }
    Integer place = byJurisdiction.get(jurisdiction(record));
    return place == null ? -1 : place;
  }

  /** Why no pack judges this record. */
  String why(WellRecord record) {
    String written = record.written(entry);
    return written.isEmpty()
        ? "no jurisdiction is given, and several packs are (they judge " + known + ")"
        : "no pack given judges jurisdiction " + written + " (they judge " + known + ")";
  }

  private String jurisdiction(WellRecord record) {
    @Nullable String text = record.text(entry);
    return text == null ? "" : fold(text);
  }

  private static String fold(String jurisdiction) {
    return jurisdiction.strip().toLowerCase(Locale.ROOT);
  }
}
