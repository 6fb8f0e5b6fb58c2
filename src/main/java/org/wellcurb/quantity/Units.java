package org.wellcurb.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * All units that are read and printed. Factors are the exact definitions: the international foot
 * (0.3048 m), the US gallon (3.785411784 L), the imperial gallon (4.54609 L), the pound (0.45359237
 * kg), the psi from standard gravity, and water of 1000 kg/m3 for heads (NIST SP 811, from memory;
 * checked in the tests against published tables).
 */
public final class Units {
  private static final List<Unit> ALL = new ArrayList<>();
  private static final Map<String, Unit> BY_NAME = new HashMap<>();

  private static final double FT = 0.3048;
  private static final double US_GAL = 3.785411784e-3;
  private static final double IMP_GAL = 4.54609e-3;
  private static final double LB = 0.45359237;
  private static final double G = 9.80665;
  private static final double PSI = LB * G / (0.0254 * 0.0254);

  public static final Unit ONE = add(Dimension.NUMBER, UnitSystem.NEUTRAL, 1, "");
  public static final Unit FOOT =
      add(Dimension.LENGTH, UnitSystem.US, FT, "ft", "feet", "foot", "'", "’", "′");
  public static final Unit INCH =
      add(Dimension.LENGTH, UnitSystem.US, 0.0254, "in", "inch", "inches", "\"", "”", "″");
  public static final Unit METRE =
      add(Dimension.LENGTH, UnitSystem.METRIC, 1, "m", "metre", "metres", "meter", "meters");
  public static final Unit CENTIMETRE = add(Dimension.LENGTH, UnitSystem.METRIC, 0.01, "cm");
  public static final Unit MILLIMETRE = add(Dimension.LENGTH, UnitSystem.METRIC, 0.001, "mm");
  public static final Unit PSI_UNIT =
      add(Dimension.PRESSURE, UnitSystem.US, PSI, "psi", "psig", "lb/in2");
  public static final Unit KILOPASCAL = add(Dimension.PRESSURE, UnitSystem.METRIC, 1000, "kPa");
  public static final Unit BAR = add(Dimension.PRESSURE, UnitSystem.METRIC, 1e5, "bar", "bars");
  public static final Unit FOOT_OF_WATER =
      add(Dimension.PRESSURE, UnitSystem.US, FT * G * 1000, "ft of water", "ft water", "ftH2O");
  public static final Unit METRE_OF_WATER =
      add(Dimension.PRESSURE, UnitSystem.METRIC, G * 1000, "m of water", "m water", "mH2O");
  public static final Unit US_GALLON =
      add(Dimension.VOLUME, UnitSystem.US, US_GAL, "gal", "US gal", "gals", "gallon", "gallons");
  public static final Unit IMPERIAL_GALLON =
      add(Dimension.VOLUME, UnitSystem.US, IMP_GAL, "imp gal", "imperial gal", "UK gal");
  public static final Unit LITRE =
      add(Dimension.VOLUME, UnitSystem.METRIC, 0.001, "L", "litre", "litres", "liter", "liters");
  public static final Unit CUBIC_FOOT =
      add(Dimension.VOLUME, UnitSystem.US, FT * FT * FT, "ft3", "cu ft", "ft³");
  public static final Unit CUBIC_METRE =
      add(Dimension.VOLUME, UnitSystem.METRIC, 1, "m3", "cu m", "m³");
  public static final Unit GPM =
      add(Dimension.FLOW, UnitSystem.US, US_GAL / 60, "gpm", "US gpm", "gal/min");
  public static final Unit IMPERIAL_GPM =
      add(Dimension.FLOW, UnitSystem.US, IMP_GAL / 60, "imp gpm", "igpm", "UK gpm");
  public static final Unit LITRE_PER_MINUTE =
      add(Dimension.FLOW, UnitSystem.METRIC, 1e-3 / 60, "L/min", "lpm");
  public static final Unit LITRE_PER_SECOND =
      add(Dimension.FLOW, UnitSystem.METRIC, 1e-3, "L/s", "lps");
  public static final Unit CUBIC_METRE_PER_HOUR =
      add(Dimension.FLOW, UnitSystem.METRIC, 1 / 3600.0, "m3/h", "m³/h");
  public static final Unit CUBIC_METRE_PER_DAY =
      add(Dimension.FLOW, UnitSystem.METRIC, 1 / 86400.0, "m3/d", "m3/day", "m³/d");
  public static final Unit GALLON_PER_DAY =
      add(Dimension.FLOW, UnitSystem.US, US_GAL / 86400, "gpd", "gal/day");
  public static final Unit LITRE_PER_DAY =
      add(Dimension.FLOW, UnitSystem.METRIC, 1e-3 / 86400, "L/d", "L/day");
  public static final Unit GPM_PER_FOOT =
      add(Dimension.SPECIFIC_CAPACITY, UnitSystem.US, US_GAL / 60 / FT, "gpm/ft");
  public static final Unit LITRE_PER_MINUTE_PER_METRE =
      add(Dimension.SPECIFIC_CAPACITY, UnitSystem.METRIC, 1e-3 / 60, "L/min/m");
  public static final Unit FOOT_PER_SECOND =
      add(Dimension.VELOCITY, UnitSystem.US, FT, "ft/s", "fps");
  public static final Unit METRE_PER_SECOND = add(Dimension.VELOCITY, UnitSystem.METRIC, 1, "m/s");
  public static final Unit HORSEPOWER =
      add(Dimension.POWER, UnitSystem.US, 550 * FT * LB * G, "hp", "HP");
  public static final Unit KILOWATT = add(Dimension.POWER, UnitSystem.METRIC, 1000, "kW");
  public static final Unit WATT = add(Dimension.POWER, UnitSystem.METRIC, 1, "W");
  public static final Unit VOLT =
      add(Dimension.VOLTAGE, UnitSystem.NEUTRAL, 1, "V", "volt", "volts");
  public static final Unit AMPERE =
      add(Dimension.CURRENT, UnitSystem.NEUTRAL, 1, "A", "amp", "amps");
  public static final Unit OHM =
      add(Dimension.RESISTANCE, UnitSystem.NEUTRAL, 1, "ohm", "ohms", "Ω");
  public static final Unit KILOHM =
      add(Dimension.RESISTANCE, UnitSystem.NEUTRAL, 1e3, "kohm", "kohms", "kΩ");
  public static final Unit MEGOHM =
      add(Dimension.RESISTANCE, UnitSystem.NEUTRAL, 1e6, "Mohm", "megohm", "megohms", "MΩ");
  public static final Unit FAHRENHEIT =
      add(
          Dimension.TEMPERATURE,
          UnitSystem.US,
          5.0 / 9,
          459.67 * 5 / 9,
          "degF",
          "°F",
          "deg F",
          "F");
  public static final Unit CELSIUS =
      add(Dimension.TEMPERATURE, UnitSystem.METRIC, 1, 273.15, "degC", "°C", "deg C", "C");
  public static final Unit MILLIGRAM_PER_LITRE =
      add(Dimension.CONCENTRATION, UnitSystem.NEUTRAL, 1e-3, "mg/L", "ppm");
  public static final Unit MICROGRAM_PER_LITRE =
      add(Dimension.CONCENTRATION, UnitSystem.NEUTRAL, 1e-6, "ug/L", "µg/L", "μg/L", "ppb");
  public static final Unit SECOND =
      add(Dimension.TIME, UnitSystem.NEUTRAL, 1, "s", "sec", "second", "seconds");
  public static final Unit MINUTE =
      add(Dimension.TIME, UnitSystem.NEUTRAL, 60, "min", "mins", "minute", "minutes");
  public static final Unit HOUR =
      add(Dimension.TIME, UnitSystem.NEUTRAL, 3600, "h", "hr", "hrs", "hour", "hours");
  public static final Unit DAY = add(Dimension.TIME, UnitSystem.NEUTRAL, 86400, "day", "days", "d");
  public static final Unit POUND =
      add(Dimension.MASS, UnitSystem.US, LB, "lb", "lbs", "pound", "pounds");
  public static final Unit KILOGRAM = add(Dimension.MASS, UnitSystem.METRIC, 1, "kg");
  public static final Unit GRAM = add(Dimension.MASS, UnitSystem.METRIC, 1e-3, "g");
  public static final Unit DEGREE =
      add(Dimension.ANGLE, UnitSystem.NEUTRAL, 1, "deg", "°", "degrees");
  public static final Unit AWG = add(Dimension.WIRE_GAUGE, UnitSystem.US, 1, "AWG", "ga", "gauge");
  public static final Unit SQUARE_MILLIMETRE =
      add(Dimension.WIRE_GAUGE, UnitSystem.METRIC, 1, "mm2", "mm²", "sq mm");
  public static final Unit NTU = add(Dimension.TURBIDITY, UnitSystem.NEUTRAL, 1, "NTU");
  public static final Unit MILLIGRAM_MINUTE_PER_LITRE =
      add(Dimension.CONTACT, UnitSystem.NEUTRAL, 0.06, "mg min/L");
  public static final Unit MILLIGRAM_HOUR_PER_LITRE =
      add(Dimension.CONTACT, UnitSystem.NEUTRAL, 3.6, "mg h/L");
  public static final Unit SQUARE_FOOT =
      add(Dimension.AREA, UnitSystem.US, FT * FT, "ft2", "sq ft");
  public static final Unit SQUARE_METRE = add(Dimension.AREA, UnitSystem.METRIC, 1, "m2", "sq m");
  public static final Unit PERCENT = add(Dimension.NUMBER, UnitSystem.NEUTRAL, 0.01, "%");

