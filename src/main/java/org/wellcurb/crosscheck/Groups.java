package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/** How the groups of a batch stand to all others: contractors, zones and years of completion. */
final class Groups {
  private final SurveyFile survey;
  private final RuleRates rules;
  private final List<RuleRates.Tried> tried = new ArrayList<>();
  private final List<CrossResult.By> kinds = new ArrayList<>();
  private final List<List<Rates.Rate>> rates = new ArrayList<>();

  /** Where the tests on rules stand among all of the batch, and those on rates of each kind. */
  private int firstRule;

  private final int[] firstRate = new int[CrossResult.By.values().length];

  /**
   * @param off records of licences whose depths seem to be in another unit: they are not counted
   *     among all others, nor against the rules in zones and years, which would stand out by them
   */
  Groups(SurveyFile survey, BitSet off) throws IOException {
    this.survey = survey;
    ByteBuffer flags = survey.flags();
    rules = new RuleRates(survey, off);
    for (CrossResult.By by : CrossResult.By.values()) {
      IntBuffer codes = codes(by);
      if (by == CrossResult.By.CONTRACTOR) {
        rules.byWhereTheyWork(codes);
      } else {
        off.stream().forEach(i -> codes.put(i, -1));
        rules.by(codes, by == CrossResult.By.YEAR);
      }
    }
    rules.count();
    for (CrossResult.By by : CrossResult.By.values()) {
      rates.add(Rates.of(codes(by), flags, rules.expected(by.ordinal()), off));
      for (RuleRates.Tried each : rules.tried(by.ordinal(), nobody(by))) {
        tried.add(each);
        kinds.add(by);
      }
    }
  }

  private IntBuffer codes(CrossResult.By by) throws IOException {
    return switch (by) {
      case CONTRACTOR -> survey.ints(SurveyRow.CONTRACTOR);
      case ZONE -> survey.ints(SurveyRow.ZONE);
      case YEAR -> years();
    };
  }

  private IntBuffer years() throws IOException {
    IntBuffer codes = survey.years();
    for (int i = 0; i < codes.capacity(); i++) {
      codes.put(i, Math.max(0, codes.get(i)));
    }
    return codes;
  }

  /** The name of a group; empty for records that name none. */
  private String name(CrossResult.By by, int code) {
    return switch (by) {
      case CONTRACTOR -> survey.contractors().get(code);
      case ZONE -> survey.zones().get(code);
      case YEAR -> code == 0 ? "" : String.valueOf(code);
    };
  }

  /** The group of records that name none; -1 if there is none. */
  private int nobody(CrossResult.By by) {
    return switch (by) {
      case CONTRACTOR -> survey.contractors().indexOf("");
      case ZONE -> survey.zones().indexOf("");
      case YEAR -> 0;
    };
  }

  /** Adds all tests on groups to those of the batch: on rules, and on rates of each kind. */
  void addTo(TestPool pool) {
    firstRule = pool.add(tried.stream().mapToDouble(RuleRates.Tried::p).toArray());
    for (int by = 0; by < firstRate.length; by++) {
      firstRate[by] =
          pool.add(
              rates.get(by).stream()
                  .mapToDouble(Rates.Rate::p)
                  .filter(p -> !Double.isNaN(p))
                  .toArray());
    }
  }

  /**
   * Rates of deficiency; of years in their order, of others most records first.
   *
   * @param q of all tests of the batch
   */
  List<CrossResult.GroupRate> rates(CrossResult.By by, double[] q, CrossResult.Rank[] ranks) {
    List<CrossResult.GroupRate> all = new ArrayList<>();
    int at = firstRate[by.ordinal()];
    for (Rates.Rate rate : rates.get(by.ordinal())) {
      boolean isSmall = Double.isNaN(rate.p());
      all.add(
          new CrossResult.GroupRate(
              name(by, rate.group()),
              rate.share(),
              rate.expected(),
              rate.low(),
              rate.high(),
              isSmall,
              rate.p(),
              isSmall ? Double.NaN : q[at],
              rate.spread(),
              isSmall ? CrossResult.Rank.NONE : ranks[at]));
      at += isSmall ? 0 : 1;
    }
    Comparator<CrossResult.GroupRate> byName = Comparator.comparing(CrossResult.GroupRate::name);
    all.sort(
        by == CrossResult.By.YEAR
            ? byName
            : Comparator.comparingLong((CrossResult.GroupRate rate) -> -rate.share().of())
                .thenComparing(byName));
    return all;
  }

  /** Tests tried, with those on figures and units. */
  CrossResult.Tests tests(long figures, long units) {
    List<Long> ofRates = new ArrayList<>();
    for (List<Rates.Rate> each : rates) {
      ofRates.add(each.stream().filter(rate -> !Double.isNaN(rate.p())).count());
    }
    return new CrossResult.Tests(figures, units, tried.size(), ofRates);
  }

  /** Groups with enough records that are not counted rule by rule. */
  long leftOut() {
    return rules.leftOut();
  }

  /** Rules that groups fall short of far more often than all others, least q first. */
  List<CrossResult.RuleHint> hints(double[] q, CrossResult.Rank[] ranks) {
    List<CrossResult.RuleHint> into = new ArrayList<>();
    for (int i = 0; i < tried.size(); i++) {
      RuleRates.Tried each = tried.get(i);
      double own = q[firstRule + i];
      if (each.isMarked() && own <= CrossResult.ACCEPTED) {
        RuleSet.RulesOfPack pack = survey.rules().packs().get(each.pack());
        into.add(
            new CrossResult.RuleHint(
                kinds.get(i),
                name(kinds.get(i), each.group()),
                pack.pack(),
                pack.ids().get(each.rule()),
                pack.titles().get(each.rule()),
                Share.of(each.fallsShort(), each.told()),
                each.othersShare(),
                each.between(),
                each.p(),
                own,
                ranks[firstRule + i]));
      }
    }
    into.sort(
        Comparator.comparingDouble(CrossResult.RuleHint::q)
            .thenComparingDouble(CrossResult.RuleHint::p)
            .thenComparing(CrossResult.RuleHint::by)
            .thenComparing(CrossResult.RuleHint::group)
            .thenComparing(CrossResult.RuleHint::pack)
            .thenComparing(CrossResult.RuleHint::rule));
    return into;
  }
}
