package org.wellcurb.rulepack.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.screening.Screener;

/**
 * One shipped code, judged a rule at a time on records of the test's own making, apart from the
 * pack's own examples. What is given is written {@code key=text}.
 */
final class Code {
  private final String jurisdiction;
  private final Pack pack;
  private final Screener screener;

  private Code(String jurisdiction, Pack pack, LocalDate asOf) {
    this.jurisdiction = jurisdiction;
    this.pack = pack;
    screener = new Screener(pack, asOf);
  }

  /** The pack of this name, as of its own edition; the facts call its jurisdiction so. */
  static Code of(String name, String jurisdiction) {
    Pack pack = load(name);
    return new Code(jurisdiction, pack, pack.edition());
  }

  static Code of(String name, String jurisdiction, LocalDate asOf) {
    return new Code(jurisdiction, load(name), asOf);
  }

  private static Pack load(String name) {
    try {
      return PackLoader.load(name);
    } catch (PackException e) {
      throw new AssertionError(name + " does not load: " + e.getMessage(), e);
    }
  }

  Outcome outcome(String rule, String... given) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String each : given) {
      int sign = each.indexOf('=');
      texts.put(each.substring(0, sign), each.substring(sign + 1));
    }
    texts.putIfAbsent("record.id", "T-1");
    texts.putIfAbsent("record.datum", "ground");
    WellRecord record = RecordReader.of(texts);
    return Outcome.at(screener.outcomes(record)[place(rule)]);
  }

  private int place(String rule) {
    for (int i = 0; i < pack.rules().size(); i++) {
      if (pack.rules().get(i).id().equals(rule)) {
        assertEquals(pack.id(), pack.rules().get(i).pack(), rule + " is the pack's own");
        return i;
      }
    }
    throw new AssertionError(pack.id() + " has no rule " + rule);
  }

  void meets(String rule, String... given) {
    is(Outcome.MEETS, rule, given);
  }

  void fallsShort(String rule, String... given) {
    is(Outcome.FALLS_SHORT, rule, given);
  }

  void cannotTell(String rule, String... given) {
    is(Outcome.CANNOT_TELL, rule, given);
  }

  void doesNotApply(String rule, String... given) {
    is(Outcome.NOT_APPLICABLE, rule, given);
  }

  private void is(Outcome expected, String rule, String... given) {
    assertEquals(
        expected,
        outcome(rule, given),
        () -> pack.id() + " " + rule + " with " + String.join("; ", given));
  }

  /** The facts state this figure in this section. */
  Code states(String section, String subject, String figure) {
    Facts.state(jurisdiction, section, subject, figure);
    return this;
  }

  /** The entry must be at least the figure: met at it, short just below it, never met blank. */
  void least(String rule, String entry, String figure, String... given) {
    meets(rule, plus(given, entry, figure));
    fallsShort(rule, plus(given, entry, moved(figure, -1)));
    neverMetBlank(rule, given);
  }

  /** The entry must be at most the figure: met at it, short just above it, never met blank. */
  void most(String rule, String entry, String figure, String... given) {
    meets(rule, plus(given, entry, figure));
    fallsShort(rule, plus(given, entry, moved(figure, 1)));
    neverMetBlank(rule, given);
  }

  /** The record must come in within so many days of completion. */
  void days(String rule, int days, LocalDate completed, String... given) {
    String[] both = plus(given, "dates.completed", completed.toString());
    meets(rule, plus(both, "dates.received", completed.plusDays(days).toString()));
    fallsShort(rule, plus(both, "dates.received", completed.plusDays(days + 1L).toString()));
  }

  /**
   * Every one of these entries must be known. What starts with {@code given:} is given and not
   * asked for; dates and what the record covers are such without it.
   */
  void asksFor(String rule, String... filled) {
    String[] all =
        java.util.Arrays.stream(filled)
            .map(f -> f.replaceFirst("^given:", ""))
            .toArray(String[]::new);
    meets(rule, all);
    for (int out = 0; out < filled.length; out++) {
      if (!filled[out].matches("(given:|dates\\.|record\\.).*")) {
        fallsShort(rule, without(all, out));
      }
    }
  }

  private void neverMetBlank(String rule, String... given) {
    Outcome blank = outcome(rule, given);
    assertTrue(
        blank == Outcome.CANNOT_TELL || blank == Outcome.NOT_APPLICABLE,
        () -> pack.id() + " " + rule + " is " + blank + " where the entry is blank");
  }

  static String[] plus(String[] given, String key, String text) {
    String[] more = java.util.Arrays.copyOf(given, given.length + 1);
    more[given.length] = key + "=" + text;
    return more;
  }

  private static String[] without(String[] given, int out) {
    String[] fewer = new String[given.length - 1];
    for (int i = 0, j = 0; i < given.length; i++) {
      if (i != out) {
        fewer[j++] = given[i];
      }
    }
    return fewer;
  }

  /** The figure moved by a tenth of its last written place. */
  private static String moved(String figure, int way) {
    int space = figure.indexOf(' ');
    String number = space < 0 ? figure : figure.substring(0, space);
    BigDecimal value = new BigDecimal(number);
    BigDecimal step = BigDecimal.ONE.movePointLeft(value.scale() + 1);
    BigDecimal moved = value.add(step.multiply(BigDecimal.valueOf(way)));
    return moved.toPlainString() + (space < 0 ? "" : figure.substring(space));
  }
}
