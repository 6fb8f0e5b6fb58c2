package org.wellcurb.screening;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;

/** The slips that are tried for an entry by itself. */
final class Slips {
  /** A milligram of nitrate as nitrate holds 1/4.43 mg of nitrogen (62.005 / 14.007). */
  private static final double NITRATE_IN_NITROGEN = 62.005 / 14.007;

  /** The longest that a length of a well is measured with a rule in inches, in metres. */
  private static final double MOST_IN_INCHES = Units.FOOT.toSi(50);

  private static final Set<String> LEVELS = Set.of("water.static_level", "water.pumping_level");

  /** Water so close to the point that levels are measured from is rare (m). */
  private static final double LEAST_LEVEL = Units.FOOT.toSi(1);

  private static final Map<Unit, List<Unit>> MISTAKEN =
      Map.ofEntries(
          Map.entry(Units.FOOT, List.of(Units.METRE, Units.INCH)),
          Map.entry(Units.METRE, List.of(Units.FOOT, Units.CENTIMETRE)),
          Map.entry(Units.CENTIMETRE, List.of(Units.METRE, Units.MILLIMETRE)),
          Map.entry(Units.INCH, List.of(Units.MILLIMETRE, Units.FOOT)),
          Map.entry(Units.MILLIMETRE, List.of(Units.INCH)),
          Map.entry(Units.PSI_UNIT, List.of(Units.KILOPASCAL, Units.FOOT_OF_WATER)),
          Map.entry(Units.KILOPASCAL, List.of(Units.PSI_UNIT)),
          Map.entry(Units.GPM, List.of(Units.LITRE_PER_MINUTE)),
          Map.entry(Units.LITRE_PER_MINUTE, List.of(Units.GPM)),
          Map.entry(Units.US_GALLON, List.of(Units.IMPERIAL_GALLON, Units.LITRE)),
          Map.entry(Units.IMPERIAL_GALLON, List.of(Units.US_GALLON)),
          Map.entry(Units.LITRE, List.of(Units.US_GALLON)),
          Map.entry(Units.FAHRENHEIT, List.of(Units.CELSIUS)),
          Map.entry(Units.CELSIUS, List.of(Units.FAHRENHEIT)));

  private Slips() {}

  /** All slips that this entry may hold; none if it is not a single number. */
  static List<Slip> of(WellRecord record, Entry entry) {
    int i = entry.index();
    @Nullable Unit unit = record.unit(i);
    if (unit == null || !record.isGiven(i) || record.lo(i) != record.hi(i)) {
      return List.of();
    }
    List<Slip> slips = new ArrayList<>();
    double written = unit.fromSi(record.lo(i));
    for (Unit other : MISTAKEN.getOrDefault(unit, List.of())) {
      if (unit.equals(Units.FOOT) && other.equals(Units.INCH) && !isShort(entry)) {
        continue;
      }
      slips.add(Slip.of(Slip.Kind.UNIT, i, other.toSi(written), other));
    }
    // A minus is forgotten, never added.
    if (entry.kind() == Kind.ANGLE && record.lo(i) > 0) {
      slips.add(Slip.of(Slip.Kind.SIGN, i, -record.lo(i), unit));
    }
    if (entry.key().equals("sample.nitrate")) {
      slips.add(Slip.of(Slip.Kind.NITRATE, i, asNitrogen(record.lo(i), unit), unit));
    }
    if (isDate(written)) {
      slips.add(Slip.of(Slip.Kind.DATE, i, Double.NaN, unit));
    }
    for (double factor : new double[] {0.1, 10}) {
      slips.add(Slip.of(Slip.Kind.DECIMAL, i, unit.toSi(written * factor), unit));
    }
    digits(i, unit, written, slips);
    if (LEVELS.contains(entry.key())) {
      slips.removeIf(slip -> Math.abs(slip.value()) < LEAST_LEVEL);
    }
    return slips;
  }

  /** To three figures, no finer than laboratories state it: 44.3 mg/L as nitrate is 10.0. */
  private static double asNitrogen(double nitrate, Unit unit) {
    double figure = unit.fromSi(nitrate / NITRATE_IN_NITROGEN);
    return unit.toSi(new BigDecimal(figure).round(new MathContext(3)).doubleValue());
  }

  /** True for what is short enough to be measured in inches, unlike the depths of a well. */
  private static boolean isShort(Entry entry) {
    return entry.plausible().hi() <= MOST_IN_INCHES;
  }

  /** True for eight digits that are a day in one of the usual orders, such as 10112002. */
  private static boolean isDate(double written) {
    if (written != Math.rint(written) || written < 1_000_000 || written > 99_999_999) {
      return false;
    }
    long digits = (long) written;
    long first = digits / 1_000_000;
    long second = digits / 10_000 % 100;
    long year = digits % 10_000;
    boolean isYearLast = year >= 1800 && year <= 2200 && isDayAndMonth(first, second);
    long leading = digits / 10_000;
    boolean isYearFirst =
        leading >= 1800 && leading <= 2200 && isDayAndMonth(digits / 100 % 100, digits % 100);
    return isYearLast || isYearFirst;
  }

  private static boolean isDayAndMonth(long a, long b) {
    return a >= 1 && b >= 1 && Math.max(a, b) <= 31 && Math.min(a, b) <= 12;
  }

  /** Each pair of neighbouring digits of a whole number changed over. */
  private static void digits(int entry, Unit unit, double written, List<Slip> slips) {
    if (written != Math.rint(written) || written < 10 || written > 1e9) {
      return;
    }
    StringBuilder text = new StringBuilder(Long.toString((long) written));
    for (int k = 0; k + 1 < text.length(); k++) {
      char a = text.charAt(k);
      char b = text.charAt(k + 1);
      if (a != b && !(k == 0 && b == '0')) {
        text.setCharAt(k, b);
        text.setCharAt(k + 1, a);
        slips.add(
            Slip.of(Slip.Kind.DIGITS, entry, unit.toSi(Double.parseDouble(text.toString())), unit));
        text.setCharAt(k, a);
        text.setCharAt(k + 1, b);
      }
    }
  }
}
