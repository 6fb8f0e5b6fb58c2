package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Forms that are copies of one another, or say the same under one number. */
class NearCopiesTest {
  private static final long SEED = 20263;
  private static final List<String> DATES =
      List.of("dates.permit", "dates.started", "dates.completed");

  @TempDir Path folder;

  private final Batches batch = new Batches();
  private final Random random = new Random(SEED);

  private Map<String, String> form() {
    return batch.add(
        "record.id",
        "W-" + batch.records.size(),
        "driller.licence",
        "D-" + random.nextInt(9),
        "installer.licence",
        "P-" + random.nextInt(9),
        "dates.completed",
        "2019-04-" + (1 + random.nextInt(28)),
        "site.latitude",
        "" + (44 + random.nextInt(9000) / 9e4),
        "site.longitude",
        "" + (-38 - random.nextInt(9000) / 9e4),
        "site.elevation",
        "" + (400 + random.nextInt(300)),
        "well.depth",
        "" + (100 + random.nextInt(300)),
        "well.casing_depth",
        "" + (40 + random.nextInt(50)),
        "water.static_level",
        "" + (10 + random.nextInt(70)),
        "water.pumping_level",
        "" + (90 + random.nextInt(9)),
        "water.yield",
        "" + (3 + random.nextInt(30)),
        "pump.intake_depth",
        "" + (85 + random.nextInt(10)),
        "well.use",
        "household",
        "well.casing_material",
        "steel",
        "pressure.cut_in",
        "40",
        "tank.volume",
        "" + (40 + random.nextInt(50)));
  }

  private Map<String, String> copy(Map<String, String> form, String... changes) {
    Map<String, String> copy = new LinkedHashMap<>(form);
    copy.put("record.id", "W-" + batch.records.size());
    for (int i = 0; i < changes.length; i += 2) {
      copy.put(changes[i], changes[i + 1]);
    }
    batch.records.add(copy);
    return copy;
  }

  private Duplicates.Found found() throws Exception {
    return batch.check(folder).duplicates();
  }

  /** Who copies a form has to change where, when and by whom. */
  @Test
  void aCopyAtAnotherPlaceOnAnotherDayByAnotherLicenceIsFound() throws Exception {
    for (int i = 0; i < 40; i++) {
      copy(
          form(),
          "driller.licence",
          "X-1",
          "installer.licence",
          "X-2",
          "dates.completed",
          "2001-01-01",
          "site.latitude",
          "45.51",
          "site.longitude",
          "-39.2",
          "site.elevation",
          "812");
    }
    Duplicates.Found found = found();
    assertEquals(40, found.nearCopyTotal(), "" + SEED);
    assertEquals(6, found.nearCopies().get(0).different().size());
    assertFalse(found.isCut());
  }

  @Test
  void wellsOfOneStreetAreAlike() throws Exception {
    Map<String, String> form = form();
    form.put("site.latitude", "44.0400");
    form.put("site.longitude", "-38.0500");
    copy(
        form,
        "dates.completed",
        "2019-05-01",
        "site.latitude",
        "44.0410",
        "site.elevation",
        "702",
        "site.longitude",
        "-38.0510");
    assertEquals(0, found().nearCopyTotal());
    batch.records.get(1).put("site.latitude", "44.5410");
    assertEquals(1, found().nearCopyTotal());
  }

  @Test
  void wellsOfOneStreetMayDifferInOneMeasuredEntryToo() throws Exception {
    copy(form(), "well.depth", "7", "dates.completed", "2001-01-01");
    assertEquals(1, found().nearCopyTotal());
    copy(form(), "well.depth", "7", "dates.completed", "2001-01-01", "tank.volume", "12");
    assertEquals(1, found().nearCopyTotal());
  }

  /** Honest forms of like wells that differ in where and when, and in a little more, are many. */
  @Test
  void nothingElseDiffersBesideWhereAndWhen() throws Exception {
    copy(form(), "site.latitude", "45.5", "dates.completed", "2001-01-01");
    assertEquals(1, found().nearCopyTotal());
    copy(form(), "site.latitude", "45.5", "dates.completed", "2001-01-01", "tank.volume", "12");
    assertEquals(1, found().nearCopyTotal());
  }

  @Test
  void aFourthThingThatDiffersIsOneTooMany() throws Exception {
    String[] three = {
      "dates.completed", "2001-01-01", "pressure.cut_in", "20", "tank.volume", "12"
    };
    copy(form(), three);
    assertEquals(1, found().nearCopyTotal());
    copy(form(), three).put("well.use", "livestock");
    assertEquals(1, found().nearCopyTotal());
  }

