package org.wellcurb.intake;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;

/**
 * Finds the delimiter and the header of a table from its beginning.
 *
 * <p>Each delimiter is tried: the one under which most names of some early row are known wins; then
 * the one under which most rows have as many cells as that row, more than one; then the one with
 * more cells; then comma, semicolon, tab, bar.
 */
final class HeaderFinder {
  private static final byte[] DELIMITERS = {',', ';', '\t', '|'};

  /** Rows that are counted: enough to tell, and the same whatever the file goes on to be. */
  private static final int ROWS = 200;

  private HeaderFinder() {}

  /**
   * A header row that was found.
   *
   * @param delimiter what parts the cells
   * @param cells its cells as written
   * @param text the row as it stands
   * @param line its physical line, from 1
   * @param preamble the lines before it
   * @param next place of the first row after it
   * @param nextLine the physical line of that row
   * @param known how many of its names are known
   * @param sample some rows after it, cut into cells
   */
  record Found(
      byte delimiter,
      List<String> cells,
      String text,
      long line,
      List<String> preamble,
      int next,
      long nextLine,
      int known,
      List<List<String>> sample) {}

  private record Row(List<String> cells, int from, int to, int next, long line, long nextLine) {}

  /**
   * The header; null if the text holds no row at all.
   *
   * @param isName tells names that are known
   */
  static @Nullable Found find(byte[] sample, boolean whole, Predicate<String> isName) {
    @Nullable Found best = null;
    double bestEven = 0;
    for (byte delimiter : DELIMITERS) {
      List<Row> rows = rows(sample, whole, delimiter);
      @Nullable Found found = header(sample, rows, delimiter, isName);
      if (found == null) {
        continue;
      }
      double even = even(found);
      boolean better =
          best == null
              || found.known > best.known
              || (found.known == best.known
                  && (even > bestEven
                      || (even == bestEven && found.cells.size() > best.cells.size())));
      if (better) {
        best = found;
        bestEven = even;
      }
    }
    return best;
  }

  /** The share of the rows after the header that have as many cells as it, more than one. */
  private static double even(Found found) {
    int alike = 0;
    for (List<String> row : found.sample) {
      if (row.size() == found.cells.size()) {
        alike++;
      }
    }
    return found.cells.size() < 2 ? 0 : (alike + 1.0) / (found.sample.size() + 1);
  }

  private static @Nullable Found header(
      byte[] sample, List<Row> rows, byte delimiter, Predicate<String> isName) {
    int best = -1;
    int bestKnown = 0;
    for (int i = 0; i < Math.min(rows.size(), Bounds.PREAMBLE); i++) {
      int known = 0;
      for (String cell : rows.get(i).cells) {
        known += isName.test(cell) ? 1 : 0;
      }
      if (known > bestKnown) {
        best = i;
        bestKnown = known;
      }
    }
    if (best < 0) {
      best = widest(rows);
    }
    if (best < 0) {
      return null;
    }
    List<String> preamble = new ArrayList<>();
    for (Row row : rows.subList(0, best)) {
      preamble.add(text(sample, row));
    }
    List<List<String>> after = new ArrayList<>();
    for (Row row : rows.subList(best + 1, rows.size())) {
      after.add(row.cells);
    }
    Row row = rows.get(best);
    return new Found(
        delimiter,
        row.cells,
        text(sample, row),
        row.line,
        preamble,
        row.next,
        row.nextLine,
        bestKnown,
        after);
  }

  /**
   * Where no name is known: the first row with as many cells as most rows have, all of them filled
   * if there is such a row, so that a title above the table is not taken for its header.
   */
  private static int widest(List<Row> rows) {
    Map<Integer, Integer> widths = new HashMap<>();
    int usual = 0;
    for (Row row : rows) {
      int n = widths.merge(row.cells.size(), 1, Integer::sum);
      int most = widths.getOrDefault(usual, 0);
      if (n > most || (n == most && row.cells.size() > usual)) {
        usual = row.cells.size();
      }
    }
    int first = -1;
    for (int i = 0; i < Math.min(rows.size(), Bounds.PREAMBLE); i++) {
      List<String> cells = rows.get(i).cells;
      if (cells.size() == usual) {
        if (cells.stream().noneMatch(c -> HeaderKey.strip(c).isEmpty())) {
          return i;
        }
        first = first < 0 ? i : first;
      }
    }
    return first;
  }

  private static String text(byte[] sample, Row row) {
    return new String(sample, row.from, row.to - row.from, StandardCharsets.UTF_8);
  }

  private static List<Row> rows(byte[] sample, boolean whole, byte delimiter) {
    RowScanner scanner = new RowScanner(delimiter);
    List<Row> rows = new ArrayList<>();
    int at = 0;
    long line = 1;
    while (at < sample.length && rows.size() < ROWS) {
      int status = scanner.scan(sample, at, sample.length, whole);
      if (status == RowScanner.MORE || scanner.next() == RowScanner.MORE) {
        break;
      }
      if (scanner.to() > at && status <= RowMarks.QUOTED) {
        List<String> cells = RowCells.of(sample, at, scanner.to(), (byte) status, delimiter);
        rows.add(new Row(cells, at, scanner.to(), scanner.next(), line, line + scanner.lines()));
      }
      at = scanner.next();
      line += scanner.lines();
    }
    return rows;
  }
}
