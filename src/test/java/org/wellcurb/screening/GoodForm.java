package org.wellcurb.screening;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.AmountWriter;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Part;

/**
 * What is true of a generated well, in the US unit of each entry and from the ground; and how a
 * contractor writes it down: in one unit system or both, from the ground or the casing top,
 * rounded, and with blanks.
 */
final class GoodForm {
  private static final Catalogue CATALOGUE = Catalogue.standard();

  private final Map<String, Double> amounts = new LinkedHashMap<>();
  private final Map<String, String> words = new LinkedHashMap<>();
  private @Nullable Part leftOut;

  void amount(String key, double value) {
    amounts.put(key, value);
  }

  void word(String key, String text) {
    words.put(key, text);
  }

  void day(String key, LocalDate day) {
    words.put(key, day.toString());
  }

  double get(String key) {
    return Objects.requireNonNull(amounts.get(key), key);
  }

  boolean has(String key) {
    return amounts.containsKey(key);
  }

  /** The form as it is handed in. */
  Map<String, String> written(Random random) {
    Map<String, String> form = new LinkedHashMap<>();
    UnitSystem system = random.nextInt(3) == 0 ? UnitSystem.METRIC : UnitSystem.US;
    form.put("record.units", system == UnitSystem.METRIC ? "metric" : "us");
    String datum = pick(random, "ground", "ground", "ground", "casing top", "");
    String water = pick(random, "", "", "", "ground", "casing top");
    String pump = pick(random, "", "", "", "ground", has("pitless.depth") ? "pitless" : "ground");
    put(form, "record.datum", datum);
    put(form, "water.datum", water);
    put(form, "pump.datum", pump);
    double blanks = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 0.5;
    boolean isCoarse = random.nextBoolean();
    words.forEach(
        (key, text) -> {
          if (key.startsWith("record.") || !isBlank(key, blanks, random)) {
            form.put(key, shortened(random, entry(key), text));
          }
        });
    amounts.forEach(
        (key, value) -> {
          if (!isBlank(key, blanks, random) || keeps(key, datum, water, pump)) {
            Entry entry = entry(key);
            double shift =
                switch (entry.datum()) {
                  case RECORD -> above(datum);
                  case WATER -> above(water.isEmpty() ? datum : water);
                  case PUMP -> above(pump.isEmpty() ? datum : pump);
                  default -> 0;
                };
            form.put(key, written(entry, value + shift, system, isCoarse, random));
          }
        });
    return form;
  }

  /** A datum that is named is of use only with the height that goes with it. */
  private static boolean keeps(String key, String... datums) {
    return java.util.Arrays.stream(datums)
        .anyMatch(
            datum ->
                (datum.equals("casing top") && key.equals("well.stickup"))
                    || (datum.equals("pitless") && key.equals("pitless.depth")));
  }

  /** How far the datum is above ground. */
  private double above(String datum) {
    return switch (datum) {
      case "casing top" -> get("well.stickup");
      case "pitless" -> -get("pitless.depth");
      default -> 0;
    };
  }

  private static String written(
      Entry entry, double value, UnitSystem system, boolean isCoarse, Random random) {
    Unit us = entry.unit(UnitSystem.US);
    if (us == null || entry.unit(UnitSystem.METRIC) == null) {
      return AmountWriter.digits(value);
    }
    // Sizes of pipe and wire keep their trade names on metric forms.
    boolean isTrade =
        entry.key().equals("well.casing_diameter") || us.isReversed() || us.symbol().equals("hp");
    boolean isOther = random.nextInt(12) == 0;
    UnitSystem as =
        isTrade || (isOther == (system == UnitSystem.METRIC)) ? UnitSystem.US : UnitSystem.METRIC;
    Unit unit = Objects.requireNonNull(entry.unit(as));
    String digits = AmountWriter.digits(rounded(unit, unit.fromSi(us.toSi(value)), isCoarse));
    boolean isBare = as == system && random.nextBoolean();
    return isBare || unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol();
  }

  private static double rounded(Unit unit, double value, boolean isCoarse) {
    double step =
        switch (unit.symbol()) {
          case "ft" -> isCoarse && Math.abs(value) >= 8 ? 1 : 0.1;
          case "m" -> isCoarse ? 0.1 : 0.01;
          case "psi", "kPa", "mm", "V", "degF", "AWG" -> 1;
          case "in", "ft3", "m3", "gpm/ft", "hp" -> 0.001;
          case "deg" -> 1e-6;
          default -> 0.1;
        };
    return Math.rint(value / step) * step;
  }

  /** Some days are known by their month or year only. */
  private static String shortened(Random random, Entry entry, String text) {
    if (entry.usUnit() != null || !text.matches("\\d{4}-\\d\\d-\\d\\d")) {
      return text;
    }
    return switch (random.nextInt(30)) {
      case 0 -> text.substring(0, 4);
      case 1 -> text.substring(0, 7);
      default -> text;
    };
  }

  /** The form does not report this part: most of it is left blank. */
  void leaveOut(Part part) {
    leftOut = part;
  }

  private boolean isBlank(String key, double blanks, Random random) {
    return random.nextDouble() < (entry(key).part() == leftOut ? 0.75 : blanks);
  }

  private static Entry entry(String key) {
    return Objects.requireNonNull(CATALOGUE.find(key), key);
  }

  private static void put(Map<String, String> form, String key, String text) {
    if (!text.isEmpty()) {
      form.put(key, text);
    }
  }

  static String pick(Random random, String... of) {
    return of[random.nextInt(of.length)];
  }
}
