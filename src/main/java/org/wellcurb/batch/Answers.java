package org.wellcurb.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.AnswersCsv;
import org.wellcurb.report.Cap;
import org.wellcurb.report.Corrected;
import org.wellcurb.report.Explained;
import org.wellcurb.report.Refused;
import org.wellcurb.report.Refused.Why;

/**
 * Corrections that came back with notices: what is filled in takes the place of what a record has.
 * May be shared between threads; what is counted does not hang on their number.
 */
final class Answers {
  /** No answers. */
  static final Answers NONE = new Answers("", List.of(), List.of(), List.of(), Map.of());

  /** What a form says of itself, by which rules and variances are chosen. */
  private static final Set<String> OF_THE_OFFICE =
      Set.of("record.id", "record.covers", "record.jurisdiction", "record.variances");

  private static final int UNMET = 0;
  private static final int APPLIED = Why.values().length + 1;

  private final String name;
  private final List<Line> lines;

  /** Lines that answer nothing, whatever the batch holds. */
  private final List<Numbered> unusable;

  private final Map<String, List<Line>> byRecord = new LinkedHashMap<>();

  /**
   * Of each line {@link #UNMET}, one more than the place of a {@link Why}, or what follows them.
   */
  private final AtomicIntegerArray fates;

  /** Of each line, records that it was applied to by their number. */
  private final AtomicIntegerArray uses;

  /** Of each line that was applied, what the record had. */
  private final AtomicReferenceArray<String> before;

  /** Lines with an explanation, and whether each met its record. */
  private final List<Explained> explained;

  /** What a line that is filled in says, by its number. */
  private final Map<Long, Explained> filled;

  /** Of each line, whether it was applied and says that its entry does not apply. */
  private final AtomicIntegerArray voids;

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
   * @param sampled day of the sample that it is the result of; empty if not said
   * @param laboratory who found it; empty if not said
   */
  record Line(
      int place,
      long line,
      Spot spot,
      String licence,
      Entry entry,
      String text,
      String sampled,
      String laboratory) {
    /** What it answers: two lines of one key say the same or contradict each other. */
    String key() {
      return String.join("\n", spot.id(), spot.file(), spot.row(), entry.key());
    }

    /** What it says of that. */
    String said() {
      return String.join("\n", text, sampled, laboratory);
    }

    Line at(int other) {
      return new Line(other, line, spot, licence, entry, text, sampled, laboratory);
    }
  }

  /** A line that is not applied, with its number in the file. */
  private record Numbered(long line, Refused refused) {}

  private Answers(
      String name,
      List<Line> lines,
      List<Numbered> unusable,
      List<Explained> explained,
      Map<Long, Explained> filled) {
    this.name = name;
    this.unusable = unusable;
    this.explained = explained;
    this.met = new AtomicIntegerArray(explained.size());
    for (int i = 0; i < explained.size(); i++) {
      byExplained.computeIfAbsent(explained.get(i).recordId(), id -> new ArrayList<>()).add(i);
    }
    this.lines = lines;
    this.filled = filled;
    this.voids = new AtomicIntegerArray(lines.size());
    this.fates = new AtomicIntegerArray(lines.size());
    this.uses = new AtomicIntegerArray(lines.size());
    this.before = new AtomicReferenceArray<>(lines.size());
    for (Line line : lines) {
      byRecord.computeIfAbsent(line.spot().id(), id -> new ArrayList<>()).add(line);
    }
  }

