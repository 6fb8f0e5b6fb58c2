package org.wellcurb.report.words;

import java.util.Locale;
import java.util.Set;

/** The groups of a form, in the order in which the work goes. */
public enum Group {
  PAPER,
  SITE,
  SETBACKS,
  BORE,
  CASING,
  WATER,
  PUMP,
  LINE,
  ELECTRICAL,
  PRESSURE,
  FINISH;

  private static final Set<String> CASED =
      Set.of(
          "well.stickup",
          "well.drive_shoe",
          "well.vent_diameter",
          "well.vent_screened",
          "well.head",
          "well.cap",
          "well.flood_level");
  private static final Set<String> WIRED =
      Set.of(
          "pump.voltage",
          "pump.phase",
          "pump.leads",
          "pump.running_current",
          "pump.nameplate_current",
          "pump.service_factor_current",
          "pump.insulation_resistance",
          "pump.splice",
          "pump.control_box",
          "pump.dry_run_protection",
          "pump.cable_tie_spacing");

  /** The group of an entry, by its key. */
  public static Group of(String key) {
    String head = key.contains(".") ? key.substring(0, key.indexOf('.')) : key;
    return switch (head) {
      case "record", "dates", "driller", "installer" -> PAPER;
      case "site" -> SITE;
      case "setback" -> SETBACKS;
      case "well" -> well(key);
      case "grout" -> CASING;
      case "water" -> WATER;
      case "pump" -> WIRED.contains(key) ? ELECTRICAL : PUMP;
      case "drop_pipe" -> PUMP;
      case "pitless", "service_line" -> LINE;
      case "wire" -> ELECTRICAL;
      case "pressure", "tank", "storage", "relief", "water_heater" -> PRESSURE;
      case "disinfection", "sample" -> FINISH;
      default -> BORE;
    };
  }

  private static Group well(String key) {
    if (key.equals("well.tag") || key.equals("well.use") || key.equals("well.class")) {
      return PAPER;
    }
    boolean cased =
        key.startsWith("well.casing")
            || key.startsWith("well.outer")
            || key.startsWith("well.liner")
            || key.startsWith("well.screen")
            || key.startsWith("well.filter")
            || CASED.contains(key);
    return cased ? CASING : BORE;
  }

  /** Key of its heading in the bundle. */
  public String heading() {
    return "group." + name().toLowerCase(Locale.ROOT);
  }
}
