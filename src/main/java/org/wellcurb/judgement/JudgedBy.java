package org.wellcurb.judgement;

import java.util.List;

/** Which day decides the text in force. */
public sealed interface JudgedBy {
  /** The day that an entry of the record gives. */
  record Entry(String key) implements JudgedBy {}

  /** The as-of date of the run. */
  record AsOf() implements JudgedBy {}

  /** Judged by each, and the mildest outcome stands. */
  record LessStrictOf(List<JudgedBy> days) implements JudgedBy {
    public LessStrictOf {
      days = List.copyOf(days);
    }
  }
}
