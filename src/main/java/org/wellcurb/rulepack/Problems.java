package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.wellcurb.formula.FormulaException;

/**
 * What is wrong with one file, collected so that all of it is said in one go.
 *
 * <p>The reader only notes that it <em>stumbled</em> over the shape of a value; what is wrong with
 * a shape is said by the schema, so that it is said once and in one way.
 */
final class Problems {
  private record Found(int offset, PackProblem problem) {}

  private final PackText text;
  private final List<Found> found = new ArrayList<>();
  private final List<Json> stumbles = new ArrayList<>();

  Problems(PackText text) {
    this.text = text;
  }

  PackText text() {
    return text;
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  int count() {
    return found.size();
  }

  /** Notes that a value has not the shape that it must have. */
  void stumble(Json at) {
    stumbles.add(at);
  }

  List<Json> stumbles() {
    return List.copyOf(stumbles);
  }

  /** Something is wrong with this value. */
  void at(Json value, String what, String mend) {
    add(value.pointer(), value.from(), value.to(), what, mend);
  }

  /** Something is wrong with part of this text: characters counted as the text is read. */
  void within(Json value, int from, int to, String what, String mend) {
    if (value instanceof Json.Text) {
      int start = Escapes.offset(text.text(), value.from() + 1, from);
      int end = Escapes.offset(text.text(), value.from() + 1, Math.max(from + 1, to));
      int last = Math.max(start + 1, Math.min(end, value.to()));
      add(value.pointer(), start, last, what, mend);
    } else {
      at(value, what, mend);
    }
  }

  /** A formula, an amount or a range in this text is wrong, in one place or in several. */
  void within(Json value, FormulaException e) {
    e.all().forEach(fault -> within(value, fault.from(), fault.to(), fault.what(), fault.mend()));
  }

  void add(String pointer, int from, int to, String what, String mend) {
    String line = text.lineAt(from);
    int width = text.text().codePointCount(Math.min(from, to), Math.min(to, text.text().length()));
    PackProblem problem =
        new PackProblem(
            text.file(),
            pointer,
            text.line(from),
            text.column(from),
            what,
            mend,
            line,
            Math.max(1, width));
    found.add(new Found(from, problem));
  }

  /** Everything found, in the order of the places. */
  List<PackProblem> list() {
    return found.stream()
        .sorted(Comparator.comparingInt(Found::offset))
        .map(Found::problem)
        .distinct()
        .toList();
  }
}
