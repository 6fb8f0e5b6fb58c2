package org.wellcurb.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.RecordResult;

/** What there is to say beside single entries of a form: how they were read, what falls short. */
public final class EntryNotes {
  private EntryNotes() {}

  /** What is to be said, by key of the entry; findings where the entry is what decided. */
  public static Map<String, List<String>> of(RecordResult result, PageStyle style) {
    Map<String, List<String>> notes = new LinkedHashMap<>();
    for (EntryTable table : new EntryTables(result.record(), style).all()) {
      for (EntryLine line : table.lines()) {
        if (!line.notes().isEmpty()) {
          at(notes, line.key()).addAll(line.notes());
        }
      }
    }
    List<FindingView> views = new FindingViews(result, style, finding -> null).all();
    for (FindingView view : views) {
      for (Finding finding : result.findings()) {
        if (finding.rule().id().equals(view.ruleId()) && !finding.deciding().entry().isEmpty()) {
          at(notes, finding.deciding().entry()).add(view.letter() + ": " + view.sentence());
          break;
        }
      }
    }
    return notes;
  }

  private static List<String> at(Map<String, List<String>> notes, String key) {
    return notes.computeIfAbsent(key, none -> new ArrayList<>());
  }
}
