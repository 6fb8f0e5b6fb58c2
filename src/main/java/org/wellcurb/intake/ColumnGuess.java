package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;

/**
 * What a column probably is. Nothing is done with a guess until someone saves it in a map.
 *
 * @param survey what stands in it
 * @param role what it is for
 * @param entry the entry that it probably fills; null where nothing is like it
 * @param written how its cells are written
 * @param join how it makes one value with the columns behind it, in words of a header map; empty
 *     where it stands for itself
 * @param joined the names of those columns
 * @param bottom the entry of the lower end where its cells hold both ends of an interval; null
 *     where they do not
 * @param why why the entry and the unit were guessed
 * @param doubts what somebody should look at, beside a unit that nothing states, or that changes
 */
public record ColumnGuess(
    ColumnSurvey survey,
    Role role,
    @Nullable Entry entry,
    WrittenGuess written,
    String join,
    List<String> joined,
    @Nullable Entry bottom,
    String why,
    List<String> doubts) {
  /** Units that a crew may change between; figures of another kind lie apart by themselves. */
  private static final Set<Unit> FEET_OR_METRES = Set.of(Units.FOOT, Units.METRE);

  /** What a column is for. */
  public enum Role {
    /** It fills its entry, or nothing. */
    ENTRY,
    /** It says the rest of another column. */
    REST,
    /** It names the units of others. */
    UNITS,
    /** It is the top, the bottom or the material of a layer. */
    LAYER
  }

  public ColumnGuess {
    joined = List.copyOf(joined);
    doubts = List.copyOf(doubts);
  }

  /** A column that fills one entry by itself. */
  ColumnGuess(
      ColumnSurvey survey,
      @Nullable Entry entry,
      WrittenGuess written,
      String why,
      List<String> doubts) {
    this(survey, Role.ENTRY, entry, written, "", List.of(), null, why, doubts);
  }

  /** The unit of its numbers; null where they need none. */
  public @Nullable Unit unit() {
    return written.unit();
  }

  /** All that somebody should look at. */
  public List<String> toLookAt() {
    List<String> all = new ArrayList<>(doubts);
    Unit unit = unit();
    if (unit != null
        && FEET_OR_METRES.contains(unit)
        && written.unitFrom().isEmpty()
        && survey.changesUnit()) {
      all.add(
          "the last figures lie a factor of about 3.28 from the first: feet above and metres"
              + " below, or the other way?");
    }
    if (written.isUnitUnsaid() && unit != null) {
      all.add("nothing states its unit; " + unit.symbol() + " is a guess");
    }
    return all;
  }

  /** The same, with its units named by another column, which may be blank in some rows. */
  ColumnGuess withUnitFrom(ColumnSurvey column) {
    List<String> more = new ArrayList<>(doubts);
    long blank = column.rows() - column.filled();
    if (blank > 0) {
      Unit unit = unit();
      String taken = unit == null ? "" : "; " + unit.symbol() + " is a guess there";
      String rows = blank == 1 ? " row" : " rows";
      more.add(column.name() + " is blank in " + blank + rows + taken);
    }
    String said = why + "; " + column.name() + " names the unit row by row";
    WrittenGuess from = written.withUnitFrom(column.name());
    return new ColumnGuess(survey, role, entry, from, join, joined, bottom, said, more);
  }

  /** The same, with one doubt more. */
  ColumnGuess withDoubt(String doubt) {
    List<String> more = new ArrayList<>(doubts);
    more.add(doubt);
    return new ColumnGuess(survey, role, entry, written, join, joined, bottom, why, more);
  }

  /** The same, but for its entry: a person has to say which it is. */
  ColumnGuess leftOpen(String reason) {
    return new ColumnGuess(survey, role, null, written, join, joined, null, reason, doubts);
  }

  /** The same, made of several columns. */
  ColumnGuess withJoined(String how, List<String> columns) {
    String said =
        why + "; " + String.join(", ", columns) + (columns.size() == 1 ? " says" : " say");
    return new ColumnGuess(
        survey,
        role,
        entry,
        written.withUnitSaid(),
        how,
        columns,
        bottom,
        said + " the rest of it",
        doubts);
  }

  /** The same, its cells holding the upper and the lower end. */
  ColumnGuess withEnds(Entry top, Entry lower) {
    String said = why + "; its cells hold both ends";
    return new ColumnGuess(survey, role, top, written, join, joined, lower, said, doubts);
  }

  /** A part of a position, which its header alone would not tell. */
  ColumnGuess of(Entry position) {
    String said = "its header and that of the next are parts of " + position.key();
    return new ColumnGuess(survey, position, WrittenGuess.NONE, said, doubts);
  }

  /** Nothing of its own: it is joined to another column. */
  ColumnGuess joinedTo(String column) {
    return as(Role.REST, "it says the rest of " + column);
  }

  /** Nothing of its own, but something for others. */
  ColumnGuess as(Role other, String said) {
    return new ColumnGuess(
        survey, other, null, WrittenGuess.NONE, "", List.of(), null, said, List.of());
  }
}
