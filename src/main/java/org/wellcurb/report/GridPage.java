package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wellcurb.report.words.Words;
import org.wellcurb.screening.Tally;

/**
 * The grid of rules by contractors as the batch page shows it.
 *
 * @param columns the contractors
 * @param rows the rules
 * @param empty how many rules no contractor shown falls short of, as a sentence; empty if none
 * @param cut what is left out, as a sentence; empty where nothing is
 */
public record GridPage(List<Column> columns, List<Row> rows, String empty, String cut) {
  private static final int WIDTH = 44;

  /** How many times the share of all records is much. */
  private static final double MUCH = 2;

  /** Findings that are too few to be much. */
  private static final int LEAST_MUCH = 5;

  public GridPage {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * A contractor.
   *
   * @param name the licence
   * @param records records that name it, as a phrase
   * @param few whether these are too few for shares to say much
   */
  public record Column(String name, String records, boolean few) {}

  /**
   * A rule.
   *
   * @param title what it asks
   * @param pack id of its pack
   * @param all findings of all licences
   * @param share their share of all records, in percent
   * @param cells one a column
   */
  public record Row(String title, String pack, long all, String share, List<Cell> cells) {
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * Where a rule and a contractor meet.
   *
   * @param count findings
   * @param share their share of the contractor's records, in percent; empty where there are none
   * @param isMuch whether the records are enough, and the share twice that of all records
   * @param bar their share of the contractor's records as a bar, as SVG
   */
  public record Cell(long count, String share, boolean isMuch, String bar) {}

  static GridPage of(GridView view, List<Tally> tallies, Words words) {
    List<Column> columns = new ArrayList<>();
    for (ContractorLine line : view.contractors()) {
      boolean isFew = line.records() < GridView.FEW;
      String name = line.licence().isEmpty() ? words.say("contractors.none") : line.licence();
      String records = words.count(isFew ? "grid.few" : "grid.records", line.records());
      columns.add(new Column(name, records, isFew));
    }
    List<Row> rows = new ArrayList<>();
    for (GridView.Row row : view.rows()) {
      List<Cell> cells = new ArrayList<>();
      for (int i = 0; i < columns.size(); i++) {
        long count = row.counts().get(i);
        long records = view.contractors().get(i).records();
        boolean isMuch =
            records >= GridView.FEW
                && count >= LEAST_MUCH
                && share(count, records) >= MUCH * share(row.all(), view.records());
        String share = count == 0 ? "" : percent(count, records, words);
        cells.add(new Cell(count, share, isMuch, bar(count, records)));
      }
      Tally tally = tallies.get(row.pack());
      String title = tally.pack().rules().get(row.rule()).title();
      rows.add(
          new Row(
              title,
              tally.pack().id(),
              row.all(),
              percent(row.all(), view.records(), words),
              cells));
    }
    List<Row> told =
        rows.stream()
            .filter(row -> row.cells().stream().anyMatch(cell -> cell.count() > 0))
            .toList();
    int left = rows.size() - told.size();
    String empty = left == 0 ? "" : words.count("grid.empty", left);
    boolean isCut = rows.size() < view.rules() || columns.size() < view.licences();
    String cut =
        isCut
            ? words.say(
                "grid.cut",
                rows.size(),
                view.rules(),
                columns.size(),
                view.licences(),
                Cap.GRID_RULES.rest())
            : "";
    return new GridPage(columns, told, empty, cut);
  }

  private static double share(long count, long records) {
    return records == 0 ? 0 : Math.min(1, (double) count / records);
  }

  private static String percent(long count, long records, Words words) {
    return words.say("percent", Rates.percent(share(count, records), words));
  }

  /** The share as a filled bar; where the records are few, as an open one with broken edges. */
  private static String bar(long count, long records) {
    if (count == 0 || records == 0) {
      return "";
    }
    double share = share(count, records);
    return String.format(
        Locale.ROOT,
        "<svg class=\"bar%s\" viewBox=\"0 0 %d 10\" width=\"%d\" height=\"10\""
            + " aria-hidden=\"true\" focusable=\"false\"><rect class=\"track\" x=\"0.5\" y=\"1.5\""
            + " width=\"%d\" height=\"7\"/><rect class=\"share\" x=\"0.5\" y=\"1.5\" width=\"%.1f\""
            + " height=\"7\"/></svg>",
        records < GridView.FEW ? " few" : "",
        WIDTH,
        WIDTH,
        WIDTH - 1,
        (WIDTH - 1) * share);
  }
}
