package org.wellcurb.report.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.GPM;
import static org.wellcurb.quantity.Units.METRE;
import static org.wellcurb.quantity.Units.ONE;
import static org.wellcurb.quantity.Units.PSI_UNIT;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Note;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Form;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;

/** What drawings say can be read: no label over another, none past the edge, figures for people. */
final class DrawingsTest {
  private static final int WIDTH = 372;
  private static final Pattern LABEL =
      Pattern.compile("<text class=\"label\" x=\"([-0-9.]+)\" y=\"([-0-9.]+)\">([^<]*)</text>");
  private static final Pattern MARK =
      Pattern.compile("<rect class=\"mark\" x=\"([-0-9.]+)\" y=\"([-0-9.]+)\" width=\"([0-9.]+)\"");
  private static final Pattern SEAL =
      Pattern.compile("<circle class=\"seal\" cx=\"([-0-9.]+)\" cy=\"([-0-9.]+)\" r=\"11\"");

  private record Box(double left, double top, double right, double bottom, String what) {
    boolean meets(Box other) {
      return left < other.right - 0.2
          && other.left < right - 0.2
          && top < other.bottom - 0.2
          && other.top < bottom - 0.2;
    }
  }

  private static Sketch sketch(
      WellRecord record,
      Language language,
      UnitsShown units,
      List<Mark> marks,
      Map<String, Double> limits) {
    Map<String, Limit> all = new HashMap<>();
    limits.forEach((key, si) -> all.put(key, Limit.of(si)));
    return Sketches.of(record, language, units, marks, all);
  }

  private static Sketch plain(WellRecord record) {
    return sketch(record, Language.EN, UnitsShown.AS_WRITTEN, List.of(), Map.of());
  }

  private static String svg(Sketch sketch, String id) {
    return sketch.drawings().stream()
        .filter(drawing -> drawing.id().equals(id))
        .map(Drawing::svg)
        .findFirst()
        .orElse("");
  }

  private static List<Box> boxes(String svg) {
    List<Box> boxes = new ArrayList<>();
    Matcher label = LABEL.matcher(svg);
    while (label.find()) {
      double x = Double.parseDouble(label.group(1));
      double y = Double.parseDouble(label.group(2));
      String text = label.group(3).replace("&#39;", "'").replace("&gt;", ">");
      boxes.add(new Box(x, y - 11, x + Lettering.width(text), y + 3, text));
    }
    Matcher mark = MARK.matcher(svg);
    while (mark.find()) {
      double x = Double.parseDouble(mark.group(1));
      double y = Double.parseDouble(mark.group(2));
      boxes.add(new Box(x, y, x + Double.parseDouble(mark.group(3)), y + 18, "a letter"));
    }
    Matcher seal = SEAL.matcher(svg);
    while (seal.find()) {
      double x = Double.parseDouble(seal.group(1));
      double y = Double.parseDouble(seal.group(2));
      boxes.add(new Box(x - 8, y - 8, x + 8, y + 8, "a number"));
    }
    return boxes;
  }

  @ParameterizedTest
  @EnumSource(UnitsShown.class)
  void noLabelStandsOverAnotherOrPastTheEdge(UnitsShown units) {
    for (long seed = 1; seed <= 120; seed++) {
      Random random = new Random(seed);
      List<Mark> marks = new ArrayList<>();
      WellRecord record = any(random, marks);
      Language language = seed % 2 == 0 ? Language.EN : Language.FR;
      for (Drawing drawing : sketch(record, language, units, marks, Map.of()).drawings()) {
        List<Box> boxes = boxes(drawing.svg());
        for (int i = 0; i < boxes.size(); i++) {
          Box a = boxes.get(i);
          String where = "seed " + seed + ", " + drawing.id() + ": " + a.what();
          assertTrue(a.right() <= WIDTH + 0.5 && a.left() >= -0.5, where + " past the edge");
          for (Box b : boxes.subList(i + 1, boxes.size())) {
            assertFalse(a.meets(b), where + " and " + b.what());
          }
        }
      }
    }
  }

