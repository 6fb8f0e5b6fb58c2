package org.wellcurb.rulepack.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Proof;

/**
 * Two pages of an invented code, {@code authoring/dunmarrow/code.md}, and the pack written from
 * them by rules/README.md: it proves clean, and says what the pages say.
 */
class AuthoringTest {
  private static final Path FOLDER = Path.of("src/test/resources/authoring/dunmarrow");
  private static final String Y1990 = "dates.completed=1990-06-15";
  private static final String Y2005 = "dates.completed=2005-06-15";
  private static final String Y2020 = "dates.completed=2020-06-15";

  private final Code code = Code.of(FOLDER.toString(), "Dunmarrow");

  @Test
  void thePackProvesClean() throws PackException {
    Proof proof = Proof.of(PackLoader.loadForAuthor(FOLDER.toString()));
    assertTrue(proof.isClean(), () -> proof.statements().toString());
  }

  @Test
  void everyClauseThatAsksHasASource() throws Exception {
    String pack = Files.readString(FOLDER.resolve("pack.json"));
    String missing =
        Files.readString(FOLDER.resolve("code.md"))
            .lines()
            .filter(line -> line.matches("([2-9]|1[0-3])\\. .*"))
            .map(line -> "\"source\": \"clause-" + line.substring(0, line.indexOf('.')) + "\"")
            .filter(source -> !pack.contains(source))
            .collect(Collectors.joining(", "));
    assertEquals("", missing);
  }

  @Test
  void distancesAreThoseOfTheDay() {
    code.doesNotApply("septic-tank-distance", Y1990, "setback.septic_tank=10 ft");
    code.meets("septic-tank-distance", Y2005, "setback.septic_tank=60 ft");
    code.fallsShort("septic-tank-distance", Y2020, "setback.septic_tank=60 ft");
    code.meets("septic-tank-distance", Y2020, "setback.septic_tank=23 m");
    code.fallsShort("septic-tank-distance", Y2020, "setback.septic_tank=22 m");
    code.fallsShort(
        "cemetery-distance", Y1990, "dates.source_installed=2005-06-15", "setback.cemetery=100 ft");
    code.doesNotApply(
        "cemetery-distance", Y1990, "dates.source_installed=1991-06-15", "setback.cemetery=100 ft");
  }

  @Test
  void groutReachesAsDeepAsPlaceAndCasingAsk() {
    String[] pvc = {Y2005, "site.zone=upland", "well.casing_material=pvc", "grout.bottom=35 ft"};
    String[] steel = {
      Y2005, "site.zone=upland", "well.casing_material=steel", "grout.bottom=35 ft"
    };
    code.fallsShort("grout-depth", pvc);
    code.meets("grout-depth", steel);
    code.cannotTell("grout-depth", Y2005, "site.zone=upland", "grout.bottom=35 ft");
  }

  @Test
  void onlyAPersonJudgesCrevicedRock() {
    code.cannotTell("more-distance-in-creviced-rock", Y2005, "site.soil=creviced rock");
    code.doesNotApply("more-distance-in-creviced-rock", Y2005, "site.soil=sand");
  }
}
