package org.wellcurb.report;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How one column of an input was read: what was understood of it, and what became of each of its
 * cells. The five counts add up to {@link InputLine#rowsCounted}.
 *
 * @param name its header as written; for JSON the name
 * @param entry key of the entry that it fills; empty if it fills none
 * @param unit unit of its bare numbers; empty if nothing states one
 * @param said what else is to be said of the column, such as the key that was perhaps meant
 * @param given cells with a value
 * @param blank cells with nothing
 * @param unknown cells that say that it is not known
 * @param notApplicable cells that say that it does not apply
 * @param unreadable cells that could not be read
 * @param units values by the unit they were written in, where there is more than one
 * @param notes cells of which this was said, by key of the bundle
 * @param doubts what makes one doubt that it was read as it was meant
 * @param codes its codes, or the texts among its figures that are none, those met most often first
 */
public record ColumnLine(
    String name,
    String entry,
    String unit,
    String said,
    long given,
    long blank,
    long unknown,
    long notApplicable,
    long unreadable,
    Map<String, Long> units,
    Map<String, Long> notes,
    List<ColumnDoubt> doubts,
    List<CodeLine> codes) {

  public ColumnLine {
    units = Collections.unmodifiableMap(new LinkedHashMap<>(units));
    doubts = List.copyOf(doubts);
    codes = List.copyOf(codes);
    notes = Collections.unmodifiableMap(new LinkedHashMap<>(notes));
  }
}
