package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.quantity.AmountWriter;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.PackLoader;

/**
 * Nothing is asked for in vain: of each entry that a sheet asks for, some answer changes the
 * outcome of a rule that it is said to settle, as the form stands or with what else that rule asks
 * for.
 */
class AskedForMattersTest {
  private static final long SEED = 20260411;
  private static final int EACH = 2;
  private static final int TRIALS = 30;
  private static final int ROUNDS = 4;

  private final Catalogue catalogue = Catalogue.standard();
  private final Map<String, List<String>> answers = new HashMap<>();
  private Random random = new Random(SEED);

  @Test
  void underCommonPractice() throws Exception {
    assertEquals(Map.of(), inVain("common-practice"), "seed " + SEED);
  }

  @Test
  void underTheCounty() throws Exception {
    assertEquals(Map.of(), inVain("fenwick-county"), "seed " + SEED);
  }

  @Test
  void underTheDistrict() throws Exception {
    assertEquals(Map.of(), inVain("tarn-district"), "seed " + SEED);
  }

  /** By entry asked for in vain: a form, and the rules that were said to need it. */
  private Map<String, String> inVain(String pack) throws Exception {
    Screener sheet = new Screener(PackLoader.load(pack), LocalDate.of(2026, 1, 1));
    Screener trial = new Screener(PackLoader.load(pack), LocalDate.of(2026, 1, 1));
    random = new Random(SEED);
    Map<String, String> inVain = new TreeMap<>();
    int asked = 0;
    for (GoodWell kind : GoodWell.values()) {
      for (int i = 0; i < EACH; i++) {
        Map<String, String> form = kind.form(kind + "-" + i, random);
        RecordResult result = sheet.result(RecordReader.of(form));
        for (Ask ask : result.asks()) {
          asked++;
          List<Integer> rules = naming(result, ask.entry());
          if (rules.stream().noneMatch(rule -> matters(trial, form, rule, ask.entry()))) {
            List<String> ids = new ArrayList<>();
            rules.forEach(rule -> ids.add(result.results().get(rule).rule().id()));
            inVain.putIfAbsent(ask.entry(), ids + " of " + form);
          }
        }
      }
    }
    assertTrue(asked > 500, asked + " asked for");
    return inVain;
  }

  /** Places of the rules that cannot be told and name this entry. */
  private static List<Integer> naming(RecordResult result, String key) {
    List<Integer> rules = new ArrayList<>();
    for (int rule = 0; rule < result.results().size(); rule++) {
      RuleResult each = result.results().get(rule);
      if (each.outcome() == Outcome.CANNOT_TELL && each.explanation().needs().contains(key)) {
        rules.add(rule);
      }
    }
    return rules;
  }

  private boolean matters(Screener trial, Map<String, String> form, int rule, String key) {
    for (int i = 0; i < TRIALS; i++) {
      Map<String, String> filled = new LinkedHashMap<>(form);
      if (i > 0) {
        fillTheOthers(trial, filled, rule, key);
      }
      int before = outcome(trial, filled, rule);
      for (String answer : answers(key)) {
        filled.put(key, answer);
        if (outcome(trial, filled, rule) != before) {
          return true;
        }
      }
    }
    return false;
  }

  /** Answers what else the rule asks for, and what it asks for then, or leaves it, by chance. */
  private void fillTheOthers(Screener trial, Map<String, String> form, int rule, String key) {
    Set<String> left = new HashSet<>(Set.of(key));
    for (int round = 0; round < ROUNDS; round++) {
      outcome(trial, form, rule);
      for (Entry need : trial.needs(rule)) {
        if (random.nextInt(4) == 0) {
          left.add(need.key());
        }
        List<String> any = answers(need.key());
        boolean isOpen = !left.contains(need.key()) && !form.containsKey(need.key());
        if (isOpen && !any.isEmpty()) {
          form.put(need.key(), any.get(random.nextInt(any.size())));
        }
      }
    }
  }

  private static int outcome(Screener trial, Map<String, String> form, int rule) {
    WellRecord record = RecordReader.of(form);
    return trial.outcomes(record)[rule];
  }

  private List<String> answers(String key) {
    return answers.computeIfAbsent(key, each -> answers(catalogue.entry(catalogue.index(each))));
  }

  private static List<String> answers(Entry entry) {
    List<String> answers = new ArrayList<>(entry.choices());
    switch (entry.kind()) {
      case CHOICE -> {}
      case YES_NO -> answers.addAll(List.of("yes", "no"));
      case TEXT -> answers.addAll(List.of("hill", "plain", "shore", "fell", "vale", "40", "SDR 21"));
      case LIST -> {}
      case DATE -> {
        for (int year = 1985; year <= 2025; year += 2) {
          answers.add(year + "-06-15");
        }
        answers.add("2027-01-01");
      }
      default -> amounts(entry, answers);
    }
    return answers;
  }

  /** From one end of the plausible range to the other, the closer the smaller. */
  private static void amounts(Entry entry, List<String> answers) {
    Unit unit = entry.usUnit();
    double lo = unit == null ? entry.plausible().lo() : unit.fromSi(entry.plausible().lo());
    double hi = unit == null ? entry.plausible().hi() : unit.fromSi(entry.plausible().hi());
    double least = Math.min(lo, hi);
    double most = Math.max(lo, hi);
    boolean isWhole = entry.kind() == Kind.COUNT;
    String symbol = unit == null || unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    for (int i = 0; i <= 12; i++) {
      double value = least + (most - least) * Math.pow(i / 12.0, 3);
      double step = isWhole || most - least > 100 ? 1 : 0.001;
      answers.add(AmountWriter.digits(Math.rint(value / step) * step) + symbol);
    }
    if (least < 0 && most > 0) {
      answers.add("0" + symbol);
      answers.add("2" + symbol);
    }
  }
}
