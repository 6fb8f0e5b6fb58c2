package org.wellcurb.intake;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;

/**
 * What a column probably is. Nothing is done with a guess until someone saves it in a map.
 *
 * @param survey what stands in it
 * @param entry the entry that it probably fills; null where nothing is like it
 * @param unit the unit of its numbers; null where they need none
 * @param dates the order of its dates, in words of a header map; empty where it cannot be told
 * @param pivot the first year of two-digit years; 0 where there are none
 * @param unknown texts that look as if they meant unknown
 * @param words texts that are no choice of the entry, and the choice that is nearest; empty where
 *     none is
 * @param why why the entry and the unit were guessed
 * @param doubts what somebody should look at
 */
public record ColumnGuess(
    ColumnSurvey survey,
    @Nullable Entry entry,
    @Nullable Unit unit,
    String dates,
    int pivot,
    List<String> unknown,
    Map<String, String> words,
    String why,
    List<String> doubts) {
  public ColumnGuess {
    unknown = List.copyOf(unknown);
    words = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(words));
    doubts = List.copyOf(doubts);
  }
}
