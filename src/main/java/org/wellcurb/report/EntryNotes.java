package org.wellcurb.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.record.WellRecord;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.RecordResult;

/**
 * What there is to say beside single entries of a form.
 *
 * @param notes by key of the entry: what is odd in how it was read, and what falls short
 * @param readings by key of the entry: what it was read as, where it was
 * @param places by anchor of a finding on the sheet: keys of the entries that it hangs on
 */
public record EntryNotes(
    Map<String, List<String>> notes,
    Map<String, String> readings,
    Map<String, List<String>> places) {
  public EntryNotes {
    notes = Collections.unmodifiableMap(new LinkedHashMap<>(notes));
    readings = Collections.unmodifiableMap(new LinkedHashMap<>(readings));
    places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
  }

  /** What there is to say of a record. */
  public static EntryNotes of(RecordResult result, PageStyle style) {
    Map<String, List<String>> notes = new LinkedHashMap<>();
    Map<String, String> readings = new LinkedHashMap<>();
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (EntryTable table : new EntryTables(result.record(), style).all()) {
      for (EntryLine line : table.lines()) {
        if (!line.notes().isEmpty()) {
          at(notes, line.key()).addAll(line.notes());
        }
        readings.put(line.key(), line.read());
      }
    }
    for (FindingView view : new FindingViews(result, style, finding -> null).all()) {
      for (Finding finding : result.findings()) {
        if (finding.rule().id().equals(view.ruleId())) {
          List<String> keys = entries(finding, result.record());
          keys.forEach(key -> at(notes, key).add(view.letter() + ": " + view.sentence()));
          places.put(view.anchor(), keys);
          break;
        }
      }
    }
    return new EntryNotes(notes, readings, places);
  }

  /**
   * The entries that a finding stands beside: the one that decided, or those that are filled in of
   * which something else was worked out; a blank one only where nothing is filled in.
   */
  private static List<String> entries(Finding finding, WellRecord record) {
    Deciding deciding = finding.deciding();
    if (!deciding.entry().isEmpty() && deciding.subject().isEmpty()) {
      return List.of(deciding.entry());
    }
    List<String> required = finding.rule().required().stream().sorted().toList();
    List<String> filled =
        required.stream().filter(key -> record.isGiven(record.catalogue().index(key))).toList();
    return filled.isEmpty() ? required : filled;
  }

  private static List<String> at(Map<String, List<String>> notes, String key) {
    return notes.computeIfAbsent(key, none -> new ArrayList<>());
  }
}
