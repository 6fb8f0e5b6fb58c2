package org.wellcurb.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;

class UnitsTest {
  private static final double EXACT = 1e-12;

  /** The library's SI units, by a name that does not hide ours. */
  private static final class Si extends tech.units.indriya.unit.Units {}

  /** Factors of the units library (indriya, systems-common), which keeps them as fractions. */
  @Test
  void factorsAgreeWithTheUnitsLibrary() {
    Map<Unit, javax.measure.Unit<?>> same = new HashMap<>();
    same.put(Units.FOOT, USCustomary.FOOT);
    same.put(Units.INCH, USCustomary.INCH);
    same.put(Units.YARD, USCustomary.YARD);
    same.put(Units.MILE, USCustomary.MILE);
    same.put(Units.US_GALLON, USCustomary.GALLON_LIQUID);
    same.put(Units.IMPERIAL_GALLON, Imperial.GALLON_UK);
    same.put(Units.CUBIC_FOOT, USCustomary.CUBIC_FOOT);
    same.put(Units.SQUARE_FOOT, USCustomary.SQUARE_FOOT);
    same.put(Units.POUND, USCustomary.POUND);
    same.put(Units.GPM, USCustomary.GALLON_LIQUID.divide(Si.MINUTE));
    same.put(Units.IMPERIAL_GPM, Imperial.GALLON_UK.divide(Si.MINUTE));
    same.put(Units.GALLON_PER_DAY, USCustomary.GALLON_LIQUID.divide(Si.DAY));
    same.put(Units.LITRE, Si.LITRE);
    same.put(Units.LITRE_PER_MINUTE, Si.LITRE.divide(Si.MINUTE));
    same.put(Units.CUBIC_METRE_PER_DAY, Si.CUBIC_METRE.divide(Si.DAY));
    same.put(Units.CUBIC_METRE_PER_HOUR, Si.CUBIC_METRE.divide(Si.HOUR));
    same.put(Units.FOOT_PER_SECOND, USCustomary.FOOT.divide(Si.SECOND));
    same.put(Units.HOUR, Si.HOUR);
    same.put(Units.DAY, Si.DAY);
    same.forEach(
        (ours, theirs) -> {
          double factor = inBaseUnits(theirs);
          assertEquals(factor, ours.factor(), EXACT * factor, ours.symbol());
        });
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static <Q extends Quantity<Q>> double inBaseUnits(javax.measure.Unit<?> unit) {
    return ((javax.measure.Unit) unit).getConverterTo(unit.getSystemUnit()).convert(1.0);
  }

  @Test
  void temperaturesAgreeWithTheUnitsLibrary() {
    for (double f : new double[] {-40, 32, 54.5, 212}) {
      double kelvin = USCustomary.FAHRENHEIT.getConverterTo(Si.KELVIN).convert(f);
      assertEquals(kelvin, Units.FAHRENHEIT.toSi(f), 1e-9);
      assertEquals(f, Units.FAHRENHEIT.fromSi(kelvin), 1e-9);
    }
    assertEquals(273.15, Units.CELSIUS.toSi(0), 0);
  }

  /** Derived from the exact definitions: 550 ft lbf/s, lbf/in2, standard gravity and 1000 kg/m3. */
  @Test
  void compoundFactorsFollowFromTheirDefinitions() {
    assertEquals(745.6998715822702, Units.HORSEPOWER.factor(), 1e-9);
    assertEquals(6894.757293168361, Units.PSI_UNIT.factor(), 1e-9);
    assertEquals(2989.06692, Units.FOOT_OF_WATER.factor(), 1e-9);
    assertEquals(9806.65, Units.METRE_OF_WATER.factor(), 1e-9);
  }

  @Test
  void everySpellingNamesItsUnit() {
    for (Unit unit : Units.all()) {
      assertEquals(Optional.of(unit), Units.named(unit.symbol()));
      for (String alias : unit.aliases()) {
        assertEquals(Optional.of(unit), Units.named(alias), alias);
      }
    }
  }

  @Test
  void noSpellingStandsTwiceAndEveryUnitHasItsOwnSymbol() {
    Set<String> seen = new HashSet<>();
    for (Unit unit : Units.all()) {
      assertTrue(seen.add(unit.symbol()), unit.symbol());
      for (String alias : unit.aliases()) {
        assertTrue(seen.add(alias), alias);
      }
    }
  }

  /** A unit's number must fit the byte that a record keeps of it. */
  @Test
  void thereAreFewerUnitsThanARecordCanName() {
    assertTrue(Units.all().size() <= Byte.MAX_VALUE);
    int id = 0;
    for (Unit unit : Units.all()) {
      assertEquals(id++, unit.id());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "FT, ft",
    "Gpm, gpm",
    "MG/L, mg/L",
    "PSI, psi",
    "KPA, kPa",
    "hP, hp",
    "us gal, gal",
    "U.S. gal., gal",
    "cu. ft., ft3",
    "m\u00B3/h, m3/h",
    "l/s, L/s",
    "MOHM, Mohm",
    "Mohms, Mohm",
    "M\u2126, Mohm",
    "k\u03A9, kohm",
    "\u00B5g/L, ug/L",
    "\u03BCg/L, ug/L",
    "gallons per minute, gpm",
    "\u00B0F, degF",
    "DEG F, degF",
    "MM, mm",
    "in., in",
    "sq. ft., ft2"
  })
  void readsOtherSpellings(String written, String symbol) {
    assertEquals(symbol, Units.named(written).map(Unit::symbol).orElse("none"));
  }

  /**
   * Where case makes another unit, it counts: mega is not milli, and M, G, S, D, H are not units.
   */
  @ParameterizedTest
  @CsvSource({
    "M", "G", "S", "D", "H", "mohm", "mOhm", "m\u2126", "mpa", "mPa", "gohm", "furlong", "fts2",
    "f t", "gpmm"
  })
  void doesNotReadWhatMayMeanAnotherUnit(String written) {
    assertEquals(Optional.empty(), Units.named(written));
  }

  @Test
  void bytesAndTextNameTheSameUnits() {
    for (Unit unit : Units.all()) {
      for (String alias : unit.aliases()) {
        if (alias.chars().allMatch(c -> c < 128)) {
          for (String written :
              new String[] {
                alias, alias.toUpperCase(Locale.ROOT), alias.toLowerCase(Locale.ROOT)
              }) {
            byte[] bytes = written.getBytes(java.nio.charset.StandardCharsets.US_ASCII);
            assertEquals(
                Units.named(written),
                Optional.ofNullable(Units.named(bytes, 0, bytes.length)),
                written);
          }
        }
      }
    }
  }
}
