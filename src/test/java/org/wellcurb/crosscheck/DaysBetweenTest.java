package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;
import org.wellcurb.record.Catalogue;

/** What stays of the dates of a form when all are moved. */
class DaysBetweenTest {
  private final Catalogue catalogue = Catalogue.standard();
  private final DaysBetween days = new DaysBetween(catalogue);

  private int[] dates(int permit, int started, int completed) {
    int[] marks = new int[catalogue.size()];
    marks[catalogue.index("dates.permit")] = permit;
    marks[catalogue.index("dates.started")] = started;
    marks[catalogue.index("dates.completed")] = completed;
    return marks;
  }

  @Test
  void allMovedByAsManyDaysAreTheSame() {
    assertEquals(days.mark(dates(100, 140, 143)), days.mark(dates(310, 350, 353)));
    assertEquals(days.key(dates(100, 140, 143)), days.key(dates(310, 350, 353)));
    assertNotEquals(days.mark(dates(100, 140, 143)), days.mark(dates(310, 350, 354)));
  }

  @Test
  void ofTwoDatesOnlyTheDatesThemselvesTell() {
    assertEquals(0, days.mark(dates(0, 140, 143)));
    assertEquals(days.key(dates(0, 140, 143)), days.key(dates(0, 140, 143)));
    assertNotEquals(days.key(dates(0, 140, 143)), days.key(dates(0, 350, 353)));
  }

  /** A form that is copied with a later date keeps the last day of the licence. */
  @Test
  void theLastDayOfALicenceIsNoneOfThem() {
    int[] early = dates(100, 140, 143);
    int[] late = dates(310, 350, 353);
    early[catalogue.index("driller.licence_expires")] = 900;
    late[catalogue.index("driller.licence_expires")] = 900;
    assertEquals(days.mark(early), days.mark(late));
  }
}
