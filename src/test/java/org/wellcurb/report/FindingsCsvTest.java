package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.quantity.Units;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;

/** A number and its unit stand in cells of their own, whatever was compared. */
class FindingsCsvTest {
  private static List<String> cells(Deciding deciding) throws Exception {
    Rule rule = PackLoader.load("common-practice").rules().get(0);
    ByteText out = new ByteText();
    FindingsCsv.put(out, new Finding("W1", "f.csv", 2, "p", rule, deciding, "", 0, Double.NaN));
    String[] cells = out.toString().strip().split(",", -1);
    int last = cells.length - 1;
    return List.of(cells[last - 4], cells[last - 3], cells[last - 2], cells[last - 1]);
  }

  @Test
  void aRangeStandsWithoutItsUnit() throws Exception {
    Deciding range =
        new Deciding(
            "setback.septic_tank",
            "40-60 ft",
            40,
            Units.FOOT,
            75,
            -35,
            "40 ft to 60 ft",
            "",
            false,
            "",
            "",
            false,
            -15);
    assertEquals(List.of("40 to 60", "ft", "75", "-35"), cells(range));
  }

  @Test
  void theMarginOfDatesIsInDays() throws Exception {
    Deciding day =
        new Deciding("dates.received", "", 20000, null, 19977, -23, "", "", /* isDate= */ true);
    assertEquals(List.of("2024-10-04", "day", "2024-09-11", "-23"), cells(day));
  }
}
