package org.wellcurb.rulepack.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Proof;

/**
 * An invented order, {@code authoring/kestrel-moor/code.md}, and the pack written from it by
 * rules/README.md: it proves clean, and says what the page says.
 */
class OrderWithDispensationsTest {
  private static final String FOLDER =
      Path.of("src/test/resources/authoring/kestrel-moor").toString();
  private static final String Y1995 = "dates.completed=1995-06-15";
  private static final String Y2005 = "dates.completed=2005-06-15";
  private static final String Y2020 = "dates.completed=2020-06-15";

  private final Code code = Code.of(FOLDER, "Kestrel Moor");

  @Test
  void thePackProvesClean() throws PackException {
    Proof proof = Proof.of(PackLoader.loadForAuthor(FOLDER), PackLoader.folder(FOLDER));
    assertTrue(proof.isClean(), () -> proof.statements().toString());
    assertEquals(proof.limits(), proof.proved(), proof.summary());
    assertTrue(proof.limits() >= 35, proof.summary());
  }

  @Test
  void theBoardDispensesFromTwoClausesOnly() {
    String[] tank = {Y2020, "dates.source_installed=n/a", "setback.septic_tank=9 m"};
    code.fallsShort("septic-distance", tank);
    String named = "record.variances=septic-distance: K-7; arsenic: K-8";
    assertEquals(Outcome.WAIVED, code.outcome("septic-distance", tank[0], tank[1], tank[2], named));
    assertEquals(
        Outcome.FALLS_SHORT, code.outcome("arsenic", Y2020, "sample.arsenic=12 ug/L", named));
  }

  @Test
  void groundDecidesHowDeepTheGroutGoes() {
    code.fallsShort("grout-depth", Y2020, "well.aquifer=sandstone", "grout.bottom=8 m");
    code.meets("grout-depth", Y2020, "well.aquifer=sand and gravel", "grout.bottom=8 m");
    // That no rock was met does not take the twelve metres away.
    code.fallsShort(
        "grout-depth",
        Y2020,
        "well.aquifer=limestone or dolomite",
        "well.rock_depth=n/a",
        "grout.bottom=8 m");
    code.doesNotApply("grout-depth", Y1995, "well.aquifer=sandstone", "grout.bottom=8 m");
  }

  @Test
  void aSpellingThatTheTableLacksAccusesNobody() {
    String[] deep = {Y2020, "well.casing_material=pvc", "well.casing_depth=80 m"};
    code.fallsShort("plastic-wall", deep[0], deep[1], deep[2], "well.casing_schedule=sdr 21");
    assertEquals(
        Outcome.CANNOT_TELL,
        code.outcome("plastic-wall", deep[0], deep[1], deep[2], "well.casing_schedule=heavy"));
  }

  @Test
  void theRingOfTheDayOfTheBoreIsAsked() {
    String[] ring = {"well.bore_diameter=250 mm", "well.casing_diameter=160 mm"};
    String outside = "well.casing_size_is=outside";
    code.meets("annulus", Y2005, ring[0], ring[1], outside);
    code.fallsShort("annulus", Y2020, ring[0], ring[1], outside);
  }

  @Test
  void aSampleOfTheDayBeforeDoesNotMeetASpanOfDays() {
    code.fallsShort(
        "sampled-in-time", Y2020, "dates.disinfected=2020-06-20", "dates.sampled=2020-06-19");
    code.meets(
        "sampled-in-time", Y2020, "dates.disinfected=2020-06-20", "dates.sampled=2020-07-11");
  }
}
