package org.wellcurb.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Interval;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.Input;
import org.wellcurb.workings.Working;

/** A working in words: its formula, the numbers put in, what comes of it, what it lacks. */
public final class WorkingWords {
  private static final Pattern PLACE = Pattern.compile("\\{([^}]+)\\}");

  /** Words and decimals that a formula holds between its places. */
  private static final Pattern PIECE = Pattern.compile("\\d\\.\\d|up\\sto|[a-z]{2,}+(?![/\\d])");

  /** One amount, with its unit and that of the other system, or words: nothing to be bracketed. */
  private static final Pattern PLAIN =
      Pattern.compile("-?[\\d.,]+( [^\\s\\d]\\S*){0,2}( \\[.*\\])?|\\D*");

  /** Entries that a working goes on without, and the figure that then stands for them, if one. */
  private static final Map<String, String> ASSUMED =
      Map.ofEntries(
          Map.entry("pressure.switch_height", ""),
          Map.entry("site.elevation", "usual_elevation"),
          Map.entry("water.temperature", "usual_water_temperature"),
          Map.entry("disinfection.dose", "chlorine_dose"),
          Map.entry("water.test_method", ""),
          Map.entry("wire.material", ""),
          Map.entry("wire.drop_length", ""),
          Map.entry("tank.type", ""),
          Map.entry("tank.acceptance", ""),
          Map.entry("tank.volume", ""),
          Map.entry("site.dwellings", ""),
          Map.entry("site.position_datum", ""),
          Map.entry("drop_pipe.inside_diameter", ""),
          Map.entry("service_line.length", ""),
          Map.entry("pump.ejector", ""),
          Map.entry("pump.flow_sleeve", ""),
          Map.entry("well.liner_inside_diameter", ""));

  private final Speech speech;
  private final Evaluation at;

  public WorkingWords(Speech speech, Evaluation at) {
    this.speech = speech;
    this.at = at;
  }

  /** The formula with entries called by their labels. */
  public String formula(Working working) {
    return fill(working, false);
  }

  /** The formula with the record's numbers; depths as brought to ground. */
  public String withNumbers(Working working) {
    return fill(working, true);
  }

  private String fill(Working working, boolean numbers) {
    String formula = working.formula();
    Matcher matcher = PLACE.matcher(formula);
    StringBuilder out = new StringBuilder();
    int from = 0;
    while (matcher.find()) {
      String before = formula.substring(from, matcher.start());
      String place = place(working, matcher.group(1), numbers);
      out.append(pieces(before));
      from = matcher.end();
      boolean isBracketed =
          numbers && isBracketed(place, before.stripTrailing(), formula.substring(from).strip());
      out.append(isBracketed ? "(" + place + ")" : place);
    }
    return out.append(pieces(formula.substring(from))).toString();
  }

  /**
   * Whether what stands in a sum needs brackets to be read rightly: the square of 6 in is not 6
   * square inches, a negative amount follows a sign, and a range is one amount.
   */
  private static boolean isBracketed(String place, String before, String after) {
    if (after.startsWith("^")) {
      return place.indexOf(' ') >= 0;
    }
    boolean isAfterSign = !before.isEmpty() && isSign(before.charAt(before.length() - 1));
    boolean isBeforeSign = !after.isEmpty() && isSign(after.charAt(0));
    return PLAIN.matcher(place).matches()
        ? isAfterSign && place.startsWith("-")
        : isAfterSign || isBeforeSign;
  }

  private static boolean isSign(char c) {
    return "+-x/".indexOf(c) >= 0;
  }

  /** The words and decimals between the places, in the language of the page. */
  private String pieces(String text) {
    return PIECE
        .matcher(text)
        .replaceAll(
            piece -> {
              String word = piece.group();
              return Matcher.quoteReplacement(
                  Character.isDigit(word.charAt(0))
                      ? speech.decimals(word)
                      : speech.word("formula." + word.replace(' ', '-'), word));
            });
  }

  private String place(Working working, String name, boolean numbers) {
    Entry entry = at.scope().catalogue().find(name);
    if (entry != null) {
      return numbers ? value(entry) : speech.label(entry);
    }
    Figure figure = at.scope().workings().figure(name.replace("figures.", ""));
    if (figure != null) {
      return numbers
          ? speech.amount(at.scope().figure(figure.name()), figure.unit())
          : speech.label(figure);
    }
    Working step = working.step(name);
    if (step == null) {
      throw new IllegalStateException(working.name() + " has no " + name);
    }
    return numbers ? amount(step) : speech.phrase("step." + name.replace(' ', '-'));
  }

  /** What is computed on the way comes to. */
  private String amount(Working step) {
    Interval interval = interval(step);
    if (interval == null) {
      return speech.phrase("void");
    }
    if (interval.lo() == Double.POSITIVE_INFINITY) {
      return speech.phrase("none");
    }
    return interval.isAll()
        ? speech.phrase("unknown")
        : speech.interval(interval, step.unit(UnitOf.system(at)));
  }

  /** What an entry counts as: its amount in the unit it was written in, or its word. */
  private String value(Entry entry) {
    byte state = at.frame().state(entry.index());
    if (state == WellRecord.NOT_APPLICABLE) {
      return speech.phrase("void");
    }
    if (state != WellRecord.GIVEN) {
      return speech.phrase("unknown");
    }
    @Nullable Dimension dimension = entry.kind().dimension();
    if (dimension == null) {
      return speech.said(at.record(), entry);
    }
    Expr.EntryAmount amount = new Expr.EntryAmount(entry, dimension);
    Interval interval = at.amount(amount, null);
    if (interval == null) {
      return speech.phrase("void");
    }
    return entry.kind() == Kind.DATE
        ? speech.days(interval.lo(), interval.hi())
        : speech.interval(interval, UnitOf.amount(amount, at));
  }

