package org.wellcurb.rulepack.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.wellcurb.formula.Formula;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/**
 * Makes up records for one rule: what it reads stands near its own limits, is blank, a range, not
 * applicable or unreadable, in the unit system of its limits.
 */
final class RecordsNear {
  private static final int[] DAYS_APART = {
    -40, -15, -3, -1, 0, 1, 2, 3, 14, 15, 30, 31, 45, 46, 60, 61, 90, 91
  };
  private static final String[] STEPS = {"-1", "-0.1", "0", "0", "0.1", "1"};

  private final Catalogue catalogue = Catalogue.standard();
  private final Literals literals = new Literals();
  private final Set<Entry> entries = new LinkedHashSet<>();
  private final List<LocalDate> turns = new ArrayList<>();
  private final Random random;
  private final UnitSystem system;

  RecordsNear(RuleProgram program, Random random) {
    this.random = random;
    read(program.when());
    for (DatedText text : program.texts()) {
      read(text.when());
      read(text.require());
      turn(text.from(), -1);
      turn(text.until(), 1);
    }
    judgedBy(program.judgedBy());
    for (double day : literals.days) {
      turn(LocalDate.ofEpochDay((long) day), -1);
    }
    system =
        literals.amounts.stream()
            .map(figure -> figure.unit().system())
            .filter(one -> one != UnitSystem.NEUTRAL)
            .findFirst()
            .orElse(UnitSystem.US);
    entries.add(entry("record.covers"));
    entries.add(entry("record.datum"));
    entries.add(entry("well.stickup"));
  }

  private void read(@org.jspecify.annotations.Nullable Formula formula) {
    if (formula != null) {
      literals.read(formula.tree());
      entries.addAll(formula.reads());
    }
  }

  private void turn(@org.jspecify.annotations.Nullable LocalDate day, int other) {
    if (day != null) {
      turns.add(day);
      turns.add(day.plusDays(other));
    }
  }

  private void judgedBy(JudgedBy day) {
    if (day instanceof JudgedBy.Entry of) {
      entries.add(of.entry());
    } else if (day instanceof JudgedBy.LessStrictOf several) {
      several.days().forEach(this::judgedBy);
    }
  }

  /** The entries that a record may hold. */
  Set<Entry> entries() {
    return entries;
  }

  /** The text of each entry of one more record. */
  Map<String, String> next() {
    Map<String, String> texts = new LinkedHashMap<>();
    LocalDate day = anyDay();
    for (Entry entry : entries) {
      String text = text(entry, day);
      if (!text.isEmpty()) {
        texts.put(entry.key(), text);
      }
    }
    texts.put("record.id", "G-1");
    boolean isFromTop = random.nextInt(4) == 0;
    texts.put("record.datum", isFromTop ? "casing top" : "ground");
    if (isFromTop) {
      texts.put("well.stickup", amount(entry("well.stickup"), false));
    }
    if (!literals.workings.isEmpty()) {
      // Only the outside diameter says the outside without tables of pipe.
      texts.remove("well.casing_wall");
      texts.remove("well.casing_schedule");
      texts.put("well.casing_size_is", "outside");
      texts.put("well.casing_material", "steel");
    }
    return texts;
  }

  private String text(Entry entry, LocalDate day) {
    int way = random.nextInt(100);
    if (entry.key().equals("record.covers")) {
      return way < 60 ? "" : entry.choices().get(random.nextInt(entry.choices().size()));
    }
    if (way < 8) {
      return "";
    }
    if (way < 11) {
      return "n/a";
    }
    if (way < 13) {
      return "illegible";
    }
    return switch (entry.kind()) {
      case CHOICE, YES_NO, TEXT -> word(entry);
      case DATE -> date(entry, day, way < 20);
      case COUNT -> Integer.toString(random.nextInt(5));
      case LIST -> "";
      default -> amount(entry, way < 28);
    };
  }

