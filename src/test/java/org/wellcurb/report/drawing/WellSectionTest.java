package org.wellcurb.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.METRE;
import static org.wellcurb.quantity.Units.ONE;
import static org.wellcurb.report.drawing.Sketches.count;
import static org.wellcurb.report.drawing.Sketches.drawn;
import static org.wellcurb.report.drawing.Sketches.legend;
import static org.wellcurb.report.drawing.Sketches.section;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Form;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;

/** What a well in section shows of its parts, and that it says what it cannot show. */
final class WellSectionTest {
  private static Form well() {
    return new Form("FW-1")
        .amount("well.depth", 200, FOOT)
        .amount("well.casing_depth", 60, FOOT)
        .amount("well.stickup", 1.5, FOOT)
        .amount("pitless.depth", 5, FOOT)
        .amount("pump.intake_depth", 180, FOOT);
  }

  @Test
  void aWellThatFlowsIsSaidTo() {
    Form up = new Form("T").amount("well.depth", 180, FOOT).amount("water.static_level", -6, FOOT);
    Drawing drawing = Sketches.section(up.record());
    assertTrue(Sketches.legend(drawing).contains("flows by itself"), Sketches.legend(drawing));
    assertTrue(drawing.words().toString().contains("flows by itself"), "" + drawing.words());
    Form down = new Form("T").amount("well.depth", 180, FOOT).amount("water.static_level", 6, FOOT);
    drawing = Sketches.section(down.record());
    assertFalse(Sketches.legend(drawing).contains("flows by itself"), Sketches.legend(drawing));
  }

  @Test
  void fittingsStandWhereTheirSpacingPutsThemUpFromThePump() {
    Form form = well().amount("pump.check_valves", 2, ONE);
    form.amount("pump.check_valve_spacing", 100, FOOT);
    form.amount("pump.torque_arresters", 4, ONE).amount("pump.torque_arrester_spacing", 50, FOOT);
    Drawing section = section(form.record());
    // One more of each is in the legend.
    assertEquals(2, count(section, "valve"), section.svg());
    assertEquals(4, count(section, "arrester"), section.svg());
    String words = section.words().toString();
    assertTrue(
        words.contains(
            "Check valves: at the pump, about 80 ft (reckoned from a spacing of 100 ft)"),
        words);
    assertTrue(
        words.contains(
            "Torque arresters: at the pump, about 130 ft, about 80 ft, about 30 ft (reckoned"),
        words);
    assertTrue(section.svg().contains(">Check valve about 80 ft<"), section.svg());
    assertTrue(legend(section).contains("the form gives none"), legend(section));
  }

  @Test
  void fittingsWithoutAPlaceAreSaidAndNotDrawn() {
    Form counted = well().amount("pump.torque_arresters", 5, ONE);
    Drawing section = section(counted.record());
    assertEquals(1, count(section, "arrester"), "the one at the pump");
    assertTrue(section.words().toString().contains("5 on the form, without an exact spacing"));
    assertTrue(section.svg().contains("Torque arresters: 5,"), section.svg());

    Form spaced = well().amount("pump.torque_arrester_spacing", 50, FOOT);
    assertTrue(section(spaced.record()).words().toString().contains("and no number"));

    Form many = well().amount("pump.check_valves", 9, ONE);
    many.amount("pump.check_valve_spacing", 60, FOOT);
    Drawing crowded = section(many.record());
    assertEquals(3, count(crowded, "valve"), "180, 120 and 60 ft; 0 ft is over the pitless");
    assertTrue(crowded.words().toString().contains("Check valves: 6 more do not fit"));

    Form range = well().amount("pump.check_valves", 2, ONE);
    range.range("pump.check_valve_spacing", 80, 120, FOOT, "80-120 ft");
    assertEquals(1, count(section(range.record()), "valve"));

    Form noPump = new Form("FW-1").amount("well.depth", 200, FOOT);
    noPump.amount("pump.check_valves", 2, ONE);
    Drawing bare = section(noPump.record());
    assertEquals(0, count(bare, "valve"));
    assertTrue(bare.words().toString().contains("Check valves: 2 on the form. None is drawn"));
    Form none = well().amount("pump.check_valves", 0, ONE);
    assertFalse(section(none.record()).words().toString().contains("heck valve"));
  }

