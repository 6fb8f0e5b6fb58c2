package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Symbols;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.report.words.Group;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.Words;

/**
 * An empty form for print, in the order in which the work goes.
 *
 * @param groups its groups
 */
public record BlankPage(List<FieldGroup> groups) {

  /**
   * The fields of one group.
   *
   * @param heading key of its heading
   * @param fields the fields
   */
  public record FieldGroup(String heading, List<Field> fields) {}

  /**
   * One field.
   *
   * @param key key of the entry
   * @param label what it is called
   * @param meaning help in one line; may be empty
   * @param units units to circle, or how it is written; may be empty
   * @param choices words to tick; may be empty
   * @param values what each choice is called in a record
   * @param wide true where words are to be written
   * @param room how much room a hand needs: {@code line}, {@code day} or {@code figure}; of words
   *     that may go on for long {@code lines}
   */
  public record Field(
      String key,
      String label,
      String meaning,
      List<String> units,
      List<String> choices,
      List<String> values,
      boolean wide,
      String room) {}

  static BlankPage of(Catalogue catalogue, PageStyle style) {
    Words words = Words.in(style.language());
    List<FieldGroup> groups = new ArrayList<>();
    for (Group group : Group.values()) {
      List<Field> fields = new ArrayList<>();
      for (Entry entry : catalogue.entries()) {
        // Layers have a table of their own.
        if (Group.of(entry.key()) == group && !entry.key().equals("layers")) {
          fields.add(field(entry, words));
        }
      }
      groups.add(new FieldGroup(group.heading(), fields));
    }
    return new BlankPage(groups);
  }

  /** How an entry that has no unit to choose from is written; empty where that needs no word. */
  private static String how(Entry entry) {
    if (entry.kind() == Kind.DATE) {
      return "blank.date";
    }
    if (entry.key().endsWith("latitude")) {
      return "blank.latitude";
    }
    return entry.key().endsWith("longitude") ? "blank.longitude" : "";
  }

  private static String sign(Unit unit, Words words) {
    return Symbols.of(unit, words.language() == Language.FR ? Locale.FRENCH : Locale.ROOT);
  }

  private static Field field(Entry entry, Words words) {
    List<String> units = new ArrayList<>();
    @Nullable Unit us = entry.usUnit();
    @Nullable Unit metric = entry.metricUnit();
    if (us != null && metric != null && !us.symbol().isEmpty()) {
      units.add(sign(us, words));
      if (!metric.equals(us)) {
        units.add(sign(metric, words));
      }
    }
    String how = how(entry);
    if (!how.isEmpty()) {
      units = List.of(words.say(how));
    }
    List<String> choices =
        entry.kind() == Kind.YES_NO
            ? List.of(words.say("yes"), words.say("no"))
            : entry.choices().stream().map(words::choice).toList();
    boolean wide = entry.kind() == Kind.TEXT || entry.kind() == Kind.LIST;
    List<String> values = entry.kind() == Kind.YES_NO ? List.of("yes", "no") : entry.choices();
    return new Field(
        entry.key(),
        words.entry(entry.key()),
        entry.meaning(),
        units,
        choices,
        values,
        wide,
        room(entry));
  }

  /** The longest usual answer, at some 4 mm a letter. */
  private static String room(Entry entry) {
    if (entry.kind() == Kind.LIST) {
      return "lines";
    }
    boolean isPosition = entry.key().endsWith("latitude") || entry.key().endsWith("longitude");
    if (entry.kind() == Kind.TEXT || isPosition) {
      return "line";
    }
    return entry.kind() == Kind.DATE ? "day" : "figure";
  }
}
