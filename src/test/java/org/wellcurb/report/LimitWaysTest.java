package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.report.drawing.Limit;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.PackScope;

/** The limits of a requirement, each with what it hangs on. */
final class LimitWaysTest {
  private static final String FIELD = "setback.absorption_field";
  private static Pack pack;

  @BeforeAll
  static void load() throws Exception {
    pack = PackLoader.load("fenwick-county");
  }

  private static @Nullable Limit of(String entry, UnitSystem system, String require) {
    try {
      Formula formula = Formula.condition(require, new PackScope(pack.tables(), pack.figures()));
      return new LimitWays(entry, system, PageStyle.PLAIN.speech()).of(formula.tree());
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Double> amounts(@Nullable Limit limit) {
    return Objects.requireNonNull(limit).ways().stream().map(Limit.Way::si).toList();
  }

  @Test
  void eachWayHasItsLimitAndWhatElseItAsks() {
    Limit limit =
        Objects.requireNonNull(
            of(
                FIELD,
                UnitSystem.METRIC,
                "setback.absorption_field >= 30 m or (well.casing_depth >= 12 m and"
                    + " site.slope is not 'well below source' and"
                    + " setback.absorption_field >= 20 m)"));
    assertEquals(List.of(30.0, 20.0), amounts(limit));
    assertEquals("", limit.ways().get(0).where());
    String where = limit.ways().get(1).where();
    assertTrue(where.contains("12 m") && where.contains("below the source"), where);
    assertFalse(where.contains("20 m"), where);
    assertTrue(limit.isOneWay());
  }

  @Test
  void aLimitByConditionIsBothOfItsBranches() {
    Limit limit =
        of(
            "setback.animal_yard",
            UnitSystem.US,
            "setback.animal_yard >= (if well.casing_depth >= 100 ft (30 m) then 50 ft (15 m)"
                + " else 100 ft (30 m))");
    assertEquals(List.of(30.48, 15.24), amounts(limit));
    limit =
        of(
            "setback.animal_yard",
            UnitSystem.METRIC,
            "setback.animal_yard >= (if well.casing_depth >= 100 ft (30 m) then 50 ft (15 m)"
                + " else 100 ft (30 m))");
    assertEquals(List.of(30.0, 15.0), amounts(limit));
  }

  /** A pack says which table is that of frost, whatever its name. */
  @Test
  void whatStandsForTheFrostIsTold() throws Exception {
    Table frost = Objects.requireNonNull(pack.tables().get("frost"));
    assertTrue(isFrost(frost));
    String source = frost.source();
    String title = frost.title();
    assertFalse(
        isFrost(new Table("frost", frost.by(), frost.gives(), frost.rows(), title, source, "")));
    assertTrue(LimitWays.isFrost(condition("pitless.depth >= site.frost_depth"), "pitless.depth"));
    assertFalse(LimitWays.isFrost(condition("well.depth >= site.frost_depth"), "pitless.depth"));
  }

  private static Expr.Condition condition(String require) throws Exception {
    return Formula.condition(require, new PackScope(pack.tables(), pack.figures())).tree();
  }

  private static boolean isFrost(Table table) throws Exception {
    PackScope scope = new PackScope(Map.of(table.name(), table), pack.figures());
    Formula formula = Formula.condition("pitless.depth >= table(frost)", scope);
    return LimitWays.isFrost(formula.tree(), "pitless.depth");
  }

  @Test
  void whatHoldsBesideALimitIsNoOtherWay() {
    Limit limit =
        Objects.requireNonNull(
            of(FIELD, UnitSystem.US, "setback.absorption_field >= 30 m and well.cap is 'sealed'"));
    assertEquals(30, limit.si());
    assertFalse(limit.isOneWay());
    // A choice that does not ask for the distance is a condition, and no way of its own.
    limit =
        Objects.requireNonNull(
            of(
                FIELD,
                UnitSystem.US,
                "setback.absorption_field >= 30 m or (setback.absorption_field >= 15 m and"
                    + " (well.casing_depth >= 15 m or grout.bottom >= 15 m))"));
    assertEquals(List.of(30.0, 15.0), amounts(limit));
  }

  @Test
  void aWayWithoutALimitIsSaidToHaveNone() {
    Limit limit =
        of(FIELD, UnitSystem.US, "setback.absorption_field >= 30 m or well.use is 'monitoring'");
    assertNotNull(limit);
    assertEquals(2, limit.ways().size());
    assertTrue(Double.isNaN(limit.ways().get(1).si()));
  }

  @Test
  void whatIsNoLeastDistanceIsSaidOrLeft() {
    assertNull(of(FIELD, UnitSystem.US, "setback.absorption_field <= 30 m"));
    assertNull(of(FIELD, UnitSystem.US, "setback.privy >= 30 m"));
    Limit said =
        of(FIELD, UnitSystem.US, "setback.absorption_field >= 30 m or abs(" + FIELD + ") < 3 m");
    assertNotNull(said);
    assertTrue(Double.isNaN(said.si()) && !said.requirement().isEmpty());
  }
}
