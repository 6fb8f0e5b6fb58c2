package org.wellcurb.rulepack;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The keys of one object, taken one by one; what is left over is a stumble. */
final class Fields {
  private final Json.Obj object;
  private final Shapes shapes;
  private final Problems problems;
  private final Set<String> known = new HashSet<>();

  Fields(Json.Obj object, Shapes shapes, Problems problems) {
    this.object = object;
    this.shapes = shapes;
    this.problems = problems;
    known.add("$comment");
    shapes.text(object.get("$comment"));
  }

  Json.Obj object() {
    return object;
  }

  /** The value under a key that may be left out. */
  @Nullable Json may(String key) {
    known.add(key);
    return object.get(key);
  }

  /** The value under a key that must be there. */
  @Nullable Json must(String key) {
    Json value = may(key);
    if (value == null) {
      problems.stumble(object);
    }
    return value;
  }

  /** A text under a key that may be left out; empty where it is. */
  String line(String key) {
    return orEmpty(shapes.line(may(key)));
  }

  /** A text under a key that must be there; empty, with a stumble, where it is not. */
  String mustLine(String key) {
    return orEmpty(shapes.line(must(key)));
  }

  /** All keys that may stand here have been taken. */
  void done() {
    for (Json.Member member : object.members()) {
      if (!known.contains(member.key().value())) {
        problems.stumble(member.key());
      }
    }
  }

  private static String orEmpty(@Nullable String text) {
    return text == null ? "" : text;
  }
}
