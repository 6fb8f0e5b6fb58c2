package org.wellcurb.report.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which findings stand at which entry of a drawing: each at the entry that decided it, and nowhere
 * where the drawing does not show that one, for a letter says of what it stands at that it falls
 * short.
 */
final class Marks {
  private final Map<String, List<Mark>> byEntry = new LinkedHashMap<>();
  private final Set<Mark> drawn = new LinkedHashSet<>();

  /**
   * @param all all findings of the record
   * @param entries keys of the entries that the drawing shows
   */
  Marks(List<Mark> all, Set<String> entries) {
    for (Mark mark : all) {
      if (entries.contains(mark.decided())) {
        byEntry.computeIfAbsent(mark.decided(), none -> new ArrayList<>()).add(mark);
      }
    }
  }

  /** The findings at an entry, which are then drawn. */
  List<Mark> at(String key) {
    List<Mark> marks = byEntry.getOrDefault(key, List.of());
    drawn.addAll(marks);
    return marks;
  }

  /** Those that were drawn, in the order of the page. */
  List<Mark> drawn() {
    return drawn.stream()
        .sorted(
            java.util.Comparator.<Mark>comparingInt(mark -> mark.letter().length())
                .thenComparing(Mark::letter))
        .toList();
  }
}
