package org.wellcurb.quantity;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;

/**
 * Whatever is written for an amount: ends in order, no NaN, nothing beyond what the kind can be.
 */
class AmountFuzz {
  private static final List<Expected> KINDS =
      List.of(
          Expected.of(Dimension.LENGTH, false),
          Expected.of(Dimension.LENGTH, true).plusIsUnclear(),
          Expected.of(Dimension.PRESSURE, false).orHead(),
          Expected.of(Dimension.FLOW, false),
          Expected.of(Dimension.RESISTANCE, false),
          Expected.of(Dimension.CONCENTRATION, false),
          Expected.of(Dimension.TEMPERATURE, true),
          Expected.of(Dimension.WIRE_GAUGE, true),
          Expected.of(Dimension.ANGLE, true).within(90),
          Expected.of(Dimension.NUMBER, false).counting(List.of("bags")));

  @FuzzTest(maxDuration = "10m")
  void anAmountIsSound(FuzzedDataProvider data) {
    Expected kind = data.pickValue(KINDS);
    Comma comma = data.pickValue(Comma.values());
    Unit bare = unit(kind, data.consumeInt(0, Units.all().size() - 1));
    String text = data.consumeRemainingAsString();
    if (AmountReader.read(text, kind, bare, comma) instanceof Reading.Amount a) {
      check(a.lo() <= a.hi(), text, a);
      check(a.lo() < Double.POSITIVE_INFINITY && a.hi() > Double.NEGATIVE_INFINITY, text, a);
      check(a.halfPlace() >= 0 && a.halfPlace() < Double.POSITIVE_INFINITY, text, a);
      check(a.lo() == a.hi() || a.halfPlace() == 0, text, a);
      check(a.unit().dimension().equals(kind.dimension()), text, a);
      check(a.lo() >= kind.least() || Double.isInfinite(a.lo()), text, a);
    }
  }

  private static Unit unit(Expected kind, int from) {
    for (int i = 0; i < Units.all().size(); i++) {
      Unit unit = Units.at((from + i) % Units.all().size());
      if (unit.dimension().equals(kind.dimension()) && kind.taken(unit) != null) {
        return unit;
      }
    }
    throw new IllegalStateException("no unit of " + kind);
  }

  private static void check(boolean sound, String text, Reading.Amount amount) {
    if (!sound) {
      throw new AssertionError("'" + text + "' gave " + amount);
    }
  }
}
