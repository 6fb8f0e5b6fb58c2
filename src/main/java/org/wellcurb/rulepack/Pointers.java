package org.wellcurb.rulepack;

import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds the value that a path of the validator leads to. */
final class Pointers {
  private Pointers() {}

  /** The steps of a path, from the root. */
  static List<String> steps(NodePath path) {
    List<String> steps = new ArrayList<>();
    for (NodePath p = path; p != null && p.getNameCount() > 0; p = p.getParent()) {
      steps.add(String.valueOf(p.getElement(-1)));
    }
    Collections.reverse(steps);
    return steps;
  }

  /** The value there; the nearest one above it if there is none. */
  static Json find(Json root, NodePath path) {
    Json at = root;
    for (String step : steps(path)) {
      Json next = child(at, step);
      if (next == null) {
        return at;
      }
      at = next;
    }
    return at;
  }

  private static @Nullable Json child(Json json, String step) {
    if (json instanceof Json.Obj object) {
      return object.get(step);
    }
    if (json instanceof Json.Arr list) {
      int index = Integer.parseInt(step);
      return index < list.items().size() ? list.items().get(index) : null;
    }
    return null;
  }
}
