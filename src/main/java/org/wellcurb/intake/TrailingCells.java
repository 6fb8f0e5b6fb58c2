package org.wellcurb.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/**
 * Tells a table whose rows end with a delimiter, and its header does not, from one whose rows have
 * a cell too many. Nothing is lost with an empty cell at the end of each row; but where a comma
 * inside a name has parted a cell in two, all cells behind it stand one column too far, and the
 * last may be empty, too.
 */
final class TrailingCells {
  /** Rows that are needed to tell a habit from a slip. */
  private static final int ROWS = 3;

  /** Of so many rows one may be otherwise. */
  private static final int ONE_OF = 10;

  private final CellReader reader;
  private final RecordFiller scratch;

  TrailingCells(Catalogue catalogue) {
    reader = new CellReader(catalogue);
    scratch = new RecordFiller(catalogue);
  }

  /**
   * True if rows with one empty cell more than the header are whole.
   *
   * @param rows the first rows
   * @param columns how many cells the header has
   * @param steps what is read of them
   */
  boolean endRows(List<List<String>> rows, int columns, List<Step> steps) {
    List<List<String>> longer =
        rows.stream().filter(row -> isOneBlankLonger(row, columns)).toList();
    boolean habit = longer.size() >= ROWS && (rows.size() - longer.size()) * ONE_OF <= rows.size();
    return habit && steps.stream().allMatch(step -> fits(step, longer));
  }

  /** How many cells more than the header nearly all rows have; 0 where they do not. */
  static int surplus(List<List<String>> rows, int columns) {
    Map<Integer, Integer> bySize = new HashMap<>();
    rows.forEach(row -> bySize.merge(row.size(), 1, Integer::sum));
    for (Map.Entry<Integer, Integer> size : bySize.entrySet()) {
      int same = size.getValue();
      boolean areNearlyAll = same >= ROWS && (rows.size() - same) * ONE_OF <= rows.size();
      if (areNearlyAll && size.getKey() > columns) {
        return size.getKey() - columns;
      }
    }
    return 0;
  }

  /**
   * The least and the most cells of nearly all rows, where these have more than the header and not
   * all as many; empty where they do not.
   */
  static List<Integer> ragged(List<List<String>> rows, int columns) {
    List<Integer> longer =
        rows.stream().map(List::size).filter(size -> size > columns).sorted().toList();
    boolean habit = longer.size() >= ROWS && (rows.size() - longer.size()) * ONE_OF <= rows.size();
    return habit ? List.of(longer.get(0), longer.get(longer.size() - 1)) : List.of();
  }

  private static boolean isOneBlankLonger(List<String> row, int columns) {
    return row.size() == columns + 1 && HeaderKey.strip(row.get(columns)).isEmpty();
  }

  /**
   * False if most of what stands in its column cannot be what its entry holds, and is so in the
   * next column: then the cells have moved. A code that nobody knows has not.
   */
  private boolean fits(Step step, List<List<String>> rows) {
    Target target = step.target();
    Entry entry = target.entry();
    boolean tells =
        entry.kind().isAmount()
            || entry.kind() == Kind.DATE
            || entry.kind() == Kind.CHOICE
            || entry.kind() == Kind.YES_NO;
    if (!tells || step.columns.length > 1 || step.mapped.isSplit()) {
      return true;
    }
    int filled = 0;
    int unread = 0;
    int moved = 0;
    for (List<String> row : rows) {
      String text = HeaderKey.strip(row.get(step.column()));
      if (!text.isEmpty()) {
        filled++;
        if (!reads(target, text)) {
          unread++;
          String next = HeaderKey.strip(row.get(step.column() + 1));
          moved += !next.isEmpty() && reads(target, next) ? 1 : 0;
        }
      }
    }
    return moved < 2 || unread * 2 <= filled || moved * 2 <= unread;
  }

  private boolean reads(Target target, String text) {
    if (target.words().containsKey(text.toLowerCase(Locale.ROOT))) {
      return true;
    }
    int entry = target.entry().index();
    scratch.clear("", 0);
    reader.read(scratch, entry, text, target.unit(), UnitSystem.US, target.style());
    return scratch.record().state(entry) != WellRecord.UNREADABLE;
  }
}