  @Test
  void aFindingOnASpacingStandsAtTheFittings() {
    Form form = well().amount("pump.check_valves", 1, ONE);
    form.amount("pump.check_valve_spacing", 300, FOOT);
    Mark mark = new Mark("A", "finding-a", "Short", List.of("pump.check_valve_spacing"));
    Sketch sketch =
        Sketches.of(form.record(), Language.EN, UnitsShown.AS_WRITTEN, List.of(mark), Map.of());
    assertEquals(List.of(mark), drawn(sketch, "section").marks());
  }

  @Test
  void theFrostOfTheRulesIsALineAcrossWhereTheFormGivesNone() {
    Limit frost = Limit.of(FOOT.toSi(4)).ofFrost();
    Map<String, Limit> limits = Map.of("pitless.depth", frost, "service_line.burial_depth", frost);
    WellRecord record = well().amount("service_line.burial_depth", 5, FOOT).record();
    Sketch sketch = Sketches.of(record, Language.EN, UnitsShown.AS_WRITTEN, List.of(), limits);
    Drawing section = drawn(sketch, "section");
    assertTrue(count(section, "frost") > 0, section.svg());
    assertEquals(
        1, section.words().stream().filter("Frost line of the rules 4 ft"::equals).count());
    assertFalse(section.svg().contains("Limit"), "it is said once");
    WellRecord given = well().amount("site.frost_depth", 4, FOOT).record();
    Drawing own =
        drawn(Sketches.of(given, Language.EN, UnitsShown.AS_WRITTEN, List.of(), limits), "section");
    assertFalse(own.words().toString().contains("of the rules"), own.words().toString());
    assertTrue(own.words().toString().contains("Frost line 4 ft"), own.words().toString());
  }

  @Test
  void theAnnulusThatNothingFillsIsNotDrawnAsTheInsideOfTheCasing() {
    Form grouted = well().amount("grout.top", 0, FOOT).amount("grout.bottom", 20, FOOT);
    Drawing part = section(grouted.record());
    assertTrue(part.svg().contains("url(#section-void)"), part.svg());
    assertTrue(legend(part).contains("where the form places no grout"), legend(part));
    Drawing whole = section(grouted.amount("grout.bottom", 60, FOOT).record());
    assertFalse(whole.svg().contains("url(#section-void)"), whole.svg());
    Drawing driven = section(well().text("well.method", "driven").record());
    assertFalse(driven.svg().contains("url(#section-void)"), "there is no hole around it");
    assertEquals(1, count(driven, "point"));
  }

  @Test
  void aLevelOfATestThatMeasuresNoneIsNotCalledAPumpingLevel() {
    Form form = well().amount("water.pumping_level", 90, FOOT);
    assertTrue(section(form.record()).svg().contains(">Pumping level 90 ft<"));
    Drawing lifted = section(form.text("water.test_method", "air lift").record());
    assertTrue(lifted.svg().contains(">Level in air lift test 90 ft<"), lifted.svg());
    assertFalse(lifted.svg().contains("Pumping level"), lifted.svg());
    assertEquals(0, count(lifted, "drawn-down"));
    assertTrue(legend(lifted).contains("no pumping level is measured"), legend(lifted));
  }

