package org.wellcurb.workings;

import java.util.List;
import java.util.Map;

/** Which published quantities each working was checked against. */
final class PublishedCases {
  private static final Map<String, List<String>> QUANTITIES =
      Map.ofEntries(
          Map.entry("drawdown", List.of("drawdown")),
          Map.entry("specific_capacity", List.of("specific_capacity")),
          Map.entry("level_at_rated_flow", List.of("drawdown_at_rate")),
          Map.entry("recovery_inflow", List.of("recovery_rate")),
          Map.entry("static_from_shut_in", List.of("pressure_head")),
          Map.entry("casing_inside_diameter", List.of("steel_casing_id", "pvc_casing_min_wall")),
          Map.entry("casing_outside_diameter", List.of("steel_casing_weight")),
          Map.entry(
              "casing_water_volume",
              List.of("casing_volume_per_ft", "casing_volume", "well_storage")),
          Map.entry("annulus_volume", List.of("annulus_volume")),
          Map.entry("grout_placed", List.of("cement_grout_yield", "bentonite_grout_yield")),
          Map.entry("grout_density", List.of("cement_grout_density")),
          Map.entry("grout_solids", List.of("bentonite_solids_percent")),
          Map.entry(
              "friction_drop_pipe",
              List.of("friction_loss_hazen_williams", "friction_C_correction")),
          Map.entry(
              "friction_service_line",
              List.of("friction_loss_hazen_williams", "friction_C_correction")),
          Map.entry("total_dynamic_head", List.of("total_dynamic_head", "pressure_head")),
          Map.entry("least_power", List.of("water_horsepower")),
          Map.entry("tank_usable_volume", List.of("tank_drawdown", "tank_drawdown_ratio")),
          Map.entry("pump_run_time", List.of("tank_min_drawdown")),
          Map.entry(
              "pipe_rating_at_temperature",
              List.of("pvc_temperature_factor", "pe_temperature_factor")),
          Map.entry(
              "service_line_rating_at_temperature",
              List.of("pvc_temperature_factor", "pe_temperature_factor")),
          Map.entry("daily_need", List.of("daily_demand")),
          Map.entry("daily_supply", List.of("yield_volume")),
          Map.entry("peak_need", List.of("minimum_supply_volume", "intermediate_storage")),
          Map.entry("peak_shortfall", List.of("available_two_hour_supply")),
          Map.entry("voltage_drop", List.of("wire_resistance", "voltage_drop")),
          Map.entry("voltage_drop_share", List.of("voltage_drop_percent")),
          Map.entry(
              "current_ratio_table", List.of("motor_flc_single_phase", "current_ratio_240_vs_120")),
          Map.entry("insulation_band", List.of("insulation_band_submersible_in_well")),
          Map.entry("cooling_velocity", List.of("motor_cooling_velocity")),
          Map.entry("check_valves_implied", List.of("check_valve_positions")),
          Map.entry("torque_arresters_implied", List.of("torque_arrester")),
          Map.entry("septic_distance", List.of("geodesic_distance")),
          Map.entry("chlorine_needed", List.of("chlorine_dose_calcium_hypochlorite")),
          Map.entry(
              "bleach_needed",
              List.of("chlorine_dose_sodium_hypochlorite", "chlorine_concentration")));

  private PublishedCases() {}

  /** The quantities of a working; none for one that the file has no figure of. */
  static List<String> of(String working) {
    return QUANTITIES.getOrDefault(working, List.of());
  }
}
