package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.report.words.Group;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;

/**
 * An empty form for print, in the order in which the work goes.
 *
 * @param groups its groups
 * @param system the system of units that it is in, as a record says it; empty where the unit is to
 *     be chosen beside each box
 */
public record BlankPage(List<FieldGroup> groups, String system) {

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

  /** The form for print: in one system where the page's style is, else with both beside a box. */
  static BlankPage of(Catalogue catalogue, PageStyle style) {
    return of(catalogue, style, style.units());
  }

  /** The same with both systems beside each box, whatever the page's style. */
  static BlankPage ofBoth(Catalogue catalogue, PageStyle style) {
    return of(catalogue, style, UnitsShown.AS_WRITTEN);
  }

  private static BlankPage of(Catalogue catalogue, PageStyle style, UnitsShown shown) {
    Words words = Words.in(style.language());
    List<FieldGroup> groups = new ArrayList<>();
    for (Group group : Group.values()) {
      List<Field> fields = new ArrayList<>();
      for (Entry entry : catalogue.entries()) {
        // Layers have a table of their own.
        if (Group.of(entry.key()) == group && !entry.key().equals("layers")) {
          fields.add(field(entry, words, shown));
        }
      }
      groups.add(new FieldGroup(group.heading(), fields));
    }
    return new BlankPage(groups, shown == UnitsShown.AS_WRITTEN ? "" : shown.code());
  }

  private static List<String> units(Entry entry, UnitsShown shown, Words words) {
    @Nullable Unit us = entry.usUnit();
    @Nullable Unit metric = entry.metricUnit();
    if (us == null || metric == null || us.symbol().isEmpty()) {
      return List.of();
    }
    return switch (shown) {
      case US -> List.of(words.unit(us));
      case METRIC -> List.of(words.unit(metric));
      case AS_WRITTEN ->
          metric.equals(us) ? List.of(words.unit(us)) : List.of(words.unit(us), words.unit(metric));
    };
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

  private static Field field(Entry entry, Words words, UnitsShown shown) {
    List<String> units = units(entry, shown, words);
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
