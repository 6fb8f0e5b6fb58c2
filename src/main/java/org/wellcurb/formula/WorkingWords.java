package org.wellcurb.formula;

import java.util.ArrayList;
import java.util.List;
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
    Matcher matcher = PLACE.matcher(working.formula());
    StringBuilder out = new StringBuilder();
    while (matcher.find()) {
      matcher.appendReplacement(out, Matcher.quoteReplacement(place(matcher.group(1), numbers)));
    }
    return matcher.appendTail(out).toString();
  }

  private String place(String name, boolean numbers) {
    Entry entry = at.scope().catalogue().find(name);
    if (entry != null) {
      return numbers ? value(entry) : speech.label(entry);
    }
    Figure figure = at.scope().workings().figure(name.replace("figures.", ""));
    if (figure != null) {
      return numbers
          ? speech.amount(at.scope().figure(figure.name()), figure.unit())
          : figure.name().replace('_', ' ');
    }
    return name;
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
      return at.record().written(entry.index());
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
    return speech.interval(interval, working.unit(UnitOf.system(at)));
  }

  /**
   * The inputs that would give the working: the required ones that the record lacks; where it lacks
   * none and the working still cannot be known, those that would help.
   */
  public List<Entry> lacking(Working working) {
    List<Entry> required = lacking(working, Input.Need.REQUIRED);
    Interval interval = interval(working);
    return required.isEmpty() && interval != null && interval.isAll()
        ? lacking(working, Input.Need.HELPFUL)
        : required;
  }

  private List<Entry> lacking(Working working, Input.Need need) {
    List<Entry> lacking = new ArrayList<>();
    for (Input input : working.inputs()) {
      Entry entry = at.scope().catalogue().entry(at.scope().catalogue().index(input.key()));
      byte state = at.frame().state(entry.index());
      boolean isLacking = state == WellRecord.UNKNOWN || state == WellRecord.UNREADABLE;
      if (input.need() == need && isLacking) {
        lacking.add(entry);
      }
    }
    return lacking;
  }
}
