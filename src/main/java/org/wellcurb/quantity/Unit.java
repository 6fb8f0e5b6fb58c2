package org.wellcurb.quantity;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A unit of measure. A value {@code x} in this unit is {@code x * factor + offset} in the SI unit
 * of its dimension (for temperature: kelvin; for dates: days since 1970-01-01).
 *
 * <p>A wire size is kept as its American wire gauge number (1/0 is 0, 4/0 is -3); square
 * millimetres are brought to that scale by the definition of the gauge (ASTM B258, from memory).
 *
 * @param id place in {@link Units#all()}
 * @param symbol how it is written
 * @param aliases other spellings that are read
 * @param dimension what it measures
 * @param factor SI units in one of it
 * @param offset SI value of zero
 * @param system the family it belongs to
 */
public record Unit(
    int id,
    String symbol,
    List<String> aliases,
    Dimension dimension,
    double factor,
    double offset,
    UnitSystem system) {

  /** Square millimetres run against the gauge number, by a logarithm. */
  private boolean isWireArea() {
    return dimension.scale() == Dimension.Scale.WIRE_GAUGE && system == UnitSystem.METRIC;
  }

  /** The value in SI of {@code x} of this unit. */
  public double toSi(double x) {
    return isWireArea() ? WireGauge.number(x) : x * factor + offset;
  }

  /** The value in this unit of {@code si}. */
  public double fromSi(double si) {
    return isWireArea() ? WireGauge.squareMillimetres(si) : (si - offset) / factor;
  }

  /** A difference of {@code si} expressed in this unit (without the zero point). */
  public double differenceFromSi(double si) {
    return si / factor;
  }

  /** True where a larger number in this unit is a smaller SI value. */
  public boolean isReversed() {
    return isWireArea();
  }

  // By hand: units are compared for each cell, and by their lists of spellings that would be slow.
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Unit unit && id == unit.id && symbol.equals(unit.symbol));
  }

  @Override
  public int hashCode() {
    return id;
  }
}
