package org.wellcurb.rulepack.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Proof;

/**
 * An invented order of unusual shapes, {@code authoring/hollinmere/code.md}, and the pack written
 * from it by rules/README.md: it proves clean, and says what the page says.
 */
class MilderOrderTest {
  private static final Path FOLDER = Path.of("src/test/resources/authoring/hollinmere");
  private static final String Y1990 = "dates.completed=1990-06-15";
  private static final String Y2005 = "dates.completed=2005-06-15";
  private static final String Y2020 = "dates.completed=2020-06-15";

  private final Code code = Code.of(FOLDER.toString(), "Hollinmere");

  @Test
  void thePackProvesClean() throws PackException {
    String folder = FOLDER.toString();
    Proof proof = Proof.of(PackLoader.loadForAuthor(folder), PackLoader.folder(folder));
    assertTrue(proof.isClean(), () -> proof.statements().toString());
    assertTrue(proof.limits() >= 13, () -> proof.summary());
  }

  @Test
  void everyClauseThatAsksHasASource() throws Exception {
    String pack = Files.readString(FOLDER.resolve("pack.json"));
    String missing =
        Files.readString(FOLDER.resolve("code.md"))
            .lines()
            .filter(line -> line.matches("[2-9]\\. .*"))
            .map(line -> "\"source\": \"clause-" + line.charAt(0) + "\"")
            .filter(source -> !pack.contains(source))
            .collect(Collectors.joining(", "));
    assertEquals("", missing);
  }

  @Test
  void theMilderOfThenAndNowDecides() {
    String[] of2005 = {Y2005, "setback.surface_water=110 ft", "grout.bottom=20 ft"};
    code.meets("open-water-distance", of2005);
    String[] near = {Y2005, "setback.surface_water=90 ft", "grout.bottom=20 ft"};
    code.fallsShort("open-water-distance", near);
    code.meets("open-water-distance", Y2020, "setback.surface_water=51 ft", "grout.bottom=16 m");
    // No text bound a well of 1990, and none is milder than that.
    code.doesNotApply(
        "open-water-distance", Y1990, "setback.surface_water=9 ft", "grout.bottom=9 ft");
  }

  @Test
  void theGreaterOfTwoDepthsIsAsked() {
    code.fallsShort(
        "casing-depth", "well.depth=90 m", "well.rock_depth=20 m", "well.casing_depth=28 m");
    code.meets("casing-depth", "well.depth=90 m", "well.rock_depth=20 m", "well.casing_depth=30 m");
  }

  @Test
  void whatOnlyAPersonCanSeeIsAsked() {
    assertEquals(
        Outcome.CANNOT_TELL, code.outcome("permit-covers-well", "record.variances=grout-ring: P"));
    code.doesNotApply("permit-covers-well", Y2020);
    assertEquals(Outcome.CANNOT_TELL, code.outcome("yield-test-steady", "water.test_duration=3 h"));
    code.doesNotApply("yield-test-steady", "water.test_duration=4 h");
  }
}
