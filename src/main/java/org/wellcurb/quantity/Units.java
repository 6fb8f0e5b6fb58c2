package org.wellcurb.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * All units that are read and printed. Factors are the exact definitions: the international foot
 * (0.3048 m), the US gallon (3.785411784 L), the imperial gallon (4.54609 L), the pound (0.45359237
 * kg), the psi from standard gravity, and water of 1000 kg/m3 for heads (NIST SP 811, from memory;
 * checked in the tests against published tables).
 */
public final class Units {
  private static final List<Unit> ALL = new ArrayList<>();

  private static final double FT = 0.3048;
  private static final double US_GAL = 3.785411784e-3;
  private static final double IMP_GAL = 4.54609e-3;
  private static final double LB = 0.45359237;
  private static final double G = 9.80665;
  private static final double PSI = LB * G / (0.0254 * 0.0254);

  public static final Unit ONE = add(Dimension.NUMBER, UnitSystem.NEUTRAL, 1, "");
  public static final Unit FOOT =
      add(Dimension.LENGTH, UnitSystem.US, FT, "ft", "feet", "foot", "'", "pi", "pied", "pieds");
  public static final Unit INCH =
      add(
          Dimension.LENGTH,
          UnitSystem.US,
          0.0254,
          "in",
          "inch",
          "inches",
          "ins",
          "\"",
          "''",
          "po",
          "pouce",
          "pouces");
  public static final Unit METRE =
      add(
          Dimension.LENGTH,
          UnitSystem.METRIC,
          1,
          "m",
          "metre",
          "metres",
          "meter",
          "meters",
          "mtr",
          "mtrs",
          "mts");
  public static final Unit CENTIMETRE =
      add(
          Dimension.LENGTH,
          UnitSystem.METRIC,
          0.01,
          "cm",
          "cms",
          "centimetre",
          "centimetres",
          "centimeter",
          "centimeters");
  public static final Unit MILLIMETRE =
      add(
          Dimension.LENGTH,
          UnitSystem.METRIC,
          0.001,
          "mm",
          "mms",
          "millimetre",
          "millimetres",
          "millimeter",
          "millimeters");
  public static final Unit KILOMETRE =
      add(
          Dimension.LENGTH,
          UnitSystem.METRIC,
          1000,
          "km",
          "kilometre",
          "kilometres",
          "kilometer",
          "kilometers");
  public static final Unit YARD =
      add(Dimension.LENGTH, UnitSystem.US, 3 * FT, "yd", "yds", "yard", "yards");
  public static final Unit MILE =
      add(Dimension.LENGTH, UnitSystem.US, 5280 * FT, "mi", "mile", "miles");
  public static final Unit PSI_UNIT =
      add(
          Dimension.PRESSURE,
          UnitSystem.US,
          PSI,
          "psi",
          "psig",
          "lb/in2",
          "lbs/in2",
          "lb/sq in",
          "lbs/sq in",
          "pounds/square inch",
          "lb/po2");
  public static final Unit KILOPASCAL =
      add(Dimension.PRESSURE, UnitSystem.METRIC, 1000, "kPa", "kPag", "kilopascal", "kilopascals");
  public static final Unit MEGAPASCAL = add(Dimension.PRESSURE, UnitSystem.METRIC, 1e6, "MPa");
  public static final Unit BAR =
      add(Dimension.PRESSURE, UnitSystem.METRIC, 1e5, "bar", "bars", "barg");
  public static final Unit FOOT_OF_WATER =
      add(
          Dimension.PRESSURE,
          UnitSystem.US,
          FT * G * 1000,
          "ft of water",
          "ft water",
          "ft H2O",
          "ftH2O",
          "feet of water",
          "ft of head",
          "ft head",
          "feet of head",
          "feet head",
          "ft of hd",
          "' of water",
          "' head");
  public static final Unit METRE_OF_WATER =
      add(
          Dimension.PRESSURE,
          UnitSystem.METRIC,
          G * 1000,
          "m of water",
          "m water",
          "m H2O",
          "mH2O",
          "metres of water",
          "meters of water",
          "m of head",
          "m head",
          "metres of head",
          "metres head",
          "meters of head",
          "meters head",
          "mWC");
  public static final Unit US_GALLON =
      add(
          Dimension.VOLUME,
          UnitSystem.US,
          US_GAL,
          "gal",
          "US gal",
          "USgal",
          "US gals",
          "US gallon",
          "US gallons",
          "gals",
          "gallon",
          "gallons");
  public static final Unit IMPERIAL_GALLON =
      add(
          Dimension.VOLUME,
          UnitSystem.US,
          IMP_GAL,
          "imp gal",
          "imp gals",
          "imp gallon",
          "imp gallons",
          "impgal",
          "gal imp",
          "gallon imp",
          "gallons imp",
          "imperial gal",
          "imperial gals",
          "imperial gallon",
          "imperial gallons",
          "UK gal",
          "UK gals",
          "UK gallons",
          "igal");
  public static final Unit LITRE =
      add(
          Dimension.VOLUME,
          UnitSystem.METRIC,
          0.001,
          "L",
          "litre",
          "litres",
          "liter",
          "liters",
          "ltr",
          "ltrs");
  public static final Unit CUBIC_FOOT =
      add(
          Dimension.VOLUME,
          UnitSystem.US,
          FT * FT * FT,
          "ft3",
          "pi3",
          "cu ft",
          "cuft",
          "ft^3",
          "cf",
          "cubic foot",
          "cubic feet");
  public static final Unit CUBIC_METRE =
      add(
          Dimension.VOLUME,
          UnitSystem.METRIC,
          1,
          "m3",
          "cu m",
          "m^3",
          "cubic metre",
          "cubic metres",
          "cubic meter",
          "cubic meters");
  public static final Unit GPM =
      add(
          Dimension.FLOW,
          UnitSystem.US,
          US_GAL / 60,
          "gpm",
          "US gpm",
          "USgpm",
          "usg/min",
          "gal/min",
          "gals/min",
          "gallons/min",
          "gallons/minute",
          "gal/minute",
          "US gal/min",
          "US gallons/min",
          "US gallons/minute");
  public static final Unit IMPERIAL_GPM =
      add(
          Dimension.FLOW,
          UnitSystem.US,
          IMP_GAL / 60,
          "imp gpm",
          "igpm",
          "imperial gpm",
          "UK gpm",
          "imp gal/min",
          "gal imp/min",
          "gallons imp/min",
          "imperial gallons/minute",
          "imperial gallons/min",
          "imp gallons/min",
          "UK gal/min");
  public static final Unit LITRE_PER_MINUTE =
      add(
          Dimension.FLOW,
          UnitSystem.METRIC,
          1e-3 / 60,
          "L/min",
          "lpm",
          "l/mn",
          "litres/min",
          "litres/minute",
          "liters/min",
          "liters/minute",
          "litre/min",
          "liter/min");
  public static final Unit LITRE_PER_SECOND =
      add(
          Dimension.FLOW,
          UnitSystem.METRIC,
          1e-3,
          "L/s",
          "lps",
          "L/sec",
          "litres/s",
          "litres/second",
          "liters/second",
          "litres/sec",
          "liters/sec");
  public static final Unit CUBIC_METRE_PER_HOUR =
      add(
          Dimension.FLOW,
          UnitSystem.METRIC,
          1 / 3600.0,
          "m3/h",
          "m3/hr",
          "m3/hour",
          "m^3/h",
          "m^3/hr",
          "m^3/hour",
          "cu m/h");
  public static final Unit CUBIC_METRE_PER_DAY =
      add(
          Dimension.FLOW,
          UnitSystem.METRIC,
          1 / 86400.0,
          "m3/d",
          "m3/j",
          "m3/day",
          "m^3/d",
          "m^3/day",
          "kL/d",
          "kL/day",
          "cu m/day");
  public static final Unit GALLON_PER_DAY =
      add(
          Dimension.FLOW,
          UnitSystem.US,
          US_GAL / 86400,
          "gpd",
          "US gpd",
          "gal/day",
          "gal/d",
          "gallons/day",
          "gal/j",
          "US gal/day");
  public static final Unit LITRE_PER_DAY =
      add(
          Dimension.FLOW,
          UnitSystem.METRIC,
          1e-3 / 86400,
          "L/d",
          "L/j",
          "L/day",
          "lpd",
          "litres/day",
          "liters/day");
  public static final Unit LITRE_PER_HOUR =
      add(
          Dimension.FLOW,
          UnitSystem.METRIC,
          1e-3 / 3600,
          "L/h",
          "L/hr",
          "L/hour",
          "lph",
          "litres/hour",
          "liters/hour");
  public static final Unit GALLON_PER_HOUR =
      add(
          Dimension.FLOW,
          UnitSystem.US,
          US_GAL / 3600,
          "gph",
          "gal/h",
          "gal/hr",
          "gal/hour",
          "gallons/hour",
          "US gph");
  public static final Unit IMPERIAL_GALLON_PER_DAY =
      add(
          Dimension.FLOW,
          UnitSystem.US,
          IMP_GAL / 86400,
          "imp gpd",
          "igpd",
          "imp gal/day",
          "imperial gallons/day");
  public static final Unit CUBIC_METRE_PER_SECOND =
      add(Dimension.FLOW, UnitSystem.METRIC, 1, "m3/s", "m3/sec", "cumec", "cumecs");
  public static final Unit CUBIC_FOOT_PER_SECOND =
      add(Dimension.FLOW, UnitSystem.US, FT * FT * FT, "ft3/s", "cfs", "ft3/sec");
  public static final Unit GPM_PER_FOOT =
      add(
          Dimension.SPECIFIC_CAPACITY,
          UnitSystem.US,
          US_GAL / 60 / FT,
          "gpm/ft",
          "US gpm/ft",
          "gal/min/pi",
          "gpm/foot");
  public static final Unit LITRE_PER_MINUTE_PER_METRE =
      add(Dimension.SPECIFIC_CAPACITY, UnitSystem.METRIC, 1e-3 / 60, "L/min/m", "lpm/m");
  public static final Unit LITRE_PER_SECOND_PER_METRE =
      add(Dimension.SPECIFIC_CAPACITY, UnitSystem.METRIC, 1e-3, "L/s/m");
  public static final Unit SQUARE_METRE_PER_DAY =
      add(Dimension.SPECIFIC_CAPACITY, UnitSystem.METRIC, 1 / 86400.0, "m2/d", "m2/day", "m3/d/m");
  public static final Unit FOOT_PER_SECOND =
      add(Dimension.VELOCITY, UnitSystem.US, FT, "ft/s", "fps", "ft/sec");
  public static final Unit METRE_PER_SECOND =
      add(Dimension.VELOCITY, UnitSystem.METRIC, 1, "m/s", "m/sec");
  public static final Unit HORSEPOWER =
      add(Dimension.POWER, UnitSystem.US, 550 * FT * LB * G, "hp", "horsepower", "bhp");
  public static final Unit KILOWATT =
      add(Dimension.POWER, UnitSystem.METRIC, 1000, "kW", "kilowatt", "kilowatts");
  public static final Unit WATT = add(Dimension.POWER, UnitSystem.METRIC, 1, "W", "watt", "watts");
  public static final Unit VOLT =
      add(
          Dimension.VOLTAGE,
          UnitSystem.NEUTRAL,
          1,
          "V",
          "volt",
          "volts",
          "VAC",
          "V AC",
          "VDC",
          "V DC");
  public static final Unit AMPERE =
      add(Dimension.CURRENT, UnitSystem.NEUTRAL, 1, "A", "amp", "amps", "ampere", "amperes");
  public static final Unit OHM =
      add(Dimension.RESISTANCE, UnitSystem.NEUTRAL, 1, "ohm", "ohms", "Ω");
  public static final Unit KILOHM =
      add(Dimension.RESISTANCE, UnitSystem.NEUTRAL, 1e3, "kohm", "kohms", "kΩ");
  public static final Unit MEGOHM =
      add(
          Dimension.RESISTANCE,
          UnitSystem.NEUTRAL,
          1e6,
          "Mohm",
          "Mohms",
          "megohm",
          "megohms",
          "megaohm",
          "megaohms",
          "meg ohms",
          "meg ohm",
          "meg",
          "megs",
          "MΩ");
  public static final Unit GIGOHM =
      add(
          Dimension.RESISTANCE,
          UnitSystem.NEUTRAL,
          1e9,
          "Gohm",
          "Gohms",
          "gigohm",
          "gigaohm",
          "gigohms",
          "gigaohms",
          "GΩ");
  public static final Unit FAHRENHEIT =
      add(
          Dimension.TEMPERATURE,
          UnitSystem.US,
          5.0 / 9,
          459.67 * 5 / 9,
          "degF",
          "°F",
          "° F",
          "deg F",
          "degrees F",
          "degrees Fahrenheit",
          "Fahrenheit",
          "F");
  public static final Unit CELSIUS =
      add(
          Dimension.TEMPERATURE,
          UnitSystem.METRIC,
          1,
          273.15,
          "degC",
          "°C",
          "° C",
          "deg C",
          "degrees C",
          "degrees Celsius",
          "Celsius",
          "C");
  public static final Unit MILLIGRAM_PER_LITRE =
      add(
          Dimension.CONCENTRATION,
          UnitSystem.NEUTRAL,
          1e-3,
          "mg/L",
          "ppm",
          "mg/litre",
          "mg/liter",
          "g/m3",
          "mgL");
  public static final Unit MICROGRAM_PER_LITRE =
      add(
          Dimension.CONCENTRATION,
          UnitSystem.NEUTRAL,
          1e-6,
          "ug/L",
          "μg/L",
          "mcg/L",
          "ppb",
          "ug/litre",
          "ug/liter",
          "mg/m3");
  public static final Unit SECOND =
      add(Dimension.TIME, UnitSystem.NEUTRAL, 1, "s", "sec", "secs", "second", "seconds");
  public static final Unit MINUTE =
      add(Dimension.TIME, UnitSystem.NEUTRAL, 60, "min", "mins", "minute", "minutes");
  public static final Unit HOUR =
      add(Dimension.TIME, UnitSystem.NEUTRAL, 3600, "h", "hr", "hrs", "hour", "hours");
  public static final Unit DAY = add(Dimension.TIME, UnitSystem.NEUTRAL, 86400, "day", "days", "d");
  public static final Unit POUND =
      add(Dimension.MASS, UnitSystem.US, LB, "lb", "lbs", "pound", "pounds");
  public static final Unit KILOGRAM =
      add(
          Dimension.MASS,
          UnitSystem.METRIC,
          1,
          "kg",
          "kgs",
          "kilo",
          "kilos",
          "kilogram",
          "kilograms");
  public static final Unit GRAM =
      add(Dimension.MASS, UnitSystem.METRIC, 1e-3, "g", "gram", "grams");
  public static final Unit DEGREE =
      add(Dimension.ANGLE, UnitSystem.NEUTRAL, 1, "deg", "°", "degrees", "degree");
  public static final Unit AWG =
      add(Dimension.WIRE_GAUGE, UnitSystem.US, 1, "AWG", "ga", "gauge", "gage", "ga AWG");
  public static final Unit SQUARE_MILLIMETRE =
      add(
          Dimension.WIRE_GAUGE,
          UnitSystem.METRIC,
          1,
          "mm2",
          "mm^2",
          "sq mm",
          "sqmm",
          "square millimetres",
          "square millimeters");
  public static final Unit NTU = add(Dimension.TURBIDITY, UnitSystem.NEUTRAL, 1, "NTU", "NTUs");
  public static final Unit MILLIGRAM_MINUTE_PER_LITRE =
      add(Dimension.CONTACT, UnitSystem.NEUTRAL, 0.06, "mg min/L");
  public static final Unit MILLIGRAM_HOUR_PER_LITRE =
      add(Dimension.CONTACT, UnitSystem.NEUTRAL, 3.6, "mg h/L");
  public static final Unit SQUARE_FOOT =
      add(Dimension.AREA, UnitSystem.US, FT * FT, "ft2", "sq ft", "sqft", "ft^2", "square feet");
  public static final Unit SQUARE_METRE =
      add(
          Dimension.AREA,
          UnitSystem.METRIC,
          1,
          "m2",
          "sq m",
          "m^2",
          "square metres",
          "square meters");
  public static final Unit POUND_PER_GALLON =
      add(Dimension.CONCENTRATION, UnitSystem.US, LB / US_GAL, "lb/gal", "ppg");
  public static final Unit KILOGRAM_PER_CUBIC_METRE =
      add(Dimension.CONCENTRATION, UnitSystem.METRIC, 1, "kg/m3");
  public static final Unit PERCENT =
      add(Dimension.NUMBER, UnitSystem.NEUTRAL, 0.01, "%", "percent");

  private static final List<Unit> LIST = List.copyOf(ALL);

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
    return unit;
  }

  /** All units, by id. */
  public static List<Unit> all() {
    return LIST;
  }

  /** The unit with this id. */
  public static Unit at(int id) {
    return LIST.get(id);
  }

  /** The unit system of the unit with this id. */
  public static UnitSystem systemAt(int id) {
    return LIST.get(id).system();
  }

  /**
   * The unit written so. Dots, the number of blanks and the shape of quotes do not count, nor does
   * case where that is not ambiguous: {@code M} is not read as metres, nor {@code mohm} as megohms.
   */
  public static Optional<Unit> named(String text) {
    return text.isEmpty()
        ? Optional.of(ONE)
        : Optional.ofNullable(UnitNames.find(Glyphs.plain(text)));
  }

  /** The same for {@code source[from, to)}, ASCII; null if that is no unit. Allocates nothing. */
  public static @Nullable Unit named(byte[] source, int from, int to) {
    return from < to ? UnitNames.find(source, from, to) : null;
  }
}
