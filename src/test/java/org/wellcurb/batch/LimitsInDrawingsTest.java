package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;

/** Limits of shipped packs in drawings: a rule with several ways to meet it shows all of them. */
final class LimitsInDrawingsTest {
  @TempDir Path dir;

  private String sheet(String records, String pack, Language language) throws Exception {
    Path out = dir.resolve("report");
    Runs.run(
        ScreenRequest.plain(List.of(records), List.of(pack), out, Runs.AS_OF)
            .with(
                OutputOptions.PLAIN
                    .with(SheetsFor.ALL, 100)
                    .styled(new PageStyle(language, UnitsShown.AS_WRITTEN))));
    try (var sheets = Files.list(out.resolve("sheets"))) {
      return Files.readString(sheets.findFirst().orElseThrow());
    }
  }

  @Test
  void aDistanceThatMeetsHasItsLimitToo() throws Exception {
    String sheet = sheet("sample-records/tarn-heater.json", "tarn-district", Language.EN);
    assertTrue(
        sheet.contains(
            "absorption field: 34.1 m, limit 30 m, or 20 m where Casing bottom is at least 12 m and"
                + " The well on the slope is not below the source"),
        sheet);
    assertTrue(sheet.contains("class=\"limit-if\""), sheet);
  }

  @Test
  void theLesserOfTwoLimitsDoesNotStandAloneWhereBothFail() throws Exception {
    Path records = dir.resolve("quebec.json");
    Files.writeString(
        records,
        """
        {"record": {"id": "Q-1", "units": "metric", "datum": "ground"},
         "dates": {"completed": "2020-06-01"},
         "well": {"use": "household", "casing_depth": 4, "casing_diameter": 160,
                  "bore_diameter": 260, "depth": 40},
         "grout": {"bottom": 3}, "setback": {"absorption_field": 12}}
        """);
    String sheet = sheet(records.toString(), "quebec", Language.FR);
    assertTrue(
        sheet.contains("champ d&#39;épuration\u00a0: 12 m, limite 30 m, ou 15 m si "), sheet);
    assertFalse(sheet.contains("champ d&#39;épuration\u00a0: 12 m, limite 15 m"), sheet);
  }

  @Test
  void whereNoDayTellsWhichTextBindsAllThatMayBindAreShown() throws Exception {
    String undated = dated("");
    assertTrue(
        undated.contains(
            "septic tank: 60 ft, limit 75 ft where the text since 2010-01-01 binds, or 50 ft where"
                + " the text until 2009-12-31 binds"),
        undated);
    assertTrue(
        undated.contains("Perhaps the text until 2009-12-31: Distance to septic tank"), undated);
    assertTrue(
        undated.contains("Perhaps the text since 2010-01-01: Distance to septic tank"), undated);
    String old = dated("2005-05-01");
    assertTrue(old.contains("septic tank: 60 ft, limit 50 ft<"), old);
    assertFalse(old.contains("Perhaps the text until 2009-12-31: Distance to septic tank"), old);
    assertTrue(dated("2015-05-01").contains("septic tank: 60 ft, limit 75 ft, 15 ft short<"));
  }

  @Test
  void aLimitSaysSoWhereNobodyCanTellWhetherItsRuleApplies() throws Exception {
    // The only text read binds since 2016-09-11.
    String undated = of("delaware", "\"setback\": {\"septic_tank\": 74}", Language.EN);
    assertTrue(
        undated.contains(
            "septic tank: 74 ft, limit 50 ft where its rule applies, which cannot be told<"),
        undated);
    assertTrue(undated.contains("class=\"limit-if\""), undated);
    assertFalse(undated.contains("class=\"limit\""), undated);
    assertTrue(
        of("delaware", "\"setback\": {\"septic_tank\": 74}", Language.FR)
            .contains("limite 50 pi si sa règle s&#39;applique, ce qu&#39;on ne peut dire<"));
    String dates = "\"dates\": {\"completed\": \"%s\"}, \"setback\": {\"septic_tank\": 74}";
    assertTrue(
        of("delaware", dates.formatted("2020-06-01"), Language.EN)
            .contains("septic tank: 74 ft, limit 50 ft<"));
    assertTrue(
        of("delaware", dates.formatted("2010-06-01"), Language.EN).contains("septic tank: 74 ft<"));
  }

  @Test
  void whatIsToldAnyhowIsNotSaidOfTheTestOfAnIf() throws Exception {
    String entries =
        "\"setback\": {\"fuel_tank\": 120}, \"dates\": {\"completed\": \"2020-06-01\"}";
    String sheet = of("delaware", entries, Language.EN);
    assertTrue(sheet.contains("limit 150 ft where Use of the well is public, or "), sheet);
    assertFalse(sheet.contains("Use of the well is not said to be n/a"), sheet);
  }

  private String of(String pack, String entries, Language language) throws Exception {
    Path records = Files.createTempDirectory(dir, "one").resolve("one.json");
    Files.writeString(records, "{\"record\": {\"id\": \"W-1\"}, " + entries + "}");
    return sheet(records.toString(), pack, language);
  }

  private String dated(String completed) throws Exception {
    Path records = Files.createTempDirectory(dir, "dated").resolve("one.json");
    Files.writeString(
        records,
        "{\"record\": {\"id\": \"F-1\", \"jurisdiction\": \"fenwick\"}, \"dates\": {\"completed\": \""
            + completed
            + "\"}, \"well\": {\"use\": \"household\"}, \"setback\": {\"septic_tank\": 60}}");
    return sheet(records.toString(), "fenwick-county", Language.EN);
  }
}
