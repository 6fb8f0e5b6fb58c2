package org.wellcurb.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.report.AnswersCsv;
import org.wellcurb.report.Cap;
import org.wellcurb.report.Explained;
import org.wellcurb.report.Refused;
import org.wellcurb.report.Refused.Why;

/**
 * Corrections that came back with notices: what is filled in takes the place of what a record has.
 * May be shared between threads; what is counted does not hang on their number.
 */
final class Answers {
  /** No answers. */
  static final Answers NONE = new Answers("", List.of(), List.of());

  private static final int UNMET = 0;
  private static final int APPLIED = Why.values().length + 1;

  private final String name;
  private final List<Line> lines;
  private final Map<String, List<Line>> byRecord = new LinkedHashMap<>();

  /**
   * Of each line {@link #UNMET}, one more than the place of a {@link Why}, or what follows them.
   */
  private final AtomicIntegerArray fates;

  /** Of each line, records that it was applied to by their number. */
  private final AtomicIntegerArray uses;

  /** Lines with an explanation, and whether each met its record. */
  private final List<Explained> explained;

  private final Map<String, List<Integer>> byExplained = new HashMap<>();
  private final AtomicIntegerArray met;

  private final LongAdder records = new LongAdder();
  private final LongAdder corrections = new LongAdder();

  /**
   * A line that is filled in.
   *
   * @param place its place among them
   * @param line its line in the file
   * @param spot the record that it means
   * @param licence the licence that the table was sent to; empty where it does not say
   * @param entry the entry
   * @param text what is filled in
   */
  record Line(int place, long line, Spot spot, String licence, Entry entry, String text) {}

  private Answers(String name, List<Line> lines, List<Explained> explained) {
    this.name = name;
    this.explained = explained;
    this.met = new AtomicIntegerArray(explained.size());
    for (int i = 0; i < explained.size(); i++) {
      byExplained.computeIfAbsent(explained.get(i).recordId(), id -> new ArrayList<>()).add(i);
    }
    this.lines = lines;
    this.fates = new AtomicIntegerArray(lines.size());
    this.uses = new AtomicIntegerArray(lines.size());
    for (Line line : lines) {
      byRecord.computeIfAbsent(line.spot().id(), id -> new ArrayList<>()).add(line);
    }
  }

  /**
   * Reads a returned table. Lines with nothing under {@code corrected} correct nothing.
   *
   * @param file null where there is none
   */
  static Answers load(@Nullable Path file, Catalogue catalogue) throws RunFailure {
    if (file == null) {
      return NONE;
    }
    List<Line> lines = new ArrayList<>();
    Map<String, String> said = new HashMap<>();
    List<Explained> explained = new ArrayList<>();
    List<String> required = List.of(AnswersCsv.RECORD, AnswersCsv.ENTRY, AnswersCsv.CORRECTED);
    for (SideTable.Row row : SideTable.read(file, "--answers", required)) {
      String corrected = EarlierReport.plain(row.get(AnswersCsv.CORRECTED));
      if (!row.get(AnswersCsv.EXPLANATION).isEmpty()) {
        explained.add(explained(row, corrected));
      }
      if (corrected.isEmpty()) {
        continue;
      }
      String where = file + ":" + row.line() + ": ";
      Entry entry = entry(row.get(AnswersCsv.ENTRY), where, catalogue);
      Spot spot = Spot.of(row);
      String key = String.join("\n", spot.id(), spot.file(), spot.row(), entry.key());
      @Nullable String other = said.put(key, corrected);
      if (other == null) {
        String licence = EarlierReport.plain(row.get(AnswersCsv.LICENCE));
        lines.add(new Line(lines.size(), row.line(), spot, licence, entry, corrected));
      } else if (!other.equals(corrected)) {
        throw RunFailure.unusable(
            where
                + entry.key()
                + " of record "
                + spot.id()
                + " has two corrections, '"
                + other
                + "' and '"
                + corrected
                + "'; leave one");
      }
    }
    return new Answers(String.valueOf(file.getFileName()), lines, explained);
  }

