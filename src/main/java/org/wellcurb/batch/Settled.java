package org.wellcurb.batch;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.AnswersCsv;
import org.wellcurb.report.Cap;
import org.wellcurb.report.Refused;
import org.wellcurb.report.Refused.Why;
import org.wellcurb.report.SettledOtherwise;
import org.wellcurb.report.Settlement;
import org.wellcurb.screening.Finding;

/**
 * Findings that someone has looked at and settled. They stay findings in every file, and are not
 * counted as open. May be shared between threads.
 */
final class Settled {
  /** Nothing settled. */
  static final Settled NONE = new Settled("", List.of(), List.of());

  private static final List<String> COLUMNS =
      List.of("record_id", "rule", "decision", "by", "date", "note");

  private final String name;
  private final List<Line> lines;

  /** Lines that settle nothing, whatever the batch holds. */
  private final List<Refused> unusable;

  /** By number in lower case. */
  private final Map<String, List<Line>> byFold = new HashMap<>();

  private final Map<Line, String> otherwise = new ConcurrentHashMap<>();

  /** What the record says now, of those that were settled when it said something else. */
  private final Map<Line, String> ofAnother = new ConcurrentHashMap<>();

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
  private record Line(Spot spot, String pack, Settlement settlement) {
    /** What it settles: two lines of one key say the same or contradict each other. */
    String key() {
      return String.join("\n", spot.id(), spot.file(), spot.row(), pack, settlement.rule());
    }
  }

  private Settled(String name, List<Line> lines, List<Refused> unusable) {
    this.name = name;
    this.unusable = unusable;
    this.lines = lines;
    for (Line line : lines) {
      byFinding
          .computeIfAbsent(key(line.spot().id(), line.settlement().rule()), k -> new ArrayList<>())
          .add(line);
      byFold.computeIfAbsent(fold(line.spot().id()), k -> new ArrayList<>()).add(line);
    }
  }

  private static String fold(String id) {
    return id.toLowerCase(Locale.ROOT);
  }

  /**
   * Reads the table: {@code record_id,rule,decision,by,date,note}, and {@code file}, {@code row},
   * {@code pack} and {@code written} if it has them. Each line must say who decided what, and when;
   * those that do not are set aside and named, all of them, and the finding stays open. A line
   * settles the finding of its record, as {@link Spot} has it.
   *
   * @param file null where there is none
   * @param asOf as-of date of the run; nothing is decided after it
   */
  static Settled load(@Nullable Path file, LocalDate asOf) throws RunFailure {
    if (file == null) {
      return NONE;
    }
    String name = String.valueOf(file.getFileName());
    List<Refused> unusable = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    Map<String, List<Line>> same = new LinkedHashMap<>();
    List<SideTable.Row> rows =
        SideTable.read(
            file,
            "--settled",
            COLUMNS,
            bad -> unusable.add(refused(name, bad.line(), bad.text(), bad.why())));
    for (SideTable.Row row : rows) {
      @Nullable Why why = why(row, asOf);
      if (why != null) {
        unusable.add(refused(name, row.line(), String.join(",", row.cells().values()), why));
        continue;
      }
      Settlement settlement =
          new Settlement(
              row.line(),
              EarlierReport.plain(row.get("record_id")),
              row.get("rule"),
              row.get("decision"),
              row.get("by"),
              LocalDate.parse(row.get("date")),
              row.get("note"),
              EarlierReport.plain(row.get(AnswersCsv.WRITTEN)));
      Line line = new Line(Spot.of(row), row.get("pack"), settlement);
      same.computeIfAbsent(line.key(), key -> new ArrayList<>()).add(line);
    }
    for (List<Line> all : same.values()) {
      // Which of two decisions holds is not for a program to say.
      if (all.size() == 1) {
        lines.add(all.get(0));
      } else {
        all.forEach(
            line ->
                unusable.add(
                    refused(
                        name,
                        line.settlement().line(),
                        line.spot().id() + ", " + line.settlement().rule(),
                        Why.TWO_DECISIONS)));
      }
    }
    unusable.sort(Comparator.comparingLong(Settled::line));
    return new Settled(name, lines, unusable);
  }

  private static Refused refused(String name, long line, String text, Why why) {
    return new Refused(name + ":" + line, Cap.QUOTED_LETTERS.cut(text), why);
  }

  private static long line(Refused refused) {
    return Long.parseLong(refused.place().substring(refused.place().lastIndexOf(':') + 1));
  }

  /** Why a row settles nothing, whatever the batch holds; null if it may. */
  private static @Nullable Why why(SideTable.Row row, LocalDate asOf) {
    for (String column : COLUMNS.subList(0, COLUMNS.size() - 1)) {
      if (row.get(column).isEmpty()) {
        return Why.BLANK;
      }
    }
    try {
      return LocalDate.parse(row.get("date")).isAfter(asOf) ? Why.LATER : null;
    } catch (DateTimeParseException e) {
      return Why.NO_DAY;
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
    for (Line line : byFold.getOrDefault(fold(finding.recordId()), List.of())) {
      boolean isOther = !line.spot().id().equals(finding.recordId());
      if (isOther && line.settlement().rule().equals(finding.rule().id())) {
        otherwise.merge(line, finding.recordId(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
      }
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
    if (best.settlement().isOfAnother(finding)) {
      ofAnother.merge(best, finding.deciding().written(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
    }
    return best.settlement();
  }

  /** Those that settle a finding of another figure than the one decided on, in the order given. */
  List<SettledOtherwise> ofAnother() {
    List<SettledOtherwise> all = new ArrayList<>();
    for (Line line : lines) {
      @Nullable String now = ofAnother.get(line);
      if (now != null) {
        all.add(new SettledOtherwise(line.settlement(), now));
      }
    }
    return all;
  }

  /** Those that settle no finding of the batch, in the order given. */
  List<Settlement> unmatched() {
    return lines.stream()
        .filter(line -> !met.contains(line) && !elsewhere.contains(line))
        .filter(line -> !otherwise.containsKey(line))
        .map(Line::settlement)
        .toList();
  }

  /** Lines that are not applied and say why, in the order given, those of no use first. */
  List<Refused> refused() {
    List<Refused> refused = new ArrayList<>(unusable);
    for (Line line : lines) {
      String what = line.spot().id() + ", " + line.settlement().rule();
      @Nullable String other = otherwise.get(line);
      if (met.contains(line)) {
        continue;
      }
      if (elsewhere.contains(line)) {
        refused.add(refused(name, line.settlement().line(), what, line.spot().unfit()));
      } else if (other != null) {
        refused.add(refused(name, line.settlement().line(), what + "; " + other, Why.CASE));
      }
    }
    return refused;
  }

  private static String key(String recordId, String rule) {
    return rule + "\n" + recordId;
  }
}
