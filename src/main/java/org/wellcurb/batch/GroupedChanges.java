package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.report.Cap;
import org.wellcurb.report.SinceCounts;
import org.wellcurb.report.SinceView.Group;

/** What became of findings, by a group such as a licence; at most so many groups one by one. */
final class GroupedChanges {
  private static final Comparator<Group> MOST_FIRST =
      Comparator.<Group>comparingLong(group -> -group.counts().added())
          .thenComparingLong(group -> -group.counts().still())
          .thenComparingLong(group -> -group.counts().cleared())
          .thenComparing(Group::name)
          .thenComparing(Group::apart);

  private final Map<String, SinceCounts> counts = new LinkedHashMap<>();
  private final Map<String, String> names = new LinkedHashMap<>();

  /**
   * Counts a change.
   *
   * @param key what tells the group from others
   * @param name how it is shown; as first met
   */
  void add(String key, String name, SinceCounts.Change change) {
    SinceCounts known = counts.get(key);
    if (known != null || counts.size() < Cap.LICENCES_COUNTED.most()) {
      counts.put(key, (known == null ? SinceCounts.NONE : known).and(change));
      names.putIfAbsent(key, name);
    }
  }

  /**
   * The groups, most new findings first, at most {@link Cap#CONTRACTORS_ON_PAGE}. A name that
   * several groups have is followed by what tells them apart.
   */
  List<Group> lines() {
    Map<String, Integer> uses = new HashMap<>();
    names.values().forEach(name -> uses.merge(name, 1, Integer::sum));
    List<Group> lines = new ArrayList<>();
    counts.forEach(
        (key, count) -> {
          String name = names.getOrDefault(key, key);
          boolean shared = uses.getOrDefault(name, 1) > 1;
          lines.add(new Group(name, shared ? key : "", count));
        });
    lines.sort(MOST_FIRST);
    return lines.subList(0, Math.min(Cap.CONTRACTORS_ON_PAGE.most(), lines.size()));
  }
}
