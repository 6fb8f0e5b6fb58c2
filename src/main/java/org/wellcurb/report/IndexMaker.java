package org.wellcurb.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.crosscheck.Share;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.report.drawing.BatchMap;
import org.wellcurb.report.drawing.Drawing;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.Source;
import org.wellcurb.screening.Tally;

/** Makes what the batch page shows. */
final class IndexMaker {
  private static final String RECORDS = "#records";

  /** Records that cannot wait which the first step names; the others stand first in the list. */
  private static final int NOW_NAMED = 12;

  /** Files and columns that a step names. */
  private static final int NAMED = 3;

  private final BatchView batch;
  private final PageStyle style;
  private final Words words;
  private final RuleWords ruleWords;
  private final List<ReadingTrouble> troubles;

  IndexMaker(BatchView batch, PageStyle style) {
    this.batch = batch;
    this.style = style;
    words = Words.in(style.language());
    ruleWords = new RuleWords(words);
    troubles = ReadingTrouble.of(batch.inputs());
  }

  IndexView index() {
    List<RuleRow> rules = rules();
    return new IndexView(
        batch,
        steps(rules),
        rules.stream().filter(row -> row.fallsShort() > 0).toList(),
        rules.stream().filter(row -> row.fallsShort() == 0 && told(row) == 0).toList(),
        rules.stream().filter(row -> row.fallsShort() == 0 && told(row) > 0).toList(),
        batch.asks().stream()
            .map(ask -> new AskLine(words.entry(ask.entry()), ask.outcomes(), ask.records()))
            .toList(),
        ruleAsks(),
        batch.contractors().stream().map(line -> ContractorRow.of(line, words)).toList(),
        GridPage.of(batch.grid(), batch.tallies(), words),
        batch.tallies().stream().map(tally -> PackLine.of(tally.pack())).toList(),
        sources(),
        cuts(),
        outcomes(),
        kinds(),
        troubles.stream()
            .limit(Cap.TROUBLES_ON_PAGE.most())
            .map(trouble -> trouble.fully(words, areOfOneInput()))
            .toList(),
        ReadingPart.of(batch.inputs(), words),
        maps(),
        cross(),
        batch.files());
  }

  private static long told(RuleRow row) {
    return row.meets() + row.fallsShort() + row.waived();
  }

  private List<RuleRow> rules() {
    List<RuleRow> rows = new ArrayList<>();
    for (Tally tally : batch.tallies()) {
      List<Rule> rules = tally.pack().rules();
      for (int i = 0; i < rules.size(); i++) {
        rows.add(row(tally, rules.get(i), i));
      }
    }
    rows.sort(
        Comparator.comparingLong((RuleRow row) -> -row.fallsShort())
            .thenComparingLong(row -> -row.cannotTell()));
    return rows;
  }

  private RuleRow row(Tally tally, Rule rule, int i) {
    long meets = tally.count(i, Outcome.MEETS);
    long fails = tally.count(i, Outcome.FALLS_SHORT);
    Share rate = Share.of(fails, meets + fails);
    return new RuleRow(
        tally.pack().id(),
        rule.id(),
        ruleWords.title(rule),
        rule.kind().label(),
        meets,
        fails,
        tally.count(i, Outcome.CANNOT_TELL),
        tally.count(i, Outcome.NOT_APPLICABLE),
        tally.count(i, Outcome.WAIVED),
        rate.of() == 0 ? "" : rate(rate),
        RateBar.of(rate));
  }

  private List<RuleAskLine> ruleAsks() {
    List<RuleAskLine> lines = new ArrayList<>();
    for (RuleAsk ask : batch.ruleAsks()) {
      List<String> named = new ArrayList<>();
      for (AskLine entry : ask.entries()) {
        named.add(words.say("ask.entry", words.entry(entry.entry()), entry.outcomes()));
      }
      int most = Cap.RULE_ASKS_NAMED.most();
      String text = String.join(", ", named.subList(0, Math.min(most, named.size())));
      Pack pack = batch.tallies().get(ask.pack()).pack();
      lines.add(
          new RuleAskLine(
              pack.rules().get(ask.rule()).title(),
              pack.id(),
              ask.records(),
              named.size() > most ? text + ", " + Cap.ELLIPSIS : text));
    }
    return lines;
  }

  private String rate(Share rate) {
    return Rates.words(rate, words);
  }

  /** The records in the list that this pack judged. */
  private List<RecordLine> records(int pack) {
    String id = batch.tallies().get(pack).pack().id();
    return batch.records().stream().filter(line -> line.pack().equals(id)).toList();
  }

  private List<Drawing> maps() {
    List<Drawing> maps = new ArrayList<>();
    for (int i = 0; i < batch.tallies().size(); i++) {
      String pack =
          batch.tallies().size() == 1 ? "" : style.own(batch.tallies().get(i).pack().title());
      @Nullable Drawing map =
          BatchMap.of("map-" + (i + 1), pack, batch.maps().of(i), records(i), words);
      if (map != null) {
        maps.add(map);
      }
    }
    return maps;
  }

  private @Nullable CrossPage cross() {
    CrossView cross = batch.cross();
    return cross == null ? null : new CrossMaker(cross, style).page();
  }

