package org.wellcurb.intake;

import java.util.ArrayList;
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
 * @param unitFrom the column that names the unit row by row; empty where none does
 * @param join how it makes one value with the columns behind it, in words of a header map; empty
 *     where it stands for itself
 * @param joined the names of those columns
 * @param bottom the entry of the lower end where its cells hold both ends of an interval; null
 *     where they do not
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
    String unitFrom,
    String join,
    List<String> joined,
    @Nullable Entry bottom,
    String dates,
    int pivot,
    List<String> unknown,
    Map<String, String> words,
    String why,
    List<String> doubts) {
  /** How the doubt about a unit begins that nothing states. */
  static final String UNSAID = "nothing states its unit";

  /** True where nothing states the unit of its numbers. */
  boolean isUnitUnsaid() {
    return doubts.stream().anyMatch(doubt -> doubt.startsWith(UNSAID));
  }

  /** The same, with its units named by another column, which may be blank in some rows. */
  ColumnGuess withUnitFrom(ColumnSurvey column) {
    List<String> left =
        new ArrayList<>(doubts.stream().filter(doubt -> !doubt.startsWith(UNSAID)).toList());
    long blank = column.rows() - column.filled();
    if (blank > 0) {
      String taken = unit == null ? "" : "; " + unit.symbol() + " is a guess there";
      String rows = blank == 1 ? " row" : " rows";
      left.add(column.name() + " is blank in " + blank + rows + taken);
    }
    String said = why + "; " + column.name() + " names the unit row by row";
    String from = column.name();
    return new ColumnGuess(
        survey, entry, unit, from, join, joined, bottom, dates, pivot, unknown, words, said, left);
  }

  /** The same, with one doubt more. */
  ColumnGuess withDoubt(String doubt) {
    List<String> more = new ArrayList<>(doubts);
    more.add(doubt);
    return new ColumnGuess(
        survey, entry, unit, unitFrom, join, joined, bottom, dates, pivot, unknown, words, why,
        more);
  }

  /** The same, made of several columns. */
  ColumnGuess withJoined(String how, List<String> columns) {
    String said = why + "; " + String.join(", ", columns) + " say the rest of it";
    List<String> left =
        new ArrayList<>(doubts.stream().filter(doubt -> !doubt.startsWith(UNSAID)).toList());
    return new ColumnGuess(
        survey, entry, unit, "", how, columns, bottom, dates, pivot, unknown, words, said, left);
  }

  /** The same, its cells holding the upper and the lower end. */
  ColumnGuess withEnds(Entry top, Entry lower) {
    String said = why + "; its cells hold both ends";
    return new ColumnGuess(
        survey, top, unit, "", join, joined, lower, dates, pivot, unknown, words, said, doubts);
  }

  /** A part of a position, which its header alone would not tell. */
  ColumnGuess of(Entry position) {
    String said = "its header and that of the next are parts of " + position.key();
    return new ColumnGuess(
        survey, position, null, "", "", List.of(), null, "", 0, unknown, Map.of(), said, doubts);
  }

  /** Nothing of its own: it is joined to another column. */
  ColumnGuess joinedTo(String column) {
    String said = "it says the rest of " + column;
    return new ColumnGuess(
        survey, null, null, "", "", List.of(), null, "", 0, List.of(), Map.of(), said, List.of());
  }

  /** True where it says the rest of another column. */
  boolean isJoined() {
    return why.startsWith("it says the rest of ");
  }

  public ColumnGuess {
    joined = List.copyOf(joined);
    unknown = List.copyOf(unknown);
    words = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(words));
    doubts = List.copyOf(doubts);
  }
}
