package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Comparator;
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
          .thenComparing(Group::name);

  private final Map<String, SinceCounts> counts = new LinkedHashMap<>();

  void add(String name, SinceCounts.Change change) {
    SinceCounts known = counts.get(name);
    if (known != null || counts.size() < Cap.LICENCES_COUNTED.most()) {
      counts.put(name, (known == null ? SinceCounts.NONE : known).and(change));
    }
  }

  /** The groups, most new findings first, at most {@link Cap#CONTRACTORS_ON_PAGE}. */
  List<Group> lines() {
    List<Group> lines = new ArrayList<>();
    counts.forEach((name, count) -> lines.add(new Group(name, count)));
    lines.sort(MOST_FIRST);
    return lines.subList(0, Math.min(Cap.CONTRACTORS_ON_PAGE.most(), lines.size()));
  }
}
