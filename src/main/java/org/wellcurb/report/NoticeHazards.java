package org.wellcurb.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.UnfitWater;

/**
 * What a notice asks for before the day of its answer, in the words that the sheet of the record
 * begins with: see {@link Urgent} for water, and the pack for the rest.
 */
final class NoticeHazards {
  private static final String PRESENT = "present";

  private final List<Finding> findings;
  private final PageStyle style;
  private final Words words;

  NoticeHazards(List<Finding> findings, PageStyle style) {
    this.findings = findings;
    this.style = style;
    words = Words.in(style.language());
  }

  /** One for each record and text, in the order of the notice. */
  List<NoticePage.AtOnce> all() {
    Map<String, NoticePage.AtOnce> all = new LinkedHashMap<>();
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i);
      String text = text(finding);
      if (!text.isEmpty()) {
        all.computeIfAbsent(
                where(finding) + "\n" + text,
                key -> new NoticePage.AtOnce(finding.recordId(), text, new ArrayList<>()))
            .numbers()
            .add(i + 1);
      }
    }
    return List.copyOf(all.values());
  }

  private static String where(Finding finding) {
    return finding.file() + "\n" + finding.row() + "\n" + finding.recordId();
  }

  private String text(Finding finding) {
    if (!finding.rule().atOnce().isEmpty()) {
      return style.own(finding.rule().atOnce());
    }
    boolean hasBacteria = hasIn(finding, NoticeHazards::isBacteria);
    boolean hasNitrate = hasIn(finding, NoticeHazards::isNitrate);
    if (isBacteria(finding)) {
      return words.say(hasNitrate ? "first.bacteria.nitrate" : "first.bacteria");
    }
    if (isNitrate(finding)) {
      return words.say(hasBacteria ? "first.bacteria.nitrate" : "first.nitrate");
    }
    return "";
  }

  private boolean hasIn(Finding record, Predicate<Finding> what) {
    return findings.stream().anyMatch(each -> where(each).equals(where(record)) && what.test(each));
  }

  private static boolean isBacteria(Finding finding) {
    Deciding deciding = finding.deciding();
    boolean isShown =
        finding.rule().kind() == FindingKind.DEFICIENCY && deciding.valueText().equals(PRESENT);
    // Or another entry says that they are there, which this one contradicts.
    return UnfitWater.BACTERIA.contains(deciding.entry())
        && (isShown || deciding.limitText().equals(PRESENT));
  }

  private static boolean isNitrate(Finding finding) {
    Deciding deciding = finding.deciding();
    return finding.rule().kind() == FindingKind.DEFICIENCY
        && deciding.entry().equals(UnfitWater.NITRATE)
        && deciding.value() > deciding.limit();
  }
}
