package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wellcurb.report.drawing.Limit;

/** Which limit is drawn where two rules set one for the same entry. */
final class DrawnLimitsTest {
  private static Limit open(double si) {
    return Limit.of(si).open(List.of(new Limit.Way(si, "if it applies")));
  }

  private static void bothWays(Limit expected, Limit one, Limit other) {
    assertEquals(expected, DrawnLimits.farther(one, other));
    assertEquals(expected, DrawnLimits.farther(other, one));
  }

  @Test
  void ofTwoThatBindItIsTheFarther() {
    bothWays(Limit.of(30), Limit.of(30), Limit.of(15));
    bothWays(Limit.said("what the rule asks"), Limit.said("what the rule asks"), Limit.of(15));
  }

  @Test
  void oneThatMayNotBindHidesNoneThatDoes() {
    bothWays(Limit.of(30), Limit.of(30), open(15));
    bothWays(Limit.of(30), Limit.of(30), open(30));
  }

  @Test
  void oneThatMayNotBindStandsBesideANearerOneThatDoes() {
    Limit expected =
        Limit.of(30).open(List.of(new Limit.Way(30, "if it applies"), new Limit.Way(15, "")));
    bothWays(expected, Limit.of(15), open(30));
    assertTrue(expected.isOpen());
    assertEquals(30, expected.si());
  }

  @Test
  void eachWayOfTheOneThatBindsIsKept() {
    Limit certain = Limit.of(List.of(new Limit.Way(20, "on a slope"), new Limit.Way(10, "else")));
    Limit drawn = DrawnLimits.farther(open(30), certain);
    assertEquals(List.of(30.0, 20.0, 10.0), drawn.ways().stream().map(Limit.Way::si).toList());
    assertFalse(DrawnLimits.farther(open(20), certain).isOpen());
  }
}
