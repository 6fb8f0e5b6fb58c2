package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.quantity.AmountWriter;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Rule;

/**
 * A form in US units and its twin in metric ones come out alike by every rule, or do so once a
 * figure is moved by 1 %: only within that of a limit may the code's own rounding (50 ft or 15 m)
 * tell them apart.
 */
class TwinsTest {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  /** A figure that stands no farther than this from a limit stands near it. */
  private static final double NEAR = 0.01;

  private static final int ROUNDS = 40;

  /** Every rule on every form: none is passed over. */
  @ParameterizedTest
  @ValueSource(strings = {"common-practice", "fenwick-county"})
  void outcomesAreThoseOfTheTwin(String name) throws Exception {
    Twins twins = new Twins(PackLoader.load(name));
    List<WellRecord> wells = ReadRecords.in(Path.of("src/test/resources/good-wells")).records;
    long seed = 20260102;
    Random random = new Random(seed);
    long compared = 0;
    int moved = 0;
    Map<String, String> differ = new TreeMap<>();
    for (int round = 0; round < ROUNDS; round++) {
      for (WellRecord well : wells) {
        Map<String, String> form = changed(well, twins, random);
        byte[][] outcomes = twins.outcomes(form);
        for (int rule = 0; rule < outcomes[0].length; rule++) {
          compared++;
          if (outcomes[0][rule] == outcomes[1][rule]) {
            continue;
          }
          moved++;
          if (!twins.isMendedByAMove(form, rule)) {
            differ.putIfAbsent(
                twins.rules.get(rule).id(), "round " + round + ", " + well.id() + ": " + form);
          }
        }
      }
    }
    assertEquals(Map.of(), differ, "seed " + seed);
    assertTrue(compared > 100_000);
    assertTrue(moved < compared / 1000, moved + " of " + compared + " near a limit, seed " + seed);
  }

  /** One pack on a form and its twin. */
  private static final class Twins {
    final List<Rule> rules;

    /** By entry, the limits in both systems that it is laid beside. */
    private final Map<Integer, List<Expr.Dual>> limits = new HashMap<>();

    private final Screener us;
    private final Screener metric;

    Twins(Pack pack) {
      rules = pack.rules();
      rules.forEach(rule -> trees(rule).forEach(this::findLimits));
      us = new Screener(pack, LocalDate.of(2026, 1, 1));
      metric = new Screener(pack, LocalDate.of(2026, 1, 1));
    }

    private void findLimits(Expr expr) {
      List<Expr> parts = Parts.of(expr);
      for (Expr part : parts) {
        findLimits(part);
        for (Expr other : parts) {
          if (part instanceof Expr.EntryAmount e && other instanceof Expr.Dual dual) {
            limits.computeIfAbsent(e.entry().index(), key -> new ArrayList<>()).add(dual);
          }
        }
      }
    }

    boolean isAtALimit(int entry, double value) {
      return limits.getOrDefault(entry, List.of()).stream()
          .anyMatch(
              limit -> {
                double least = Math.min(limit.primary(), limit.bracket());
                double most = Math.max(limit.primary(), limit.bracket());
                double room = NEAR * Math.max(Math.abs(least), Math.abs(most));
                return value != 0 && value >= least - room && value <= most + room;
              });
    }

    /** As each rule is judged, on both: of one subject only the worst is kept elsewhere. */
    byte[][] outcomes(Map<String, String> form) {
      us.outcomes(RecordReader.of(twin(form, UnitSystem.US)));
      metric.outcomes(RecordReader.of(twin(form, UnitSystem.METRIC)));
      return new byte[][] {us.asJudged(), metric.asJudged()};
    }

    /** Whether both are alike by this rule once one figure is moved a little. */
    boolean isMendedByAMove(Map<String, String> form, int rule) {
      double far = NEAR + apart(rules.get(rule));
      for (Map.Entry<String, String> entry : form.entrySet()) {
        if (!entry.getValue().startsWith("SI ")) {
          continue;
        }
        double si = Double.parseDouble(entry.getValue().substring(3));
        for (double by : new double[] {-NEAR, NEAR, -far, far}) {
          Map<String, String> moved = new LinkedHashMap<>(form);
          moved.put(entry.getKey(), "SI " + si * (1 + by));
          byte[][] outcomes = outcomes(moved);
          if (outcomes[0][rule] == outcomes[1][rule]) {
            return true;
          }
        }
      }
      return false;
    }
  }