  @Test
  void rockIsDrawnWithAndWithoutLayers() {
    Form form = well().amount("well.rock_depth", 34, FOOT);
    Drawing bare = section(form.record());
    assertTrue(bare.svg().contains("url(#section-bedrock)"), bare.svg());
    assertTrue(legend(bare).contains("it lists no layers"), legend(bare));
    form.layer(0, 34, FOOT, "clay").layer(34, 200, FOOT, "granite");
    Drawing logged = section(form.record());
    assertFalse(logged.svg().contains("url(#section-bedrock)"), logged.svg());
    assertTrue(count(logged, "rock") > 0, logged.svg());
    assertTrue(logged.words().contains("Layer 2: 34 ft to 200 ft, granite"), "" + logged.words());
  }

  @Test
  void aLongLogIsCutAndSaysSo() {
    Form form = new Form("FW-1").amount("well.depth", 1900, FOOT);
    for (int i = 0; i < 95; i++) {
      form.layer(20 * i, 20 * (i + 1), FOOT, "rock " + i);
    }
    Drawing section = section(form.record());
    assertTrue(legend(section).contains("40 of 95 layers are drawn"), legend(section));
    assertFalse(legend(section).contains("their ends do not fit"), legend(section));
    form.layer(50, 40, FOOT, "sand");
    Drawing both = section(form.record());
    assertTrue(legend(both).contains("40 of 95 layers are drawn"), legend(both));
    assertTrue(legend(both).contains("their ends do not fit"), legend(both));
  }

  @Test
  void layersFarBelowTheWellDoNotPressItTogether() {
    Form form = new Form("FW-1").amount("well.depth", 20, FOOT).layer(0, 300, FOOT, "sand");
    Drawing section = section(form.record());
    assertTrue(legend(section).contains("The layers go on below"), legend(section));
    assertFalse(section.svg().contains(">100<"), section.svg());
  }

  @Test
  void aCasingThatEndsBelowTheGroundIsNotSoMuchUp() {
    WellRecord record =
        new Form("FW-1")
            .amount("well.depth", 60, METRE)
            .amount("well.stickup", -1.2, METRE)
            .record();
    String words = section(record).words().toString();
    assertTrue(words.contains("Casing top 1.2 m below ground"), words);
  }

  @Test
  void oneWayOfSeveralIsNotCalledTheLimit() {
    Limit limit =
        Limit.of(
            List.of(
                new Limit.Way(FOOT.toSi(80), "the field is at 20 m or more"),
                new Limit.Way(Double.NaN, "the field is at 30 m or more")));
    Mark mark = new Mark("A", "finding-a", "Short", List.of("well.casing_depth"));
    Sketch sketch =
        Sketches.of(
            well().record(),
            Language.EN,
            UnitsShown.AS_WRITTEN,
            List.of(mark),
            Map.of("well.casing_depth", limit));
    String words = drawn(sketch, "section").words().toString();
    assertTrue(words.contains("Limit, or another way: Casing bottom 80 ft"), words);
  }

  /** What is at the pump is not down the hole where the pump is not. */
  @Test
  void nothingHangsAtAPumpThatIsAboveTheGround() {
    Form form =
        well()
            .text("pump.type", "jet")
            .amount("pump.intake_depth", 90, FOOT)
            .amount("pump.check_valves", 1, ONE)
            .amount("pump.torque_arresters", 1, ONE);
    Drawing jet = section(form.record());
    assertFalse(jet.svg().contains("at the pump"), jet.svg());
    assertEquals(0, count(jet, "valve") + count(jet, "arrester") + count(jet, "pump"));
    assertTrue(legend(jet).contains("The pump (jet) is not drawn"), legend(jet));
    assertTrue(legend(jet).contains("Check valves: 1 on the form. None is drawn"), legend(jet));
    Drawing sunk = section(form.text("pump.type", "submersible").record());
    assertTrue(sunk.svg().contains(">Check valve at the"), sunk.svg());
    assertFalse(legend(sunk).contains("is not drawn"), legend(sunk));
  }

