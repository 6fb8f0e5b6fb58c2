package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wellcurb.intake.RawRow;
import org.wellcurb.intake.SetAside;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;

/** An interrupt ends a run within a part too, and never without its one line. */
class StopTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  private final List<String> said = new ArrayList<>();
  private final Stop stop = new Stop(said::add, 0);
  private final WellRecord record = new RecordFiller(CATALOGUE).record();
  private final RawRow raw = () -> new byte[0];

  @BeforeEach
  void nothingIsSaidBefore() {
    assertEquals(List.of(), said);
  }

  @Test
  void aRunThatDoesNotEndInTimeHasItsLineAllTheSame() throws Exception {
    stop.check();
    stop.askAndWait();
    assertEquals(1, said.size(), said.toString());
    assertTrue(said.get(0).startsWith("interrupted: "), said.toString());
    assertFalse(said.get(0).contains("\n"), said.toString());
  }

  @Test
  void whoHasEndedIsNotSpokenFor() throws Exception {
    stop.check();
    stop.ended();
    stop.askAndWait();
    assertEquals(List.of(), said);
  }

  @Test
  void whatWritesNoReportIsNotSpokenFor() {
    stop.askAndWait();
    assertEquals(List.of(), said);
  }

  @Test
  void aReportInItsPlaceIsNotCalledCutOff() throws Exception {
    stop.check();
    stop.isInPlace();
    stop.askAndWait();
    assertEquals(List.of(), said);
  }

  @Test
  void screeningEndsWithinAPart() throws Exception {
    ScreenRequest request = Runs.request(Path.of("out"), List.of(Runs.ALDER), Path.of("in.csv"));
    List<Pack> packs = Opening.packs(request.packs());
    Plan plan =
        new Plan(
            request,
            packs,
            new PackChoice(packs, CATALOGUE),
            Answers.load(request.looks().answers(), CATALOGUE),
            Set.of(),
            Settled.load(request.looks().settled(), request.asOf()),
            null,
            null,
            new OwnEntries(packs),
            new Bars());
    PartWork work = new PartWork(plan, stop);
    stop.askAndWait();
    assertThrows(Stop.Asked.class, () -> work.record(record, raw));
    SetAside row = new SetAside("in.csv", 2, "", "", "x".getBytes(StandardCharsets.UTF_8));
    assertThrows(Stop.Asked.class, () -> work.setAside(row));
  }

  @Test
  void rehearsingEndsWithinAPart() throws Exception {
    Pack pack = Opening.packs(List.of(Runs.ALDER)).get(0);
    RehearseWork work =
        new RehearseWork(
            pack, pack, new RulePairs(pack, pack), LocalDate.of(2026, 1, 1), 100, stop);
    stop.askAndWait();
    assertThrows(Stop.Asked.class, () -> work.record(record, raw));
  }

  @Test
  void theRunThenFailsWithItsLine() {
    stop.askAndWait();
    RunFailure failure =
        assertThrows(
            RunFailure.class,
            () ->
                Pipeline.<String, List<String>>run(
                    () -> "part",
                    1,
                    () -> (part, into) -> stop.checkWithinPart(),
                    ArrayList::new,
                    List::clear));
    assertTrue(failure.line().startsWith("interrupted: nothing was written"), failure.line());
  }
}