  /** What the working comes to; null where it does not apply. */
  public @Nullable Interval interval(Working working) {
    return at.amount(new Expr.WorkingAmount(working), null);
  }

  /** The result in words. */
  public String result(Working working) {
    Interval interval = interval(working);
    if (interval == null) {
      return speech.phrase("void");
    }
    if (interval.isAll()) {
      List<String> lacking = new ArrayList<>();
      lacking(working).forEach(e -> lacking.add(speech.label(e)));
      return lacking.isEmpty()
          ? speech.phrase("unknown")
          : speech.phrase("lacks", String.join(", ", lacking));
    }
    String result = speech.interval(interval, working.unit(UnitOf.system(at)));
    String meaning = meaning(working, interval);
    return meaning.isEmpty() ? result : result + " (" + meaning + ")";
  }

  /** What a result means that is a number only for the sake of comparisons; empty for others. */
  private String meaning(Working working, Interval interval) {
    String least = meaning(working, interval.lo());
    return interval.lo() == interval.hi() || least.isEmpty()
        ? least
        : speech.phrase("from.to", least, meaning(working, interval.hi()));
  }

  private String meaning(Working working, double value) {
    String key = "result." + working.name() + "." + (long) value;
    return value == Math.rint(value) ? speech.word(key, "") : "";
  }

  /**
   * What was taken for entries that the record leaves blank; empty where the working is unknown.
   */
  public List<String> assumed(Working working) {
    if (!isKnown(working)) {
      return List.of();
    }
    List<String> assumed = new ArrayList<>();
    Interval interval = interval(working);
    if (interval != null && interval.lo() < interval.hi() && isWallUnsaid(working)) {
      assumed.add(speech.phrase("assumed.wall"));
    }
    List<Entry> blank = new ArrayList<>(lacking(working, Input.Need.OPTIONAL));
    lacking(working, Input.Need.HELPFUL).stream()
        .filter(entry -> entry.key().equals("pressure.switch_height"))
        .forEach(blank::add);
    for (Entry entry : blank) {
      @Nullable String name = ASSUMED.get(entry.key());
      if (name != null) {
        @Nullable Figure figure = at.scope().workings().figure(name);
        String value =
            figure == null
                ? ""
                : speech.amount(
                    at.scope().figure(name), Counterpart.of(figure.unit(), UnitOf.system(at)));
        assumed.add(speech.phrase("assumed." + entry.key(), value));
      }
    }
    return assumed;
  }

  /** Whether the wall of the casing is taken to be any that is published for its size. */
  private boolean isWallUnsaid(Working working) {
    for (Entry entry : at.inputs(working)) {
      if (entry.key().equals("well.casing_wall")) {
        return at.frame().state(entry.index()) != WellRecord.GIVEN && isInsideOpen();
      }
    }
    return false;
  }

  private boolean isInsideOpen() {
    Working inside = at.scope().workings().find("casing_inside_diameter");
    Working outside = at.scope().workings().find("casing_outside_diameter");
    Interval within = inside == null ? null : interval(inside);
    Interval around = outside == null ? null : interval(outside);
    return within != null
        && around != null
        && around.lo() == around.hi()
        && within.lo() < within.hi()
        && !within.isAll();
  }

  /** Whether the working applies and comes to something. */
  public boolean isKnown(Working working) {
    Interval interval = interval(working);
    return interval != null && !interval.isAll();
  }

  /**
   * The inputs that would give the working: the required ones that the record lacks; where it lacks
   * none and the working still cannot be known, those that would help.
   */
  public List<Entry> lacking(Working working) {
    List<Entry> required = lacking(working, Input.Need.REQUIRED);
    Interval interval = interval(working);
    if (!required.isEmpty() || interval == null || !interval.isAll()) {
      return required;
    }
    List<Entry> first = lackingFirst(working);
    return first.isEmpty() ? lacking(working, Input.Need.HELPFUL) : first;
  }

  /** What the record lacks of an input that others of its entries speak of, such as a liner's. */
  private List<Entry> lackingFirst(Working working) {
    List<Entry> lacking = new ArrayList<>();
    List<Entry> entries = at.inputs(working);
    for (int i = 0; i < entries.size(); i++) {
      if (working.inputs().get(i).isNeededFirst(this::isGiven) && isLacking(entries.get(i))) {
        lacking.add(entries.get(i));
      }
    }
    return lacking;
  }

  private boolean isGiven(String key) {
    return at.frame().state(at.record().catalogue().index(key)) == WellRecord.GIVEN;
  }

  private boolean isLacking(Entry entry) {
    byte state = at.frame().state(entry.index());
    return state == WellRecord.UNKNOWN || state == WellRecord.UNREADABLE;
  }

  private List<Entry> lacking(Working working, Input.Need need) {
    List<Entry> lacking = new ArrayList<>();
    List<Entry> entries = at.inputs(working);
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      Input input = working.inputs().get(i);
      boolean isOfNeed =
          need == Input.Need.HELPFUL ? input.isHelpful(this::isGiven) : input.need() == need;
      if (isOfNeed && isLacking(entry)) {
        lacking.add(entry);
      }
    }
    return lacking;
  }
}