  @Test
  void aServiceLineIsDrawnWithoutAPitless() {
    Form form =
        new Form("FW-1")
            .amount("well.depth", 200, FOOT)
            .amount("service_line.burial_depth", 6, FOOT);
    Drawing section = section(form.record());
    assertEquals(1, count(section, "line"));
    assertTrue(legend(section).contains("where the service line joins"), legend(section));
    Drawing joined = section(form.amount("pitless.depth", 6, FOOT).record());
    assertEquals(1, count(joined, "line"));
    assertFalse(legend(joined).contains("where the service line joins"), legend(joined));
  }

  /** The sign of a motor has no size of its own: it must not stand below the well. */
  @Test
  void noMotorIsDrawnThroughTheBottom() {
    Form form = well().text("pump.type", "submersible");
    double bottom = foot(section(form.amount("pump.intake_depth", 20, FOOT).record()), "floor");
    for (double intake = 150; intake < 197; intake += 2) {
      Drawing section = section(form.amount("pump.intake_depth", intake, FOOT).record());
      assertTrue(foot(section, "motor") <= bottom, intake + ": " + section.svg());
      assertTrue(legend(section).contains("its height is not to scale"), legend(section));
    }
  }

  /** Where the lowest shape of a kind ends. */
  private static double foot(Drawing drawing, String kind) {
    Matcher shape =
        Pattern.compile(
                "class=\""
                    + kind
                    + "\"[^>]* y1?=\"([0-9.]+)\"(?: width=\"[0-9.]+\")?"
                    + "(?: height=\"([0-9.]+)\")?")
            .matcher(drawing.svg());
    double foot = 0;
    while (shape.find()) {
      double height = shape.group(2) == null ? 0 : Double.parseDouble(shape.group(2));
      foot = Math.max(foot, Double.parseDouble(shape.group(1)) + height);
    }
    assertTrue(foot > 0, drawing.svg());
    return foot;
  }

  @Test
  void noTwoRangesShareAnUpright() {
    WellRecord record =
        new Form("FW-1")
            .range("well.depth", 270, 290, FOOT, "270-290")
            .range("well.casing_depth", 50, Double.POSITIVE_INFINITY, FOOT, ">50")
            .range("water.static_level", 40, 60, FOOT, "40-60")
            .range("water.pumping_level", Double.NEGATIVE_INFINITY, 110, FOOT, "<110")
            .record();
    Matcher span =
        Pattern.compile("class=\"span\" x1=\"([0-9.]+)\" y1=\"[0-9.]+\" x2=\"\\1\"")
            .matcher(section(record).svg());
    Set<String> lanes = new HashSet<>();
    int uprights = 0;
    while (span.find()) {
      lanes.add(span.group(1));
      uprights++;
    }
    assertEquals(4, uprights);
    assertEquals(4, lanes.size());
  }

  @Test
  void aLimitBelowTheWellIsSaidToBeThere() {
    Mark mark = new Mark("A", "finding-a", "Short", List.of("grout.bottom"));
    for (int limit : new int[] {30, 300}) {
      Sketch sketch =
          Sketches.of(
              well().amount("grout.bottom", 6, FOOT).record(),
              Language.EN,
              UnitsShown.AS_WRITTEN,
              List.of(mark),
              Map.of("grout.bottom", Limit.of(FOOT.toSi(limit))));
      String said = legend(drawn(sketch, "section"));
      assertEquals(limit == 300, said.contains("below the bottom of this well"), said);
    }
  }

  /** Someone who sees a letter at a depth takes that depth for what is wrong. */
  @Test
  void aLetterStandsOnlyAtWhatDecided() {
    Mark mark =
        new Mark("A", "finding-a", "Short", List.of("setback.animal_yard", "well.casing_depth"));
    Sketch sketch =
        Sketches.of(
            well().amount("setback.animal_yard", 99, FOOT).record(),
            Language.EN,
            UnitsShown.AS_WRITTEN,
            List.of(mark),
            Map.of());
    assertEquals(0, count(drawn(sketch, "section"), "mark"));
    assertEquals(1, count(drawn(sketch, "plan"), "mark"));
  }
}
