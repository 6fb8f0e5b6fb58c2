package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wellcurb.report.SinceCounts;

/** A name of several groups stays the pack's own text, so that pages find it in their language. */
final class GroupedChangesTest {
  @Test
  void whatTellsGroupsOfOneNameApartStandsBesideTheName() {
    GroupedChanges groups = new GroupedChanges();
    groups.add("a, far", "Far enough", SinceCounts.Change.NEW);
    groups.add("b, far", "Far enough", SinceCounts.Change.NEW);
    groups.add("a, cap", "It has a cap", SinceCounts.Change.NEW);
    assertEquals(
        List.of("Far enough|a, far", "Far enough|b, far", "It has a cap|"),
        groups.lines().stream().map(each -> each.name() + "|" + each.apart()).toList());
  }
}
