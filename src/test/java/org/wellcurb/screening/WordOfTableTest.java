package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;

/** What a finding asks for where a table of words is the limit. */
class WordOfTableTest {
  private static final String PACK =
      """
      { "pack": "county", "title": "T", "authority": "A", "edition": "2024-01-01",
        "judgedBy": "as-of",
        "sources": { "s": { "basis": "invented", "title": "T", "section": "1" } },
        "tables": {
          "joint": { "by": ["well.casing_material"], "gives": "text", "rows": [
            { "when": ["steel"], "value": "welded" }, { "when": ["pvc"], "value": "solvent" } ] },
          "wall": { "by": ["well.casing_material"], "gives": "text", "rows": [
            { "when": ["steel"], "value": "enough" }, { "when": ["*"], "value": "too thin" } ] } },
        "rules": [
          { "id": "joint", "title": "T", "kind": "deficiency",
            "require": "well.casing_joint is table(joint)",
            "because": "B", "remedy": "R", "source": "s", "examples": [
              { "given": { "well.casing_material": "steel", "well.casing_joint": "welded" },
                "expect": "meets" },
              { "given": { "well.casing_material": "steel", "well.casing_joint": "threaded" },
                "expect": "falls short" } ] },
          { "id": "wall", "title": "T", "kind": "deficiency",
            "require": "table(wall) is 'enough'",
            "because": "B", "remedy": "R", "source": "s", "examples": [
              { "given": { "well.casing_material": "steel" }, "expect": "meets" },
              { "given": { "well.casing_material": "pvc" }, "expect": "falls short" } ] } ] }
      """;

  @TempDir Path dir;

  @Test
  void itIsTheWordOfTheRow() throws Exception {
    Path file = Files.writeString(dir.resolve("pack.json"), PACK);
    Pack pack = PackLoader.load(file.toString());
    Screener screener = new Screener(pack, LocalDate.of(2026, 1, 1));
    Map<String, String> form =
        Map.of("well.casing_material", "pvc", "well.casing_joint", "threaded");
    RecordResult result = screener.result(RecordReader.of(form));
    Deciding joint = result.findings().get(0).deciding();
    assertEquals("well.casing_joint", joint.entry());
    assertEquals("threaded", joint.valueText());
    assertEquals("solvent", joint.limitText());
    // Nobody is asked to write "enough" into the entry by which the table is read.
    Deciding wall = result.findings().get(1).deciding();
    assertEquals("", wall.limitText());
  }
}