  /** A form with some of the entries that are drawn, anywhere, and findings on some of them. */
  private static WellRecord any(Random random, List<Mark> marks) {
    Form form = new Form("FW-1");
    double deep = random.nextInt(3) == 0 ? 2000 : 100;
    for (Entry entry : Catalogue.standard().entries()) {
      boolean isDepth = entry.key().matches("(well|grout|water|pitless|pump|site)\\..*");
      boolean isPressure =
          entry.key().matches("(tank|pressure|relief|drop_pipe|service_line)\\..*");
      boolean isDistance = entry.key().startsWith("setback.");
      Unit unit = entry.unit(org.wellcurb.quantity.UnitSystem.US);
      if (unit == null || random.nextInt(3) == 0) {
        continue;
      }
      if (isDepth && unit.equals(FOOT) && random.nextInt(4) == 0) {
        double from = Math.round(random.nextDouble() * deep * 10) / 10.0;
        boolean isOpen = random.nextBoolean();
        double to = isOpen ? Double.POSITIVE_INFINITY : from + random.nextInt(30);
        form.range(entry.key(), from, to, FOOT, "a range");
      } else if (isPressure && unit.equals(PSI_UNIT) && random.nextInt(4) == 0) {
        form.range(entry.key(), 30, 30 + random.nextInt(40), PSI_UNIT, "a range");
      } else if ((isDepth || isDistance) && unit.equals(FOOT)) {
        form.amount(entry.key(), Math.round(random.nextDouble() * deep * 10) / 10.0, FOOT);
      } else if (isPressure && unit.equals(PSI_UNIT)) {
        form.amount(entry.key(), 30 + random.nextInt(40), PSI_UNIT);
      } else {
        continue;
      }
      // At most two letters stand at a place of the plan.
      int many = isDistance ? random.nextInt(3) : random.nextInt(6);
      for (int i = 0; i < (random.nextInt(4) == 0 ? many : 0); i++) {
        String letter = String.valueOf((char) ('A' + marks.size() % 26));
        marks.add(new Mark(letter, "finding-" + letter, "Short", List.of(entry.key())));
      }
    }
    return form.record();
  }

  @Test
  void figuresFromAnotherUnitAreRoundedAndWrittenOnesAreNot() {
    Form form =
        new Form("FW-1")
            .amount("well.depth", 305.25, FOOT)
            .amount("well.stickup", 2, FOOT)
            .amount("water.static_level", 31, FOOT)
            .amount("pressure.cut_in", 40, PSI_UNIT)
            .amount("pressure.cut_out", 74.75, PSI_UNIT);
    WellRecord record = form.record();
    Sketch metric = sketch(record, Language.EN, UnitsShown.METRIC, List.of(), Map.of());
    String words = drawn(metric, "section").words().toString();
    assertTrue(words.contains("Casing top 0.61 m [2 ft] up"), words);
    assertTrue(words.contains("Static level 9.4 m [31 ft]"), words);
    assertTrue(words.contains("Finished bottom 93 m [305.25 ft]"), words);
    assertTrue(svg(metric, "ladder").contains(">Cut-in 276 kPa [40 psi]<"));
    assertTrue(svg(plain(record), "section").contains(">305.25 ft<"));
    assertTrue(svg(plain(record), "ladder").contains(">Cut-out 74.75 psi<"));
  }

