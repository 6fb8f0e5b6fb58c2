package org.wellcurb.workings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.wellcurb.quantity.Units.FAHRENHEIT;
import static org.wellcurb.quantity.Units.FOOT;
import static org.wellcurb.quantity.Units.FOOT_PER_SECOND;
import static org.wellcurb.quantity.Units.GPM;
import static org.wellcurb.quantity.Units.HORSEPOWER;
import static org.wellcurb.quantity.Units.INCH;
import static org.wellcurb.quantity.Units.ONE;
import static org.wellcurb.quantity.Units.PSI_UNIT;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

/** Published figures of friction, head, power, pipe ratings and the cooling of motors. */
final class PublishedPipes {
  private PublishedPipes() {}

  static Map<String, Consumer<PublishedRow>> checks() {
    Map<String, Consumer<PublishedRow>> checks = new HashMap<>();
    checks.put("friction_loss_hazen_williams", PublishedPipes::friction);
    checks.put("friction_C_correction", PublishedPipes::correction);
    checks.put(
        "pressure_head",
        row ->
            row.check(
                FOOT.fromSi(
                    Water.head(PSI_UNIT.toSi(row.in("pressure_psi", row.in("loss_psi", 0)))))));
    checks.put("total_dynamic_head", PublishedPipes::head);
    checks.put(
        "water_horsepower",
        row ->
            row.check(
                HORSEPOWER.fromSi(
                    PumpHead.leastPower(
                        GPM.toSi(row.in("flow_gpm")), FOOT.toSi(row.in("tdh_ft")), 0))));
    checks.put(
        "motor_cooling_velocity",
        row ->
            row.check(
                Given.nothing()
                    .with("pump.rated_flow", row.in("flow_gpm"), GPM)
                    .with("pump.motor_diameter", row.in("motor_od_in"), INCH)
                    .with("well.casing_diameter", row.in("casing_id_in"), INCH)
                    .with("well.casing_size_is", "inside")
                    .at("cooling_velocity", FOOT_PER_SECOND)));
    checks.put("pvc_temperature_factor", row -> row.check(rating("pvc", row.in("temp_F"))));
    checks.put("pe_temperature_factor", row -> row.check(rating("pe", row.in("temp_F_max"))));
    checks.put("check_valve_positions", PublishedPipes::checkValves);
    checks.put("torque_arrester", PublishedPipes::torqueArrester);
    return checks;
  }

  private static void torqueArrester(PublishedRow row) {
    double implied =
        Given.nothing().with("drop_pipe.material", "pe").at("torque_arresters_implied");
    assertEquals("one, just above the pump", row.expected());
    assertEquals(1, implied, row.id());
  }

  private static Given pipe(PublishedRow row) {
    return Given.nothing()
        .with("pump.rated_flow", row.in("flow_gpm"), GPM)
        .with("drop_pipe.length", row.in("length_ft", row.in("pipe_length_ft", 0)), FOOT)
        .with("drop_pipe.inside_diameter", row.in("id_in"), INCH)
        .with("drop_pipe.material", "pvc")
        .figure("roughness_plastic", row.in("C"), ONE);
  }

  private static void friction(PublishedRow row) {
    row.check(pipe(row).at("friction_drop_pipe", FOOT));
  }

  private static void correction(PublishedRow row) {
    row.check(
        PipeFriction.loss(1, 1, 1, row.in("C_to")) / PipeFriction.loss(1, 1, 1, row.in("C_from")));
  }

  private static void head(PublishedRow row) {
    if (row.inputs().has("friction_ft")) {
      // The printed parts, added as the working adds them.
      double lift = PumpHead.lift(FOOT.toSi(row.in("lift_ft")), 0);
      double pressure = Water.head(PSI_UNIT.toSi(row.in("cutout_psi")));
      row.check(FOOT.fromSi(lift + FOOT.toSi(row.in("friction_ft")) + pressure));
      return;
    }
    row.check(
        pipe(row)
            .with("water.pumping_level", row.in("pumping_level_ft"), FOOT)
            .with("pressure.switch_height", row.in("elevation_rise_to_tank_ft"), FOOT)
            .with("pressure.cut_out", row.in("cutout_psi"), PSI_UNIT)
            .at("total_dynamic_head", FOOT));
  }

  /** Of drop pipe and buried line alike. */
  private static double rating(String material, double fahrenheit) {
    Given pipes =
        Given.nothing()
            .with("drop_pipe.pressure_rating", 1, PSI_UNIT)
            .with("drop_pipe.material", material)
            .with("service_line.pressure_rating", 1, PSI_UNIT)
            .with("service_line.material", material)
            .with("water.temperature", fahrenheit, FAHRENHEIT);
    double rating = pipes.at("pipe_rating_at_temperature", PSI_UNIT);
    assertEquals(rating, pipes.at("service_line_rating_at_temperature", PSI_UNIT), 1e-12);
    return rating;
  }

  /** Four valves are listed on the pipe; the article adds the pump's own, five in all. */
  private static void checkValves(PublishedRow row) {
    int listed = row.expected().split(",").length;
    double implied =
        Given.nothing()
            .with("pump.check_valve_spacing", row.in("spacing_ft"), FOOT)
            .with("water.pumping_level", row.in("water_level_ft"), FOOT)
            .figure("first_check_valve_above_level", row.in("first_above_level_ft"), FOOT)
            .at("check_valves_implied");
    assertEquals(listed + 1, implied, row.source());
  }
}
