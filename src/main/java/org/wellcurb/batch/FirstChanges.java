package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.report.Cap;
import org.wellcurb.report.RehearsalView.RecordChange;
import org.wellcurb.report.RehearsalView.Turn;

/**
 * The changes that a page has room for: what newly falls short first, then what no longer does.
 * Each kind keeps as many as the page holds, so that a late one is not crowded out by lesser ones.
 */
final class FirstChanges {
  private final Map<Turn, List<RecordChange>> byTurn = new EnumMap<>(Turn.class);

  FirstChanges() {
    for (Turn turn : Turn.values()) {
      byTurn.put(turn, new ArrayList<>());
    }
  }

  /** Whether one more of this kind is kept. */
  boolean hasRoom(Turn turn) {
    return of(turn).size() < Cap.CHANGES_ON_PAGE.most();
  }

  void add(RecordChange change) {
    Turn turn = Turn.of(change.from(), change.to());
    if (hasRoom(turn)) {
      of(turn).add(change);
    }
  }

  /** Takes what came later in the input. */
  void add(FirstChanges later) {
    later.byTurn.values().forEach(changes -> changes.forEach(this::add));
  }

  List<RecordChange> all() {
    return byTurn.values().stream()
        .flatMap(List::stream)
        .limit(Cap.CHANGES_ON_PAGE.most())
        .toList();
  }

  void clear() {
    byTurn.values().forEach(List::clear);
  }

  private List<RecordChange> of(Turn turn) {
    return byTurn.getOrDefault(turn, List.of());
  }
}
