package org.wellcurb.bench;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Makes one well that could be: drilled before it is tested, cased into rock, pumped from below its
 * pumping level, with a tank charged below cut-in and a relief valve above cut-out. One in ten has
 * one {@link Fault}.
 */
final class WellMaker {
  /** One record in so many has a fault. */
  static final int FAULT_IN = 10;

  private static final LocalDate FIRST_DAY = LocalDate.of(1995, 1, 1);
  private static final int DAYS = 30 * 365;
  private static final int[] TANKS = {44, 62, 86, 119};
  private static final int[] LARGE_TANKS = {119, 140};
  private static final String[] ZONES = {"hill", "plain", "shore"};

  private final SplittableRandom random;
  private final long number;
  private final Map<String, String> well = new HashMap<>();

  WellMaker(long seed, long number) {
    // Each record draws from a stream of its own, so that a longer file begins with a shorter one.
    random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L ^ number * 0xC2B2AE3D27D4EB4FL);
    this.number = number;
  }

  /** The entries given, by key; numbers are in US units. */
  Map<String, String> make() {
    paper();
    int depth = 5 * between(20, 120);
    int casing = bore(depth);
    water(depth, casing);
    pressure();
    site();
    if (random.nextInt(FAULT_IN) == 0) {
      Fault.values()[random.nextInt(Fault.values().length)].into(well);
    }
    return well;
  }

  private void paper() {
    LocalDate done = FIRST_DAY.plusDays(random.nextInt(DAYS));
    put("record.id", "W" + (1_000_000 + number));
    put("record.jurisdiction", "fenwick");
    put("record.covers", "well and pump");
    put("record.datum", "ground");
    put("record.units", "us");
    put("dates.permit", done.minusDays(between(30, 90)).toString());
    put("dates.started", done.minusDays(between(1, 9)).toString());
    put("dates.completed", done.toString());
    put("dates.tested", done.toString());
    put("dates.pump_installed", done.plusDays(between(0, 9)).toString());
    put("dates.sampled", done.plusDays(between(11, 15)).toString());
    put("dates.received", done.plusDays(between(16, 21)).toString());
    put("driller.licence", "D" + between(100, 399));
    put("installer.licence", "P" + between(100, 399));
    put("well.tag", "T" + (200_000 + number % 700_000));
    put("well.use", "household");
  }

  private int bore(int depth) {
    int casing = Math.min(depth - 40, 5 * between(12, 24));
    put("well.method", "rotary");
    put("well.depth", depth);
    put("well.drilled_depth", depth);
    put("well.bore_diameter", 10);
    put("well.casing_depth", casing);
    put("well.casing_diameter", 6);
    put("well.casing_material", "steel");
    put("well.casing_joint", "welded");
    put("well.stickup", half(3, 6));
    put("well.open_hole", "yes");
    put("well.rock_depth", casing - between(12, 30));
    put("well.drive_shoe", "yes");
    put("well.cap", "vented sealed");
    put("well.head", "pitless adapter");
    put("well.vent_screened", "yes");
    put("grout.material", random.nextInt(2) == 0 ? "neat cement" : "bentonite slurry");
    put("grout.top", 0);
    put("grout.bottom", casing);
    put("grout.method", "tremie");
    return casing;
  }

  private void water(int depth, int casing) {
    int still = between(10, Math.min(60, casing - 5));
    int pumping = still + between(5, Math.max(6, (depth - still) / 3));
    int intake = Math.min(depth - 10, pumping + between(20, 60));
    int rate = between(8, 20);
    put("water.static_level", still);
    put("water.pumping_level", pumping);
    put("water.test_method", "test pump");
    put("water.test_rate", rate);
    put("water.test_duration", between(4, 24));
    put("water.yield", rate);
    put("pump.type", "submersible");
    put("pump.intake_depth", intake);
    put("pump.rated_flow", Math.min(rate, 10));
    put("pump.power", intake > 250 ? "1.5" : "1");
    put("pump.voltage", 230);
    put("pump.phase", "1");
    put("pump.control", "switch");
    put("pump.running_current", intake > 250 ? "10.5" : "8.5");
    put("pump.service_factor_current", intake > 250 ? "11.5" : "9.8");
    put("pump.insulation_resistance", 50 * between(2, 20));
    put("drop_pipe.material", "pe");
    put("drop_pipe.inside_diameter", "1.25");
    put("drop_pipe.length", intake - 6);
    put("drop_pipe.pressure_rating", intake > 250 ? 250 : 200);
    put("pitless.fitted", "yes");
    put("pitless.depth", 7);
    int line = 5 * between(6, 40);
    put("service_line.material", "pe");
    put("service_line.length", line);
    put("service_line.burial_depth", 7);
    put("wire.gauge", intake + line > 350 ? 8 : 10);
    put("wire.length", intake + line);
    put("wire.material", "copper");
    put("wire.grounding", "yes");
    put("wire.casing_bonded", "yes");
  }

  private void pressure() {
    int cutIn = 10 * between(3, 4);
    put("pressure.cut_in", cutIn);
    put("pressure.cut_out", cutIn + 20);
    put("pressure.switch_height", 2);
    put("tank.precharge", cutIn - 2);
    // A pump of more than 1 hp must run for two minutes, from a tank as large.
    int[] tanks = well.get("pump.power").equals("1") ? TANKS : LARGE_TANKS;
    put("tank.volume", tanks[random.nextInt(tanks.length)]);
    put("tank.count", 1);
    put("tank.type", "diaphragm");
    put("relief.fitted", "yes");
    put("relief.setting", 75);
    put("disinfection.done", "yes");
    put("disinfection.dose", 100);
    put("disinfection.contact_time", 24);
    put("sample.coliform", "absent");
    put("sample.nitrate", tenths(1, 60));
  }

  private void site() {
    put("site.latitude", decimals(44_00000, 45_99999));
    put("site.longitude", "-" + decimals(71_00000, 73_99999));
    put("site.zone", ZONES[random.nextInt(ZONES.length)]);
    put("site.bedrooms", between(2, 5));
    put("setback.septic_tank", between(100, 240));
    put("setback.absorption_field", between(110, 260));
    put("setback.property_line", between(20, 120));
  }

  private int between(int least, int most) {
    return least + random.nextInt(most - least + 1);
  }

  private String half(int least, int most) {
    int halves = between(least, most);
    return halves % 2 == 0 ? String.valueOf(halves / 2) : halves / 2 + ".5";
  }

  private String tenths(int least, int most) {
    int tenths = between(least, most);
    return tenths / 10 + "." + tenths % 10;
  }

  private String decimals(int least, int most) {
    int all = between(least, most);
    return all / 100_000 + "." + String.valueOf(100_000 + all % 100_000).substring(1);
  }

  private void put(String key, int value) {
    well.put(key, String.valueOf(value));
  }

  private void put(String key, String value) {
    well.put(key, value);
  }
}
