package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Example;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Rule;

/**
 * Records judged side by side have the outcomes that they have one by one, by every rule of every
 * pack that ships: made-up records, put together from what the rules' own examples give (so that
 * they lie on both sides of the limits), with blanks, ranges, other units, other datums, entries
 * that do not apply and parts that are not covered.
 */
class LaneScreenerTest {
  private static final long SEED = 20_261_126L;
  private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);
  private static final int RECORDS = 1500;

  /** Texts that an amount may be replaced by: no unit of a wrong kind is read as a value. */
  private static final List<String> TEXTS =
      List.of(
          "",
          "unknown",
          "n/a",
          "-",
          "10-200",
          ">100",
          "<5",
          "0",
          "-2",
          "1e",
          "15",
          "15.2 m",
          "20 m",
          "50 ft",
          "~40",
          "yes",
          "no",
          "none",
          "other",
          "steel",
          "2009",
          "2009-05",
          "1995-06-01");

  private static final Map<String, List<String>> OFTEN =
      Map.of(
          "record.datum", List.of("ground", "casing top", ""),
          "water.datum", List.of("ground", "casing top", "other", ""),
          "pump.datum", List.of("pitless", "casing top", ""),
          "well.stickup", List.of("2 ft", "", "1-3 ft"),
          "record.covers", List.of("well", "pump", "well and pump", "repair", ""),
          "record.units", List.of("us", "metric"));

  static Stream<String> shipped() {
    return PackLoader.shipped().stream();
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void outcomesAreThoseOfOneByOne(String name) throws Exception {
    Pack pack = PackLoader.load(name);
    Random random = new Random(SEED + name.hashCode());
    Screener alone = new Screener(pack, AS_OF);
    Screener settling = new Screener(pack, AS_OF);
    LaneScreener together = new LaneScreener(pack, AS_OF);
    long[] counts = new long[Outcome.values().length];
    List<Map<String, String>> forms = new ArrayList<>();
    List<WellRecord> block = new ArrayList<>();
    for (int i = 0; i < RECORDS; i++) {
      Map<String, String> form = form(pack, random);
      forms.add(form);
      block.add(RecordReader.of(form));
      if (block.size() == LaneScreener.MOST || random.nextInt(40) == 0) {
        compare(pack, alone, settling, together, block, forms, counts);
        block.clear();
        forms.clear();
      }
    }
    for (Outcome outcome : Outcome.values()) {
      assertTrue(
          outcome == Outcome.WAIVED || counts[outcome.ordinal()] > 100,
          name + ": " + Arrays.toString(counts));
    }
  }

  private static void compare(
      Pack pack,
      Screener alone,
      Screener settling,
      LaneScreener together,
      List<WellRecord> block,
      List<Map<String, String>> forms,
      long[] counts) {
    together.clear();
    for (int i = 0; i < block.size(); i++) {
      together.take(i, block.get(i));
    }
    together.judge();
    for (int i = 0; i < block.size(); i++) {
      byte[] side = settling.outcomes(block.get(i), together.outcomes(i));
      byte[] one = alone.outcomes(block.get(i));
      for (int rule = 0; rule < one.length; rule++) {
        Map<String, String> form = forms.get(i);
        assertEquals(
            Outcome.at(one[rule]),
            Outcome.at(side[rule]),
            pack.rules().get(rule).id() + " of seed " + SEED + ", " + form);
        counts[one[rule]]++;
      }
    }
  }

  /** What some rules' examples give, one over the other, some of it written over. */
  private static Map<String, String> form(Pack pack, Random random) {
    Map<String, String> form = new TreeMap<>();
    form.put("record.id", "W1");
    int examples = 1 + random.nextInt(25);
    for (int i = 0; i < examples; i++) {
      Rule rule = pack.rules().get(random.nextInt(pack.rules().size()));
      if (!rule.examples().isEmpty()) {
        Example example = rule.examples().get(random.nextInt(rule.examples().size()));
        form.putAll(example.given());
      }
    }
    OFTEN.forEach(
        (key, texts) -> {
          if (random.nextInt(3) == 0) {
            form.put(key, texts.get(random.nextInt(texts.size())));
          }
        });
    int changes = random.nextInt(6);
    List<String> keys = new ArrayList<>(form.keySet());
    for (int i = 0; i < changes; i++) {
      boolean isAny = random.nextInt(4) == 0;
      String key =
          isAny
              ? Catalogue.standard()
                  .entry(1 + random.nextInt(Catalogue.standard().size() - 1))
                  .key()
              : keys.get(random.nextInt(keys.size()));
      if (!key.equals("record.id")) {
        form.put(key, TEXTS.get(random.nextInt(TEXTS.size())));
      }
    }
    return form;
  }
}