  /**
   * Reads a returned table. Lines with nothing under {@code corrected} correct nothing; those that
   * are faulty are set aside and named, all of them, and the others apply.
   *
   * @param file null where there is none
   */
  static Answers load(@Nullable Path file, Catalogue catalogue) throws RunFailure {
    if (file == null) {
      return NONE;
    }
    String name = String.valueOf(file.getFileName());
    List<Numbered> unusable = new ArrayList<>();
    List<Explained> explained = new ArrayList<>();
    Map<Long, Explained> filled = new HashMap<>();
    Map<String, List<Line>> same = new LinkedHashMap<>();
    List<String> required = List.of(AnswersCsv.RECORD, AnswersCsv.ENTRY, AnswersCsv.CORRECTED);
    List<SideTable.Row> rows =
        SideTable.read(
            file,
            "--answers",
            required,
            bad -> unusable.add(refused(name, bad.line(), bad.text(), bad.why())));
    for (SideTable.Row row : rows) {
      String corrected = EarlierReport.plain(row.get(AnswersCsv.CORRECTED));
      if (!row.get(AnswersCsv.EXPLANATION).isEmpty()) {
        explained.add(explained(row, corrected));
      }
      if (corrected.isEmpty()) {
        continue;
      }
      filled.put(row.line(), explained(row, corrected));
      String key = row.get(AnswersCsv.ENTRY);
      @Nullable Entry entry = catalogue.find(key);
      @Nullable Why why = why(row, entry);
      if (why != null || entry == null) {
        Why fault = why == null ? Why.NO_ENTRY : why;
        unusable.add(refused(name, row.line(), what(row, corrected, catalogue), fault));
        continue;
      }
      Line line =
          new Line(
              0,
              row.line(),
              Spot.of(row),
              EarlierReport.plain(row.get(AnswersCsv.LICENCE)),
              entry,
              corrected,
              row.get(AnswersCsv.SAMPLED),
              EarlierReport.plain(row.get(AnswersCsv.LABORATORY)));
      same.computeIfAbsent(line.key(), any -> new ArrayList<>()).add(line);
    }
    List<Line> lines = new ArrayList<>();
    for (List<Line> all : same.values()) {
      // Which of two corrections holds is not for a program to say.
      if (all.stream().map(Line::said).distinct().count() == 1) {
        lines.add(all.get(0));
      } else {
        all.forEach(line -> unusable.add(refused(name, line.line(), what(line), Why.TWO_ANSWERS)));
      }
    }
    lines.sort(Comparator.comparingLong(Line::line));
    for (int i = 0; i < lines.size(); i++) {
      lines.set(i, lines.get(i).at(i));
    }
    return new Answers(name, lines, unusable, explained, filled);
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
        corrected.isEmpty() ? EarlierReport.plain(row.get(AnswersCsv.WRITTEN)) : "",
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

  /** Notes that a line that was applied says that its entry does not apply. */
  void saidVoid(Line line) {
    voids.set(line.place(), 1);
  }

  /**
   * Answers that say of a blank entry that it does not apply, in the order given: nobody has seen
   * whether that is so, and what asked for the entry is cleared by it.
   */
  List<Explained> saidVoid() {
    List<Explained> all = new ArrayList<>();
    for (Line line : lines) {
      Explained said = filled.get(line.line());
      if (said != null && voids.get(line.place()) != 0) {
        all.add(said.met(true));
      }
    }
    return all;
  }

  /** What someone has to look at: explanations, and what was said not to apply. */
  List<Explained> toLookAt() {
    List<Explained> all = explained();
    Set<Long> known = new HashSet<>();
    all.forEach(each -> known.add(each.line()));
    saidVoid().stream().filter(each -> !known.contains(each.line())).forEach(all::add);
    all.sort(Comparator.comparingLong(Explained::line));
    return all;
  }

  /**
   * Why a row answers nothing, whatever the batch holds; null if it may. What a form says of
   * itself, what it covers and which variances it has, is not for whom a notice is sent to to say.
   */
  private static @Nullable Why why(SideTable.Row row, @Nullable Entry entry) {
    if (row.get(AnswersCsv.RECORD).isEmpty()) {
      return Why.NO_RECORD;
    }
    if (entry == null) {
      return Why.NO_ENTRY;
    }
    return OF_THE_OFFICE.contains(entry.key()) ? Why.RECORD_ID : null;
  }

  private static String what(Line line) {
    return Cap.QUOTED_LETTERS.cut(line.spot().id())
        + ", "
        + line.entry().key()
        + ": "
        + Cap.QUOTED_LETTERS.cut(line.text());
  }

  /** What a row says whose entry may be none; then with the entry that is nearest. */
  private static String what(SideTable.Row row, String corrected, Catalogue catalogue) {
    String key = row.get(AnswersCsv.ENTRY);
    @Nullable String nearest = catalogue.find(key) == null ? catalogue.nearest(key) : null;
    return EarlierReport.plain(row.get(AnswersCsv.RECORD))
        + ", "
        + key
        + ": "
        + corrected
        + (nearest == null ? "" : "; " + nearest + "?");
  }

  private static Numbered refused(String name, long line, String text, Why why) {
    return new Numbered(line, new Refused(name + ":" + line, Cap.QUOTED_LETTERS.cut(text), why));
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

  /** Notes that these lines were applied to one record, as it was. */
  void used(List<Line> applied, WellRecord was) {
    for (Line line : applied) {
      before.set(line.place(), was.written(line.entry().index()));
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

  /** What was corrected, from what to what, in the order given. */
  List<Corrected> corrected() {
    List<Corrected> all = new ArrayList<>();
    for (Line line : lines) {
      if (fates.get(line.place()) == APPLIED) {
        @Nullable String was = before.get(line.place());
        String entry = line.entry().key();
        String from = was == null ? "" : was;
        all.add(new Corrected(line.line(), line.spot().id(), entry, from, line.text()));
      }
    }
    return all;
  }

  long records() {
    return records.sum();
  }

  long corrections() {
    return corrections.sum();
  }

  /** Lines that were not applied and say why, in their order; not those whose record is missing. */
  List<Refused> refused() {
    List<Numbered> refused = new ArrayList<>(unusable);
    for (Line line : lines) {
      int fate = fates.get(line.place());
      if (fate != UNMET && fate != APPLIED) {
        Refused why = new Refused(name + ":" + line.line(), what(line), Why.values()[fate - 1]);
        refused.add(new Numbered(line.line(), why));
      }
    }
    refused.sort(Comparator.comparingLong(Numbered::line));
    return refused.stream().map(Numbered::refused).toList();
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
