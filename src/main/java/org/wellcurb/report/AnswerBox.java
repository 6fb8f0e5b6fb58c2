package org.wellcurb.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.screening.Finding;

/**
 * A line to fill in under a point of a notice. Which there are hangs on what can answer it: nobody
 * puts right on the well a day that was written wrong.
 *
 * @param key the words before the line, of the bundle
 * @param ticked whether it is an answer of its own, or belongs to the one above it
 * @param brief whether a day is all that goes there
 */
public record AnswerBox(String key, boolean ticked, boolean brief) {
  private static final List<String> PAPERS =
      List.of("dates.", "driller.", "installer.", "record.", "well.tag");

  private static AnswerBox answer(String key) {
    return new AnswerBox(key, /* ticked= */ true, /* brief= */ false);
  }

  private static AnswerBox more(String key) {
    return new AnswerBox(key, /* ticked= */ false, /* brief= */ false);
  }

  private static AnswerBox day(String key) {
    return new AnswerBox(key, /* ticked= */ true, /* brief= */ true);
  }

  /**
   * What may answer a finding, in the order in which most will.
   *
   * @param hasOthers whether another entry than the one that decides may be the one to correct
   */
  static List<AnswerBox> of(Finding finding, boolean hasOthers) {
    @Nullable Entry entry = Catalogue.standard().find(finding.deciding().entry());
    FindingKind kind = finding.rule().kind();
    if (isSample(finding)) {
      return List.of(
          day("notice.sampled"),
          more("notice.laboratory"),
          day("notice.done"),
          more("notice.done.by"),
          answer("notice.explained"));
    }
    if (kind == FindingKind.OMISSION) {
      boolean isDay = entry != null && entry.kind() == Kind.DATE;
      return List.of(
          isDay ? day("notice.fill.day") : answer("notice.fill"), answer("notice.fill.blank"));
    }
    List<AnswerBox> boxes = new ArrayList<>();
    boxes.add(answer(hasOthers ? "notice.corrected.which" : "notice.corrected"));
    if (entry != null && PAPERS.stream().anyMatch(entry.key()::startsWith)) {
      boxes.add(answer("notice.explained"));
      boxes.add(answer("notice.document"));
      return boxes;
    }
    boolean isMeasured = finding.deciding().unit() != null;
    if (isMeasured) {
      boxes.add(day("notice.measured"));
      boxes.add(more("notice.measured.found"));
    }
    boxes.add(answer("notice.explained"));
    if (kind != FindingKind.DISCREPANCY) {
      boxes.add(day("notice.done"));
      boxes.add(more("notice.done.by"));
      if (isMeasured) {
        boxes.add(more("notice.result"));
      }
    }
    return boxes;
  }

  /** Whether only a new sample of the water can answer it. */
  static boolean isSample(Finding finding) {
    return AnswersCsv.isResult(finding.deciding().entry())
        && (finding.rule().kind() == FindingKind.DEFICIENCY
            || !finding.deciding().written().isEmpty());
  }
}
