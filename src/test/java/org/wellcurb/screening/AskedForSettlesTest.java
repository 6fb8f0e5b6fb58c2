package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.PackLoader;

/**
 * What a rule asks for settles it: where a form tells, and a part of it does not, the entries asked
 * for, filled in from the whole form, make it tell. Of a few rules the answer may be such that more
 * is needed; they are named.
 */
class AskedForSettlesTest {
  private static final long SEED = 4711;
  private static final int EACH = 8;
  private static final int ONE_BLANK_OF = 5;

  /**
   * Of these rules the answer to one entry may be such that more is needed: most yields cover the
   * busiest time by themselves, and only a low one makes it hang on the hole, the tank and the
   * storage; most casing sizes are of one table, and only of another it has to be said what was
   * measured; and most wells end so far below the pump that the height of the casing top, from
   * which one depth may be told, is nothing to it.
   */
  private static final Map<String, String> FIRST =
      Map.of(
          "well-lasts-busiest-hour", "water.yield",
          "bore-wider-than-casing", "well.casing_diameter",
          "annulus-wide-enough", "well.casing_diameter",
          "intake-above-bottom", "well.depth");

  @Test
  void whatIsAskedForSettles() throws Exception {
    Screener screener = new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
    Random random = new Random(SEED);
    List<String> open = new ArrayList<>();
    int asked = 0;
    for (GoodWell kind : GoodWell.values()) {
      for (int i = 0; i < EACH; i++) {
        Map<String, String> whole = kind.form(kind + "-" + i, random);
        Map<String, String> part = part(whole, random);
        RecordResult told = screener.result(RecordReader.of(whole));
        RecordResult untold = screener.result(RecordReader.of(part));
        for (int rule = 0; rule < untold.results().size(); rule++) {
          if (!isTold(told, rule) || isTold(untold, rule)) {
            continue;
          }
          RuleResult result = untold.results().get(rule);
          if (result.outcome() != Outcome.CANNOT_TELL) {
            continue;
          }
          asked++;
          List<String> needs = result.explanation().needs();
          Map<String, String> filled = new LinkedHashMap<>(part);
          needs.stream().filter(whole::containsKey).forEach(key -> filled.put(key, whole.get(key)));
          RuleResult now = screener.result(RecordReader.of(filled)).results().get(rule);
          if (now.outcome() == Outcome.CANNOT_TELL && !isBut(needs, result.rule().id())) {
            String then = " asks for " + needs + ", then for " + now.explanation().needs();
            open.add(whole.get("record.id") + ": " + result.rule().id() + then);
          }
        }
      }
    }
    assertTrue(asked > 200, asked + " asked for");
    assertEquals(List.of(), open, "of " + asked + ", seed " + SEED);
  }

  /** Whether only the answer to what is asked for tells that more is needed. */
  private static boolean isBut(List<String> needs, String rule) {
    String first = FIRST.get(rule);
    return first != null && needs.contains(first);
  }

  private static boolean isTold(RecordResult result, int rule) {
    Outcome outcome = result.results().get(rule).outcome();
    return outcome == Outcome.MEETS || outcome == Outcome.FALLS_SHORT;
  }

  private static Map<String, String> part(Map<String, String> whole, Random random) {
    Map<String, String> part = new LinkedHashMap<>(whole);
    part.keySet().removeIf(key -> !key.startsWith("record.") && random.nextInt(ONE_BLANK_OF) == 0);
    return part;
  }
}
