package org.wellcurb.screening;

import java.util.Random;

/**
 * The water of a generated well and the pump that a careful contractor puts in. The sums are those
 * of the trade's handbooks, written without the program's own: 2.31 ft of water to a psi, 3960 gpm
 * ft to a horsepower, half of the power lost.
 */
final class GoodPump {
  private static final double FEET_PER_PSI = 2.31;
  private static final double[] MOTORS = {0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 30, 40, 50};
  private static final double[] FULL_LOAD = {
    6, 8, 10, 12, 14, 19, 28, 40, 53, 75, 95, 140, 180, 230
  };

  private final Random random;
  private final GoodForm form;

  GoodPump(Random random, GoodForm form) {
    this.random = random;
    this.form = form;
  }

  private double between(double least, double most) {
    return Math.rint((least + (most - least) * random.nextDouble()) * 10) / 10;
  }

  /** Levels and yield; the water stands below this depth when the well is pumped at the most. */
  void water(double lowest, boolean isFlowing) {
    double level = isFlowing ? -between(4, 25) : between(3, Math.max(4, lowest * 0.6));
    double drawdown = Math.min(between(0.5, 80), (lowest - Math.max(level, 0)) * 0.8);
    double rate = between(1, 30);
    form.amount("water.static_level", level);
    form.amount("water.test_rate", rate);
    form.amount("water.yield", rate * (random.nextInt(4) == 0 ? between(0.7, 1.2) : 1));
    form.amount("water.test_duration", between(1, 24));
    form.word("water.flowing", isFlowing ? "yes" : "no");
    String method =
        isFlowing
            ? GoodForm.pick(random, "flow only", "test pump")
            : GoodForm.pick(random, "permanent pump", "test pump", "air lift", "bailer", "other");
    form.word("water.test_method", method);
    boolean isPumped = method.equals("permanent pump") || method.equals("test pump");
    if (isFlowing && random.nextBoolean()) {
      double head = -level - form.get("well.stickup");
      form.amount("water.shut_in_pressure", Math.max(0, head) / FEET_PER_PSI);
    }
    if (method.equals("flow only")) {
      return;
    }
    form.amount("water.pumping_level", level + drawdown);
    if (isPumped && random.nextInt(4) == 0) {
      // Half of the drawdown comes back in ln 2 times the time that the yield takes to fill it.
      double diameter = form.get("well.casing_diameter");
      double gallons = 0.0408 * diameter * diameter * drawdown;
      form.amount("water.recovery_rise", drawdown / 2);
      form.amount("water.recovery_time", Math.max(0.2, gallons * Math.log(2) / rate));
    }
    if (isPumped && random.nextBoolean()) {
      form.amount("water.drawdown", drawdown);
      form.amount("water.specific_capacity", rate / drawdown);
    }
    if (method.equals("test pump") || method.equals("air lift")) {
      double deepest = form.get("well.drilled_depth");
      form.amount("water.test_pump_depth", Math.min(deepest, level + drawdown + between(3, 60)));
    }
  }

  /** A jet pump above ground, lifting by suction or with its ejector in the well. */
  void jet() {
    boolean isDeep = form.get("water.static_level") + 10 > 22;
    form.word("pump.type", "jet");
    form.word("pump.ejector", isDeep ? "in the well" : "at the pump");
    form.amount("pump.rated_flow", between(4, 8));
    form.amount("pump.power", isDeep ? 1.5 : 0.75);
    intake();
    pressureSystem("switch");
    wiring(form.get("pump.power") > 1 ? 3 : 1);
  }

  void hand() {
    form.word("pump.type", "hand");
    intake();
  }

  /** A submersible that gives what the well gives, at its pressure, with power to spare. */
  void submersible(String control) {
    form.word("pump.type", "submersible");
    intake();
    pressureSystem(control);
    double flow = Math.min(form.get("water.test_rate"), form.get("water.yield"));
    flow = Math.max(1.5, Math.min(flow, 25));
    form.amount("pump.rated_flow", flow);
    double most =
        control.equals("switch")
            ? form.get("pressure.cut_out")
            : form.get("pressure.set_point") + 10;
    double level =
        form.has("water.pumping_level")
            ? form.get("water.pumping_level")
            : form.get("pump.intake_depth");
    double head = level + form.get("pressure.switch_height") + FEET_PER_PSI * most + 15;
    int motor = 0;
    while (motor < MOTORS.length - 1 && MOTORS[motor] < flow * head / 3960 / 0.5) {
      motor++;
    }
    form.amount("pump.power", MOTORS[motor]);
    double shutoff = Math.ceil(head / FEET_PER_PSI * (1.15 + 0.3 * random.nextDouble()));
    if (random.nextBoolean()) {
      form.amount("pump.shutoff_pressure", shutoff);
    }
    form.amount("pump.stages", Math.ceil(shutoff / 11));
    form.amount("pump.motor_diameter", 3.75);
    // Behind a valve the relief does not feel the pump: the line must stand all that it gives.
    double onLine = shutoff - form.get("water.static_level") / FEET_PER_PSI + 20;
    form.amount("service_line.pressure_rating", onLine < 160 ? 160 : Math.ceil(onLine / 50) * 50);
    dropPipe(shutoff);
    form.word("pump.control", control);
    wiring(motor);
  }

