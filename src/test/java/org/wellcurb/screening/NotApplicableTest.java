package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;

/**
 * A good form on which entries are crossed out as n/a is not found fault with: neither side of an
 * "or" that reads them counts, and what then is left must not accuse.
 */
class NotApplicableTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  /** Sections that forms leave out whole. */
  private static final List<String> SECTIONS =
      List.of(
          "well.screen",
          "well.filter",
          "well.liner",
          "well.open_hole",
          "grout.",
          "tank.",
          "relief.",
          "pitless.",
          "storage.",
          "sample.",
          "wire.",
          "drop_pipe.",
          "service_line.",
          "water_heater.",
          "disinfection.",
          "water.",
          "pressure.",
          "pump.",
          "dates.",
          "site.",
          "well.casing",
          "setback.");

  /** Where n/a says that something is not there, and its lack is the finding. */
  private static final Set<String> SAID =
      Set.of(
          "intake-above-screen pump.flow_sleeve",
          "motor-above-inflow pump.flow_sleeve",
          "pump-runs-long-enough storage.volume",
          "well-lasts-busiest-hour storage.volume");

  @Test
  void whatIsCrossedOutAccusesNobody() throws Exception {
    long seed = 20260303;
    Random random = new Random(seed);
    Pack pack = PackLoader.load("common-practice");
    Screener screener = new Screener(pack, LocalDate.of(2026, 1, 1));
    Set<String> accused = new TreeSet<>();
    int tried = 0;
    for (WellRecord well : ReadRecords.in(Path.of("src/test/resources/good-wells")).records) {
      byte[] before = screener.outcomes(well).clone();
      for (Set<String> crossedOut : choices(random)) {
        tried++;
        byte[] after = screener.outcomes(crossedOut(well, crossedOut));
        for (int rule = 0; rule < after.length; rule++) {
          boolean isNew =
              after[rule] == Outcome.FALLS_SHORT.ordinal()
                  && before[rule] != Outcome.FALLS_SHORT.ordinal();
          if (isNew) {
            String id = pack.rules().get(rule).id();
            String read =
                pack.rules().get(rule).program().reads().stream()
                    .map(Entry::key)
                    .filter(crossedOut::contains)
                    .sorted()
                    .collect(Collectors.joining(" "));
            boolean isSaid =
                Stream.of(read.split(" ")).anyMatch(key -> SAID.contains(id + " " + key));
            if (!isSaid) {
              accused.add(id + " by n/a of " + read + ", such as " + well.id());
            }
          }
        }
      }
    }
    assertEquals(Set.of(), accused, "seed " + seed + ", forms tried: " + tried);
  }

  /** Each entry by itself, each section, and some at random. */
  private static List<Set<String>> choices(Random random) {
    List<String> keys =
        CATALOGUE.entries().stream()
            .map(Entry::key)
            .filter(key -> !key.startsWith("record.") && !key.equals("pump.datum"))
            .toList();
    List<Set<String>> choices = new ArrayList<>();
    keys.forEach(key -> choices.add(Set.of(key)));
    for (String section : SECTIONS) {
      choices.add(keys.stream().filter(key -> key.startsWith(section)).collect(Collectors.toSet()));
    }
    for (int i = 0; i < 60; i++) {
      Set<String> some = new TreeSet<>();
      for (int k = 0; k < 2 + i / 5; k++) {
        some.add(keys.get(random.nextInt(keys.size())));
      }
      choices.add(some);
    }
    return choices;
  }

  private static WellRecord crossedOut(WellRecord well, Set<String> keys) {
    Map<String, String> form = new LinkedHashMap<>();
    for (Entry entry : CATALOGUE.entries()) {
      if (keys.contains(entry.key())) {
        form.put(entry.key(), "n/a");
      } else if (!well.written(entry.index()).isEmpty()) {
        form.put(entry.key(), well.written(entry.index()));
      }
    }
    return RecordReader.of(form);
  }
}