  private List<Step> steps(List<RuleRow> rules) {
    List<Step> steps = new ArrayList<>();
    List<RecordLine> now = batch.records().stream().filter(line -> line.harm().isNow()).toList();
    if (!now.isEmpty()) {
      List<RecordLine> named = now.subList(0, Math.min(NOW_NAMED, now.size()));
      steps.add(Step.about(named, words.count("batch.first.now", now.size())));
      if (named.size() < now.size()) {
        steps.add(Step.to(RECORDS, words.count("batch.first.now.more", now.size() - named.size())));
      }
    }
    steps.addAll(reading());
    if (batch.elsewhere().records() > 0) {
      String pack = style.own(batch.tallies().get(0).pack().title());
      steps.add(
          Step.of(
              words.count(
                  "batch.first.elsewhere",
                  batch.elsewhere().records(),
                  batch.elsewhere().named(),
                  pack)));
    }
    if (batch.withDeficiency() > 0) {
      steps.add(
          Step.to(
              RECORDS,
              words.count("batch.first.deficiency", batch.withDeficiency(), batch.screened())));
    } else if (batch.withFindings() > 0) {
      steps.add(
          Step.to(
              RECORDS, words.count("batch.first.finding", batch.withFindings(), batch.screened())));
    }
    if (batch.setAside() > 0 && batch.screened() > 0) {
      steps.add(Step.to("#aside", words.count("batch.first.aside", batch.setAside())));
    }
    if (!rules.isEmpty() && rules.get(0).fallsShort() > 1) {
      steps.add(
          Step.to(
              "#rules",
              words.count(
                  "batch.first.rule", rules.get(0).fallsShort(), style.own(rules.get(0).title()))));
    }
    if (!batch.asks().isEmpty()) {
      AskLine ask = batch.asks().get(0);
      steps.add(
          Step.to(
              "#ask",
              words.count(
                  "batch.first.ask", ask.outcomes(), words.entry(ask.entry()), ask.records())));
    }
    if (batch.screened() == 0 && batch.setAside() > 0) {
      steps.add(Step.to("#aside", words.count("batch.first.none.aside", batch.setAside())));
    } else if (batch.screened() == 0) {
      steps.add(Step.to("#reading", words.say("batch.first.none")));
    } else if (batch.withFindings() == 0 && now.isEmpty()) {
      steps.add(Step.of(words.say("batch.first.nothing")));
    }
    return steps;
  }

  /** True if all such columns are of one file, which then need not be named. */
  private boolean areOfOneInput() {
    return troubles.stream().map(trouble -> trouble.input().file()).distinct().count() == 1;
  }

  /** What was not read, or not as it was meant: of it findings say nothing, or what is not so. */
  private List<Step> reading() {
    List<Step> steps = new ArrayList<>();
    List<String> cut =
        batch.inputs().stream().filter(InputLine::isCut).map(InputLine::file).toList();
    if (!cut.isEmpty()) {
      steps.add(Step.to("#reading", words.count("batch.first.cut", cut.size(), some(cut))));
    }
    List<String> lost =
        batch.inputs().stream().filter(InputLine::isMostlySetAside).map(InputLine::lost).toList();
    if (!lost.isEmpty()) {
      steps.add(Step.to("#reading", words.count("batch.first.lost", lost.size(), some(lost))));
    }
    if (!troubles.isEmpty()) {
      List<String> columns =
          troubles.stream().map(trouble -> trouble.briefly(words, areOfOneInput())).toList();
      steps.add(
          Step.to("#troubles", words.count("batch.first.reading", columns.size(), some(columns))));
    }
    return steps;
  }

  private String some(List<String> all) {
    String named = String.join(", ", all.subList(0, Math.min(NAMED, all.size())));
    int more = all.size() - NAMED;
    return more > 0 ? words.count("and.more", more, named) : named;
  }

  private List<SourceLine> sources() {
    Set<SourceLine> lines = new LinkedHashSet<>();
    for (Tally tally : batch.tallies()) {
      for (Rule rule : tally.pack().rules()) {
        for (Source source : rule.textSources()) {
          lines.add(SourceLine.of(source, words));
        }
        lines.add(SourceLine.of(rule.source(), words));
      }
    }
    return List.copyOf(lines);
  }

  private Map<String, String> cuts() {
    Map<String, String> cuts = new LinkedHashMap<>();
    for (Cut cut : batch.cuts()) {
      cuts.put(cut.cap().name(), words.say("cut", cut.shown(), cut.total(), cut.cap().rest()));
    }
    return cuts;
  }

  private Map<String, Long> outcomes() {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (Outcome outcome : OutcomeGroups.ORDER) {
      long count = 0;
      for (Tally tally : batch.tallies()) {
        for (int rule = 0; rule < tally.pack().rules().size(); rule++) {
          count += tally.count(rule, outcome);
        }
      }
      counts.put(OutcomeGroups.key(outcome), count);
    }
    return counts;
  }

  private Map<String, Long> kinds() {
    Map<String, Long> kinds = new LinkedHashMap<>();
    for (FindingKind kind : FindingKind.values()) {
      kinds.put("kind.short." + kind.label(), batch.findings().of(kind));
    }
    return kinds;
  }
}
