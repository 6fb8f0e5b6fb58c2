package org.wellcurb.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.report.AnswersCsv;

/**
 * Corrections that came back with notices: what is filled in takes the place of what a record has.
 * May be shared between threads; what is counted does not hang on their number.
 */
final class Answers {
  /** No answers. */
  static final Answers NONE = new Answers(Map.of(), Map.of());

  private final Map<String, Map<Integer, String>> byRecord;
  private final Map<String, Long> lines;
  private final Set<String> met = ConcurrentHashMap.newKeySet();
  private final LongAdder records = new LongAdder();
  private final LongAdder corrections = new LongAdder();

  private Answers(Map<String, Map<Integer, String>> byRecord, Map<String, Long> lines) {
    this.byRecord = byRecord;
    this.lines = lines;
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
    Map<String, Map<Integer, String>> byRecord = new LinkedHashMap<>();
    Map<String, Long> lines = new LinkedHashMap<>();
    List<String> required = List.of(AnswersCsv.RECORD, AnswersCsv.ENTRY, AnswersCsv.CORRECTED);
    for (SideTable.Row row : SideTable.read(file, "--answers", required)) {
      String corrected = row.get(AnswersCsv.CORRECTED);
      if (corrected.isEmpty()) {
        continue;
      }
      String where = file + ":" + row.line() + ": ";
      String key = row.get(AnswersCsv.ENTRY);
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
      String id = row.get(AnswersCsv.RECORD);
      lines.putIfAbsent(id, row.line());
      @Nullable String other =
          byRecord.computeIfAbsent(id, i -> new TreeMap<>()).put(entry.index(), corrected);
      if (other != null && !other.equals(corrected)) {
        throw RunFailure.unusable(
            where
                + key
                + " of record "
                + id
                + " has two corrections, '"
                + other
                + "' and '"
                + corrected
                + "'; leave one");
      }
    }
    return new Answers(byRecord, lines);
  }

  boolean isEmpty() {
    return byRecord.isEmpty();
  }

  /** Corrections of this record, by place of the entry; empty where there are none. */
  Map<Integer, String> of(String recordId) {
    return byRecord.getOrDefault(recordId, Map.of());
  }

  /** Counts a record that was corrected. */
  void used(String recordId, int entries) {
    met.add(recordId);
    records.increment();
    corrections.add(entries);
  }

  long records() {
    return records.sum();
  }

  long corrections() {
    return corrections.sum();
  }

  /** Records that are answered for and not in the batch, with the line, in the order given. */
  List<String> unmatched() {
    List<String> unmatched = new ArrayList<>();
    lines.forEach(
        (id, line) -> {
          if (!met.contains(id)) {
            unmatched.add(line + ": " + id);
          }
        });
    return unmatched;
  }
}
