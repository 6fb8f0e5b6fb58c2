package org.wellcurb.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.rulepack.PackScope;

/**
 * A mark that has no meaning, anywhere in a formula: it is told, and so is what stands beside it.
 */
final class StrayMarksTest {
  private static final String SOUND =
      "well.depth >= 50 ft (15 m) and (well.use is one of 'household', 'other' or known(well.tag))";

  private static List<FormulaException> faults(String text) {
    try {
      Formula.condition(text, new PackScope(Map.of(), Map.of()));
      return List.of();
    } catch (FormulaException e) {
      return e.all();
    }
  }

  @Test
  void anywhereItIsToldWithItsPlaceAndAMend() {
    assertEquals(List.of(), faults(SOUND));
    for (char mark : "!&|\"[]≥≤≠−×÷“;.'²٣\\".toCharArray()) {
      for (int at = 0; at <= SOUND.length(); at++) {
        String text = SOUND.substring(0, at) + mark + SOUND.substring(at);
        List<FormulaException> faults = faults(text);
        for (FormulaException fault : faults) {
          assertTrue(0 <= fault.from() && fault.from() <= fault.to(), text);
          assertTrue(fault.to() <= text.length(), text);
          assertTrue(!fault.what().isEmpty() && !fault.mend().isEmpty(), text);
        }
        assertEquals(
            faults.stream().sorted(Comparator.comparingInt(FormulaException::from)).toList(),
            faults,
            text);
        boolean isInQuotes = SOUND.substring(0, at).chars().filter(c -> c == '\'').count() % 2 == 1;
        // A point may make 5.0 of 50.
        assertTrue(!faults.isEmpty() || isInQuotes || mark == '.', text);
      }
    }
  }

  @Test
  void nothingIsSaidTwiceOfOneMark() {
    for (String mark : List.of("&&", "||")) {
      assertEquals(1, faults("well.depth > 5 ft " + mark + " known(well.tag)").size(), mark);
    }
    assertEquals(1, faults("well.depth > 50 ft [15 m]").size());
    assertEquals(1, faults("well.use != 'household'").size());
    assertEquals(1, faults("well.use is “household”").size());
    assertEquals(1, faults("well.depth > 50'").size());
    assertEquals(1, faults("well.depth > 50 ft; and what follows it").size());
  }
}
