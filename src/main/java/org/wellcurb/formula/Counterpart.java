package org.wellcurb.formula;

import java.util.Map;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;

/** The unit of the other system that a person would use in place of one. */
public final class Counterpart {
  private static final Map<Unit, Unit> METRIC =
      Map.ofEntries(
          Map.entry(Units.FOOT, Units.METRE),
          Map.entry(Units.INCH, Units.MILLIMETRE),
          Map.entry(Units.PSI_UNIT, Units.KILOPASCAL),
          Map.entry(Units.FOOT_OF_WATER, Units.METRE_OF_WATER),
          Map.entry(Units.US_GALLON, Units.LITRE),
          Map.entry(Units.IMPERIAL_GALLON, Units.LITRE),
          Map.entry(Units.CUBIC_FOOT, Units.CUBIC_METRE),
          Map.entry(Units.GPM, Units.LITRE_PER_MINUTE),
          Map.entry(Units.IMPERIAL_GPM, Units.LITRE_PER_MINUTE),
          Map.entry(Units.GALLON_PER_DAY, Units.LITRE_PER_DAY),
          Map.entry(Units.GPM_PER_FOOT, Units.LITRE_PER_MINUTE_PER_METRE),
          Map.entry(Units.FOOT_PER_SECOND, Units.METRE_PER_SECOND),
          Map.entry(Units.HORSEPOWER, Units.KILOWATT),
          Map.entry(Units.FAHRENHEIT, Units.CELSIUS),
          Map.entry(Units.POUND, Units.KILOGRAM),
          Map.entry(Units.SQUARE_FOOT, Units.SQUARE_METRE),
          Map.entry(Units.AWG, Units.SQUARE_MILLIMETRE));

  private static final Map<Unit, Unit> US =
      Map.ofEntries(
          Map.entry(Units.METRE, Units.FOOT),
          Map.entry(Units.CENTIMETRE, Units.INCH),
          Map.entry(Units.MILLIMETRE, Units.INCH),
          Map.entry(Units.KILOPASCAL, Units.PSI_UNIT),
          Map.entry(Units.BAR, Units.PSI_UNIT),
          Map.entry(Units.METRE_OF_WATER, Units.FOOT_OF_WATER),
          Map.entry(Units.LITRE, Units.US_GALLON),
          Map.entry(Units.CUBIC_METRE, Units.CUBIC_FOOT),
          Map.entry(Units.LITRE_PER_MINUTE, Units.GPM),
          Map.entry(Units.LITRE_PER_SECOND, Units.GPM),
          Map.entry(Units.CUBIC_METRE_PER_HOUR, Units.GPM),
          Map.entry(Units.CUBIC_METRE_PER_DAY, Units.GALLON_PER_DAY),
          Map.entry(Units.LITRE_PER_DAY, Units.GALLON_PER_DAY),
          Map.entry(Units.LITRE_PER_MINUTE_PER_METRE, Units.GPM_PER_FOOT),
          Map.entry(Units.METRE_PER_SECOND, Units.FOOT_PER_SECOND),
          Map.entry(Units.KILOWATT, Units.HORSEPOWER),
          Map.entry(Units.WATT, Units.HORSEPOWER),
          Map.entry(Units.CELSIUS, Units.FAHRENHEIT),
          Map.entry(Units.KILOGRAM, Units.POUND),
          Map.entry(Units.SQUARE_METRE, Units.SQUARE_FOOT),
          Map.entry(Units.SQUARE_MILLIMETRE, Units.AWG));

  private Counterpart() {}

  /** The unit in this system; the same unit where it belongs to it already, or to both. */
  public static Unit of(Unit unit, UnitSystem system) {
    if (system == UnitSystem.METRIC) {
      return METRIC.getOrDefault(unit, unit);
    }
    return system == UnitSystem.US ? US.getOrDefault(unit, unit) : unit;
  }

  /** A unit for an amount of this dimension that no entry lends one. */
  public static Unit forDimension(Dimension dimension, UnitSystem system) {
    if (dimension.equals(Dimension.TIME)) {
      return Units.DAY;
    }
    if (dimension.equals(Dimension.NUMBER)) {
      return Units.ONE;
    }
    for (Unit unit : Units.all()) {
      if (unit.dimension().equals(dimension)) {
        return of(unit, system);
      }
    }
    return new Unit(0, "(SI)", java.util.List.of(), dimension, 1, 0, UnitSystem.NEUTRAL);
  }
}
