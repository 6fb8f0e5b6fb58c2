package org.wellcurb.report;

import java.util.Map;
import org.wellcurb.crosscheck.CrossResult;
import org.wellcurb.crosscheck.Seen;

/**
 * What only the whole batch shows, with the numbers of the records that it names.
 *
 * @param result what was found
 * @param ids number of each record named, by its place in the batch
 */
public record CrossView(CrossResult result, Map<Integer, String> ids) {
  public CrossView {
    ids = Map.copyOf(ids);
  }

  /** The number of a record, or its place in its file where it is not known. */
  String id(Seen seen) {
    return ids.getOrDefault(seen.place(), seen.file() + ":" + seen.row());
  }
}
