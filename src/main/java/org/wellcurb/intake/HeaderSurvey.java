package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Comma;
import org.wellcurb.record.Catalogue;

/**
 * What an export holds, column by column, and what it probably means.
 *
 * @param file the input
 * @param sheet the sheet of a workbook of several; empty for any other input
 * @param layout how it is laid out
 * @param rows rows counted
 * @param notes what was not counted, and why: repeated headers, totals, rows of too few cells
 * @param forUnknown words of many of its columns that seem to mean that nothing is known
 * @param columns its columns, in order
 * @param layers what of them holds a driller's log
 */
public record HeaderSurvey(
    String file,
    String sheet,
    TableLayout layout,
    long rows,
    List<String> notes,
    List<String> forUnknown,
    List<ColumnGuess> columns,
    List<LayerGuess> layers) {
  public HeaderSurvey {
    notes = List.copyOf(notes);
    forUnknown = List.copyOf(forUnknown);
    columns = List.copyOf(columns);
    layers = List.copyOf(layers);
  }

  /** The same, its columns taken for something else. */
  HeaderSurvey with(List<ColumnGuess> others, List<LayerGuess> log) {
    return new HeaderSurvey(file, sheet, layout, rows, notes, forUnknown, others, log);
  }

  /** How many columns fill an entry by the guess. */
  public long filling() {
    return columns.stream().filter(column -> column.entry() != null).count();
  }

  /** How many columns it was guessed of what they are for. */
  public long known() {
    return columns.stream()
        .filter(column -> column.entry() != null || column.role() != ColumnGuess.Role.ENTRY)
        .count();
  }

  /** Columns whose numbers have decimal commas for sure. */
  public List<ColumnSurvey> withDecimalCommas() {
    return withDecimalCommas(columns);
  }

  private static List<ColumnSurvey> withDecimalCommas(List<ColumnGuess> columns) {
    return columns.stream()
        .map(ColumnGuess::survey)
        .filter(column -> column.comma().isDecimal() && column.numeric() >= 0.5)
        .toList();
  }

  /** True where commas are decimal in several columns, and part thousands in none. */
  boolean hasDecimalCommas() {
    return drafted(columns) != null;
  }

  /**
   * What a map drafted of these columns says of all commas; null where it says nothing: they are
   * decimal in several columns, and part thousands in none.
   */
  static @Nullable Comma drafted(List<ColumnGuess> columns) {
    List<ColumnSurvey> decimal = withDecimalCommas(columns);
    return decimal.size() > 1
            && columns.stream().noneMatch(column -> column.survey().comma() == Comma.THOUSANDS)
        ? decimal.get(0).comma()
        : null;
  }

  /** The order of the dates of all its columns, in words of a map; empty where they differ. */
  String dateOrder() {
    List<String> orders =
        columns.stream()
            .map(ColumnGuess::survey)
            .filter(column -> column.dated() >= 0.5)
            .map(ColumnSurvey::dateOrder)
            .filter(order -> !order.isEmpty() && !order.equals("iso"))
            .distinct()
            .toList();
    return orders.size() == 1 ? orders.get(0) : "";
  }

  /**
   * Looks through a table.
   *
   * @throws IntakeException if it is no table, or has no header
   * @throws IOException if the disk fails
   */
  public static HeaderSurvey of(Input input, Catalogue catalogue) throws IOException {
    try (InputStream in = input.opener().open()) {
      Sampled text = Sampled.of(input, in, TableMap.NONE);
      int first = text.firstByte();
      if (first < 0) {
        throw new IntakeException(input.file() + ": is empty");
      }
      if (input.form() != Form.SHEETS && (first == '{' || first == '[')) {
        throw new IntakeException(
            input.file() + ": is JSON, whose names are keys already; a map is for tables");
      }
      TableOpening opening = new TableOpening(catalogue, text);
      if (opening.surplus() > 0) {
        TableMap wider = TableMap.withMore(opening.surplus());
        opening = new TableOpening(catalogue, wider, text, false, List.of());
      }
      if (!opening.isFound()) {
        throw new IntakeException(input.file() + ": " + opening.problem());
      }
      ColumnPlan plan = opening.plan();
      List<ColumnSurvey> columns = new ArrayList<>();
      for (Column column : plan.layout.columns()) {
        columns.add(
            new ColumnSurvey(
                column.name(),
                opening.comma(column.index()),
                opening.thousandPoint(column.index())));
      }
      TreeMap<String, Long> aside = new TreeMap<>();
      long rows = count(opening, plan, columns, aside);
      List<String> notes = new ArrayList<>();
      if (!text.why().isEmpty()) {
        notes.add(text.why());
      }
      notes.addAll(opening.rowsBeyond());
      int more = plan.layout.moreColumns();
      if (more > 0) {
        notes.add(
            "nearly all rows go on beyond the header: the last "
                + (more == 1 ? "column has" : more + " columns have")
                + " no name; look whether a comma or the like within a cell has parted it in two");
      }
      aside.forEach(
          (reason, count) ->
              notes.add(count + (count == 1 ? " row is none: " : " rows are none: ") + reason));
      String sheet = input.file().endsWith("!" + input.sheet()) ? input.sheet() : "";
      ColumnGuesser guesser = new ColumnGuesser(catalogue);
      List<ColumnGuess> guesses = guesser.guess(columns);
      List<LayerGuess> layers = LayerGroups.of(guesses);
      guesses = LayerGroups.said(guesses, layers);
      return new HeaderSurvey(
          input.file(), sheet, plan.layout, rows, notes, guesser.forUnknown(), guesses, layers);
    } catch (CutShort e) {
      throw new IntakeException(input.file() + ": " + e.reason());
    }
  }

  /** Counts the cells of all rows that a reader would take. */
  private static long count(
      TableOpening opening,
      ColumnPlan plan,
      List<ColumnSurvey> columns,
      TreeMap<String, Long> aside)
      throws IOException {
    RowView view = new RowView(plan.columns);
    long rows = 0;
    try (RowSplitter splitter =
        new RowSplitter(
            opening.rows(),
            new RowScanner(plan.delimiter, plan.usualCells()),
            opening.firstLine(),
            RowSplitter.CHUNK)) {
      for (CutRows cut = splitter.next(); cut != null; cut = splitter.next()) {
        for (int i = 0; i < cut.marks.count(); i++) {
          @Nullable Fault fault = RowFault.show(cut, i, view, plan);
          fault = fault == null ? RowFault.ofHeaderOrTotal(view, plan) : fault;
          if (fault != null) {
            aside.merge(fault.reason(), 1L, Long::sum);
            continue;
          }
          rows++;
          for (int c = 0; c < plan.columns; c++) {
            columns.get(c).add(view.text(c));
          }
        }
      }
    }
    return rows;
  }
}
