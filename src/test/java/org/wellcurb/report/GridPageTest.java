package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.Words;

/** The grid says its numbers, how few they are, and what it leaves out. */
final class GridPageTest {
  @Test
  void fewRecordsAreSaidAndDrawnSo() {
    BatchView batch = Batches.of(4, "D-");
    GridPage grid = GridPage.of(batch.grid(), batch.tallies(), Words.in(Language.EN));
    for (int i = 0; i < grid.columns().size(); i++) {
      boolean isFew = batch.grid().contractors().get(i).records() < GridView.FEW;
      assertEquals(isFew, grid.columns().get(i).few());
      assertEquals(isFew, grid.columns().get(i).records().endsWith("few"));
      for (GridPage.Row row : grid.rows()) {
        GridPage.Cell cell = row.cells().get(i);
        assertEquals(cell.count() == 0, cell.bar().isEmpty());
        assertEquals(cell.count() == 0, cell.share().isEmpty());
        long records = batch.grid().contractors().get(i).records();
        // All have 20 findings of 180 records.
        assertEquals(
            !isFew && cell.count() >= 5 && cell.count() * 180 >= 2 * 20 * records, cell.isMuch());
        assertEquals(isFew && cell.count() > 0, cell.bar().contains("bar few"));
      }
    }
    assertTrue(grid.cut().contains("10 of 11 contractors"), grid.cut());
  }

  @Test
  void aWholeGridSaysNoCut() {
    BatchView batch = Batches.of(4, "D-");
    GridView all = new GridView(batch.grid().contractors(), batch.grid().rows(), 10, 3, 90);
    assertEquals("", GridPage.of(all, batch.tallies(), Words.in(Language.FR)).cut());
    GridView none = new GridView(List.of(), List.of(), 0, 0, 0);
    assertTrue(GridPage.of(none, batch.tallies(), Words.in(Language.FR)).rows().isEmpty());
  }
}
