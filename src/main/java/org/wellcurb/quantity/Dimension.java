package org.wellcurb.quantity;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The dimension of an amount: exponents over length, mass, time, current and temperature, and a tag
 * that keeps apart scales which are not powers of these.
 *
 * @param length exponent of length
 * @param mass exponent of mass
 * @param time exponent of time
 * @param current exponent of electric current
 * @param temperature exponent of temperature
 * @param scale a scale of its own, such as a date or a wire gauge number
 */
public record Dimension(int length, int mass, int time, int current, int temperature, Scale scale) {

  /** Scales that cannot be multiplied with anything and compare only with themselves. */
  public enum Scale {
    RATIO,
    ANGLE,
    TURBIDITY,
    WIRE_GAUGE,
    DATE
  }

  public static final Dimension NUMBER = of(0, 0, 0, 0, 0);
  public static final Dimension LENGTH = of(1, 0, 0, 0, 0);
  public static final Dimension AREA = of(2, 0, 0, 0, 0);
  public static final Dimension VOLUME = of(3, 0, 0, 0, 0);
  public static final Dimension MASS = of(0, 1, 0, 0, 0);
  public static final Dimension TIME = of(0, 0, 1, 0, 0);
  public static final Dimension CURRENT = of(0, 0, 0, 1, 0);
  public static final Dimension TEMPERATURE = of(0, 0, 0, 0, 1);
  public static final Dimension FLOW = of(3, 0, -1, 0, 0);
  public static final Dimension SPECIFIC_CAPACITY = of(2, 0, -1, 0, 0);
  public static final Dimension VELOCITY = of(1, 0, -1, 0, 0);
  public static final Dimension PRESSURE = of(-1, 1, -2, 0, 0);
  public static final Dimension POWER = of(2, 1, -3, 0, 0);
  public static final Dimension VOLTAGE = of(2, 1, -3, -1, 0);
  public static final Dimension RESISTANCE = of(2, 1, -3, -2, 0);
  public static final Dimension CONCENTRATION = of(-3, 1, 0, 0, 0);
  public static final Dimension CONTACT = of(-3, 1, 1, 0, 0);
  public static final Dimension ANGLE = new Dimension(0, 0, 0, 0, 0, Scale.ANGLE);
  public static final Dimension TURBIDITY = new Dimension(0, 0, 0, 0, 0, Scale.TURBIDITY);
  public static final Dimension WIRE_GAUGE = new Dimension(0, 0, 0, 0, 0, Scale.WIRE_GAUGE);
  public static final Dimension DATE = new Dimension(0, 0, 0, 0, 0, Scale.DATE);

  private static final Map<Dimension, String> NAMES = names();

  private static Dimension of(int length, int mass, int time, int current, int temperature) {
    return new Dimension(length, mass, time, current, temperature, Scale.RATIO);
  }

  private static Map<Dimension, String> names() {
    Map<Dimension, String> names = new LinkedHashMap<>();
    names.put(NUMBER, "number");
    names.put(LENGTH, "length");
    names.put(AREA, "area");
    names.put(VOLUME, "volume");
    names.put(MASS, "mass");
    names.put(TIME, "time");
    names.put(CURRENT, "current");
    names.put(TEMPERATURE, "temperature");
    names.put(FLOW, "flow");
    names.put(SPECIFIC_CAPACITY, "flow per length");
    names.put(VELOCITY, "velocity");
    names.put(PRESSURE, "pressure");
    names.put(POWER, "power");
    names.put(VOLTAGE, "voltage");
    names.put(RESISTANCE, "resistance");
    names.put(CONCENTRATION, "concentration");
    names.put(CONTACT, "concentration x time");
    names.put(ANGLE, "angle");
    names.put(TURBIDITY, "turbidity");
    names.put(WIRE_GAUGE, "wire gauge");
    names.put(DATE, "date");
    return names;
  }

  /** The dimension with this name, as {@link #label()} gives it; null if no such name. */
  public static @org.jspecify.annotations.Nullable Dimension named(String name) {
    for (Map.Entry<Dimension, String> e : NAMES.entrySet()) {
      if (e.getValue().equals(name)) {
        return e.getKey();
      }
    }
    return null;
  }

  /** True for dimensions that may be multiplied and divided. */
  public boolean isRatio() {
    return scale == Scale.RATIO;
  }

  /** The dimension of a product. */
  public Dimension times(Dimension other) {
    return of(
        length + other.length,
        mass + other.mass,
        time + other.time,
        current + other.current,
        temperature + other.temperature);
  }

  /** The dimension of a quotient. */
  public Dimension per(Dimension other) {
    return of(
        length - other.length,
        mass - other.mass,
        time - other.time,
        current - other.current,
        temperature - other.temperature);
  }

  /**
   * A name that a person would use, such as {@code pressure}, or the powers where there is none.
   */
  public String label() {
    String name = NAMES.get(this);
    if (name != null) {
      return name;
    }
    StringBuilder out = new StringBuilder();
    power(out, "length", length);
    power(out, "mass", mass);
    power(out, "time", time);
    power(out, "current", current);
    power(out, "temperature", temperature);
    return out.toString();
  }

  private static void power(StringBuilder out, String base, int exponent) {
    if (exponent != 0) {
      out.append(out.isEmpty() ? "" : " x ").append(base);
      if (exponent != 1) {
        out.append('^').append(exponent);
      }
    }
  }

  // By hand: what records get by themselves is slow until it is warm, and packs ask often.
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Dimension d
            && length == d.length
            && mass == d.mass
            && time == d.time
            && current == d.current
            && temperature == d.temperature
            && scale == d.scale);
  }

  @Override
  public int hashCode() {
    int exponents = (((length * 31 + mass) * 31 + time) * 31 + current) * 31 + temperature;
    return exponents * 31 + scale.ordinal();
  }
}
