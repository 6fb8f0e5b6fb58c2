package org.wellcurb.workings;

import static org.wellcurb.workings.Input.optional;
import static org.wellcurb.workings.Input.required;

import java.util.List;
import org.wellcurb.quantity.Units;

/**
 * Levels in the test and what they imply. Levels in metres below ground, flows in m3/s.
 *
 * <p>Air lift, bailer and a test of the flow alone give no pumping level: the level written there
 * is that of the air line or of the last bail. Whatever is made of it is unknown then. A blank
 * method counts as measured.
 */
public final class WellHydraulics {
  /** Beyond this multiple of the test rate the level is not carried on. Common practice. */
  public static final double FARTHEST_RATE = 1.5;

  private static final double AIR_LIFT = Choices.place("water.test_method", "air lift");
  private static final double BAILER = Choices.place("water.test_method", "bailer");
  private static final double FLOW_ONLY = Choices.place("water.test_method", "flow only");

  private WellHydraulics() {}

  /** Whether a test by this method measures a pumping level; NaN (blank) counts as measured. */
  static boolean isMeasured(double method) {
    return method != AIR_LIFT && method != BAILER && method != FLOW_ONLY;
  }

  /**
   * Fall of the water level in the test: pumping level - static level (m). Negative where the
   * levels contradict each other. Common practice.
   */
  public static double drawdown(double pumpingLevel, double staticLevel) {
    return pumpingLevel - staticLevel;
  }

  /**
   * Yield per unit of drawdown: rate / drawdown (m2/s). Depends on rate and time of the test.
   * Unknown (NaN) without a drawdown above 0; 0 over a drawdown without bound, whatever the rate:
   * so that of a range of both ends at 0, and not below. Source: Driscoll, Groundwater and Wells,
   * 2nd ed. 1986, from memory.
   */
  public static double specificCapacity(double rate, double drawdown) {
    if (drawdown == Double.POSITIVE_INFINITY) {
      return 0;
    }
    return drawdown > 0 ? rate / drawdown : Double.NaN;
  }

  /**
   * Level at another rate than tested (m below ground): static level + rate / specific capacity.
   * The line is optimistic above the test rate, where losses grow faster than the flow; beyond
   * {@link #FARTHEST_RATE} times the test rate it is unknown (NaN), as it is where the drawdown is
   * negative or nothing was pumped. Common practice.
   */
  public static double levelAtRate(
      double staticLevel, double pumpingLevel, double testRate, double rate) {
    double drawdown = drawdown(pumpingLevel, staticLevel);
    boolean known = testRate > 0 && rate <= FARTHEST_RATE * testRate && drawdown >= 0;
    return known ? staticLevel + drawdown * (rate / testRate) : Double.NaN;
  }

  static List<Working> workings() {
    return List.of(
        Draft.of("drawdown", Units.FOOT, Units.METRE, "fall of the water level in the test")
            .formula("{water.pumping_level} - {water.static_level}")
            .reads(
                required("water.pumping_level"),
                required("water.static_level"),
                optional("water.test_method"))
            .by(x -> isMeasured(x[2]) ? drawdown(x[0], x[1]) : Double.NaN),
        Draft.of(
                "specific_capacity",
                Units.GPM_PER_FOOT,
                Units.LITRE_PER_MINUTE_PER_METRE,
                "yield per unit of drawdown in the test")
            .formula("{water.test_rate} / ({water.pumping_level} - {water.static_level})")
            .source("Driscoll, Groundwater and Wells, 2nd ed. 1986 (from memory)")
            .reads(
                required("water.test_rate"),
                required("water.pumping_level"),
                required("water.static_level"),
                optional("water.test_method"))
            .turns(Turn.atInput(1, 2), Turn.atInput(2, 1))
            .by(x -> isMeasured(x[3]) ? specificCapacity(x[0], drawdown(x[1], x[2])) : Double.NaN),
        Draft.of(
                "level_at_rated_flow",
                Units.FOOT,
                Units.METRE,
                "level if the pump runs at its rated flow; optimistic above the test rate, unknown"
                    + " beyond 1.5 times it")
            .formula(
                "{water.static_level} + {pump.rated_flow} x ({water.pumping_level} -"
                    + " {water.static_level}) / {water.test_rate}")
            .reads(
                required("water.static_level"),
                required("water.pumping_level"),
                required("water.test_rate"),
                required("pump.rated_flow"),
                optional("water.test_method"))
            .by(x -> isMeasured(x[4]) ? levelAtRate(x[0], x[1], x[2], x[3]) : Double.NaN));
  }
}