  private void intake() {
    double least =
        Math.max(
            5,
            form.has("water.pumping_level")
                ? form.get("water.pumping_level")
                : form.get("water.static_level"));
    double bottom = form.get("well.depth");
    form.amount(
        "pump.intake_depth",
        Math.rint((least + (bottom - least) * (0.3 + 0.5 * random.nextDouble())) * 10) / 10);
  }

  private void dropPipe(double pressure) {
    double length = form.get("pump.intake_depth") - between(2, 4);
    boolean hasPitless =
        !form.has("water.shut_in_pressure") && length > 20 && random.nextInt(4) > 0;
    form.word("pitless.fitted", hasPitless ? "yes" : "no");
    if (hasPitless) {
      double pitless = between(3, 8);
      form.amount("pitless.depth", pitless);
      form.word("well.head", GoodForm.pick(random, "pitless adapter", "pitless unit"));
      length -= pitless;
    }
    form.amount("drop_pipe.length", Math.max(5, length));
    form.amount("drop_pipe.inside_diameter", 1.38);
    boolean isPlastic = pressure * 1.1 < 200;
    form.word("drop_pipe.material", isPlastic ? "pe" : "galvanized steel");
    form.amount("drop_pipe.pressure_rating", isPlastic ? 200 : 1000);
    if (isPlastic) {
      form.amount("pump.torque_arresters", 1);
    }
    form.amount("wire.drop_length", form.get("pump.intake_depth") + between(-5, 20));
    form.amount("pump.check_valves", 1 + Math.floor(length / 200));
    form.amount("pump.check_valve_spacing", 200);
  }

  private void pressureSystem(String control) {
    double cutIn = 20 + 10 * random.nextInt(3);
    double cutOut = cutIn + 20;
    double volume = 20 + between(0, 100);
    form.amount("pressure.switch_height", between(-6, 12));
    form.word("tank.type", GoodForm.pick(random, "diaphragm", "bladder"));
    if (control.equals("switch")) {
      form.word("pump.control", "switch");
      form.amount("pressure.cut_in", cutIn);
      form.amount("pressure.cut_out", cutOut);
      form.amount("pressure.gauge_reading", between(cutIn, cutOut));
      form.amount("tank.precharge", cutIn - 2);
      // Boyle's law at sea level.
      double drawn = volume * (cutIn - 2 + 14.7) * (1 / (cutIn + 14.7) - 1 / (cutOut + 14.7));
      form.amount("tank.acceptance", Math.min(volume, volume * between(0.5, 0.7)));
      if (random.nextBoolean()) {
        form.amount("tank.drawdown", drawn);
      }
    } else {
      form.amount("pressure.set_point", cutIn + 10);
      form.amount("tank.precharge", cutIn - 5);
      volume = between(2, 10);
    }
    form.amount("tank.volume", volume);
    form.amount("tank.count", volume > 60 && random.nextBoolean() ? 2 : 1);
    form.amount("tank.pressure_rating", 100);
    form.word("relief.fitted", "yes");
    form.amount("relief.setting", Math.min(100, cutOut + between(10, 25)));
    form.amount("relief.capacity", 40);
    form.word("relief.valve_between", "no");
    form.word("relief.discharge", "air gap to drain");
    form.word("service_line.material", "pe");
    form.amount("service_line.length", between(20, 300));
    form.amount("service_line.pressure_rating", 160);
    form.amount("service_line.inside_diameter", 1.049);
    form.amount("service_line.burial_depth", between(3, 8));
    form.word("water_heater.relief_valve", "yes");
  }

  private void wiring(int motor) {
    form.word("pump.phase", "1");
    form.amount("pump.voltage", 230);
    int leads = 2 + random.nextInt(2);
    form.amount("pump.leads", leads);
    form.word("pump.control_box", leads == 3 ? "yes" : "n/a");
    form.amount("pump.service_factor_current", FULL_LOAD[motor]);
    form.amount("pump.running_current", FULL_LOAD[motor] * (0.7 + 0.28 * random.nextDouble()));
    if (random.nextBoolean()) {
      form.amount("pump.nameplate_current", FULL_LOAD[motor] * 0.85);
    }
    form.amount("pump.insulation_resistance", between(20, 500));
    form.amount("wire.gauge", 8);
    form.amount("wire.length", between(20, 300));
    form.word("wire.material", "copper");
    form.word("wire.grounding", "yes");
    form.word("wire.casing_bonded", "yes");
    form.word("wire.disconnect", "yes");
  }
}