  @Test
  void whatIsTakenForAHouseStandsInTheUnitsOfThePage() {
    Form form =
        new Form("FW-1")
            .amount("water.yield", 6, GPM)
            .amount("site.bedrooms", 3, ONE)
            .amount("site.occupants", 4, ONE);
    Sketch metric = sketch(form.record(), Language.EN, UnitsShown.METRIC, List.of(), Map.of());
    List<String> legend =
        metric.drawings().stream()
            .filter(drawing -> drawing.id().equals("water"))
            .flatMap(drawing -> drawing.legend().stream())
            .map(Sign::text)
            .filter(text -> text.startsWith("Taken"))
            .toList();
    assertTrue(legend.size() >= 2, legend.toString());
    for (String text : legend) {
      assertFalse(text.matches("[^(]*[0-9] (gpd|gpm) .*"), text);
    }
  }

  @Test
  void aLabelTooLongGoesOnBelowWithItsFigure() {
    Svg svg = new Svg("section", WIDTH, "t");
    Labels labels = new Labels(100, 200, 150);
    labels.add(40, "A label that is far too long to stand in one row 1379 kPa", List.of());
    labels.draw(svg, 10);
    assertTrue(svg.close(90).contains(">row 1379 kPa<"), svg.close(90));
  }

  @Test
  void aLimitThatOnlyARuleKnowsIsDrawn() {
    WellRecord record =
        new Form("FW-1")
            .amount("well.depth", 60, METRE)
            .amount("pitless.depth", 1.2, METRE)
            .amount("service_line.burial_depth", 1.5, METRE)
            .record();
    Map<String, Double> both = Map.of("pitless.depth", 1.8, "service_line.burial_depth", 1.8);
    String svg =
        svg(sketch(record, Language.EN, UnitsShown.AS_WRITTEN, List.of(), both), "section");
    assertTrue(svg.contains(">Limit: Pitless, line 1.8 m<"), svg);
    assertTrue(svg.contains("class=\"limit-at\""), svg);
    Map<String, Double> one = Map.of("pitless.depth", 1.8, "well.depth", 10.0);
    svg = svg(sketch(record, Language.EN, UnitsShown.AS_WRITTEN, List.of(), one), "section");
    assertTrue(svg.contains(">Limit: Pitless 1.8 m<"), svg);
    assertFalse(svg.contains("Limit: Finished"), "the depth does not fall short");
    assertFalse(svg(plain(record), "section").contains("limit"));
  }

  @Test
  void aSettingThatFallsShortHasItsLimitBesideIt() {
    WellRecord record =
        new Form("FW-1")
            .amount("pressure.cut_out", 60, PSI_UNIT)
            .amount("relief.setting", 65, PSI_UNIT)
            .record();
    Mark mark = new Mark("A", "finding-a", "Short", List.of("relief.setting"));
    Map<String, Double> limits = Map.of("relief.setting", PSI_UNIT.toSi(70));
    Drawing ladder =
        sketch(record, Language.EN, UnitsShown.AS_WRITTEN, List.of(mark), limits).drawings().get(0);
    assertTrue(ladder.svg().contains(">Limit: Relief opens 70 psi<"), ladder.svg());
    assertEquals(List.of(mark), ladder.marks());
  }

  @Test
  void aPumpAboveTheGroundIsNotDrawnInTheWell() {
    for (String type : List.of("submersible", "jet")) {
      WellRecord record =
          new Form("FW-1")
              .amount("well.depth", 30, FOOT)
              .amount("pump.intake_depth", 20, FOOT)
              .text("pump.type", type)
              .record();
      boolean isDrawn = svg(plain(record), "section").contains("class=\"pump\"");
      assertEquals(type.equals("submersible"), isDrawn);
    }
  }

  @Test
  void whatIsNotDrawnIsSaidWithWhatItTakes() {
    WellRecord depth = new Form("FW-1").amount("well.depth", 30, FOOT).record();
    assertEquals(3, plain(depth).missing().size());
    assertTrue(plain(depth).missing().get(0).contains("two pressures"));
    WellRecord none =
        new Form("FW-1")
            .amount("well.depth", 30, FOOT)
            .notApplicable("pressure.cut_in")
            .notApplicable("setback.septic_tank")
            .notApplicable("water.yield")
            .record();
    assertEquals(List.of(), plain(none).missing());
  }

