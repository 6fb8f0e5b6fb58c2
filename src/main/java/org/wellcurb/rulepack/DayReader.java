package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** Reads which day decides the text in force. */
final class DayReader {
  private final Problems problems;
  private final Shapes shapes;
  private final Catalogue catalogue;

  DayReader(Problems problems, Shapes shapes, Catalogue catalogue) {
    this.problems = problems;
    this.shapes = shapes;
    this.catalogue = catalogue;
  }

  /** The day or days; null where they cannot be read. */
  @Nullable JudgedBy read(@Nullable Json json) {
    if (!(json instanceof Json.Obj object)) {
      return day(json);
    }
    if (object.members().size() > 1) {
      problems.stumble(object);
    }
    if (object.get("laterOf") != null) {
      return later(object);
    }
    Fields fields = new Fields(object, shapes, problems);
    List<JudgedBy> days = new ArrayList<>();
    for (Json item : shapes.distinct(fields.must("lessStrictOf"), 2)) {
      JudgedBy day = item instanceof Json.Obj inner ? later(inner) : day(item);
      if (day != null) {
        days.add(day);
      }
    }
    fields.done();
    return days.size() < 2 ? null : new JudgedBy.LessStrictOf(days);
  }

  private @Nullable JudgedBy later(Json.Obj object) {
    Fields fields = new Fields(object, shapes, problems);
    List<JudgedBy> days = new ArrayList<>();
    for (Json item : shapes.distinct(fields.must("laterOf"), 2)) {
      JudgedBy day = day(item);
      if (day != null) {
        days.add(day);
      }
    }
    fields.done();
    return days.size() < 2 ? null : new JudgedBy.LaterOf(days);
  }

  private @Nullable JudgedBy day(@Nullable Json json) {
    String text = shapes.day(json);
    if (text == null || json == null) {
      return null;
    }
    if (text.equals("as-of")) {
      return new JudgedBy.AsOf();
    }
    Entry entry = catalogue.find(text);
    if (entry != null && entry.kind() == Kind.DATE) {
      return new JudgedBy.Entry(entry);
    }
    List<String> dates =
        catalogue.entries().stream().filter(e -> e.kind() == Kind.DATE).map(Entry::key).toList();
    problems.at(
        json,
        entry == null ? "there is no entry " + text : text + " is not a date",
        Mends.nearest(text, dates, "name a date of the form, such as dates.completed, or as-of"));
    return null;
  }
}