  private String word(Entry entry) {
    if (entry.kind() == Kind.YES_NO) {
      return random.nextBoolean() ? "yes" : "no";
    }
    List<String> own = literals.words.stream().filter(w -> fits(entry, w)).toList();
    if (!own.isEmpty() && random.nextInt(4) > 0) {
      return own.get(random.nextInt(own.size()));
    }
    if (entry.kind() == Kind.TEXT) {
      return "elsewhere";
    }
    return entry.choices().get(random.nextInt(entry.choices().size()));
  }

  private static boolean fits(Entry entry, String word) {
    return entry.kind() == Kind.TEXT || entry.choice(word) >= 0;
  }

  private LocalDate anyDay() {
    return !turns.isEmpty() && random.nextInt(3) > 0
        ? turns.get(random.nextInt(turns.size()))
        : LocalDate.of(1965, 1, 1).plusDays(random.nextInt(22_000));
  }

  private String date(Entry entry, LocalDate near, boolean isRange) {
    if (isRange) {
      return Integer.toString(near.getYear());
    }
    if (entry.key().equals("dates.completed") || random.nextInt(8) == 0) {
      return random.nextInt(8) == 0 ? anyDay().toString() : near.toString();
    }
    return near.plusDays(DAYS_APART[random.nextInt(DAYS_APART.length)]).toString();
  }

  private String amount(Entry entry, boolean isRange) {
    Literals.Figure near = near(entry);
    Unit unit = near.unit();
    BigDecimal value = value(near);
    if (!isRange) {
      return value.toPlainString() + " " + unit.symbol();
    }
    return switch (random.nextInt(3)) {
      case 0 -> ">" + value.toPlainString() + " " + unit.symbol();
      case 1 -> "<" + value.toPlainString() + " " + unit.symbol();
      default ->
          value.toPlainString()
              + "-"
              + value.add(BigDecimal.valueOf(random.nextInt(9) + 1L)).toPlainString()
              + " "
              + unit.symbol();
    };
  }

  private Literals.Figure near(Entry entry) {
    Dimension dimension = entry.kind().dimension();
    List<Literals.Figure> own =
        literals.amounts.stream().filter(f -> f.unit().dimension().equals(dimension)).toList();
    List<Literals.Figure> likely = own.stream().filter(f -> isLikely(entry, f)).toList();
    if (!likely.isEmpty() && random.nextInt(4) > 0) {
      own = likely;
    }
    Unit unit = system == UnitSystem.METRIC ? entry.metricUnit() : entry.usUnit();
    if (!own.isEmpty() && random.nextInt(3) > 0) {
      Literals.Figure one = own.get(random.nextInt(own.size()));
      return one.unit().system() == UnitSystem.NEUTRAL && unit != null
          ? new Literals.Figure(one.si(), one.unit())
          : one;
    }
    Unit in = unit == null ? org.wellcurb.quantity.Units.ONE : unit;
    return new Literals.Figure(in.toSi(random.nextInt(60)), in);
  }

  /** Whether a limit can be one on this entry: that on a wall is none on a depth. */
  private static boolean isLikely(Entry entry, Literals.Figure figure) {
    return figure.si() >= entry.plausible().lo() && figure.si() <= entry.plausible().hi();
  }

  private BigDecimal value(Literals.Figure near) {
    BigDecimal exact =
        new BigDecimal(near.unit().fromSi(near.si()))
            .round(new MathContext(8, RoundingMode.HALF_EVEN));
    BigDecimal step = new BigDecimal(STEPS[random.nextInt(STEPS.length)]);
    BigDecimal scale =
        exact.abs().compareTo(BigDecimal.ONE) < 0 ? new BigDecimal("0.01") : BigDecimal.ONE;
    BigDecimal value = exact.add(step.multiply(scale)).stripTrailingZeros();
    return value.signum() < 0 ? BigDecimal.ZERO : value;
  }

  private Entry entry(String key) {
    return catalogue.entry(catalogue.index(key));
  }
}
