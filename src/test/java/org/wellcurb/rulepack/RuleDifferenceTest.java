package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.rulepack.RuleDifference.What;

/** In what the rules of two editions differ, each change by itself. */
class RuleDifferenceTest {
  private static final String PACK =
      """
      { "pack": "county", "title": "T", "authority": "A", "edition": "2024-01-01",
        "judgedBy": "dates.completed",
        "sources": { "s": { "basis": "invented", "title": "T", "section": "1" } },
        "tables": { "frost": { "by": ["site.zone"], "gives": "length", "rows": [
          { "when": ["hill"], "value": "6 ft" }, { "when": ["plain"], "value": "4 ft" } ] } },
        "figures": { "use_per_person": "75 gpd" },
        "rules": [
          { "id": "pitless", "title": "T", "kind": "deficiency", "subject": "frost",
            "when": "known(pitless.depth)", "require": "pitless.depth >= table(frost)",
            "because": "B", "remedy": "R", "source": "s", "examples": [
              { "given": { "site.zone": "hill", "pitless.depth": "6 ft" }, "expect": "meets" },
              { "given": { "site.zone": "hill", "pitless.depth": "3 ft" },
                "expect": "falls short" } ] },
          { "id": "supply", "title": "T", "kind": "advisory",
            "require": "workings.daily_supply >= workings.daily_need",
            "because": "B", "remedy": "R", "source": "s", "examples": [
              { "given": { "water.yield": "5 gpm", "site.occupants": "4" }, "expect": "meets" },
              { "given": { "water.yield": "0.1 gpm", "site.occupants": "40" },
                "expect": "falls short" } ] } ] }
      """;

  @TempDir Path dir;

  private List<RuleDifference> changed(String old, String now) throws IOException, PackException {
    assertTrue(PACK.contains(old), old);
    Pack before = load("before", PACK);
    Pack after = load("after", PACK.replace(old, now));
    List<Rule> is = after.rules();
    return List.of(
        RuleDifference.of(before, before.rules().get(0), after, is.get(0)),
        RuleDifference.of(before, before.rules().get(1), after, is.get(1)));
  }

  private Pack load(String folder, String text) throws IOException, PackException {
    Path at = Files.createDirectories(dir.resolve(folder)).resolve("pack.json");
    Files.writeString(at, text);
    return PackLoader.load(at.toString());
  }

  private void differs(String old, String now, Set<What> first, Set<What> second)
      throws IOException, PackException {
    List<RuleDifference> found = changed(old, now);
    assertEquals(first, found.get(0).what(), old);
    assertEquals(second, found.get(1).what(), old);
  }

  @Test
  void eachThingIsTold() throws Exception {
    differs("\"title\": \"T\", \"kind\"", "\"title\": \"U\", \"kind\"", Set.of(), Set.of());
    differs(">= table(frost)", ">= table(frost) - 1 in", Set.of(What.TEXT), Set.of());
    differs("known(pitless.depth)", "known(site.zone)", Set.of(What.TEXT), Set.of());
    differs("\"value\": \"4 ft\"", "\"value\": \"4.5 ft\"", Set.of(What.TABLE), Set.of());
    differs("\"75 gpd\"", "\"80 gpd\"", Set.of(), Set.of(What.FIGURE));
    differs("\"advisory\"", "\"deficiency\"", Set.of(), Set.of(What.KIND));
    differs("\"subject\": \"frost\"", "\"subject\": \"other\"", Set.of(What.SUBJECT), Set.of());
    differs(
        "\"judgedBy\": \"dates.completed\"",
        "\"judgedBy\": \"as-of\"",
        Set.of(What.DAY),
        Set.of(What.DAY));
  }

  @Test
  void namesWhatItReadsThatDiffers() throws Exception {
    assertEquals(
        List.of("frost"),
        changed("\"6 ft\" }, { \"when\"", "\"5 ft\" }, { \"when\"").get(0).tables());
    assertEquals(List.of("use_per_person"), changed("\"75 gpd\"", "\"80 gpd\"").get(1).figures());
  }

  @Test
  void aRuleThatOnePackLacksDiffers() throws Exception {
    Pack pack = load("before", PACK);
    RuleDifference gone = RuleDifference.of(pack, pack.rules().get(0), pack, null);
    assertEquals(Set.of(What.RULE), gone.what());
    assertTrue(RuleDifference.of(pack, pack.rules().get(0), pack, pack.rules().get(0)).isNone());
  }
}
