package org.wellcurb.batch;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.Refused;
import org.wellcurb.report.Settlement;
import org.wellcurb.screening.Finding;

/**
 * Findings that someone has looked at and settled. They stay findings in every file, and are not
 * counted as open. May be shared between threads.
 */
final class Settled {
  /** Nothing settled. */
  static final Settled NONE = new Settled("", List.of());

  private static final List<String> COLUMNS =
      List.of("record_id", "rule", "decision", "by", "date", "note");

  private final String name;
  private final List<Line> lines;
  private final Map<String, List<Line>> byFinding = new LinkedHashMap<>();
  private final Set<Line> met = ConcurrentHashMap.newKeySet();
  private final Set<Line> elsewhere = ConcurrentHashMap.newKeySet();
  private @Nullable Set<String> repeated = Set.of();

  /**
   * A line of the table.
   *
   * @param spot the record that it means
   * @param pack id of the pack that judged; empty for any
   * @param settlement what it says
   */
  private record Line(Spot spot, String pack, Settlement settlement) {}

  private Settled(String name, List<Line> lines) {
    this.name = name;
    this.lines = lines;
    for (Line line : lines) {
      byFinding
          .computeIfAbsent(key(line.spot().id(), line.settlement().rule()), k -> new ArrayList<>())
          .add(line);
    }
  }

  /**
   * Reads the table: {@code record_id,rule,decision,by,date,note}, and {@code file}, {@code row}
   * and {@code pack} if it has them. Each line must say who decided what, and when. A line settles
   * the finding of its record, as {@link Spot} has it.
   *
   * @param file null where there is none
   * @param asOf as-of date of the run; nothing is decided after it
   */
  static Settled load(@Nullable Path file, LocalDate asOf) throws RunFailure {
    if (file == null) {
      return NONE;
    }
    List<Line> lines = new ArrayList<>();
    Map<String, Settlement> known = new HashMap<>();
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
              EarlierReport.plain(row.get("record_id")),
              row.get("rule"),
              row.get("decision"),
              row.get("by"),
              day(where, row.get("date"), asOf),
              row.get("note"));
      Line line = new Line(Spot.of(row), row.get("pack"), settlement);
      Settlement other =
          known.put(
              String.join(
                  "\n",
                  line.spot().id(),
                  line.spot().file(),
                  line.spot().row(),
                  line.pack(),
                  settlement.rule()),
              settlement);
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
      lines.add(line);
    }
    return new Settled(String.valueOf(file.getFileName()), lines);
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
    return lines.isEmpty();
  }

  /** The numbers of the records that something is settled of. */
  Set<String> numbers() {
    Set<String> numbers = new HashSet<>();
    lines.forEach(line -> numbers.add(line.spot().id()));
    return numbers;
  }

  /**
   * Says, before any finding is asked for, which numbers stand on several rows of the batch.
   *
   * @param numbers null where that is not known
   */
  void know(@Nullable Set<String> numbers) {
    repeated = numbers;
  }

  /** How this finding was settled; null if it is open. */
  @Nullable Settlement of(Finding finding) {
    if (byFinding.isEmpty()) {
      return null;
    }
    @Nullable Line best = null;
    List<Line> named =
        byFinding.getOrDefault(key(finding.recordId(), finding.rule().id()), List.of());
    for (Line line : named) {
      if (!line.pack().isEmpty() && !line.pack().equals(finding.pack())) {
        continue;
      }
      Spot.Fit fit = line.spot().fit(finding.file(), finding.row(), repeated);
      if (fit == Spot.Fit.NONE) {
        elsewhere.add(line);
      } else if (best == null || fit == Spot.Fit.EXACT) {
        best = line;
      }
    }
    if (best == null) {
      return null;
    }
    met.add(best);
    return best.settlement();
  }

  /** Those that settle no finding of the batch, in the order given. */
  List<Settlement> unmatched() {
    return lines.stream()
        .filter(line -> !met.contains(line) && !elsewhere.contains(line))
        .map(Line::settlement)
        .toList();
  }

  /** Those of a finding that stands on several rows, where it is not known which is meant. */
  List<Refused> refused() {
    return lines.stream()
        .filter(line -> !met.contains(line) && elsewhere.contains(line))
        .map(
            line ->
                new Refused(
                    name + ":" + line.settlement().line(),
                    line.spot().id() + ", " + line.settlement().rule(),
                    line.spot().unfit()))
        .toList();
  }

  private static String key(String recordId, String rule) {
    return rule + "\n" + recordId;
  }
}
