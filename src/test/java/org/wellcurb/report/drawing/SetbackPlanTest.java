package org.wellcurb.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.METRE;
import static org.wellcurb.report.drawing.Sketches.count;
import static org.wellcurb.report.drawing.Sketches.legend;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Form;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;

/** Distances around the well: limits with what they hang on, and near ones beside far ones. */
final class SetbackPlanTest {
  private static final Pattern DOT =
      Pattern.compile("<circle class=\"hub\" cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"3\"");

  private static Drawing plan(WellRecord record, Map<String, Limit> limits) {
    return Sketches.drawn(
        Sketches.of(record, Language.EN, UnitsShown.AS_WRITTEN, List.of(), limits), "plan");
  }

  @Test
  void noWayOfSeveralStandsForTheWholeRule() {
    Limit limit =
        Limit.of(List.of(new Limit.Way(30, ""), new Limit.Way(20, "the casing is at least 12 m")));
    WellRecord record = new Form("T").amount("setback.absorption_field", 25, METRE).record();
    Drawing plan = plan(record, Map.of("setback.absorption_field", limit));
    assertEquals(
        List.of("absorption field: 25 m, limit 30 m, or 20 m where the casing is at least 12 m"),
        plan.words());
    assertEquals(1, count(plan, "limit"));
    assertEquals(1, count(plan, "limit-if"));
    assertTrue(legend(plan).contains("A limit under conditions"), legend(plan));
  }

  /** The numbers of the rings stand at the top: no dot and no number of a distance meets them. */
  @Test
  void twentyDistancesLeaveTheNumbersOfTheRingsFree() {
    Form form = new Form("T");
    int metres = 8;
    for (Entry entry : Catalogue.standard().entries()) {
      if (entry.key().startsWith("setback.")) {
        form = form.amount(entry.key(), metres, METRE);
        metres += 7;
      }
    }
    String svg = plan(form.record(), Map.of()).svg();
    Matcher word =
        Pattern.compile("<text class=\"ring-text\" x=\"([0-9.]+)\" y=\"([0-9.]+)\">([^<]+)")
            .matcher(svg);
    int words = 0;
    while (word.find()) {
      words++;
      double half = word.group(3).length() * 3.6;
      Matcher sign =
          Pattern.compile(
                  "<circle class=\"(?:hub|seal)\" cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"([0-9.]+)\"")
              .matcher(svg);
      while (sign.find()) {
        double r = Double.parseDouble(sign.group(3));
        double across =
            Math.abs(Double.parseDouble(sign.group(1)) - Double.parseDouble(word.group(1)));
        double down =
            Math.abs(Double.parseDouble(sign.group(2)) - Double.parseDouble(word.group(2)) + 5);
        assertTrue(across == 0 || across > half + r || down > 6 + r, word.group() + sign.group());
      }
    }
    assertTrue(words > 1, svg);
  }

  /** A broken scale hides how far short a distance is: the figures stand beside it. */
  @Test
  void whatLacksToALimitIsDrawnAndSaid() {
    Mark mark = new Mark("A", "finding-a", "Short", List.of("setback.privy"));
    Drawing plan =
        Sketches.drawn(
            Sketches.of(
                new Form("T")
                    .amount("setback.privy", 25, METRE)
                    .amount("setback.road", 8, METRE)
                    .record(),
                Language.EN,
                UnitsShown.AS_WRITTEN,
                List.of(mark),
                Map.of("setback.privy", Limit.of(30), "setback.road", Limit.of(5))),
            "plan");
    assertEquals(1, count(plan, "short"));
    assertTrue(plan.words().contains("privy: 25 m, limit 30 m, 5 m short"), "" + plan.words());
    assertTrue(plan.words().contains("road: 8 m, limit 5 m"), "" + plan.words());
    assertTrue(legend(plan).contains("What is short of the limit"), legend(plan));
  }

  @Test
  void aRuleWhoseWaysCannotBeToldApartIsSaidWhole() {
    WellRecord record = new Form("T").amount("setback.privy", 25, METRE).record();
    Drawing plan = plan(record, Map.of("setback.privy", Limit.said("a or b")));
    assertTrue(plan.words().toString().contains("depends on more: a or b"), "" + plan.words());
    assertEquals(0, count(plan, "limit"));
  }

  @Test
  void nearDistancesAreToldApartBesideAFarOne() {
    Form form = new Form("T");
    double[] feet = {8, 10, 12, 17, 20, 25};
    List<String> keys =
        List.of("septic_tank", "privy", "sewer_line", "building", "property_line", "road");
    for (int i = 0; i < keys.size(); i++) {
      form.amount("setback." + keys.get(i), feet[i], FOOT);
    }
    form.amount("setback.surface_water", 90, FOOT).amount("setback.landfill", 80, FOOT);
    Drawing plan = plan(form.record(), Map.of());
    assertEquals(1, count(plan, "break-ring"));
    assertTrue(legend(plan).contains("The scale is broken at"), legend(plan));
    List<double[]> dots = dots(plan);
    assertEquals(8, dots.size());
    for (int i = 0; i < dots.size(); i++) {
      for (int k = 0; k < i; k++) {
        double apart = Math.hypot(dots.get(i)[0] - dots.get(k)[0], dots.get(i)[1] - dots.get(k)[1]);
        assertTrue(apart > 8, "dots " + i + " and " + k + " are " + apart + " apart");
      }
    }
    form = new Form("T").amount("setback.privy", 40, FOOT).amount("setback.road", 60, FOOT);
    assertFalse(legend(plan(form.record(), Map.of())).contains("broken"), "nothing is crowded");
  }

  private static List<double[]> dots(Drawing plan) {
    List<double[]> dots = new ArrayList<>();
    Matcher dot = DOT.matcher(plan.svg());
    while (dot.find()) {
      dots.add(new double[] {Double.parseDouble(dot.group(1)), Double.parseDouble(dot.group(2))});
    }
    return dots;
  }

  @Test
  void aDistanceThatIsNotDrawnIsNamed() {
    Form form =
        new Form("T")
            .amount("setback.road", 30, FOOT)
            .text("setback.privy", "unknown")
            .text("setback.pond", "n/a");
    String said = legend(plan(form.record(), Map.of()));
    assertTrue(said.contains("privy"), said);
    assertTrue(said.contains("pond"), said);
    assertFalse(said.contains("cesspool"), said);
  }
}
