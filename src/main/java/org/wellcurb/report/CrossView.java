package org.wellcurb.report;

import java.util.List;
import java.util.Map;
import org.wellcurb.crosscheck.CrossResult;
import org.wellcurb.crosscheck.Seen;

/**
 * What only the whole batch shows, with the numbers of the records that it names.
 *
 * @param result what was found
 * @param rules how the batch stands to each rule that could be told, in the packs' order
 * @param asks entries that would settle most of what cannot be told, most useful first
 * @param askedOf records over which that was counted, drawn from the whole batch
 * @param ids number of each record named, by its place in the batch
 */
public record CrossView(
    CrossResult result,
    List<RuleCount> rules,
    List<AskLine> asks,
    long askedOf,
    Map<Integer, String> ids) {
  public CrossView {
    rules = List.copyOf(rules);
    asks = List.copyOf(asks);
    ids = Map.copyOf(ids);
  }

  /** The number of a record, or its place in its file where it is not known. */
  String id(Seen seen) {
    return ids.getOrDefault(seen.place(), seen.file() + ":" + seen.row());
  }
}
