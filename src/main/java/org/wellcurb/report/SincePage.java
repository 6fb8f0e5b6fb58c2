package org.wellcurb.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.report.words.Words;

/**
 * What changed since an earlier report, as its template needs it.
 *
 * @param view what changed
 * @param counts findings by what became of them, by key of the bundle
 * @param why what may have made a record be judged otherwise; empty where nothing did
 * @param told how records of numbers that repeat were told apart, as sentences
 * @param changes the changes, in words
 * @param cut what was cut, as a sentence; empty if nothing was
 */
public record SincePage(
    SinceView view,
    Map<String, Long> counts,
    List<String> why,
    List<String> told,
    List<Line> changes,
    String cut) {

  /** One change. */
  public record Line(String record, String change, String title, String licence, String place) {}

  static SincePage of(SinceView view, Words words) {
    SinceCounts c = view.counts();
    Map<String, Long> counts = new LinkedHashMap<>();
    counts.put("since.added", c.added());
    counts.put("since.new_record", c.ofNewRecords());
    counts.put("since.still", c.still());
    counts.put("since.cleared", c.cleared());
    counts.put("since.void", c.saidVoid());
    counts.put("since.untold", c.untold());
    counts.put("since.judged.short", c.judgedShort());
    counts.put("since.judged.clear", c.judgedClear());
    counts.put("since.gone", c.gone());
    List<String> why = new ArrayList<>();
    for (String pack : view.packsChanged()) {
      why.add(words.say("since.why.pack", pack));
    }
    for (String pack : view.packsAdded()) {
      why.add(words.say("since.why.pack.added", pack));
    }
    if (view.asOfChanged()) {
      why.add(words.say("since.why.asof", view.earlierAsOf(), view.asOf()));
    }
    if (view.versionChanged()) {
      why.add(words.say("since.why.version"));
    }
    if (view.newMaybeByRules() > 0) {
      why.add(words.count("since.why.rules", view.newMaybeByRules()));
    }
    if (!view.rulesMarked()) {
      why.add(words.say("since.why.unmarked"));
    }
    List<Line> lines = new ArrayList<>();
    for (SinceCsv.Changed changed : view.changes()) {
      SinceCsv.Line line = changed.line();
      lines.add(
          new Line(
              line.recordId(),
              words.say(key(changed.change())),
              line.title(),
              changed.licence(),
              words.say("place", line.file(), line.row())));
    }
    return new SincePage(
        view,
        counts,
        why,
        told(view, words),
        lines,
        lines.size() < view.totalChanges()
            ? words.say("cut", lines.size(), view.totalChanges(), Cap.SINCE_ON_PAGE.rest())
            : "");
  }

  private static List<String> told(SinceView view, Words words) {
    List<String> told = new ArrayList<>();
    for (SinceView.Told how : SinceView.Told.values()) {
      long count = view.told().getOrDefault(how, 0L);
      if (count > 0) {
        told.add(words.count(told(how), count));
      }
    }
    return told;
  }

  private static String told(SinceView.Told how) {
    return switch (how) {
      case BY_NUMBER -> "since.told.number";
      case BY_WHAT_IT_SAYS -> "since.told.said";
      case BY_ROW -> "since.told.row";
      case AS_THE_ONLY_ONE_LEFT -> "since.told.left";
      case BY_NOTHING -> "since.told.nothing";
    };
  }

  private static String key(SinceCounts.Change change) {
    return switch (change) {
      case NEW -> "since.added";
      case STILL -> "since.still";
      case CLEARED -> "since.cleared";
      case NEW_RECORD -> "since.new_record";
      case SAID_VOID -> "since.void";
      case UNTOLD -> "since.untold";
      case JUDGED_SHORT -> "since.judged.short";
      case JUDGED_CLEAR -> "since.judged.clear";
      case GONE -> "since.gone";
    };
  }
}