  @Test
  void aMeasuredEntryMayDifferAndTwoMayNot() throws Exception {
    copy(form(), "well.depth", "7");
    copy(form(), "well.depth", "7", "water.yield", "2");
    copy(form(), "well.depth", "7", "site.latitude", "45.1", "dates.completed", "2001-01-01");
    assertEquals(1, found().nearCopyTotal());
  }

  /** Three figures that nobody else writes are no chance; three that many write are. */
  @Test
  void rareFiguresTellACopyFromCommonOnes() throws Exception {
    for (int i = 0; i < 800; i++) {
      Map<String, String> form = form();
      form.keySet()
          .removeAll(List.of("water.pumping_level", "well.casing_depth", "pump.intake_depth"));
      form.putAll(Map.of("well.depth", "200", "water.static_level", "20"));
    }
    copy(batch.records.get(7), "site.latitude", "45.5", "dates.completed", "2001-01-01");
    assertEquals(0, found().nearCopyTotal());
    Map<String, String> rare = batch.records.get(9);
    rare.putAll(Map.of("well.depth", "187.3", "water.static_level", "43.2", "water.yield", "7.35"));
    copy(rare, "site.latitude", "45.5", "dates.completed", "2001-01-01");
    assertEquals(1, found().nearCopyTotal());
  }

  /** Three figures agree by chance among many wells: nothing is said of them. */
  @Test
  void formsOfThreeMeasuredEntriesAreNoCopies() throws Exception {
    for (int i = 0; i < 2; i++) {
      Map<String, String> form = form();
      form.keySet()
          .removeAll(List.of("water.pumping_level", "well.casing_depth", "pump.intake_depth"));
      form.putAll(Map.of("well.depth", "200", "water.static_level", "20", "water.yield", "10"));
    }
    assertEquals(0, found().nearCopyTotal());
  }

  /** A form of little is said to be alike only where all is the same, place and day too. */
  @Test
  void narrowRowsThatSayTheSameAreAlike() throws Exception {
    String[] row = {
      "record.id", "N-1", "dates.completed", "2019-04-02", "site.latitude", "44.012345",
      "site.longitude", "-38.5", "well.depth", "200", "water.static_level", "20"
    };
    Map<String, String> first = batch.add(row);
    copy(first);
    assertEquals(1, found().nearCopyTotal());
    assertEquals(5, found().nearCopies().get(0).equal());
    for (String key : List.of("dates.completed", "site.latitude", "water.static_level")) {
      batch.records.clear();
      copy(batch.add(row)).remove(key);
      assertEquals(0, found().nearCopyTotal(), "one row has no " + key);
      batch.records.forEach(record -> record.remove(key));
      assertEquals(0, found().nearCopyTotal(), "no row has " + key);
    }
    batch.records.clear();
    copy(batch.add(row), "water.static_level", "21");
    assertEquals(0, found().nearCopyTotal());
  }

  /** Two dozen forms agree in all but the depth by chance: the copy is found by place and days. */
  @Test
  void aCopyAmongManyFormsOfLikeFiguresIsFound() throws Exception {
    for (int i = 0; i < 1200; i++) {
      Map<String, String> form = form();
      form.keySet().removeAll(List.of("pump.intake_depth", "water.pumping_level"));
      form.put("grout.bottom", "20");
      form.put("well.casing_depth", "" + 5 * (8 + random.nextInt(5)));
      form.put("water.static_level", "" + 5 * (4 + random.nextInt(5)));
      form.put("water.yield", random.nextBoolean() ? "5" : "10");
      LocalDate permit = LocalDate.of(2019, 1, 1).plusDays(random.nextInt(300));
      dates(form, permit, random.nextInt(60), random.nextInt(40));
    }
    for (int i = 0; i < 20; i++) {
      Map<String, String> form = batch.records.get(i);
      Map<String, String> copy = copy(form, "well.depth", "7" + i);
      for (String date : DATES) {
        copy.put(date, "" + LocalDate.parse(form.getOrDefault(date, "")).plusDays(400 + i));
      }
    }
    Duplicates.Found found = found();
    assertEquals(20, found.nearCopyTotal(), "" + SEED);
    found.nearCopies().forEach(near -> assertEquals(2, near.size(), near.toString()));
  }

