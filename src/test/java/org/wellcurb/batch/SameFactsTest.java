package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The CSV, JSON, GeoJSON and HTML of one run say the same. */
class SameFactsTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir static Path dir;
  private static Path out = Path.of("");
  private static final Map<String, List<Map<String, String>>> BY_RECORD = new LinkedHashMap<>();

  @BeforeAll
  static void run() throws Exception {
    out = dir.resolve("out");
    Runs.run(
        Runs.request(out, List.of("fenwick-county", "tarn-district"), Path.of("sample-records")));
    for (Map<String, String> row : Runs.rows(out.resolve("findings.csv"))) {
      BY_RECORD.computeIfAbsent(key(row), key -> new ArrayList<>()).add(row);
    }
    assertFalse(BY_RECORD.isEmpty());
  }

  private static String key(Map<String, String> row) {
    return row.get("record_id") + " " + row.get("file") + " " + row.get("row");
  }

  private static String key(JsonNode node) {
    return node.path("record_id").asText()
        + " "
        + node.path("file").asText()
        + " "
        + node.path("row").asText();
  }

  @Test
  void recordsCsvCountsTheFindings() throws Exception {
    for (Map<String, String> row : Runs.rows(out.resolve("records.csv"))) {
      List<Map<String, String>> findings = BY_RECORD.getOrDefault(key(row), List.of());
      assertEquals(String.valueOf(findings.size()), row.get("falls_short"), key(row));
      for (String kind : List.of("deficiency", "discrepancy", "omission", "advisory")) {
        long count = findings.stream().filter(f -> kind.equals(f.get("kind"))).count();
        assertEquals(String.valueOf(count), row.get(kind), key(row) + " " + kind);
      }
    }
  }

  @Test
  void rulesCsvCountsTheFindings() throws Exception {
    Map<String, Long> counts = new TreeMap<>();
    for (Map<String, String> row : Runs.rows(out.resolve("findings.csv"))) {
      counts.merge(row.get("pack") + " " + row.get("rule"), 1L, Long::sum);
    }
    for (Map<String, String> row : Runs.rows(out.resolve("rules.csv"))) {
      String rule = row.get("pack") + " " + row.get("rule");
      assertEquals("" + counts.getOrDefault(rule, 0L), row.get("falls_short"), rule);
    }
  }

  @Test
  void jsonHasTheSameFindings() throws Exception {
    JsonNode root = JSON.readTree(out.resolve("findings.json").toFile());
    int compared = 0;
    for (JsonNode record : root.path("records")) {
      List<Map<String, String>> findings = BY_RECORD.getOrDefault(key(record), List.of());
      assertEquals(findings.size(), record.path("findings").size(), key(record));
      for (int i = 0; i < findings.size(); i++) {
        JsonNode finding = record.path("findings").path(i);
        for (String column : List.of("rule", "kind", "entry", "written")) {
          assertEquals(findings.get(i).get(column), finding.path(column).asText(), key(record));
        }
        String margin = findings.get(i).get("margin");
        if (margin.isEmpty()) {
          assertTrue(finding.path("margin").isNull() || finding.path("margin").isMissingNode());
        } else {
          assertEquals(Double.parseDouble(margin), finding.path("margin").asDouble(), 1e-9);
        }
        compared++;
      }
    }
    assertEquals(Runs.rows(out.resolve("findings.csv")).size(), compared);
  }

  @Test
  void geoJsonHasTheSameRulesAndCounts() throws Exception {
    JsonNode root = JSON.readTree(out.resolve("findings.geojson").toFile());
    assertFalse(root.path("features").isEmpty());
    for (JsonNode feature : root.path("features")) {
      JsonNode properties = feature.path("properties");
      List<Map<String, String>> findings = BY_RECORD.getOrDefault(key(properties), List.of());
      List<String> rules = new ArrayList<>();
      properties.path("rules").forEach(rule -> rules.add(rule.asText()));
      assertEquals(findings.stream().map(f -> f.get("rule")).toList(), rules, key(properties));
      for (String kind : List.of("deficiency", "discrepancy", "omission", "advisory")) {
        long count = findings.stream().filter(f -> kind.equals(f.get("kind"))).count();
        assertEquals(count, properties.path(kind).asLong(), key(properties));
      }
    }
  }

  /** Each sheet has one article a finding, of its kind, headed by its sentence. */
  @Test
  void sheetsHaveTheSameFindings() throws Exception {
    JsonNode root = JSON.readTree(out.resolve("findings.json").toFile());
    Pattern article =
        Pattern.compile(
            "<article class=\"finding ([a-z]+)\".*?<h3[^>]*>(.*?)</h3>", Pattern.DOTALL);
    for (JsonNode record : root.path("records")) {
      String html = Files.readString(out.resolve(record.path("sheet").asText()));
      List<String> onPage = new ArrayList<>();
      Matcher found = article.matcher(html);
      while (found.find()) {
        onPage.add(found.group(1) + ": " + text(found.group(2)));
      }
      List<String> inJson = new ArrayList<>();
      record
          .path("findings")
          .forEach(
              f ->
                  inJson.add(f.path("kind").asText() + ": " + f.path("sentence").asText().strip()));
      assertEquals(inJson.size(), onPage.size(), key(record));
      for (String finding : inJson) {
        assertTrue(
            onPage.stream().anyMatch(each -> contains(each, finding)),
            () -> key(record) + ": " + finding + " is not among " + onPage);
      }
    }
  }

  private static boolean contains(String onPage, String finding) {
    int colon = finding.indexOf(": ");
    return onPage.startsWith(finding.substring(0, colon + 1))
        && onPage.contains(finding.substring(colon + 2));
  }

  /** What a reader sees: no tags, no entities, single blanks. */
  private static String text(String html) {
    return html.replaceAll("<[^>]*>", " ")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&")
        .replaceAll("\\s+", " ")
        .strip();
  }

  /** The list of the batch page names every record with a finding. */
  @Test
  void theBatchPageListsTheRecords() throws Exception {
    String html = Files.readString(out.resolve("index.html"));
    for (List<Map<String, String>> findings : BY_RECORD.values()) {
      assertTrue(html.contains(">" + findings.get(0).get("record_id") + "</a>"), html);
    }
    assertTrue(html.contains("<dd>" + BY_RECORD.size() + "</dd>"));
  }
}
