package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.formula.Frame;
import org.wellcurb.formula.Truth;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;

/**
 * What is proved never to hold agrees with trying every record of a grid that leaves nothing out.
 */
class BranchesTest {
  private static final PackScope SCOPE = new PackScope(Map.of(), Map.of());
  private static final List<WellRecord> GRID = grid();

  private static List<WellRecord> grid() {
    List<WellRecord> grid = new ArrayList<>();
    for (int depth = 5; depth <= 45; depth += 5) {
      for (int casing = 5; casing <= 45; casing += 5) {
        for (String cap : List.of("sealed", "vented sealed", "welded", "other", "none")) {
          for (String open : List.of("yes", "no")) {
            grid.add(
                RecordReader.of(
                    Map.of(
                        "setback.privy",
                        depth + " ft",
                        "setback.road",
                        casing + " ft",
                        "well.cap",
                        cap,
                        "well.open_hole",
                        open)));
          }
        }
      }
    }
    return grid;
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34, 35, 36, 37, 38})
  void agreesWithTryingEveryRecord(long seed) throws FormulaException, Branches.TooMany {
    Random random = new Random(seed);
    int never = 0;
    for (int i = 0; i < 60; i++) {
      String text = condition(random, 3);
      Formula formula = Formula.condition(text, SCOPE);
      for (boolean holds : new boolean[] {true, false}) {
        boolean isEmpty = new Branches(UnitSystem.US).of(formula.tree(), holds).isEmpty();
        String hint = "seed " + seed + ", " + holds + ": " + text;
        assertEquals(!tried(formula, holds ? Truth.TRUE : Truth.FALSE), isEmpty, hint);
        never += isEmpty ? 1 : 0;
      }
    }
    assertTrue(never > 0, "seed " + seed + " makes nothing that never holds");
  }

  private static boolean tried(Formula formula, int truth) {
    Frame frame = new Frame(Catalogue.standard());
    for (WellRecord record : GRID) {
      frame.take(record);
      if (formula.evaluate(frame) == truth) {
        return true;
      }
    }
    return false;
  }

  private static String condition(Random random, int depth) {
    if (depth == 0 || random.nextInt(4) == 0) {
      return comparison(random);
    }
    String a = condition(random, depth - 1);
    String b = condition(random, depth - 1);
    return switch (random.nextInt(4)) {
      case 0 -> "(" + a + " or " + b + ")";
      case 1 -> "not (" + a + ")";
      case 2 -> "(if " + comparison(random) + " then " + a + " else " + b + ")";
      default -> "(" + a + " and " + b + ")";
    };
  }

  /** Limits are tens of feet, the grid has every five: a value at and between all of them. */
  private static String comparison(Random random) {
    String amount = random.nextBoolean() ? "setback.privy" : "setback.road";
    String limit = 10 * (1 + random.nextInt(4)) + " ft";
    return switch (random.nextInt(7)) {
      case 0 -> "well.cap is one of 'sealed', 'welded'";
      case 1 -> "well.cap is not 'none'";
      case 2 -> "well.open_hole is " + (random.nextBoolean() ? "yes" : "no");
      case 3 -> amount + " between " + limit + " and " + 10 * (1 + random.nextInt(4)) + " ft";
      case 4 -> limit + " < " + amount;
      case 5 -> amount + " + 10 ft " + sign(random) + " " + limit + " + 10 ft";
      default -> amount + " " + sign(random) + " " + limit;
    };
  }

  private static String sign(Random random) {
    return List.of("=", "<>", "<", "<=", ">", ">=").get(random.nextInt(6));
  }
}
