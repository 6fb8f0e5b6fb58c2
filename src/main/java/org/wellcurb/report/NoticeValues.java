package org.wellcurb.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What an office's own template of a notice is given: texts, whole numbers and lists, under names
 * that stay (README.md lists them).
 */
final class NoticeValues {
  private NoticeValues() {}

  static Map<String, Object> of(NoticePage page) {
    List<Map<String, Object>> records = new ArrayList<>();
    for (NoticePage.Noticed record : page.records()) {
      List<Map<String, Object>> points = new ArrayList<>();
      for (NoticePage.Line line : record.lines()) {
        points.add(point(line));
      }
      Map<String, Object> values = new LinkedHashMap<>();
      values.put("id", record.id());
      values.put("place", record.place());
      values.put("elsewhere", record.elsewhere());
      values.put("points", points);
      records.add(values);
    }
    List<Map<String, Object>> packs = new ArrayList<>();
    for (PackLine pack : page.packs()) {
      packs.add(
          Map.of("title", pack.title(), "authority", pack.authority(), "edition", pack.edition()));
    }
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("licence", page.view().licence());
    values.put("asOf", page.view().asOf().toString());
    values.put("replyBy", page.view().replyBy().toString());
    values.put("total", page.view().total());
    values.put("advisories", page.view().advisories());
    values.put("office", page.office());
    values.put("table", page.view().table());
    values.put("cut", page.cut());
    values.put("records", records);
    values.put(
        "atOnce",
        page.atOnce().stream()
            .map(each -> Map.of("id", each.id(), "text", each.text(), "points", each.numbers()))
            .toList());
    values.put("packs", packs);
    values.put("caution", page.caution());
    return values;
  }

  private static Map<String, Object> point(NoticePage.Line line) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("number", line.number());
    values.put("kind", line.kind());
    values.put("sentence", line.sentence());
    values.put("asked", line.title());
    values.put("written", line.written());
    values.put("entry", line.entry());
    values.put("others", line.others());
    values.put("newSample", line.isSample());
    values.put("remedy", line.remedy());
    values.put("source", line.source().text());
    values.put("address", line.source().address());
    values.put("reading", line.reading());
    values.put("older", line.older());
    return values;
  }

  /** A notice of our own invention, to try a template on. */
  static Map<String, Object> sample() {
    Map<String, Object> point = new LinkedHashMap<>();
    point.put("number", 1);
    point.put("entry", "a");
    point.put("others", List.of("b"));
    point.put("newSample", false);
    for (String name :
        List.of(
            "kind",
            "sentence",
            "asked",
            "written",
            "remedy",
            "source",
            "address",
            "reading",
            "older")) {
      point.put(name, name);
    }
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("licence", "X-1");
    values.put("asOf", "2026-01-01");
    values.put("replyBy", "2026-01-31");
    values.put("total", 1L);
    values.put("advisories", 1L);
    values.put("office", "a");
    values.put("table", "X-1.csv");
    values.put("cut", "");
    values.put(
        "records",
        List.of(
            Map.of(
                "id", "A-1", "place", "a.csv, row 2", "elsewhere", "", "points", List.of(point))));
    values.put("atOnce", List.of(Map.of("id", "A-1", "text", "t", "points", List.of(1))));
    values.put("packs", List.of(Map.of("title", "t", "authority", "a", "edition", "2026-01-01")));
    values.put("caution", "c");
    return values;
  }
}