  /** All that a rule says, of every day. */
  private static List<? extends Expr> trees(Rule rule) {
    List<Formula> all = new ArrayList<>();
    all.add(rule.program().when());
    for (DatedText text : rule.program().texts()) {
      all.add(text.when());
      all.add(text.require());
    }
    return all.stream().filter(Objects::nonNull).map(Formula::tree).toList();
  }

  /**
   * How far the two figures of a limit of this rule lie apart, as a share: 2 psi is 13.8 kPa, and
   * stands as 13 kPa. Between them the code itself says two things.
   */
  private static double apart(Rule rule) {
    return trees(rule).stream().mapToDouble(TwinsTest::apart).max().orElse(0);
  }

  private static double apart(Expr expr) {
    double apart = 0;
    if (expr instanceof Expr.Dual dual) {
      double size = Math.max(Math.abs(dual.primary()), Math.abs(dual.bracket()));
      apart = size == 0 ? 0 : Math.abs(dual.primary() - dual.bracket()) / size;
    }
    for (Expr part : Parts.of(expr)) {
      apart = Math.max(apart, apart(part));
    }
    return apart;
  }

  /**
   * What a record says, as SI figures by key; some of them changed, and those too that stand at a
   * limit, as 20 ft between ties do.
   */
  private static Map<String, String> changed(WellRecord well, Twins twins, Random random) {
    Map<String, String> form = new LinkedHashMap<>();
    for (Entry entry : CATALOGUE.entries()) {
      int i = entry.index();
      String written = well.written(i);
      // A gauge and a cross-section are sizes of two series, none of which is one of the other.
      boolean isAmount =
          well.unit(i) != null
              && well.lo(i) == well.hi(i)
              && well.isGiven(i)
              && entry.kind() != Kind.AWG;
      if (!isAmount) {
        boolean isKept = entry.key().startsWith("record.") || random.nextInt(60) > 0;
        // A range without a unit would mean something else on the other form.
        boolean isBare = well.unit(i) != null && entry.kind() != Kind.AWG;
        if (!written.isEmpty() && isKept && !isBare) {
          form.put(entry.key(), entry.kind() == Kind.AWG ? gauge(well, i) : written);
        }
        continue;
      }
      int change = random.nextInt(12);
      double factor = factor(change, random);
      while (twins.isAtALimit(i, well.lo(i) * factor)) {
        factor = factor(1, random);
      }
      if (random.nextInt(40) > 0) {
        form.put(entry.key(), "SI " + well.lo(i) * factor);
      }
    }
    return form;
  }

  private static double factor(int change, Random random) {
    return switch (change) {
      case 0 -> 0.5 + random.nextDouble();
      case 1 -> 0.9 + 0.2 * random.nextDouble();
      default -> 1;
    };
  }

  /** A gauge with its unit, so that it means the same on both forms. */
  private static String gauge(WellRecord well, int entry) {
    String written = well.written(entry);
    Unit unit = well.unit(entry);
    boolean isBare = written.chars().allMatch(c -> c >= '0' && c <= '9');
    return isBare && unit != null ? written + " " + unit.symbol() : written;
  }

  private static Map<String, String> twin(Map<String, String> form, UnitSystem system) {
    Map<String, String> twin = new LinkedHashMap<>();
    List<String> counts = new ArrayList<>();
    form.forEach(
        (key, text) -> {
          if (!text.startsWith("SI ")) {
            twin.put(key, text);
            return;
          }
          Entry entry = CATALOGUE.entry(CATALOGUE.index(key));
          Unit unit = entry.unit(system);
          double si = Double.parseDouble(text.substring(3));
          if (unit == null) {
            counts.add(key);
          } else if (unit.isReversed() || unit.symbol().isEmpty()) {
            twin.put(key, AmountWriter.digits(unit.fromSi(si)));
          } else {
            twin.put(key, plain(unit.fromSi(si)) + " " + unit.symbol());
          }
        });
    twin.put("record.units", system == UnitSystem.METRIC ? "metric" : "us");
    return twin;
  }

  /** Enough digits that nothing is rounded away. */
  private static String plain(double value) {
    return new java.math.BigDecimal(value)
        .round(new java.math.MathContext(12))
        .stripTrailingZeros()
        .toPlainString();
  }
}
