package org.wellcurb.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Finding;

/**
 * A correction notice as its template needs it: findings by record.
 *
 * @param view what was asked for
 * @param packs packs that judged
 * @param records findings of each record
 * @param apart the same, without those that a table holds
 * @param tables rules of which so many points ask for an entry that is blank that they share a
 *     table
 * @param atOnce what must not wait for the day of the answer
 * @param cut what was cut, as a sentence; empty if nothing was
 * @param office whom to answer: the authorities of the packs
 * @param caution what is said on every page
 */
public record NoticePage(
    NoticeView view,
    List<PackLine> packs,
    List<Noticed> records,
    List<Noticed> apart,
    List<Shared> tables,
    List<AtOnce> atOnce,
    String cut,
    String office,
    String caution) {

  /** Other entries of a rule that are named: a sum of more than these has no one to blame. */
  private static final int OTHERS_NAMED = 6;

  /** Whether a point asks for the result of a sample, and so the table for its day. */
  public boolean asksSample() {
    return view.findings().stream()
        .anyMatch(finding -> AnswersCsv.isResult(finding.deciding().entry()));
  }

  /**
   * The findings of one record.
   *
   * @param id number of the record
   * @param place input and row
   * @param elsewhere that it names a jurisdiction which the pack is not for; may be empty
   * @param lines its findings
   */
  public record Noticed(String id, String place, String elsewhere, List<Line> lines) {}

  /** Points of one rule, about nothing but a blank entry, that share a table. */
  static final int LEAST_SHARED = 4;

  /**
   * Points of one rule.
   *
   * @param first the first of them, for what is the same of all
   * @param rows all of them, in their order
   */
  public record Shared(Line first, List<Row> rows) {}

  /** A point in such a table. */
  public record Row(int number, String id, String place) {}

  /**
   * What people at one record must do before anything is put right.
   *
   * @param id number of the record
   * @param text what to do
   * @param numbers the points of the notice that it is about; none where no rule asks for it
   */
  public record AtOnce(String id, String text, List<Integer> numbers) {}

  /**
   * One finding.
   *
   * @param number its number in the notice, from 1
   * @param kind kind of finding, in lower case
   * @param sentence what is wrong
   * @param title what the rule asks
   * @param written what the record has, as written
   * @param entry the entry where it has that; empty where none decides
   * @param others other entries that the rule reads, any of which may be the one to correct
   * @param isSample whether only a new sample of the water can answer it
   * @param boxes the lines to fill in
   * @param remedy how to put it right
   * @param source where it is written
   * @param reading what may have been meant; may be empty
   * @param older that the well may be older than all that was read of the text; may be empty
   */
  public record Line(
      int number,
      String kind,
      String sentence,
      String title,
      String written,
      String entry,
      List<String> others,
      boolean isSample,
      List<AnswerBox> boxes,
      String remedy,
      SourceLine source,
      String reading,
      String older) {}

  /** Entries beside the one that decides; none where there are so many that it says nothing. */
  private static List<String> others(Finding finding, Words words) {
    List<String> others =
        finding.rule().required().stream()
            .filter(key -> !key.equals(finding.deciding().entry()))
            .map(words::entry)
            .toList();
    return others.size() <= OTHERS_NAMED ? others : List.of();
  }

  private static String older(Finding finding, Words words) {
    @Nullable LocalDate known = finding.rule().program().texts().get(finding.text()).knownFrom();
    if (known == null || Double.isNaN(finding.olderDay())) {
      return "";
    }
    return Double.isInfinite(finding.olderDay())
        ? words.say("finding.older.undated", known)
        : words.say("finding.older", known, LocalDate.ofEpochDay((long) finding.olderDay()));
  }

  /** Whether all that there is to say is that an entry is blank. */
  private static boolean isBlank(Finding finding) {
    return finding.rule().kind() == FindingKind.OMISSION
        && finding.deciding().written().isEmpty()
        && finding.possibleReading().isEmpty();
  }

  private static Map<Rule, Long> blanks(NoticeView view) {
    Map<Rule, Long> blanks = new HashMap<>();
    for (Finding finding : view.findings()) {
      if (isBlank(finding)) {
        blanks.merge(finding.rule(), 1L, Long::sum);
      }
    }
    return blanks;
  }

  private static Noticed noticed(
      Map<String, Noticed> into, String key, Finding finding, String place, String elsewhere) {
    return into.computeIfAbsent(
        key, k -> new Noticed(finding.recordId(), place, elsewhere, new ArrayList<>()));
  }

  private static String elsewhere(NoticeView view, String key, PageStyle style) {
    String named = view.elsewhere().getOrDefault(key, "");
    return named.isEmpty()
        ? ""
        : Words.in(style.language())
            .say("elsewhere", named, style.own(view.packs().get(0).title()));
  }

  private static Line line(
      int number, Finding finding, PageStyle style, FindingSentence sentence, RuleWords ruleWords) {
    Words words = Words.in(style.language());
    List<String> others = others(finding, words);
    return new Line(
        number,
        finding.rule().kind().label(),
        sentence.of(finding),
        ruleWords.title(finding.rule()),
        Cap.QUOTED_LETTERS.cut(finding.deciding().written()),
        words.entry(finding.deciding().entry()),
        others,
        AnswerBox.isSample(finding),
        AnswerBox.of(finding, !others.isEmpty()),
        ruleWords.remedy(finding.rule()),
        SourceLine.of(finding.source(), words),
        finding.possibleReading(),
        older(finding, words));
  }

  static NoticePage of(NoticeView view, PageStyle style) {
    Words words = Words.in(style.language());
    FindingSentence sentence = new FindingSentence(style);
    RuleWords ruleWords = new RuleWords(words);
    Map<String, Noticed> records = new LinkedHashMap<>();
    Map<String, Noticed> apart = new LinkedHashMap<>();
    Map<Rule, Long> blanks = blanks(view);
    Map<Rule, Shared> tables = new LinkedHashMap<>();
    int number = 0;
    for (Finding finding : view.findings()) {
      number++;
      String place = words.say("place", finding.file(), finding.row());
      String key = NoticeView.where(finding);
      String elsewhere = elsewhere(view, key, style);
      Line line = line(number, finding, style, sentence, ruleWords);
      noticed(records, key, finding, place, elsewhere).lines().add(line);
      if (isBlank(finding) && blanks.getOrDefault(finding.rule(), 0L) >= LEAST_SHARED) {
        tables
            .computeIfAbsent(finding.rule(), rule -> new Shared(line, new ArrayList<>()))
            .rows()
            .add(new Row(number, finding.recordId(), place));
      } else {
        noticed(apart, key, finding, place, elsewhere).lines().add(line);
      }
    }
    int shown = view.findings().size();
    return new NoticePage(
        view,
        view.packs().stream().map(PackLine::of).toList(),
        List.copyOf(records.values()),
        List.copyOf(apart.values()),
        List.copyOf(tables.values()),
        new NoticeHazards(view, style).all(),
        shown < view.total() ? words.say("notice.cut", shown, view.total()) : "",
        String.join(
            "; ",
            view.packs().stream().map(pack -> style.own(pack.authority())).distinct().toList()),
        words.say("caution.always"));
  }
}
