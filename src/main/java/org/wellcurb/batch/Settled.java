package org.wellcurb.batch;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.Settlement;
import org.wellcurb.screening.Finding;

/**
 * Findings that someone has looked at and settled. They stay findings in every file, and are not
 * counted as open. May be shared between threads.
 */
final class Settled {
  /** Nothing settled. */
  static final Settled NONE = new Settled(Map.of());

  private static final List<String> COLUMNS =
      List.of("record_id", "rule", "decision", "by", "date", "note");

  private final Map<String, Settlement> byFinding;
  private final Set<String> met = ConcurrentHashMap.newKeySet();

  private Settled(Map<String, Settlement> byFinding) {
    this.byFinding = byFinding;
  }

  /**
   * Reads the table: {@code record_id,rule,decision,by,date,note}. Each line must say who decided
   * what, and when.
   *
   * @param file null where there is none
   * @param asOf as-of date of the run; nothing is decided after it
   */
  static Settled load(@Nullable Path file, LocalDate asOf) throws RunFailure {
    if (file == null) {
      return NONE;
    }
    Map<String, Settlement> byFinding = new LinkedHashMap<>();
    for (SideTable.Row row : SideTable.read(file, "--settled", COLUMNS)) {
      String where = file + ":" + row.line() + ": ";
      for (String column : COLUMNS.subList(0, COLUMNS.size() - 1)) {
        if (row.get(column).isEmpty()) {
          throw RunFailure.unusable(
              where + column + " is blank; say which finding, what was decided, by whom and when");
        }
      }
      Settlement settlement =
          new Settlement(
              row.line(),
              row.get("record_id"),
              row.get("rule"),
              row.get("decision"),
              row.get("by"),
              day(where, row.get("date"), asOf),
              row.get("note"));
      Settlement other = byFinding.put(key(settlement.recordId(), settlement.rule()), settlement);
      if (other != null) {
        throw RunFailure.unusable(
            where
                + "line "
                + other.line()
                + " settles "
                + settlement.rule()
                + " of "
                + settlement.recordId()
                + " already; leave one");
      }
    }
    return new Settled(byFinding);
  }

  private static LocalDate day(String where, String text, LocalDate asOf) throws RunFailure {
    try {
      LocalDate day = LocalDate.parse(text);
      if (day.isAfter(asOf)) {
        throw RunFailure.unusable(
            where
                + "date "
                + day
                + " is after the as-of date, "
                + asOf
                + "; mend the date, or screen as of a later day");
      }
      return day;
    } catch (DateTimeParseException e) {
      throw RunFailure.unusable(where + "date '" + text + "' is no day such as 2026-01-31", e);
    }
  }

  boolean isEmpty() {
    return byFinding.isEmpty();
  }

  /** How this finding was settled; null if it is open. */
  @Nullable Settlement of(Finding finding) {
    if (byFinding.isEmpty()) {
      return null;
    }
    String key = key(finding.recordId(), finding.rule().id());
    @Nullable Settlement settlement = byFinding.get(key);
    if (settlement != null) {
      met.add(key);
    }
    return settlement;
  }

  /** Those that settle no finding of the batch, in the order given. */
  List<Settlement> unmatched() {
    List<Settlement> unmatched = new ArrayList<>();
    byFinding.forEach(
        (key, settlement) -> {
          if (!met.contains(key)) {
            unmatched.add(settlement);
          }
        });
    return unmatched;
  }

  private static String key(String recordId, String rule) {
    return rule + "\n" + recordId;
  }
}
