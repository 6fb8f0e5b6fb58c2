package org.wellcurb.judgement;

import java.util.List;

/** Which day decides the text in force. */
public sealed interface JudgedBy {
  /** The day that an entry of the record gives; where it gives several, or none, all may be. */
  record Entry(org.wellcurb.record.Entry entry) implements JudgedBy {}

  /** The as-of date of the run. */
  record AsOf() implements JudgedBy {}

  /** The latest of several days; one that is n/a is left out. */
  record LaterOf(List<JudgedBy> days) implements JudgedBy {
    public LaterOf {
      days = List.copyOf(days);
      if (days.stream().anyMatch(day -> day instanceof LessStrictOf)) {
        throw new IllegalArgumentException("the mildest of several days is not a day");
      }
    }
  }

  /** Judged by each, and the mildest outcome stands; one that is n/a is left out. */
  record LessStrictOf(List<JudgedBy> days) implements JudgedBy {
    public LessStrictOf {
      days = List.copyOf(days);
      if (days.isEmpty()) {
        throw new IllegalArgumentException("no day to judge by");
      }
    }
  }
}