  private static Explained explained(SideTable.Row row, String corrected) {
    Spot spot = Spot.of(row);
    return new Explained(
        row.line(),
        spot.id(),
        spot.file(),
        spot.row(),
        EarlierReport.plain(row.get(AnswersCsv.LICENCE)),
        EarlierReport.plain(row.get(AnswersCsv.RULE)),
        EarlierReport.plain(row.get(AnswersCsv.ENTRY)),
        corrected,
        EarlierReport.plain(row.get(AnswersCsv.EXPLANATION)),
        false);
  }

  /** Notes the explanations that a record has, if they came from its licence. */
  void meet(String recordId, Predicate<String> isTheirs) {
    for (int i : byExplained.getOrDefault(recordId, List.of())) {
      if (isTheirs.test(explained.get(i).licence())) {
        met.set(i, 1);
      }
    }
  }

  /** What was said of findings, in the order given, once every record was met. */
  List<Explained> explained() {
    List<Explained> all = new ArrayList<>();
    for (int i = 0; i < explained.size(); i++) {
      all.add(explained.get(i).met(met.get(i) != 0));
    }
    return all;
  }

  private static Entry entry(String key, String where, Catalogue catalogue) throws RunFailure {
    @Nullable Entry entry = catalogue.find(key);
    if (entry == null) {
      @Nullable String nearest = catalogue.nearest(key);
      throw RunFailure.unusable(
          where
              + "there is no entry '"
              + key
              + "'"
              + (nearest == null
                  ? "; blank --as csv prints all entries"
                  : "; did you mean '" + nearest + "'?"));
    }
    if (entry.index() == 0) {
      throw RunFailure.unusable(
          where + "the number of a record cannot be corrected so; mend it in the records");
    }
    return entry;
  }

  boolean isEmpty() {
    return lines.isEmpty() && explained.isEmpty();
  }

  /** The numbers that are answered for. */
  Set<String> numbers() {
    return byRecord.keySet();
  }

  /** Lines that name this number, whichever row they mean. */
  List<Line> of(String recordId) {
    return byRecord.getOrDefault(recordId, List.of());
  }

  /** Notes that a line was not applied. */
  void refuse(Line line, Why why) {
    fates.accumulateAndGet(line.place(), why.ordinal() + 1, Math::max);
  }

  /** Notes that these lines were applied to one record. */
  void used(List<Line> applied) {
    for (Line line : applied) {
      fates.accumulateAndGet(line.place(), APPLIED, Math::max);
      uses.incrementAndGet(line.place());
    }
    records.increment();
    corrections.add(applied.stream().map(Line::entry).distinct().count());
  }

  /**
   * Refuses a run in which a line without file and row met several records, which can be known only
   * afterwards where the input is read but once.
   */
  void refuseIfUsedTwice() throws RunFailure {
    for (Line line : lines) {
      if (uses.get(line.place()) > 1) {
        throw RunFailure.unusable(
            name
                + ":"
                + line.line()
                + ": record "
                + line.spot().id()
                + ": "
                + Why.REPEATED.label());
      }
    }
  }

  long records() {
    return records.sum();
  }

  long corrections() {
    return corrections.sum();
  }

  /** Lines that name a record of the batch and were not applied, in their order. */
  List<Refused> refused() {
    List<Refused> refused = new ArrayList<>();
    for (Line line : lines) {
      int fate = fates.get(line.place());
      if (fate != UNMET && fate != APPLIED) {
        refused.add(
            new Refused(
                name + ":" + line.line(),
                Cap.QUOTED_LETTERS.cut(line.spot().id())
                    + ", "
                    + line.entry().key()
                    + ": "
                    + Cap.QUOTED_LETTERS.cut(line.text()),
                Why.values()[fate - 1]));
      }
    }
    return refused;
  }

  /** Records that are answered for and not in the batch, with the line, in the order given. */
  List<String> unmatched() {
    List<String> unmatched = new ArrayList<>();
    byRecord.forEach(
        (id, all) -> {
          if (all.stream().allMatch(line -> fates.get(line.place()) == UNMET)) {
            unmatched.add(all.get(0).line() + ": " + id);
          }
        });
    return unmatched;
  }
}
