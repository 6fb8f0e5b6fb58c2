package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.judgement.Outcome;

/** Packs built on others: order, replacement, drops, tables and figures of their own. */
class InheritanceTest {
  private static final String FROST =
      "\"tables\": {\"frost\": {\"by\": [\"site.zone\"], \"gives\": \"length\", \"rows\": [{\"when\":"
          + " [\"*\"], \"value\": \"%s\"}]}},";

  @TempDir Path folder;

  @BeforeEach
  void aBase() throws IOException {
    write(
        "base",
        FROST.formatted("6 ft"),
        rule("first", "setback.privy >= 50 ft", "setback.privy", "50 ft", "49 ft"),
        rule("frost", "pitless.depth >= table(frost)", "pitless.depth", "6 ft", "5 ft"),
        rule("last", "setback.road >= 20 ft", "setback.road", "20 ft", "19 ft"));
  }

  private void write(String name, String more, String... rules) throws IOException {
    Files.createDirectories(folder.resolve(name));
    Files.writeString(
        folder.resolve(name).resolve("pack.json"),
        "{\"pack\": \""
            + name
            + "\", \"title\": \"T\", \"authority\": \"A\", \"edition\": \"2024-04-01\","
            + " \"judgedBy\": \"dates.completed\", \"sources\": {\""
            + name
            + "-law\": {\"basis\": \"invented\"}}, "
            + more.replace("LAW", name + "-law")
            + "\"rules\": ["
            + String.join(",", rules).replace("LAW", name + "-law")
            + "]}");
  }

  private static String rule(String id, String require, String key, String meets, String fails) {
    return "{\"id\": \"%s\", \"title\": \"T\", \"kind\": \"deficiency\", \"require\": \"%s\","
            .formatted(id, require)
        + "\"because\": \"B\", \"remedy\": \"R\", \"source\": \"LAW\", \"examples\": ["
        + "{\"given\": {\"%s\": \"%s\"}, \"expect\": \"meets\"},".formatted(key, meets)
        + "{\"given\": {\"%s\": \"%s\"}, \"expect\": \"falls short\"}]}".formatted(key, fails);
  }

  private Pack load(String name) throws PackException {
    return PackLoader.load(folder.resolve(name).toString());
  }

  private static List<String> ids(Pack pack) {
    return pack.rules().stream().map(Rule::id).toList();
  }

  private static Outcome outcome(Pack pack, String rule, String key, String value) {
    Rule found = pack.rules().stream().filter(r -> r.id().equals(rule)).findFirst().orElseThrow();
    Example example = new Example(Map.of(key, value, "site.zone", "hill"), Outcome.MEETS);
    return new ExampleCheck(pack).outcome(found, example);
  }

  @Test
  void aRuleOfTheSameIdReplacesInItsPlace() throws IOException, PackException {
    write(
        "county",
        "\"builtOn\": [\"base\"], ",
        rule("own", "setback.pond >= 10 ft", "setback.pond", "10 ft", "9 ft"),
        rule("first", "setback.privy >= 75 ft", "setback.privy", "75 ft", "74 ft"));
    Pack county = load("county");
    assertEquals(List.of("first", "frost", "last", "own"), ids(county));
    assertEquals("base", county.rules().get(0).replaces());
    assertEquals("county", county.rules().get(0).pack());
    assertEquals("base", county.rules().get(1).pack());
    assertEquals("", county.rules().get(3).replaces());
    assertEquals(Outcome.FALLS_SHORT, outcome(county, "first", "setback.privy", "60 ft"));
    assertEquals(Outcome.MEETS, outcome(load("base"), "first", "setback.privy", "60 ft"));
  }

  @Test
  void whatIsDroppedIsGoneAndSaid() throws IOException, PackException {
    write(
        "county",
        "\"builtOn\": [\"base\"], \"drop\": [{\"rule\": \"frost\", \"because\": \"no frost\"}], ");
    Pack county = load("county");
    assertEquals(List.of("first", "last"), ids(county));
    assertEquals(List.of(new Drop("frost", "T", "no frost", "county")), county.drops());
    assertEquals(List.of("base"), county.builtOn());
    assertEquals(List.of("base", "county"), county.files().stream().map(PackFile::pack).toList());
  }

  @Test
  void aTableOfItsOwnIsReadByTheRulesTakenOver() throws IOException, PackException {
    write("county", "\"builtOn\": [\"base\"], " + FROST.formatted("8 ft"));
    assertEquals(Outcome.FALLS_SHORT, outcome(load("county"), "frost", "pitless.depth", "7 ft"));
    assertEquals(Outcome.MEETS, outcome(load("base"), "frost", "pitless.depth", "7 ft"));
  }

  @Test
  void aTableOfAnotherDimensionIsRefusedByTheRulesTakenOver() throws IOException {
    write(
        "county",
        "\"builtOn\": [\"base\"], " + FROST.formatted("8 psi").replace("length", "pressure"));
    PackException e = assertThrows(PackException.class, () -> load("county"));
    assertTrue(e.getMessage().contains("the rule frost of base cannot use this"), e.getMessage());
  }