  private static void dates(Map<String, String> form, LocalDate permit, int wait, int work) {
    form.put("dates.permit", "" + permit);
    form.put("dates.started", "" + permit.plusDays(wait));
    form.put("dates.completed", "" + permit.plusDays(wait + work));
  }

  /** With much that agrees, who changes one figure beside where, when and whom is found. */
  @Test
  void aFormOfMuchMayDifferInOneThingMore() throws Exception {
    for (boolean isMuch : new boolean[] {true, false}) {
      batch.records.clear();
      Map<String, String> form = form();
      form.putAll(
          Map.of(
              "well.drilled_depth",
              "231",
              "grout.bottom",
              "33",
              "water.test_rate",
              "7",
              "well.screen_top",
              "201"));
      if (isMuch) {
        form.put("grout.top", "1");
      }
      Map<String, String> copy =
          copy(
              form,
              "site.latitude",
              "45.51",
              "dates.completed",
              "2001-01-01",
              "installer.licence",
              "X-2",
              "water.static_level",
              "9");
      assertEquals(isMuch ? 1 : 0, found().nearCopyTotal(), "one thing more");
      copy.put("tank.volume", "1");
      assertEquals(0, found().nearCopyTotal(), "two things more");
    }
  }

  @Test
  void equalFormsAreOneGroup() throws Exception {
    Map<String, String> form = form();
    for (int i = 0; i < 2999; i++) {
      copy(form);
    }
    Duplicates.Found found = found();
    assertEquals(1, found.nearCopyTotal());
    assertEquals(3000, found.nearCopyRecords());
    assertEquals(3000, found.nearCopies().get(0).size());
    assertEquals(List.of(), found.nearCopies().get(0).different());
    assertFalse(found.isCut(), "nothing was missed");
  }

  @Test
  void rowsOfOneNumberAreNoCopiesAndNothingIsMissed() throws Exception {
    Map<String, String> form = form();
    for (int i = 0; i < 300; i++) {
      copy(form, "record.id", "W-0");
    }
    Duplicates.Found found = found();
    assertEquals(0, found.nearCopyTotal());
    assertEquals(1, found.sameNumberTotal());
    assertFalse(found.isCut());
  }

  @Test
  void theOrderOfRowsTellsNothing() throws Exception {
    Map<String, String> same = form();
    for (int i = 0; i < 60; i++) {
      copy(form(), "site.latitude", "45.1");
      copy(same, "well.use", i % 3 == 0 ? "livestock" : "household", "tank.volume", "" + i);
    }
    String before = told();
    for (int i = 0; i < 3; i++) {
      Collections.shuffle(batch.records, random);
      assertEquals(before, told(), "" + SEED);
    }
  }

  private String told() throws Exception {
    Duplicates.Found found = found();
    List<Integer> sizes =
        found.nearCopies().stream().map(Duplicates.NearCopy::size).sorted().toList();
    return found.nearCopyTotal() + " " + found.nearCopyRecords() + sizes + found.isCut();
  }

  /** A short mark of each value would let some of these pass for the same. */
  @Test
  void whatDiffersUnderOneNumberIsAlwaysSaid() throws Exception {
    for (int i = 0; i < 2000; i++) {
      Map<String, String> form = form();
      int depth = Integer.parseInt(form.getOrDefault("well.depth", "0"));
      copy(form, "record.id", form.getOrDefault("record.id", ""), "well.depth", "" + (depth + 7));
    }
    Duplicates.Found found = Batches.check(folder, batch.records, false, 5000).duplicates();
    assertEquals(2000, found.sameNumbers().size());
    for (Duplicates.SameNumber same : found.sameNumbers()) {
      assertEquals(List.of("well.depth"), same.different(), "" + SEED);
    }
  }

  /** Words of one hash code, a sign, and a blank for what does not apply, are differences. */
  @Test
  void valuesThatAreEasilyTakenForOneAreTold() throws Exception {
    differs("driller.licence", "Aa-7", "BB-7");
    differs("site.longitude", "40.5", "-40.5");
    differs("tank.volume", "n/a", "");
  }

  private void differs(String key, String one, String other) throws Exception {
    batch.records.clear();
    Map<String, String> form = form();
    form.put(key, one);
    copy(form, "record.id", form.getOrDefault("record.id", ""), key, other);
    assertTrue(found().sameNumbers().get(0).different().contains(key), key);
  }
}
