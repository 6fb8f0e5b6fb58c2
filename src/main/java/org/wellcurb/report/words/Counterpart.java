package org.wellcurb.report.words;

import static java.util.Map.entry;

import java.util.Map;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;

/** The unit of the other system that a person would use in a unit's place. */
public final class Counterpart {
  private static final Map<Unit, Unit> METRIC_OF =
      Map.ofEntries(
          entry(Units.FOOT, Units.METRE),
          entry(Units.INCH, Units.MILLIMETRE),
          entry(Units.PSI_UNIT, Units.KILOPASCAL),
          entry(Units.FOOT_OF_WATER, Units.METRE_OF_WATER),
          entry(Units.US_GALLON, Units.LITRE),
          entry(Units.IMPERIAL_GALLON, Units.LITRE),
          entry(Units.CUBIC_FOOT, Units.CUBIC_METRE),
          entry(Units.GPM, Units.LITRE_PER_MINUTE),
          entry(Units.IMPERIAL_GPM, Units.LITRE_PER_MINUTE),
          entry(Units.GALLON_PER_DAY, Units.LITRE_PER_DAY),
          entry(Units.GPM_PER_FOOT, Units.LITRE_PER_MINUTE_PER_METRE),
          entry(Units.FOOT_PER_SECOND, Units.METRE_PER_SECOND),
          entry(Units.HORSEPOWER, Units.KILOWATT),
          entry(Units.FAHRENHEIT, Units.CELSIUS),
          entry(Units.POUND, Units.KILOGRAM),
          entry(Units.AWG, Units.SQUARE_MILLIMETRE),
          entry(Units.SQUARE_FOOT, Units.SQUARE_METRE));

  private static final Map<Unit, Unit> US_OF =
      Map.ofEntries(
          entry(Units.METRE, Units.FOOT),
          entry(Units.CENTIMETRE, Units.INCH),
          entry(Units.MILLIMETRE, Units.INCH),
          entry(Units.KILOPASCAL, Units.PSI_UNIT),
          entry(Units.BAR, Units.PSI_UNIT),
          entry(Units.METRE_OF_WATER, Units.FOOT_OF_WATER),
          entry(Units.LITRE, Units.US_GALLON),
          entry(Units.CUBIC_METRE, Units.CUBIC_FOOT),
          entry(Units.LITRE_PER_MINUTE, Units.GPM),
          entry(Units.LITRE_PER_SECOND, Units.GPM),
          entry(Units.CUBIC_METRE_PER_HOUR, Units.GPM),
          entry(Units.CUBIC_METRE_PER_DAY, Units.GALLON_PER_DAY),
          entry(Units.LITRE_PER_DAY, Units.GALLON_PER_DAY),
          entry(Units.LITRE_PER_MINUTE_PER_METRE, Units.GPM_PER_FOOT),
          entry(Units.METRE_PER_SECOND, Units.FOOT_PER_SECOND),
          entry(Units.KILOWATT, Units.HORSEPOWER),
          entry(Units.WATT, Units.HORSEPOWER),
          entry(Units.CELSIUS, Units.FAHRENHEIT),
          entry(Units.KILOGRAM, Units.POUND),
          entry(Units.GRAM, Units.POUND),
          entry(Units.SQUARE_MILLIMETRE, Units.AWG),
          entry(Units.SQUARE_METRE, Units.SQUARE_FOOT));

  private Counterpart() {}

  /** The unit to use in this system; the unit itself where it belongs to it or to both. */
  public static Unit of(Unit unit, UnitSystem system) {
    if (unit.system() == system) {
      return unit;
    }
    return (system == UnitSystem.METRIC ? METRIC_OF : US_OF).getOrDefault(unit, unit);
  }
}
