package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.record.NameFold;
import org.wellcurb.report.Cap;
import org.wellcurb.report.RehearsalView.GroupChange;

/**
 * Records that change by a group they belong to, such as a zone. Counts of parts add up; a group is
 * shown as first written; at most {@link Cap#LICENCES_COUNTED} are counted one by one.
 */
final class GroupChanges {
  private static final Comparator<GroupChange> MOST_FIRST =
      Comparator.comparingLong(GroupChange::changed)
          .reversed()
          .thenComparing(Comparator.comparingLong(GroupChange::records).reversed())
          .thenComparing(GroupChange::name);

  private final Map<String, long[]> counts = new LinkedHashMap<>();
  private final Map<String, String> written = new LinkedHashMap<>();

  /**
   * A record of this group.
   *
   * @param name the group as written; empty where the record names none
   */
  void record(String name, boolean changed, boolean newlyShort, boolean noLongerShort) {
    add(name, 1, changed ? 1 : 0, newlyShort ? 1 : 0, noLongerShort ? 1 : 0);
  }

  /** Adds the counts of the next part. */
  void add(GroupChanges next) {
    next.counts.forEach(
        (key, c) -> add(next.written.getOrDefault(key, key), c[0], c[1], c[2], c[3]));
  }

  private void add(String name, long records, long changed, long worse, long better) {
    String key = NameFold.of(name);
    long[] count = counts.get(key);
    if (count == null) {
      if (counts.size() >= Cap.LICENCES_COUNTED.most()) {
        return;
      }
      count = new long[4];
      counts.put(key, count);
      written.put(key, name);
    }
    count[0] += records;
    count[1] += changed;
    count[2] += worse;
    count[3] += better;
  }

  void clear() {
    counts.clear();
    written.clear();
  }

  /**
   * Groups with a record that changes, by name, the last first; what names none stands at the end.
   */
  List<GroupChange> byName() {
    List<GroupChange> lines = lines();
    lines.sort(Comparator.comparing(GroupChange::name).reversed());
    return lines;
  }

  /** Groups with a record that changes, most first. */
  List<GroupChange> lines() {
    List<GroupChange> lines = new ArrayList<>();
    counts.forEach(
        (key, c) -> {
          if (c[1] > 0) {
            lines.add(new GroupChange(written.getOrDefault(key, key), c[0], c[1], c[2], c[3]));
          }
        });
    lines.sort(MOST_FIRST);
    return lines;
  }
}