  private Units() {}

  private static Unit add(
      Dimension dimension, UnitSystem system, double factor, String symbol, String... aliases) {
    return add(dimension, system, factor, 0, symbol, aliases);
  }

  private static Unit add(
      Dimension dimension,
      UnitSystem system,
      double factor,
      double offset,
      String symbol,
      String... aliases) {
    Unit unit = new Unit(ALL.size(), symbol, List.of(aliases), dimension, factor, offset, system);
    ALL.add(unit);
    BY_NAME.put(symbol, unit);
    for (String alias : aliases) {
      BY_NAME.put(alias, unit);
    }
    return unit;
  }

  /** All units, by id. */
  public static List<Unit> all() {
    return List.copyOf(ALL);
  }

  /** The unit with this id. */
  public static Unit at(int id) {
    return ALL.get(id);
  }

  /** The unit system of the unit with this id. */
  public static UnitSystem systemAt(int id) {
    return ALL.get(id).system();
  }

  /**
   * The unit written so, exactly as given or, failing that, without regard to case (where that is
   * not ambiguous: {@code M} is not read as metres, nor {@code mohm} as megohms).
   */
  public static Optional<Unit> named(String text) {
    Unit exact = BY_NAME.get(text);
    if (exact != null) {
      return Optional.of(exact);
    }
    return Optional.ofNullable(Folded.BY_NAME.get(text.toLowerCase(Locale.ROOT)));
  }

  /** Spellings without case, less those that would then mean two things. */
  private static final class Folded {
    static final Map<String, Unit> BY_NAME = fold();

    private static Map<String, Unit> fold() {
      Map<String, Unit> folded = new HashMap<>();
      for (Map.Entry<String, Unit> e : Units.BY_NAME.entrySet()) {
        folded.put(e.getKey().toLowerCase(Locale.ROOT), e.getValue());
      }
      return folded;
    }
  }
}
