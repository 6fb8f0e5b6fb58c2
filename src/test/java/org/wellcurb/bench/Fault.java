package org.wellcurb.bench;

import java.util.Map;

/** What goes wrong on forms, one thing at a time. */
enum Fault {
  SEPTIC_TANK_TOO_NEAR("setback.septic_tank", "40"),
  FIELD_TOO_NEAR("setback.absorption_field", "45"),
  RELIEF_AT_CUT_OUT("relief.setting", "50"),
  PRECHARGE_ABOVE_CUT_IN("tank.precharge", "48"),
  NO_GROUT("grout.material", "none"),
  SHORT_CASING("well.casing_depth", "12"),
  PITLESS_IN_FROST("pitless.depth", "2"),
  WELL_IN_A_PIT("well.head", "pit"),
  COLIFORM_PRESENT("sample.coliform", "present"),
  NITRATE_HIGH("sample.nitrate", "14.2"),
  CASING_NOT_BONDED("wire.casing_bonded", "no"),
  LEVEL_BELOW_BOTTOM("water.pumping_level", "990"),
  CUT_IN_ABOVE_CUT_OUT("pressure.cut_in", "70"),
  RECEIVED_LATE("dates.received", "2026-12-01"),
  NO_TAG("well.tag", ""),
  DEPTH_IN_ANOTHER_UNIT("well.depth", "64.6 m"),
  YIELD_AS_A_RANGE("water.yield", "10-15"),
  UNREADABLE_RATE("water.test_rate", "abt 12?");

  private final String key;
  private final String value;

  Fault(String key, String value) {
    this.key = key;
    this.value = value;
  }

  void into(Map<String, String> well) {
    if (value.isEmpty()) {
      well.remove(key);
    } else {
      well.put(key, value);
    }
  }
}
