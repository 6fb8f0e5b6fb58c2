package org.wellcurb.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.PSI_UNIT;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Form;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;

/** A relief valve that does not hold must not look as if it did. */
final class ReliefOnLadderTest {
  private static final Mark MARK =
      new Mark("A", "finding-a", "Short", List.of("relief.valve_between"));

  private static Form set() {
    return new Form("FW-1")
        .amount("pressure.cut_out", 60, PSI_UNIT)
        .amount("relief.setting", 75, PSI_UNIT)
        .amount("tank.pressure_rating", 100, PSI_UNIT);
  }

  private static Drawing ladder(WellRecord record) {
    return Sketches.drawn(
        Sketches.of(record, Language.EN, UnitsShown.AS_WRITTEN, List.of(MARK), Map.of()), "ladder");
  }

  @Test
  void aSettingThatCanBeCutOffHasAnotherShapeItsLetterAndWords() {
    Drawing drawing = ladder(set().text("relief.valve_between", "yes").record());
    assertEquals(1, Sketches.count(drawing, "setting"), "the cut-out alone");
    assertEquals(1, Sketches.count(drawing, "shut-valve"));
    assertEquals(List.of(MARK), drawing.marks());
    assertTrue(drawing.words().get(1).contains("unless its shut-off valve is closed"));
    assertTrue(Sketches.legend(drawing).contains("While it is closed nothing opens"));
    assertTrue(
        Sketches.legend(drawing)
            .contains("While its shut-off valve is open, the relief valve opens 25 psi below"));
  }

  @Test
  void aSettingThatHoldsIsASetting() {
    Drawing drawing = ladder(set().text("relief.valve_between", "no").record());
    assertEquals(2, Sketches.count(drawing, "setting"));
    assertEquals(0, Sketches.count(drawing, "shut-valve"));
    String legend = Sketches.legend(drawing);
    assertTrue(legend.contains("opens 25 psi below the rating of the tank"), legend);
    assertFalse(legend.contains("does not say"), legend);
    assertTrue(Sketches.legend(ladder(set().record())).contains("does not say whether a shut-off"));
  }

  @Test
  void whetherItStandsAboveARatingIsSaidOrLeftOpen() {
    Form above = set().amount("service_line.pressure_rating", 60, PSI_UNIT);
    String legend = Sketches.legend(ladder(above.record()));
    assertTrue(legend.contains("15 psi above the rating of the service line"), legend);
    Form open = set().range("service_line.pressure_rating", 60, 90, PSI_UNIT, "60-90 psi");
    legend = Sketches.legend(ladder(open.record()));
    assertTrue(legend.contains("leaves open whether the relief valve opens above"), legend);
    Form at = set().amount("service_line.pressure_rating", 75, PSI_UNIT);
    legend = Sketches.legend(ladder(at.record()));
    assertTrue(legend.contains("opens at the rating of the service line"), legend);
  }

  @Test
  void noneFittedIsSaidAtTheTopWithItsLetter() {
    Mark mark = new Mark("B", "finding-b", "None", List.of("relief.fitted"));
    WellRecord record =
        new Form("FW-1")
            .amount("pressure.cut_in", 40, PSI_UNIT)
            .amount("pressure.cut_out", 60, PSI_UNIT)
            .text("relief.fitted", "no")
            .record();
    Drawing drawing =
        Sketches.drawn(
            Sketches.of(record, Language.EN, UnitsShown.AS_WRITTEN, List.of(mark), Map.of()),
            "ladder");
    assertEquals(List.of(mark), drawing.marks());
    assertTrue(drawing.svg().contains(">No relief valve is fitted<"), drawing.svg());
    assertTrue(drawing.svg().contains("One letter in it marks what falls short: B: None</desc>"));
  }
}
