package org.wellcurb.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Entry;

/**
 * A table of limits: the first row whose cells all match gives its value.
 *
 * @param name what formulas call it
 * @param by the entries that choose the row
 * @param gives dimension of its values; null where it gives words
 * @param rows its rows, in order
 * @param title what the pack calls it, for people; may be empty
 * @param source name of the source that it stands in; empty where that is not said
 * @param standsFor key of the entry whose place it takes; empty where it takes none's
 */
public record Table(
    String name,
    List<Entry> by,
    @Nullable Dimension gives,
    List<Row> rows,
    String title,
    String source,
    String standsFor) {

  /** A table that says no more than its rows. */
  public Table(String name, List<Entry> by, @Nullable Dimension gives, List<Row> rows) {
    this(name, by, gives, rows, "", "", "");
  }

  public Table {
    by = List.copyOf(by);
    rows = List.copyOf(rows);
  }

  /**
   * One row.
   *
   * @param cells one for each key entry
   * @param value what it gives
   */
  public record Row(List<Cell> cells, Value value) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /** What a key must be for the row to match. */
  public sealed interface Cell {}

  /** {@code *}: any. */
  public record Any() implements Cell {}

  /**
   * One of these words; for yes-no {@code yes} and {@code no}.
   *
   * @param words the words in lower case, as they are compared
   * @param shown the same as the pack writes them
   */
  public record Words(List<String> words, List<String> shown) implements Cell {
    public Words {
      words = List.copyOf(words);
      shown = List.copyOf(shown);
    }

    /** Words that are written as they are compared. */
    public Words(List<String> words) {
      this(words, words);
    }
  }

  /**
   * An amount within these ends, in SI.
   *
   * @param range the ends, infinite where open
   * @param loIncluded whether the least value belongs to it
   * @param hiIncluded whether the greatest value belongs to it
   */
  public record Range(Interval range, boolean loIncluded, boolean hiIncluded) implements Cell {}

  /** What a row gives. */
  public sealed interface Value {}

  /**
   * A word.
   *
   * @param word in lower case, as it is compared
   * @param shown as the pack writes it
   */
  public record Word(String word, String shown) implements Value {}

  /**
   * An amount, or two: the figure outside the brackets and the one inside.
   *
   * @param primary in SI
   * @param unit unit it is written in
   * @param bracket in SI; NaN if it is not dual
   * @param bracketUnit unit of the bracketed figure; null if it is not dual
   */
  public record Amount(double primary, Unit unit, double bracket, @Nullable Unit bracketUnit)
      implements Value {}
}