  /** A datum that was written and not read moves nothing, and it is said which. */
  @Test
  void aDatumThatCouldNotBeReadIsSaidAndMovesNothing() {
    Map<String, String> said =
        Map.of(
            "record.datum", "What depths are measured from could not be read.",
            "water.datum", "What the water levels are measured from could not be read.",
            "pump.datum", "What the depth of the pump is measured from could not be read.");
    said.forEach(
        (key, sentence) -> {
          Form form = new Form("FW-1").amount("well.depth", 100, FOOT);
          form.amount("water.static_level", 20, FOOT).amount("well.stickup", 2, FOOT);
          form.amount("pump.intake_depth", 80, FOOT);
          if (!key.equals("record.datum")) {
            form.text("record.datum", "casing top");
          }
          form.unreadable(key, "top of slab", Note.NOT_A_CHOICE);
          Depths depths = new Depths(plain(form.record()));
          assertTrue(depths.remark().contains(sentence), depths.remark());
          String depth =
              Map.of("water.datum", "water.static_level", "pump.datum", "pump.intake_depth")
                  .getOrDefault(key, "well.depth");
          double feet =
              Map.of("water.static_level", 20, "pump.intake_depth", 80).getOrDefault(depth, 100);
          assertEquals(feet * 0.3048, depths.of(depth), 1e-9, key);
          assertFalse(depths.remark().contains("does not say"), depths.remark());
        });
  }