  @Test
  void onePackOnTwoWaysIsOneAndTheNearerRuleStands() throws IOException, PackException {
    write("left", "\"builtOn\": [\"base\"], ");
    write("right", "\"builtOn\": [\"base\"], ");
    write("county", "\"builtOn\": [\"left\", \"right\"], ");
    Pack county = load("county");
    assertEquals(List.of("first", "frost", "last"), ids(county));
    assertEquals(
        List.of("base", "left", "right", "county"),
        county.files().stream().map(PackFile::pack).toList());
  }

  @Test
  void whatTwoPacksDefineDifferentlyMustBeSettled() throws IOException, PackException {
    String rival = rule("first", "setback.privy >= 75 ft", "setback.privy", "75 ft", "74 ft");
    write("rival", "", rival);
    write("county", "\"builtOn\": [\"base\", \"rival\"], ");
    PackException e = assertThrows(PackException.class, () -> load("county"));
    assertTrue(e.getMessage().contains("define rule first differently"), e.getMessage());
    write("county", "\"builtOn\": [\"base\", \"rival\"], ", rival);
    assertEquals(Outcome.FALLS_SHORT, outcome(load("county"), "first", "setback.privy", "60 ft"));
  }

  @Test
  void anEntryThatMustApplyHasARuleOfItsOwnOnce() throws IOException, PackException {
    write("state", "\"builtOn\": [\"base\"], \"mustApply\": [\"well.depth\"], ");
    write("county", "\"builtOn\": [\"state\"], \"mustApply\": [\"well.depth\", \"well.cap\"], ");
    Pack county = load("county");
    assertEquals(List.of("well.depth", "well.cap"), county.mustApply());
    assertEquals(
        List.of("first", "frost", "last", "applies-well-depth", "applies-well-cap"), ids(county));
    Rule rule = county.rules().get(3);
    assertEquals(FindingKind.OMISSION, rule.kind());
    assertEquals("state", rule.pack());
    assertEquals(Outcome.FALLS_SHORT, outcome(county, "applies-well-depth", "well.depth", "n/a"));
    assertEquals(Outcome.MEETS, outcome(county, "applies-well-depth", "well.depth", "90 ft"));
    assertEquals(Outcome.MEETS, outcome(county, "applies-well-depth", "well.depth", "unknown"));
    write(
        "town",
        "\"builtOn\": [\"county\"], \"drop\": [{\"rule\": \"applies-well-cap\", \"because\": \"b\"}], ");
    assertEquals(List.of("well.depth"), load("town").mustApply());
  }

  @Test
  void sourcesTakenOverMayBeUsed() throws IOException, PackException {
    write(
        "county",
        "\"builtOn\": [\"base\"], ",
        rule("own", "setback.pond >= 10 ft", "setback.pond", "10 ft", "9 ft")
            .replace("LAW", "base-law"));
    assertEquals("base-law", load("county").rules().get(3).source().id());
  }

  @Test
  void aPackIsFoundBesideTheFolderThenAmongThoseThatShip() throws IOException, PackException {
    write("county", "\"builtOn\": [\"federal-drinking-water\"], ");
    assertTrue(load("county").rules().size() > 5);
    write(
        "federal-drinking-water", "", rule("x", "well.depth > 1 ft", "well.depth", "2 ft", "1 ft"));
    assertEquals(List.of("x"), ids(load("county")));
  }

  @Test
  void aFaultyBaseIsSaidWithThePacksOwnFaults() throws IOException {
    write("base", "", rule("first", "setback.prvy >= 50 ft", "setback.privy", "50 ft", "49 ft"));
    write(
        "county",
        "\"builtOn\": [\"base\"], \"drop\": [{\"rule\": \"first\", \"because\": \"b\"}], ",
        rule("own", "setback.pnd >= 10 ft", "setback.pond", "10 ft", "9 ft"));
    PackException e = assertThrows(PackException.class, () -> load("county"));
    assertEquals(2, e.problems().size(), e.getMessage());
    assertTrue(e.problems().get(0).file().endsWith("base/pack.json"));
    assertTrue(e.problems().get(1).file().endsWith("county/pack.json"));
  }

  @Test
  void whatIsNotThereIsOneLineWithTheNearestName() {
    PackException e = assertThrows(PackException.class, () -> PackLoader.load("maryland "));
    assertEquals(1, e.problems().size());
    PackException near = assertThrows(PackException.class, () -> PackLoader.load("marylnd"));
    assertTrue(near.getMessage().endsWith("did you mean maryland?"), near.getMessage());
    for (String bad : List.of("", "..", "\0", "no/such/folder", "rules/schema")) {
      assertThrows(PackException.class, () -> PackLoader.load(bad), bad);
    }
  }
}
