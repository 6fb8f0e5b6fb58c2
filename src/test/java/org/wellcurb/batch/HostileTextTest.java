package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.browser.Browser;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.report.Forms;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.Pages;
import org.wellcurb.rulepack.PackLoader;

/**
 * What would be markup, script or a formula stays text, wherever it comes from: entries, headers,
 * file names, rows set aside, packs, and the tables given beside the records.
 */
class HostileTextTest {
  private static final String TEXT = "=1+1|" + Forms.HOSTILE.replace("\u0000", "");
  private static final JsonMapper JSON = new JsonMapper();

  @TempDir Path dir;

  @Test
  void staysText() throws Exception {
    Path records = records();
    Path pack = pack();
    Path out = dir.resolve("out");
    run(records, pack, out, LookOptions.PLAIN);
    Path settled =
        table("settled.csv", List.of("record_id", "rule", "decision", "by", "date", "note"));
    Path answers = table("answers.csv", List.of("record_id", "entry", "corrected"));
    Path again = dir.resolve("again");
    run(records, pack, again, new LookOptions(true, answers, settled, out));
    Path rehearsed = dir.resolve("rehearsed");
    new RehearseRun(
            new RehearseRequest(
                InputOptions.of(List.of(records.toString())),
                pack.toString(),
                Runs.BIRCH,
                rehearsed,
                Runs.AS_OF,
                1,
                100,
                PageStyle.PLAIN),
            Progress.SILENT,
            new Stop())
        .run();
    Files.writeString(
        rehearsed.resolve("rulebook.html"),
        new Pages(PageStyle.PLAIN).rulebook(PackLoader.load(pack.toString())));
    assertTrue(Files.exists(again.resolve("since.html")));
    assertTrue(Files.readString(again.resolve("set-aside.csv")).contains("acted"));
    int cells = 0;
    for (Path each : files(List.of(out, again, rehearsed), ".csv")) {
      if (!each.toString().contains("/set-aside/")) {
        cells += defused(each);
      }
    }
    assertTrue(cells > 800, "the tables hold " + cells + " cells");
    pages(files(List.of(out, again, rehearsed), ".html"));
  }

  private static void pages(List<Path> pages) {
    assertTrue(pages.size() > 5, pages.toString());
    for (String kind : List.of("/sheets/", "/notices/")) {
      assertTrue(pages.stream().anyMatch(each -> each.toString().contains(kind)), kind);
    }
    try (Browser browser = Browser.start()) {
      for (Path page : pages) {
        browser.open(page, 320);
        assertNull(browser.driver().executeScript("return window.acted"), page.toString());
        assertEquals(List.of(), browser.complaints(), page.toString());
        assertEquals(
            0L,
            browser
                .driver()
                .executeScript(
                    "return document.querySelectorAll("
                        + "'img,iframe,object,script:not(:last-of-type),[onerror],[onload]').length"),
            page.toString());
        assertEquals(0, browser.sideways(), () -> page + ": " + browser.wide());
      }
    }
  }

  /** The cells of a table; each is a number, or does not begin as a formula does. */
  private static int defused(Path csv) throws Exception {
    int cells = 0;
    try (CSVParser parser = CSVParser.parse(Files.readString(csv), CSVFormat.RFC4180)) {
      for (CSVRecord row : parser) {
        for (String cell : row) {
          cells++;
          boolean isNumber = cell.matches("-?[0-9.]+");
          assertTrue(
              isNumber || cell.isEmpty() || "=+-@\t\r".indexOf(cell.charAt(0)) < 0,
              csv + " line " + row.getRecordNumber() + ": " + cell);
        }
      }
    }
    return cells;
  }

  private static List<Path> files(List<Path> folders, String end) throws Exception {
    List<Path> files = new ArrayList<>();
    for (Path folder : folders) {
      try (Stream<Path> walk = Files.walk(folder)) {
        walk.filter(each -> each.toString().endsWith(end)).sorted().forEach(files::add);
      }
    }
    assertFalse(files.isEmpty());
    return files;
  }