  private static Drawing drawn(Sketch sketch, String id) {
    return sketch.drawings().stream()
        .filter(drawing -> drawing.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aPressureThatIsARangeIsABandAndNoLineAtItsMiddle() {
    WellRecord record =
        new Form("FW-1")
            .amount("pressure.cut_in", 40, PSI_UNIT)
            .range("relief.setting", 60, 90, PSI_UNIT, "60-90 psi")
            .range("tank.pressure_rating", 100, Double.POSITIVE_INFINITY, PSI_UNIT, ">100 psi")
            .record();
    Drawing ladder = drawn(plain(record), "ladder");
    assertTrue(ladder.svg().contains(">Relief opens 60 psi to"), ladder.svg());
    assertEquals(2, ladder.svg().split("class=\"either\"", -1).length - 1);
    assertEquals(3, ladder.svg().split("class=\"setting\"", -1).length - 1, "40, 60 and 90");
    assertEquals(
        List.of(
            "Cut-in 40 psi",
            "Relief opens 60 psi to 90 psi, that is 20 to 50 psi higher",
            "Tank rated 100 psi or more, that is 10 psi or more higher",
            "The form does not say whether a shut-off valve stands between the pump and the relief"
                + " valve.",
            "The relief valve opens 10 psi or more below the rating of the tank."),
        ladder.words());
    assertTrue(ladder.legend().stream().anyMatch(sign -> sign.text().startsWith("Between the")));
  }

  @Test
  void neitherOfTwoPressuresThatMayLieEitherWayIsSaidToBeTheHigher() {
    WellRecord record =
        new Form("FW-1")
            .amount("pressure.cut_out", 70, PSI_UNIT)
            .range("relief.setting", 60, 90, PSI_UNIT, "60-90 psi")
            .record();
    assertFalse(drawn(plain(record), "ladder").words().toString().contains("higher"));
  }

  @Test
  void aLevelThatIsARangeHasALineAtEachEndAndNoneBetween() {
    WellRecord record =
        new Form("FW-1")
            .amount("well.depth", 100, FOOT)
            .amount("well.stickup", 2, FOOT)
            .text("record.datum", "casing top")
            .range("water.static_level", 30, 40, FOOT, "30-40 ft")
            .record();
    Drawing section = drawn(plain(record), "section");
    assertEquals(2, section.svg().split("class=\"still\"", -1).length - 1, section.svg());
    assertEquals(3, section.svg().split("class=\"span\"", -1).length - 1, "an upright, two feet");
    assertTrue(section.words().get(1).startsWith("Static level 28 to 38 ft"), "" + section.words());
    Sketch metric = sketch(record, Language.FR, UnitsShown.METRIC, List.of(), Map.of());
    assertTrue(
        drawn(metric, "section").words().get(1).startsWith("Niveau statique 8,5 à 11,6 m"),
        "" + drawn(metric, "section").words());
  }

  @Test
  void aFlowingLevelIsSoMuchUpAndNotADepthBelowNothing() {
    Form form = new Form("FW-1").amount("well.depth", 100, FOOT);
    WellRecord record = form.amount("water.static_level", -6.5, FOOT).record();
    String svg = svg(plain(record), "section");
    assertTrue(svg.contains(">Static level 6.5 ft up<"), svg);
    Sketch french = sketch(record, Language.FR, UnitsShown.METRIC, List.of(), Map.of());
    String words = drawn(french, "section").words().get(0);
    assertTrue(words.startsWith("Niveau statique 2 m [6,5 pi] au-dessus du sol"), words);
    record = form.range("water.static_level", -6, -2, FOOT, "-6 to -2").record();
    assertTrue(
        drawn(plain(record), "section").words().get(0).startsWith("Static level 2 ft to 6 ft up"));
  }

  /** A limit has as many digits as the figure that it is held against, and its own unit beside. */
  @Test
  void aLimitBroughtToAnotherUnitStandsBesideTheWrittenOneAsItsFigureDoes() {
    WellRecord record =
        new Form("FW-1")
            .amount("setback.septic_tank", 22, FOOT)
            .range("setback.privy", 40, 60, FOOT, "40-60 ft")
            .amount("relief.setting", 65, PSI_UNIT)
            .amount("pressure.cut_out", 60, PSI_UNIT)
            .record();
    Map<String, Double> limits =
        Map.of("setback.septic_tank", FOOT.toSi(75), "relief.setting", PSI_UNIT.toSi(70));
    Mark mark = new Mark("A", "finding-a", "Short", List.of("relief.setting"));
    Sketch french = sketch(record, Language.FR, UnitsShown.METRIC, List.of(mark), limits);
    String words = drawn(french, "plan").words().toString();
    assertTrue(words.contains(" : 6,7 m [22 pi], limite 22,9 m [75 pi]"), words);
    assertTrue(words.contains(" : 12,2 à 18,3 m [40 pi à 60 pi]"), words);
    String ladder = drawn(french, "ladder").words().toString();
    assertTrue(ladder.contains("448 kPa [65 lb/po²]"), ladder);
    assertTrue(ladder.contains("483 kPa [70 lb/po²]"), ladder);
    String plain =
        drawn(sketch(record, Language.EN, UnitsShown.US, List.of(mark), limits), "plan")
            .words()
            .toString();
    assertTrue(plain.contains(": 22 ft, limit 75 ft"), plain);
  }

  @Test
  void aDistanceThatIsARangeHasNoDotAtItsMiddle() {
    WellRecord record = new Form("FW-1").range("setback.privy", 40, 60, FOOT, "40-60 ft").record();
    Drawing plan = drawn(plain(record), "plan");
    assertEquals(2, plan.svg().split("class=\"hub\"", -1).length, "the well's own and no other");
    assertEquals(2, plan.svg().split("class=\"range\"", -1).length);
  }

  private static Form headed() {
    return new Form("FW-1")
        .amount("well.depth", 100, FOOT)
        .amount("well.casing_depth", 40, FOOT)
        .amount("well.stickup", 1.5, FOOT);
  }

  /** Only a cap that the form has is drawn over the casing; two walls are a casing without one. */
  @Test
  void aCasingIsDrawnClosedOnlyWhereTheFormSaysSo() {
    Map<String, Integer> lines = Map.of("vented sealed", 3, "sealed", 3, "none", 2);
    lines.forEach(
        (cap, many) -> {
          Drawing section = drawn(plain(headed().text("well.cap", cap).record()), "section");
          assertEquals(many, section.svg().split("class=\"casing\"", -1).length - 1, cap);
          assertEquals(cap.equals("none"), section.svg().contains(">Cap: none<"), cap);
          assertEquals(cap.equals("none"), section.svg().contains("class=\"open\""), cap);
        });
    Drawing unsaid = drawn(plain(headed().record()), "section");
    assertEquals(2, unsaid.svg().split("class=\"casing\"", -1).length - 1);
    assertTrue(unsaid.legend().stream().anyMatch(sign -> sign.text().startsWith("No cap is")));
  }

  @Test
  void aFindingOnTheWellHeadHasItsLetterThere() {
    List<Mark> marks =
        List.of(
            new Mark("A", "finding-a", "In a pit", List.of("well.head")),
            new Mark("B", "finding-b", "No cap", List.of("well.cap")));
    WellRecord record = headed().text("well.cap", "none").text("well.head", "pit").record();
    for (Language language : Language.values()) {
      Sketch sketch = sketch(record, language, UnitsShown.AS_WRITTEN, marks, Map.of());
      Drawing section = drawn(sketch, "section");
      assertEquals(marks, section.marks());
      assertEquals(6, section.svg().split("class=\"pit\"", -1).length - 1);
      assertFalse(section.svg().contains("class=\"ground\""), "the ground would close the pit");
      String head = language == Language.EN ? ">Well head: pit<" : ">Tête du puits : fosse<";
      assertTrue(section.svg().contains(head), section.svg());
    }
    WellRecord good =
        headed().text("well.cap", "sealed").text("well.head", "pitless adapter").record();
    assertFalse(svg(plain(good), "section").contains("Well head"), "nothing is odd there");
  }

  /** 1 gpm at most is 1440 gal or less in a day, not 720 gal. */
  @Test
  void aYieldThatIsARangeGivesARangeOfWater() {
    WellRecord record =
        new Form("FW-1")
            .range("water.yield", 0, 1, GPM, "<1 gpm")
            .amount("site.bedrooms", 3, ONE)
            .amount("site.occupants", 4, ONE)
            .record();
    for (Language language : Language.values()) {
      Drawing water =
          sketch(record, language, UnitsShown.US, List.of(), Map.of()).drawings().stream()
              .filter(drawing -> drawing.id().equals("water"))
              .findFirst()
              .orElseThrow();
      boolean isEnglish = language == Language.EN;
      String day =
          isEnglish
              ? "The well gives 1440 gal or less (yield on the form)"
              : "Le puits donne 1440 gal ou moins (débit déclaré)";
      String peak =
          isEnglish ? "The well gives 120 gal or less of it" : "Le puits en donne 120 gal ou moins";
      assertTrue(water.words().contains(day), water.words().toString());
      assertTrue(
          water.words().stream().anyMatch(line -> line.contains(peak)), water.words().toString());
      assertFalse(water.words().toString().contains("720"), water.words().toString());
      assertTrue(water.svg().contains("class=\"either\""), water.svg());
      assertTrue(
          water.legend().stream()
              .anyMatch(sign -> sign.text().equals(Words.in(language).say("sign.between"))));
    }
  }

  @Test
  void aYieldWithoutAnUpperEndIsNotDrawnAsItsLower() {
    WellRecord record =
        new Form("FW-1")
            .range("water.yield", 10, Double.POSITIVE_INFINITY, GPM, ">10 gpm")
            .amount("site.bedrooms", 3, ONE)
            .amount("site.occupants", 4, ONE)
            .record();
    Drawing water = plain(record).drawings().get(0);
    assertTrue(
        water.words().contains("The well gives 14400 gal or more (yield on the form)"),
        water.words().toString());
    assertTrue(water.svg().contains("class=\"either\""), water.svg());
  }

  /** Parts of the busiest period add up at both ends, whatever the form leaves open. */
  @Test
  void waterOfTheBusiestPeriodAddsUpAtEveryYieldAndStore() {
    for (long seed = 1; seed <= 400; seed++) {
      Random random = new Random(seed);
      double draw = 1 + random.nextInt(10);
      double[] yields = {random.nextInt(12), random.nextInt(12)};
      double[] stores = {random.nextInt(8), random.nextInt(8)};
      java.util.Arrays.sort(yields);
      java.util.Arrays.sort(stores);
      Interval could = new Interval(yields[0], yields[1]);
      double most = Math.max(0, draw - yields[0] - stores[0]);
      double least = Math.max(0, draw - yields[1] - stores[1]);
      double atLeast = Math.max(0, draw - yields[0] - stores[1]);
      PeakWater peak = new PeakWater(draw, could, new Interval(least, most), atLeast);
      double[] stored = {Double.MAX_VALUE, 0};
      for (double yield : yields) {
        for (double store : stores) {
          double used = Math.min(store, Math.max(0, draw - yield));
          stored[0] = Math.min(stored[0], used);
          stored[1] = Math.max(stored[1], used);
        }
      }
      String where = "seed " + seed;
      assertEquals(Math.min(draw, yields[0]), peak.byYield().lo(), 1e-9, where);
      assertEquals(Math.min(draw, yields[1]), peak.byYield().hi(), 1e-9, where);
      assertEquals(stored[0], peak.stored().lo(), 1e-9, where);
      assertEquals(stored[1], peak.stored().hi(), 1e-9, where);
    }
  }

  @Test
  void aTextThatDoesNotFitGoesOnInRowsAndLosesNothing() {
    assertEquals(List.of("Rock 31 ft"), Lettering.wrap("Rock 31 ft", 100, 100));
    assertEquals(List.of("Frost line", "31 ft"), Lettering.wrap("Frost line 31 ft", 86, 86));
    assertEquals(List.of("", "Frost line"), Lettering.wrap("Frost line", 10, 90));
    for (String word : List.of("W".repeat(40), "\uD83D\uDE80".repeat(9))) {
      List<String> rows = Lettering.wrap(word, 100, 100);
      assertEquals(word, String.join("", rows));
      for (String row : rows) {
        assertTrue(Lettering.width(row) <= 100, row);
        assertFalse(Character.isHighSurrogate(row.charAt(row.length() - 1)), row);
      }
    }
  }

  /** However long the figures are, and however many findings stand there. */
  @ParameterizedTest
  @EnumSource(UnitsShown.class)
  void noLineOrLetterOfTheDailyWaterIsCut(UnitsShown units) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      String letter = String.valueOf((char) ('A' + i));
      List<String> entries =
          i < 8 ? List.of("water.yield") : List.of("site.dwellings", "water.yield");
      marks.add(new Mark(letter, "finding-" + letter, "Short", entries));
    }
    for (Language language : Language.values()) {
      Form form =
          new Form("FW-1")
              .amount("site.bedrooms", 36, ONE)
              .amount("site.dwellings", 1, ONE)
              .amount("storage.volume", 1234, org.wellcurb.quantity.Units.US_GALLON)
              .range("water.yield", 12.25, 17.75, GPM, "12 1/4 - 17 3/4");
      Drawing water = drawn(sketch(form.record(), language, units, marks, Map.of()), "water");
      List<Box> boxes = boxes(water.svg());
      assertEquals(12, boxes.stream().filter(box -> box.what().equals("a letter")).count());
      for (int i = 0; i < boxes.size(); i++) {
        Box a = boxes.get(i);
        assertTrue(a.left() >= 0 && a.right() <= WIDTH, a.toString());
        for (Box b : boxes.subList(i + 1, boxes.size())) {
          assertFalse(a.meets(b), a + " and " + b);
        }
      }
    }
  }
}
