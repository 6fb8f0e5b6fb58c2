package org.wellcurb.intake;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
  private static final char[] DELIMITERS = {',', ';', '\t', '|'};

  /** Rows that are counted: enough to tell, and the same whatever the file goes on to be. */
  private static final int ROWS = 200;

  private final byte[] sample;
  private final boolean whole;
  private final TableForm form;
  private final Predicate<String> isName;

  private HeaderFinder(byte[] sample, boolean whole, TableForm form, Predicate<String> isName) {
    this.sample = sample;
    this.whole = whole;
    this.form = form;
    this.isName = isName;
  }

  /**
   * A header that was found.
   *
   * @param delimiter what parts the cells
   * @param cells its cells as written; where it is on two lines, brought together
   * @param text the header as it stands
   * @param line its last physical line, from 1; 0 if the table has no header
   * @param preamble the lines before it, blank ones too
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

  /** A candidate: rows {@code first} to {@code last} are the header. */
  private record Header(int first, int last, List<String> cells, int known) {
    /** How many columns have a name. */
    long named() {
      return cells.stream().filter(c -> !HeaderKey.strip(c).isEmpty()).count();
    }
  }

  /**
   * The header; null if the text holds no row that can be one.
   *
   * @param form what is known beforehand
   * @param isName tells names that are known
   */
  static @Nullable Found find(
      byte[] sample, boolean whole, TableForm form, Predicate<String> isName) {
    return new HeaderFinder(sample, whole, form, isName).find();
  }

  private @Nullable Found find() {
    @Nullable Found best = null;
    double bestEven = 0;
    for (char delimiter : form.delimiter() == 0 ? DELIMITERS : new char[] {form.delimiter()}) {
      List<Row> rows = rows((byte) delimiter);
      @Nullable Header header = header(rows);
      if (header == null) {
        continue;
      }
      Found found = found((byte) delimiter, rows, header);
      double even = even(found);
      boolean better =
          best == null
              || found.known > best.known
              || (found.known == best.known && isBetter(found, even, best, bestEven));
      if (better) {
        best = found;
        bestEven = even;
      }
    }
    return best;
  }

  /** Of headers of which as many names are known; figures are no names. */
  private static boolean isBetter(Found found, double even, Found best, double bestEven) {
    boolean figures = HeaderLines.haveFigures(found.cells);
    if (figures != HeaderLines.haveFigures(best.cells) && found.known == 0) {
      return !figures && even > 0;
    }
    return even > bestEven || (even == bestEven && found.cells.size() > best.cells.size());
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

  private @Nullable Header header(List<Row> rows) {
    if (form.hasNoHeader()) {
      return rows.isEmpty() ? null : new Header(0, -1, blanks(rows.get(0).cells.size()), 1);
    }
    @Nullable Header best = null;
    for (Header header : candidates(rows)) {
      if (best == null
          || header.known > best.known
          || (header.known == best.known && header.known > 0 && header.named() > best.named())) {
        best = header;
      }
    }
    return best == null || best.known > 0 || form.headerLine() > 0 ? best : widest(rows);
  }

  private List<Header> candidates(List<Row> rows) {
    List<Header> candidates = new ArrayList<>();
    for (int i = 0; i < rows.size() && (i < Bounds.PREAMBLE || form.headerLine() > 0); i++) {
      if (form.headerLine() > 0 && rows.get(i).line != form.headerLine()) {
        continue;
      }
      List<String> cells = rows.get(i).cells;
      candidates.add(new Header(i, i, cells, known(cells)));
      List<String> both = i == 0 ? null : HeaderLines.together(rows.get(i - 1).cells, cells);
      if (both != null) {
        candidates.add(new Header(i - 1, i, both, known(both)));
      }
      List<String> grouped = i == 0 ? null : HeaderLines.grouped(rows.get(i - 1).cells, cells);
      if (grouped != null) {
        candidates.add(new Header(i - 1, i, grouped, known(grouped)));
      }
    }
    return candidates;
  }

  private int known(List<String> cells) {
    int known = 0;
    for (String cell : cells) {
      known += isName.test(cell) ? 1 : 0;
    }
    return known;
  }

  private static List<String> blanks(int count) {
    List<String> blanks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      blanks.add("");
    }
    return blanks;
  }

  private Found found(byte delimiter, List<Row> rows, Header header) {
    List<String> preamble = new ArrayList<>();
    long line = 1;
    for (Row row : rows.subList(0, header.first)) {
      line = blankLines(line, row, preamble);
      preamble.add(text(row));
    }
    List<List<String>> after = new ArrayList<>();
    for (Row row : rows.subList(header.last + 1, rows.size())) {
      after.add(row.cells);
    }
    List<String> lines = new ArrayList<>();
    for (Row row : rows.subList(header.first, header.last + 1)) {
      line = blankLines(line, row, lines.isEmpty() ? preamble : lines);
      lines.add(text(row));
    }
    @Nullable Row last = header.last < 0 ? null : rows.get(header.last);
    List<String> cells = new ArrayList<>(header.cells);
    cells.addAll(blanks(form.moreColumns()));
    return new Found(
        delimiter,
        cells,
        String.join("\n", lines),
        last == null ? 0 : last.line,
        preamble,
        last == null ? 0 : last.next,
        last == null ? 1 : last.nextLine,
        header.known,
        after);
  }

  /**
   * Adds the blank lines between {@code line} and a row, so that a header whose line a map names
   * keeps it wherever the lines above it are written again; gives the line behind the row.
   */
  private static long blankLines(long line, Row row, List<String> into) {
    for (long i = line; i < row.line; i++) {
      into.add("");
    }
    return row.nextLine;
  }

  /**
   * Where no name is known: the first row with as many cells as most rows have, all of them filled
   * if there is such a row, so that a title above the table is not taken for its header.
   */
  private @Nullable Header widest(List<Row> rows) {
    int usual = usualWidth(rows);
    @Nullable Header first = null;
    for (Header header : candidates(rows)) {
      if (isNarrow(header, usual)) {
        return header;
      }
      if (header.cells.size() == usual) {
        if (header.cells.stream().noneMatch(c -> HeaderKey.strip(c).isEmpty())) {
          return withGroups(rows, header);
        }
        first = first == null ? header : first;
      }
    }
    return first;
  }

  /**
   * True of names alone above rows of more cells: a row of figures is no header, and what stands
   * above it would be lost.
   */
  private boolean isNarrow(Header header, int usual) {
    int size = header.cells.size();
    Set<String> names = new HashSet<>();
    header.cells.forEach(cell -> names.add(ColumnName.fold(cell)));
    return size > 1
        && size < usual
        && size * 2 >= usual
        && names.size() == size
        && !names.contains("")
        && !HeaderLines.haveFigures(header.cells);
  }

  /** The header with the groups above it, if such a line is there. */
  private Header withGroups(List<Row> rows, Header header) {
    if (header.last == 0) {
      return header;
    }
    List<String> above = rows.get(header.last - 1).cells;
    @Nullable List<String> grouped = HeaderLines.grouped(above, rows.get(header.last).cells);
    boolean whole =
        grouped != null && grouped.stream().noneMatch(c -> HeaderKey.strip(c).isEmpty());
    return grouped != null && whole ? new Header(header.last - 1, header.last, grouped, 0) : header;
  }

  private static int usualWidth(List<Row> rows) {
    Map<Integer, Integer> widths = new HashMap<>();
    int usual = 0;
    for (Row row : rows) {
      int n = widths.merge(row.cells.size(), 1, Integer::sum);
      int most = widths.getOrDefault(usual, 0);
      if (n > most || (n == most && row.cells.size() > usual)) {
        usual = row.cells.size();
      }
    }
    return usual;
  }

  private String text(Row row) {
    return new String(sample, row.from, row.to - row.from, StandardCharsets.UTF_8);
  }

  private List<Row> rows(byte delimiter) {
    RowScanner scanner = new RowScanner(delimiter);
    List<Row> rows = new ArrayList<>();
    int at = 0;
    long line = 1;
    while (at < sample.length && rows.size() < ROWS) {
      int status = scanner.scan(sample, at, sample.length, whole);
      if (status == Cutter.MORE || scanner.next() == Cutter.MORE) {
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
