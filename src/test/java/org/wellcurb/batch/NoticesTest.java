package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wellcurb.report.Cap;

/** One notice for each licence that has something to answer, and nothing of anyone else in it. */
class NoticesTest {
  private static final String RECORDS =
      """
      record.id,record.jurisdiction,driller.licence,installer.licence,relief.setting [psi],\
      pressure.cut_out [psi],pressure.cut_in [psi],tank.precharge [psi]
      HIS-1,alder,D-1,,60,60,40,38
      HIS-2,alder,d-1,,50,60,40,38
      HER-1,alder,D-2,P-9,60,60,40,38
      OK-1,alder,D-3,,75,60,40,38
      NONE-1,alder,,,60,60,40,38
      """;

  @TempDir Path dir;

  private ScreenSummary run(NoticeOptions notices) throws Exception {
    Path records = Files.writeString(dir.resolve("wells.csv"), RECORDS);
    ScreenRequest request =
        Runs.request(dir.resolve("out"), List.of("fenwick-county"), records).with(notices);
    return Runs.run(request);
  }

  private List<String> notices() throws IOException {
    Path folder = dir.resolve("out/notices");
    if (!Files.exists(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void oneForEachLicenceAndATableBesideIt() throws Exception {
    run(NoticeOptions.PLAIN);
    List<String> names = notices();
    assertTrue(names.contains("D-1.html") && names.contains("D-1.csv"), names.toString());
    assertFalse(names.contains("record.html"), "nobody is nobody's licence: " + names);
    String page = Files.readString(dir.resolve("out/notices/D-1.html"));
    assertTrue(page.contains("HIS-1") && page.contains("HIS-2"), "written in either case");
    assertTrue(page.contains("2026-01-31"), "an answer is asked for 30 days after the as-of date");
  }

  @Test
  void holdsNobodyElsesRecords() throws Exception {
    run(NoticeOptions.PLAIN);
    for (String name : notices()) {
      String text = Files.readString(dir.resolve("out/notices").resolve(name));
      assertEquals(name.startsWith("D-1"), text.contains("HIS-"), name);
      assertFalse(text.contains("OK-1") || text.contains("NONE-1"), name);
      assertFalse(text.contains("index.html"), "it is sent away: " + name);
      if (name.startsWith("D-1")) {
        assertFalse(text.contains("HER-1") || text.contains("D-2"), name);
      }
    }
  }

  @Test
  void pointsAreThoseOfFindingsButAdvisories() throws Exception {
    run(NoticeOptions.PLAIN);
    List<Map<String, String>> points = Runs.rows(dir.resolve("out/notices/D-1.csv"));
    List<Map<String, String>> findings =
        Runs.rows(dir.resolve("out/findings.csv")).stream()
            .filter(row -> row.get("record_id").startsWith("HIS-"))
            .filter(row -> !row.get("kind").equals("advisory"))
            .toList();
    assertFalse(points.isEmpty());
    assertEquals(findings.size(), points.size());
    for (int i = 0; i < points.size(); i++) {
      assertEquals(String.valueOf(i + 1), points.get(i).get("point"));
      for (String column : List.of("record_id", "file", "row", "rule", "entry", "written")) {
        assertEquals(findings.get(i).get(column), points.get(i).get(column), column);
      }
      assertEquals("", points.get(i).get("corrected"));
    }
    String page = Files.readString(dir.resolve("out/notices/D-1.html"));
    assertTrue(page.contains("value=\"" + points.size() + "\""), "points are numbered through");
  }

  @Test
  void asksOfEachPointWhatCanAnswerItAndWarnsWhoeverMendsIt() throws Exception {
    Path records =
        Files.writeString(
            dir.resolve("wells.csv"),
            """
            record.id,record.jurisdiction,dates.completed,driller.licence,installer.licence,\
            dates.received,pump.type,pitless.fitted,pitless.depth [ft],site.zone
            LATE-1,alder,2020-05-01,D-1,,2021-05-01,,,,
            FROST-1,alder,2020-05-01,D-2,P-1,2020-05-02,submersible,yes,1,hill
            """);
    Runs.run(Runs.request(dir.resolve("out"), List.of("fenwick-county"), records));
    String late = point(Files.readString(dir.resolve("out/notices/D-1.html")), "Record received:");
    assertTrue(late.contains("Document enclosed"), late);
    assertFalse(late.contains("Put right on the well"), "nobody mends a day on a well: " + late);
    String page = Files.readString(dir.resolve("out/notices/P-1.html"));
    String frost = point(page, "Pitless depth:");
    assertTrue(frost.contains("Measured again on") && frost.contains("Put right on"), frost);
    assertTrue(page.contains("Before digging:") && page.contains("lock it off"), page);
    String paper = Files.readString(dir.resolve("out/notices/D-1.html"));
    assertFalse(paper.contains("Before digging:"), "a day asks for no shovel");
  }

  private static String point(String page, String beginning) {
    int from = page.indexOf("<b>" + beginning);
    assertTrue(from > 0, page);
    return page.substring(from, page.indexOf("</li>", from));
  }

  @Test
  void whatCannotWaitStandsFirstWithoutADay() throws Exception {
    Path records =
        Files.writeString(
            dir.resolve("wells.csv"),
            """
            record.id,record.jurisdiction,dates.completed,driller.licence,well.use,setback.septic_tank [ft],\
            sample.coliform,sample.e_coli,water_heater.relief_valve
            NEAR-1,alder,2020-05-01,D-1,household,20,absent,,
            HOT-1,alder,2020-05-01,D-1,household,200,absent,,no
            SICK-1,alder,2020-05-01,D-1,household,20,present,,
            DENIED-1,alder,2020-05-01,D-1,household,200,absent,present,
            """);
    Runs.run(Runs.request(dir.resolve("out"), List.of("fenwick-county"), records));
    String page = Files.readString(dir.resolve("out/notices/D-1.html"));
    int day = page.indexOf("2026-01-31");
    String before = page.substring(0, day);
    assertTrue(before.contains("Turn the water heater off and leave it off"), before);
    assertTrue(before.contains("SICK-1") && before.contains("HOT-1"), before);
    assertTrue(before.contains("DENIED-1"), "one of its entries says that bacteria are there");
    assertFalse(before.contains("NEAR-1"), before);
    List<String> ids =
        Runs.rows(dir.resolve("out/notices/D-1.csv")).stream()
            .filter(
                row ->
                    !row.get("rule").endsWith("-stated") && !row.get("rule").equals("well-tagged"))
            .map(row -> row.get("record_id"))
            .distinct()
            .toList();
    assertEquals(List.of("SICK-1", "DENIED-1", "HOT-1", "NEAR-1"), ids);
    String index = Files.readString(dir.resolve("out/index.html"));
    String first = index.substring(index.indexOf("id=\"first\""), index.indexOf("<dl"));
    for (String id : List.of("SICK-1", "HOT-1", "DENIED-1")) {
      assertTrue(first.contains("sheets/" + id + ".html"), first);
    }
    assertFalse(first.contains("NEAR-1"), first);
  }

  /** What a sample says of the water hangs on no pack. */
  @Test
  void sewageInTheWaterIsListedWhateverThePackAsks() throws Exception {
    Path records =
        Files.writeString(
            dir.resolve("wells.csv"),
            """
            record.id,record.jurisdiction,sample.coliform,sample.e_coli
            CLEAR-1,quebec,absent,absent
            SICK-1,quebec,present,present
            """);
    Runs.run(Runs.request(dir.resolve("out"), List.of("quebec"), records));
    assertTrue(Files.exists(dir.resolve("out/sheets/SICK-1.html")));
    String index = Files.readString(dir.resolve("out/index.html"));
    String first = index.substring(index.indexOf("id=\"first\""), index.indexOf("<dl"));
    assertTrue(first.contains("sheets/SICK-1.html") && !first.contains("CLEAR-1"), first);
  }

  /** A hundred blank tags are one table, not a hundred forms; every point keeps its number. */
  @Test
  void pointsAboutOneBlankEntryShareATable() throws Exception {
    StringBuilder rows =
        new StringBuilder("record.id,driller.licence,dates.completed,dates.sampled,well.tag\n");
    for (int i = 0; i < 30; i++) {
      rows.append("T-")
          .append(i)
          .append(",D-1,2020-01-01,,")
          .append(i == 7 ? "A1" : "")
          .append('\n');
    }
    Path records = Files.writeString(dir.resolve("tags.csv"), rows);
    Runs.run(
        Runs.request(dir.resolve("out"), List.of("fenwick-county"), records)
            .with(NoticeOptions.PLAIN));
    List<Map<String, String>> points = Runs.rows(dir.resolve("out/notices/D-1.csv"));
    String page = Files.readString(dir.resolve("out/notices/D-1.html"));
    String tables = page.substring(page.indexOf("id=\"blank\""));
    long tags = 0;
    for (Map<String, String> point : points) {
      String number = ">" + point.get("point") + "<";
      String item = "value=\"" + point.get("point") + "\"";
      assertTrue(page.contains(number) != page.contains(item), number + " once");
      if (point.get("rule").equals("well-tagged")) {
        tags++;
        assertTrue(tables.contains(number) && tables.contains(point.get("record_id")), number);
      }
    }
    assertEquals(29, tags);
    assertTrue(page.contains("It stays blank, because"), page);
  }

  @Test
  void noneAreWrittenWhereNoneAreWanted() throws Exception {
    run(NoticeOptions.NONE);
    assertEquals(List.of(), notices());
    assertFalse(Files.exists(dir.resolve("out/" + ReportFiles.NOTICE_LOG)));
  }

  @Test
  void theCutIsSaid() throws Exception {
    ScreenSummary summary = run(new NoticeOptions(true, 1, 30, null));
    assertEquals(List.of("D-1.csv", "D-1.html"), notices(), "most findings first");
    assertTrue(summary.cuts().stream().anyMatch(cut -> cut.cap() == Cap.NOTICES));
    assertTrue(Files.readString(dir.resolve("out/run.json")).contains("\"notices\": 1"));
    assertFalse(Files.exists(dir.resolve("out/" + ReportFiles.NOTICE_LOG)));
  }

  /** Whoever holds a notice has no other file of the report, so it sends them to none. */
  @Test
  void aNoticeThatIsCutSaysSoAndSendsNobodyElsewhere() throws Exception {
    StringBuilder rows =
        new StringBuilder(
            "record.id,driller.licence,relief.setting [psi],pressure.cut_out [psi]\n");
    for (int i = 0; i < Cap.FINDINGS_IN_NOTICE.most() + 20; i++) {
      rows.append("R-").append(i).append(",D-1,50,60\n");
    }
    Path records = Files.writeString(dir.resolve("many.csv"), rows);
    Runs.run(Runs.request(dir.resolve("out"), List.of("common-practice"), records));
    int most = Cap.FINDINGS_IN_NOTICE.most();
    assertEquals(most, Runs.rows(dir.resolve("out/notices/D-1.csv")).size());
    String page = Files.readString(dir.resolve("out/notices/D-1.html"));
    long asked =
        Runs.rows(dir.resolve("out/findings.csv")).stream()
            .filter(row -> !row.get("kind").equals("advisory"))
            .count();
    assertTrue(asked > most, "a cut is needed to be said");
    assertTrue(page.contains(most + " of " + asked + " points stand here."), page);
    for (String other : List.of("findings.csv", "records.csv", "index.html")) {
      assertFalse(page.contains(other), other);
    }
  }

  @Test
  void anOfficesOwnFormIsUsed() throws Exception {
    Path form =
        Files.writeString(
            dir.resolve("letter.ftl"),
            "<h1>Office of Alder</h1><p>${licence} by ${replyBy}</p>"
                + "<#list records as r><#list r.points as p><p>${p.number} ${r.id}"
                + " ${p.sentence}</p></#list></#list>");
    run(new NoticeOptions(true, 10, 10, form));
    String page = Files.readString(dir.resolve("out/notices/D-1.html"));
    assertTrue(page.startsWith("<h1>Office of Alder</h1><p>D-1 by 2026-01-11</p>"), page);
    assertTrue(page.contains("HIS-2"), page);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "${nobody}|letter.ftl:1:3: The following has evaluated to null or missing",
        "<#list records as r>|letter.ftl:1",
        "${'1+1'?eval}|?eval",
        "<#assign x='a'?interpret>|?interpret",
        "${'x'?<#-- hid -->eval}|?eval",
        "<#include '/etc/passwd'>|letter.ftl",
        "<#include '../secret.txt'>|letter.ftl",
        "<#list 1.. as x>ab</#list>|writes more than",
        "<#macro m><@m/></#macro><@m/>|calls itself",
        "${'freemarker.template.utility.Execute'?new()('id')}|?new",
        "${licence?api.getClass()}|?api",
        "${.data_model.class.name}|letter.ftl",
        "${'a'?left_pad(2147483600)}|letter.ftl: takes more memory than there is; look for a text",
        "<#include 'letter.ftl'>|letter.ftl",
        "${licence?no_esc}|letter.ftl:1:11: The ?no_esc expression can't be used",
        "<#ftl output_format='plainText'>${licence}|letter.ftl: sets another output format",
        "<#ftl output_format='RTF'>${licence}|letter.ftl: sets another output format",
        "<#outputformat 'RTF'>${licence}</#outputformat>|letter.ftl: sets another output format",
        "<p>${.now}</p>|letter.ftl: asks for .now, the clock; use asOf",
        "<#if . now?is_date>x</#if>|letter.ftl: asks for .now, the clock; use asOf",
        "<#include 'none.ftl'>|Template not found for name \"none.ftl\". It must stand in the folder",
        "<#import 'none.ftl' as x>|Template not found for name \"none.ftl\". It must stand in",
      })
  void aFormThatMayNotWritesNothing(String form, String said) throws Exception {
    Files.writeString(dir.resolve("letter.ftl"), form);
    RunFailure failure =
        assertThrows(
            RunFailure.class,
            () -> run(new NoticeOptions(true, 10, 10, dir.resolve("letter.ftl"))));
    assertEquals(RunFailure.Kind.UNUSABLE, failure.kind());
    String message = String.valueOf(failure.getMessage());
    assertTrue(message.contains(said), message);
    assertEquals(1, message.lines().count(), message);
    assertFalse(Files.exists(dir.resolve("out")));
  }

  @Test
  void whatAFormRecoversFromIsNotLogged() throws Exception {
    Path form =
        Files.writeString(
            dir.resolve("letter.ftl"),
            "Answer us now. <#attempt>${nobody}<#recover>nothing</#attempt>");
    List<String> logged = new ArrayList<>();
    Handler listener =
        new Handler() {
          @Override
          public void publish(LogRecord line) {
            logged.add(line.getMessage());
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    Logger root = Logger.getLogger("");
    root.addHandler(listener);
    try {
      run(new NoticeOptions(true, 10, 10, form));
    } finally {
      root.removeHandler(listener);
    }
    assertEquals(List.of(), logged);
    assertEquals("Answer us now. nothing", Files.readString(dir.resolve("out/notices/D-1.html")));
  }

  /** A licence, a number and a text too long for a page to quote whole. */
  @Test
  void longNamesKeepTheirPoints() throws Exception {
    String licence = "L".repeat(230);
    String id = "N".repeat(240);
    String written = "6".repeat(210) + " psi";
    Path records =
        Files.writeString(
            dir.resolve("wells.csv"),
            "record.id,driller.licence,relief.setting,pressure.cut_out\n"
                + (id + "," + licence + ",50 psi,60 psi\n")
                + ("B," + licence + "," + written + ",60 psi\n"));
    Runs.run(Runs.request(dir.resolve("out"), List.of("fenwick-county"), records));
    List<String> names = notices();
    assertEquals(2, names.size(), names.toString());
    List<Map<String, String>> points = Runs.rows(dir.resolve("out/notices").resolve(names.get(0)));
    List<Map<String, String>> findings =
        Runs.rows(dir.resolve("out/findings.csv")).stream()
            .filter(row -> !row.get("kind").equals("advisory"))
            .toList();
    assertEquals(
        findings.stream().map(row -> row.get("record_id") + row.get("written")).toList(),
        points.stream().map(row -> row.get("record_id") + row.get("written")).toList());
    assertTrue(points.stream().anyMatch(row -> row.get("record_id").equals(id)));
    String page = Files.readString(dir.resolve("out/notices").resolve(names.get(1)));
    assertTrue(page.contains("value=\"" + points.size() + "\""), "all points are on the page");
  }

  /** One name in two cases, two spacings and two ways to write an accent. */
  @Test
  void oneNameIsOneLicence() throws Exception {
    Path records =
        Files.writeString(
            dir.resolve("wells.csv"),
            "record.id,driller.licence,installer.licence,relief.setting [psi],"
                + "pressure.cut_out [psi]\n"
                + "A,Ren\u00e9 B 1,,50,60\nB,\u00a0Rene\u0301  b 1,REN\u00c9 B 1,50,60\n");
    Runs.run(Runs.request(dir.resolve("out"), List.of("fenwick-county"), records));
    assertEquals(2, notices().size(), notices().toString());
    LicenceCounts counts = new LicenceCounts();
    counts.record("Ren\u00e9 B 1");
    counts.record("\u00a0Rene\u0301  b 1");
    assertEquals(1, counts.lines().size());
    assertEquals(2, counts.lines().get(0).records());
  }

  @Test
  void whatAFormPrintsIsEscaped() throws Exception {
    Path form = Files.writeString(dir.resolve("letter.ftl"), "${licence}");
    Path records =
        Files.writeString(
            dir.resolve("wells.csv"),
            "record.id,driller.licence,relief.setting,pressure.cut_out\nA,<b>D</b>,60,60\n");
    Runs.run(
        Runs.request(dir.resolve("out"), List.of("fenwick-county"), records)
            .with(new NoticeOptions(true, 10, 10, form)));
    assertEquals(
        "&lt;b&gt;D&lt;/b&gt;",
        Files.readString(dir.resolve("out/notices").resolve(notices().get(1))));
  }
}