  private static void run(Path records, Path pack, Path out, LookOptions looks) throws RunFailure {
    Runs.run(
        ScreenRequest.plain(List.of(records.toString()), List.of(pack.toString()), out, Runs.AS_OF)
            .with(OutputOptions.PLAIN.with(SheetsFor.ALL, 10).withOutcomes())
            .with(looks));
  }

  /** A row that is hostile throughout, some that are so but for their figures, one set aside. */
  private Path records() throws Exception {
    List<String> header = new ArrayList<>();
    List<String> all = new ArrayList<>();
    List<String> figures = new ArrayList<>();
    for (Entry entry : Catalogue.standard().entries()) {
      if (entry.key().equals("layers")) {
        continue;
      }
      header.add(entry.key());
      all.add(TEXT);
      figures.add(
          switch (entry.key()) {
            case "record.jurisdiction" -> "alder";
            case "record.units" -> "us";
            case "relief.fitted" -> "yes";
            case "relief.setting" -> "50";
            case "pressure.cut_in" -> "40";
            case "pressure.cut_out" -> "60";
            case "setback.septic_tank" -> "10";
            case "water.pumping_level" -> "20";
            case "water.static_level" -> "60";
            case "well.depth" -> "200";
            case "site.latitude" -> "45.1";
            case "site.longitude" -> "-75.2";
            case "dates.completed" -> "2020-05-01";
            case "record.id", "driller.licence", "installer.licence", "record.variances" -> TEXT;
            default -> entry.kind() == org.wellcurb.record.Kind.TEXT ? TEXT : "";
          });
    }
    header.add(TEXT);
    all.add(TEXT);
    figures.add(TEXT);
    Path folder = Files.createDirectories(dir.resolve("records"));
    Path file = folder.resolve("<img src=x onerror=window.acted=1>'&.csv");
    StringBuilder csv = new StringBuilder();
    try (org.apache.commons.csv.CSVPrinter printer =
        new org.apache.commons.csv.CSVPrinter(csv, CSVFormat.RFC4180)) {
      printer.printRecord(header);
      printer.printRecord(all);
      printer.printRecord(figures);
      printer.printRecord(figures);
      printer.printRecord(TEXT, TEXT);
    }
    Files.writeString(file, csv);
    Files.writeString(folder.resolve("<svg onload=window.acted=1>.doc"), TEXT);
    return folder;
  }

  /** A pack of which every text that a page shows is hostile. */
  private Path pack() throws Exception {
    JsonNode pack = JSON.readTree(Path.of(Runs.ALDER, "pack.json").toFile());
    ((ObjectNode) pack).remove("$schema");
    spoil(pack);
    Path folder = Files.createDirectories(dir.resolve("alder"));
    JSON.writeValue(folder.resolve("pack.json").toFile(), pack);
    return folder;
  }

  private static void spoil(JsonNode node) {
    for (String text : List.of("title", "authority", "because", "remedy", "section", "notice")) {
      if (node.path(text).isTextual()) {
        ((ObjectNode) node).set(text, TextNode.valueOf(TEXT.replace("\u202e", "")));
      }
    }
    node.forEach(HostileTextTest::spoil);
  }

  private Path table(String name, List<String> columns) throws Exception {
    StringBuilder csv = new StringBuilder();
    try (org.apache.commons.csv.CSVPrinter printer =
        new org.apache.commons.csv.CSVPrinter(csv, CSVFormat.RFC4180)) {
      printer.printRecord(columns);
      List<String> cells = new ArrayList<>(columns);
      cells.replaceAll(
          column ->
              switch (column) {
                case "date" -> "2025-05-01";
                case "entry" -> "relief.setting";
                default -> TEXT;
              });
      printer.printRecord(cells);
    }
    return Files.writeString(dir.resolve(name), csv);
  }
}
