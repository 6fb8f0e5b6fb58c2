package org.wellcurb.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.report.words.Words;
import org.wellcurb.screening.Finding;

/**
 * What a notice asks for before the day of its answer, in the words that the sheet of the record
 * begins with: see {@link Urgent} for water, all that the sample shows in one sentence, and the
 * pack for the rest.
 */
final class NoticeHazards {
  private final NoticeView view;
  private final PageStyle style;
  private final Words words;

  NoticeHazards(NoticeView view, PageStyle style) {
    this.view = view;
    this.style = style;
    words = Words.in(style.language());
  }

  /** One for each record and text, in the order of the notice. */
  List<NoticePage.AtOnce> all() {
    Map<String, NoticePage.AtOnce> all = new LinkedHashMap<>();
    List<Finding> findings = view.findings();
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i);
      String water = view.waters().getOrDefault(NoticeView.where(finding), "");
      if (!water.isEmpty()) {
        // Said even where no point of the notice is about it: the rules of the pack may not be.
        NoticePage.AtOnce told = at(all, finding, words.say(water));
        if (Urgent.isOfWater(finding.deciding().entry())) {
          told.numbers().add(i + 1);
          continue;
        }
      }
      String own = finding.rule().atOnce();
      if (!own.isEmpty()) {
        at(all, finding, style.own(own)).numbers().add(i + 1);
      }
    }
    return List.copyOf(all.values());
  }

  private static NoticePage.AtOnce at(
      Map<String, NoticePage.AtOnce> all, Finding finding, String text) {
    return all.computeIfAbsent(
        NoticeView.where(finding) + "\n" + text,
        key -> new NoticePage.AtOnce(finding.recordId(), text, new ArrayList<>()));
  }
}
