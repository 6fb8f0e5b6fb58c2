package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every published row that a function of this room can be held against, by its own tolerance. */
class PublishedValuesTest {
  private static final Map<String, Consumer<PublishedRow>> CHECKS = checks();

  private static Map<String, Consumer<PublishedRow>> checks() {
    Map<String, Consumer<PublishedRow>> checks = new HashMap<>();
    for (Map<String, Consumer<PublishedRow>> subject :
        List.of(
            PublishedLevels.checks(),
            PublishedTank.checks(),
            PublishedPipes.checks(),
            PublishedWells.checks(),
            PublishedHouse.checks(),
            PublishedChlorine.checks())) {
      checks.putAll(subject);
    }
    return checks;
  }

  /** Quantities of the published file that no working computes, and why. */
  private static final Map<String, String> LEFT_OUT =
      Map.ofEntries(
          Map.entry("unit_conversion", "held against the units themselves"),
          Map.entry("transmissivity_from_sc", "no entry or rule asks for transmissivity"),
          Map.entry("transmissivity_unit", "no entry or rule asks for transmissivity"),
          Map.entry(
              "cement_grout_yield_from_density", "no form states a weighed density of its grout"),
          Map.entry("tank_precharge_rule", "a limit: rule tank-precharge of common-practice"),
          Map.entry("pipe_velocity", "no rule asks for the velocity in a pipe"),
          Map.entry("pvc_pressure_rating", "forms state the rating of a pipe, not its ratio"),
          Map.entry("pe_pressure_rating_id", "forms state the rating of a pipe, not its ratio"),
          Map.entry("peak_demand_rate", "how to choose the figure peak_rate"),
          Map.entry("wire_resistance_solid", "cables of pumps are stranded"),
          Map.entry("chlorine_regulatory_band", "a limit, for a pack"),
          Map.entry("peak_demand_fixture_count", "forms do not count fixtures"),
          Map.entry("low_yield_trigger", "a limit, for a pack"),
          Map.entry("insulation_resistance_min", "a limit of another apparatus, for a pack"),
          Map.entry("insulation_test_voltage", "how to test, not what comes of it"),
          Map.entry(
              "insulation_band_general_motor",
              "surface motors: another scale, which must not be mixed with that of wells"),
          Map.entry("plastic_pipe_max_working_pressure", "a limit, for a pack"),
          Map.entry("motor_cooling_velocity_min", "a limit, for a pack"),
          Map.entry("freezing_degree_days", "frost depth is an entry or a table of a pack"),
          Map.entry("frost_depth_design", "a limit, for a pack"),
          Map.entry("service_pipe_min_depth", "a limit, for a pack"),
          Map.entry("frost_insulation_width", "forms do not tell of insulation in the ground"),
          Map.entry("switch_differential", "a limit, for a pack"),
          Map.entry("check_valve_spacing", "a limit, for a pack"),
          Map.entry("steel_casing_min_wall", "a tolerance of the mill, for a pack"),
          Map.entry("pvc_casing_depth_limit", "a table of one state, for its pack"),
          Map.entry("pvc_collapse_pressure", "no rule asks for collapse; states print depths"),
          Map.entry("geodesic_azimuth_12", "distances only"),
          Map.entry("geodesic_azimuth_21", "distances only"),
          Map.entry("utm_forward", "positions are geographic"),
          Map.entry("wilson_interval_95", "a statistic of the whole batch"),
          Map.entry("wilson_interval_95_cc", "a statistic of the whole batch"),
          Map.entry("terminal_digit_chi2", "a statistic of the whole batch"),
          Map.entry("chi2_critical", "a statistic of the whole batch"),
          Map.entry("benford_probability", "a statistic of the whole batch"),
          Map.entry("modified_z_score", "a statistic of the whole batch"),
          Map.entry("modified_z_score_mad_zero", "a statistic of the whole batch"),
          Map.entry("mad_sigma_factor", "a statistic of the whole batch"));

  /** What is done with the rows of a quantity, for the page of workings. */
  static String use(String quantity) {
    return LEFT_OUT.getOrDefault(quantity, "computed, within its tolerance");
  }

  static Stream<PublishedRow> rows() {
    return PublishedRow.all().stream().filter(row -> CHECKS.containsKey(row.quantity()));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void published(PublishedRow row) {
    CHECKS.get(row.quantity()).accept(row);
  }

  /** All other figures come out as printed, to half of the last digit. */
  @Test
  void whatDiffersByMoreThanRoundingSaysWhy() {
    Set<String> wide = new TreeSet<>();
    rows()
        .forEach(
            row -> {
              try {
                CHECKS.get(row.quantity()).accept(row.asPrinted());
              } catch (AssertionError e) {
                wide.add(row.quantity());
              }
            });
    assertEquals(wide, new TreeSet<>(WideTolerances.quantities()));
  }

  @Test
  void everyRowIsCheckedOrLeftOutForAReason() {
    List<String> loose = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    for (PublishedRow row : PublishedRow.all()) {
      seen.merge(row.quantity(), 1, Integer::sum);
      if (CHECKS.containsKey(row.quantity()) == LEFT_OUT.containsKey(row.quantity())) {
        loose.add(row.toString());
      }
    }
    assertEquals(List.of(), loose, "rows that are neither checked nor left out, or both");
    List<String> idle = new ArrayList<>(CHECKS.keySet());
    idle.addAll(LEFT_OUT.keySet());
    idle.removeAll(seen.keySet());
    assertEquals(List.of(), idle, "quantities of which there is no row");
  }
}
