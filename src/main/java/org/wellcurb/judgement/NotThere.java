package org.wellcurb.judgement;

import org.wellcurb.record.WellRecord;

/**
 * Entries of something that there is not, by what else the form says: the setting of a relief valve
 * that is not fitted. Nothing hangs on them, and nobody is to be asked for them.
 */
public final class NotThere {
  private NotThere() {}

  /** Whether the form says that what this entry is about is not there. */
  public static boolean has(String key, WellRecord record) {
    return switch (key) {
      case "well.open_hole_diameter" -> isNo("well.open_hole", record);
      case "pump.sleeve_diameter" -> isNo("pump.flow_sleeve", record);
      case "pressure.set_point" -> isSaid("pump.control", "switch", record);
      case "relief.setting", "relief.capacity", "relief.valve_between", "relief.discharge" ->
          isNo("relief.fitted", record);
      case "sample.coliform_again" -> !isGiven("sample.coliform", record);
      default -> false;
    };
  }

  private static boolean isGiven(String key, WellRecord record) {
    return record.isGiven(record.catalogue().index(key));
  }

  private static boolean isSaid(String key, String word, WellRecord record) {
    return word.equals(record.choice(record.catalogue().index(key)));
  }

  private static boolean isNo(String key, WellRecord record) {
    int entry = record.catalogue().index(key);
    return record.isGiven(entry) && record.hi(entry) == 0;
  }
}
