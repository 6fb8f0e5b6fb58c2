package org.wellcurb.screening;

import java.time.LocalDate;
import java.util.Map;
import java.util.Random;
import org.wellcurb.record.Part;

/** Coherent good wells of many kinds, from a seed. */
enum GoodWell {
  ROCK,
  LINER,
  GRAVEL,
  TELESCOPED,
  PERFORATED,
  DRIVEN,
  DUG,
  FLOWING,
  IN_PIT,
  DEEP_JET,
  VARIABLE_SPEED,
  CONSTANT_PRESSURE_VALVE,
  LOW_YIELD,
  MONITORING,
  HEAT_EXCHANGE,
  HAND_PUMP,
  PUMP_ONLY,
  REPAIR;

  /** A form of a well of this kind. */
  Map<String, String> form(String id, Random random) {
    GoodForm form = new GoodForm();
    GoodHole hole = new GoodHole(random, form);
    GoodPump pump = new GoodPump(random, form);
    form.word("record.id", id);
    form.word("record.covers", "well and pump");
    form.word("well.use", "household");
    switch (this) {
      case ROCK, PUMP_ONLY, REPAIR, VARIABLE_SPEED, LOW_YIELD -> hole.rock();
      case LINER -> hole.liner();
      case TELESCOPED -> hole.telescoped();
      case PERFORATED -> hole.perforated();
      case DRIVEN -> hole.driven();
      case DUG, HAND_PUMP -> hole.dug();
      case HEAT_EXCHANGE -> hole.heatExchange();
      default -> hole.gravel();
    }
    if (this == IN_PIT) {
      hole.inPit();
    }
    pump.water(lowest(form), this == FLOWING);
    switch (this) {
      case DRIVEN, DUG, DEEP_JET -> pump.jet();
      case HAND_PUMP -> pump.hand();
      case HEAT_EXCHANGE, MONITORING -> unpumped(form);
      case VARIABLE_SPEED -> pump.submersible("variable speed");
      case CONSTANT_PRESSURE_VALVE -> pump.submersible("constant pressure valve");
      default -> pump.submersible("switch");
    }
    if (this == LOW_YIELD) {
      storage(form, random);
    }
    if (this == PUMP_ONLY || this == REPAIR) {
      form.word("record.covers", this == PUMP_ONLY ? "pump" : "repair");
      form.leaveOut(Part.WELL);
    }
    calendar(form, random);
    laboratory(form);
    distances(form, random);
    return form.written(random);
  }

  /** The lowest level that pumping leaves: above the screen, or well above the bottom of rock. */
  private static double lowest(GoodForm form) {
    double bottom = form.get("well.depth") - 8;
    return form.has("well.screen_top")
        ? Math.max(6, Math.min(bottom, form.get("well.screen_top")))
        : Math.max(6, bottom * 0.8);
  }

  private void unpumped(GoodForm form) {
    form.word("pump.type", "none");
    form.word("record.covers", "well");
    form.word("well.use", this == MONITORING ? "monitoring" : "heat exchange");
  }

  private static void storage(GoodForm form, Random random) {
    double rate = 0.5 + random.nextInt(10) / 10.0;
    form.amount("water.test_rate", rate);
    form.amount("water.yield", rate);
    if (form.has("water.specific_capacity")) {
      form.amount("water.specific_capacity", rate / form.get("water.drawdown"));
    }
    form.amount("storage.volume", 300);
    form.word("storage.air_gap", "yes");
    form.word("pump.dry_run_protection", "yes");
  }

  private static void calendar(GoodForm form, Random random) {
    LocalDate day = LocalDate.of(1990 + random.nextInt(34), 1, 10).plusDays(random.nextInt(300));
    form.day("dates.permit", day.minusDays(random.nextInt(60)));
    form.day("dates.started", day);
    day = day.plusDays(random.nextInt(4));
    form.day("dates.grouted", day);
    day = day.plusDays(random.nextInt(6));
    form.day("dates.completed", day);
    form.day("dates.tested", day);
    form.day("driller.licence_expires", day.plusDays(random.nextInt(400)));
    day = day.plusDays(random.nextInt(20));
    form.day("dates.pump_installed", day);
    form.day("installer.licence_expires", day.plusDays(random.nextInt(400)));
    form.day("dates.disinfected", day);
    day = day.plusDays(1 + random.nextInt(20));
    form.day("dates.sampled", day);
    form.day("dates.received", day.plusDays(random.nextInt(60)));
    form.word("driller.licence", "D-" + random.nextInt(100));
    form.word("installer.licence", "P-" + random.nextInt(100));
  }

  private static void laboratory(GoodForm form) {
    form.word("disinfection.done", "yes");
    form.amount("disinfection.dose", 100);
    form.amount("disinfection.contact_time", 24);
    form.word("sample.coliform", "absent");
    form.word("sample.e_coli", "absent");
    form.amount("sample.chlorine_residual", 0);
    form.word("sample.tap", "before treatment");
    form.amount("sample.nitrate", 2.5);
  }

  /** Septic tank paced off, and both positions taken with a receiver of the hand. */
  private static void distances(GoodForm form, Random random) {
    double latitude = 40 + random.nextDouble() * 10;
    double longitude = -90 - random.nextDouble() * 20;
    double metres = 25 + random.nextDouble() * 40;
    double way = random.nextDouble() * 2 * Math.PI;
    form.amount("site.latitude", latitude);
    form.amount("site.longitude", longitude);
    form.amount("site.septic_latitude", latitude + metres * Math.cos(way) / 111_100);
    form.amount(
        "site.septic_longitude",
        longitude + metres * Math.sin(way) / 111_300 / Math.cos(Math.toRadians(latitude)));
    form.word("site.septic_position_of", "septic tank");
    form.amount("setback.septic_tank", metres / 0.3048 * (0.95 + 0.1 * random.nextDouble()));
    form.amount("site.elevation", random.nextInt(7000));
    form.amount("site.occupants", 1 + random.nextInt(6));
    form.amount("site.bedrooms", 2 + random.nextInt(4));
    form.amount("site.dwellings", 1);
    form.amount("site.frost_depth", random.nextInt(4));
    form.amount("well.flood_level", form.get("well.stickup") - 1 - random.nextInt(5));
  }
}
