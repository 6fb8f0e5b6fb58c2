package org.wellcurb.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.crosscheck.SurveyFile;
import org.wellcurb.intake.Inputs;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.report.BatchView;
import org.wellcurb.report.ByteText;
import org.wellcurb.report.Cap;
import org.wellcurb.report.ContractorLine;
import org.wellcurb.report.Corrected;
import org.wellcurb.report.CrossView;
import org.wellcurb.report.Explained;
import org.wellcurb.report.FindingSentence;
import org.wellcurb.report.FollowUp;
import org.wellcurb.report.GridView;
import org.wellcurb.report.InputLine;
import org.wellcurb.report.NoticePages;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.Pages;
import org.wellcurb.report.RecordLine;
import org.wellcurb.report.Refused;
import org.wellcurb.report.RulesCsv;
import org.wellcurb.report.RunFacts;
import org.wellcurb.report.RunJson;
import org.wellcurb.report.SetAsideLine;
import org.wellcurb.report.SettledOtherwise;
import org.wellcurb.report.Settlement;
import org.wellcurb.report.SinceCounts;
import org.wellcurb.report.SinceView;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.Finding;
import org.wellcurb.screening.Screener;
import org.wellcurb.screening.Tally;

/** What is written once all records are screened: sheets, rules, the batch page, run.json. */
final class ReportEnd {
  private final Plan plan;
  private final ScreenRequest request;
  private final Path folder;
  private final Merged merged;
  private final Totals totals;
  private final Inputs inputs;
  private final Hashes hashes;
  private final NoticePages noticePages;
  private final Stop stop;
  private final Cuts cuts = new Cuts();

  ReportEnd(
      Plan plan,
      Path folder,
      Merged merged,
      Inputs inputs,
      Hashes hashes,
      NoticePages noticePages,
      Stop stop) {
    this.plan = plan;
    this.request = plan.request();
    this.folder = folder;
    this.merged = merged;
    this.totals = merged.totals;
    this.inputs = inputs;
    this.hashes = hashes;
    this.noticePages = noticePages;
    this.stop = stop;
  }

  ScreenSummary write(List<Tally> tallies) throws IOException, RunFailure, InterruptedException {
    SheetFiles sheets = new SheetFiles(folder, plan, stop);
    sheets.write(sheetsFor());
    ByteText rules = new ByteText().put(RulesCsv.HEADER);
    for (Tally tally : tallies) {
      RulesCsv.put(rules, tally);
    }
    ReportFiles.write(folder.resolve(Outputs.RULES_CSV), rules);
    NoticeFiles notices = new NoticeFiles(plan, folder, noticePages, stop);
    if (request.notices().wanted()) {
      int asked = notices.write(folder.resolve(ReportFiles.NOTICE_LOG), merged.licences.lines());
      cuts.note(Cap.NOTICES, notices.written(), asked);
    }
    List<InputLine> lines = merged.inputs.lines(inputs, hashes);
    int columns = lines.stream().mapToInt(line -> line.columns().size()).sum();
    findCuts(sheets, lines.size(), columns);
    cuts.note(Cap.TROUBLES_ON_PAGE, BatchView.columnsInTrouble(lines));
    SinceCounts since = since();
    explained();
    CrossView cross = crosscheck(tallies);
    BatchView view = view(tallies, sheets, notices, lines, cross, since);
    Files.write(
        folder.resolve(Outputs.INDEX),
        new Pages(request.output().style()).index(view).getBytes(StandardCharsets.UTF_8));
    RunJson.write(
        Files.newOutputStream(folder.resolve(Outputs.RUN_JSON)), facts(sheets, notices, lines));
    return summary(view.followUp(), lines);
  }

  private List<Flagged> sheetsFor() {
    List<Flagged> chosen = merged.flagged.sorted();
    Flagged only = merged.only();
    boolean alone =
        chosen.isEmpty() && only != null && request.output().sheets() == SheetsFor.FLAGGED;
    return alone && request.output().mostSheets() > 0 ? List.of(only) : chosen;
  }

  private void findCuts(SheetFiles sheets, int inputCount, int columnCount) {
    long wanted =
        switch (request.output().sheets()) {
          case FLAGGED -> totals.listed();
          case ALL -> totals.screened();
          case NONE -> 0;
        };
    cuts.note(Cap.SHEETS, sheets.addresses().size(), Math.max(wanted, sheets.addresses().size()));
    cuts.note(Cap.RECORDS_ON_PAGE, totals.listed());
    cuts.note(Cap.SET_ASIDE_ON_PAGE, totals.setAsideLines());
    cuts.note(Cap.INPUTS_ON_PAGE, inputCount);
    cuts.note(Cap.COLUMNS_ON_PAGE, columnCount);
    int licences = merged.licences.lines().size();
    cuts.note(Cap.CONTRACTORS_ON_PAGE, licences);
    cuts.note(Cap.RULE_ASKS_ON_PAGE, merged.asks().rules());
    cuts.note(Cap.ASKS_COUNTED, merged.asks().records(), totals.screened());
    if (merged.licences.isCut()) {
      cuts.note(Cap.LICENCES_COUNTED, licences, licences + 1L);
    }
  }

  private BatchView view(
      List<Tally> tallies,
      SheetFiles sheets,
      NoticeFiles notices,
      List<InputLine> lines,
      @Nullable CrossView cross,
      @Nullable SinceCounts since)
      throws IOException {
    List<RecordLine> records = new ArrayList<>();
    for (RecordLine line : merged.lines.sorted()) {
      records.add(line.withSheet(sheets.addresses().getOrDefault(line, "")));
    }
    List<ContractorLine> contractors =
        merged.licences.lines().stream()
            .map(line -> line.withNotice(notices.address(line.licence())))
            .toList();
    GridView grid = RuleGrid.of(plan.packs(), merged.licences);
    cuts.note(Cap.GRID_CONTRACTORS, grid.contractors().size(), grid.licences());
    cuts.note(Cap.GRID_RULES, grid.rows().size(), grid.rules());
    return new BatchView(
        Version.text(),
        request.asOf(),
        totals.rowsRead(),
        totals.screened(),
        totals.setAside(),
        totals.withFindings(),
        totals.withDeficiency(),
        totals.findings(),
        tallies,
        records,
        first(contractors, Cap.CONTRACTORS_ON_PAGE),
        merged.asks().lines(Cap.ASKS_ON_PAGE.most()),
        merged.asks().byRule(Cap.RULE_ASKS_ON_PAGE.most(), Cap.RULE_ASKS_NAMED.most() + 1),
        grid,
        totals.setAsideShown(),
        first(lines, Cap.INPUTS_ON_PAGE),
        new ArrayList<>(InputLedger.notRead(inputs).keySet()),
        merged.maps,
        cross,
        merged.elsewhere,
        followUp(since),
        sheets.cautions(),
        cuts.all(),
        written());
  }

  private @Nullable CrossView crosscheck(List<Tally> tallies) throws IOException {
    SurveyFile survey = merged.survey;
    if (survey == null) {
      return null;
    }
    int threads = plan.request().workers();
    CrossView view = CrossFiles.write(folder, survey, tallies, merged.asks(), threads);
    survey.close();
    Files.delete(folder.resolve(ScreenRun.SURVEY));
    return view;
  }

  /** Lines of answers and of settled findings that were not applied. */
  private List<Refused> refused() {
    List<Refused> refused = new ArrayList<>(plan.answers().refused());
    refused.addAll(plan.settled().refused());
    return refused;
  }

  private FollowUp followUp(@Nullable SinceCounts since) {
    List<Settlement> settled = plan.settled().unmatched();
    List<SettledOtherwise> ofAnother = plan.settled().ofAnother();
    List<String> answers = plan.answers().unmatched();
    List<Refused> refused = refused();
    List<Explained> explained = plan.answers().explained();
    cuts.note(Cap.SIDE_LINES_ON_PAGE, explained.size());
    List<Corrected> corrected = plan.answers().corrected();
    cuts.note(Cap.SIDE_LINES_ON_PAGE, corrected.size());
    List<Explained> voids = plan.answers().saidVoid();
    cuts.note(Cap.SIDE_LINES_ON_PAGE, voids.size());
    cuts.note(Cap.SIDE_LINES_ON_PAGE, refused.size());
    cuts.note(Cap.SIDE_LINES_ON_PAGE, merged.idleVarianceCount);
    cuts.note(Cap.SIDE_LINES_ON_PAGE, settled.size());
    cuts.note(Cap.SIDE_LINES_ON_PAGE, ofAnother.size());
    cuts.note(Cap.SIDE_LINES_ON_PAGE, answers.size());
    return new FollowUp(
        totals.settled(),
        first(settled, Cap.SIDE_LINES_ON_PAGE),
        settled.size(),
        first(ofAnother, Cap.SIDE_LINES_ON_PAGE),
        ofAnother.size(),
        plan.answers().corrections(),
        plan.answers().records(),
        first(corrected, Cap.SIDE_LINES_ON_PAGE),
        first(answers, Cap.SIDE_LINES_ON_PAGE),
        answers.size(),
        first(explained, Cap.SIDE_LINES_ON_PAGE),
        explained.size(),
        first(voids, Cap.SIDE_LINES_ON_PAGE),
        voids.size(),
        first(refused, Cap.SIDE_LINES_ON_PAGE),
        refused.size(),
        merged.idleVariances,
        merged.idleVarianceCount,
        merged.unknownVarianceCount,
        since);
  }

  /** Lays this run beside the earlier one and writes what changed; null where none was given. */
  private @Nullable SinceCounts since() throws IOException, RunFailure {
    EarlierReport earlier = plan.earlier();
    EarlierFindings before = plan.before();
    if (earlier == null || before == null) {
      return null;
    }
    Since.SinceTotals changes =
        new Since(earlier, before, merged.since, plan.answers().saidVoid()).write(folder);
    List<String> packs = new ArrayList<>();
    List<String> added = new ArrayList<>();
    for (Pack pack : plan.packs()) {
      StringBuilder hashes = new StringBuilder();
      pack.files().forEach(file -> hashes.append(file.sha256()));
      if (!earlier.packs().containsKey(pack.id())) {
        added.add(pack.id());
      } else if (!hashes.toString().equals(earlier.packs().get(pack.id()))) {
        packs.add(pack.id());
      }
    }
    boolean isOtherDay = !request.asOf().toString().equals(earlier.asOf());
    boolean isOtherVersion = !Version.text().equals(earlier.version());
    List<String> mayDiffer = new ArrayList<>(packs);
    mayDiffer.addAll(added);
    SinceView view =
        new SinceView(
            request.asOf(),
            earlier.asOf(),
            isOtherDay,
            isOtherVersion,
            before.hasMarks(),
            changes.newBy(
                (pack, rule) ->
                    isOtherVersion
                        || mayDiffer.contains(pack)
                        || (isOtherDay && mayHangOnAsOf(pack, rule))),
            packs,
            added,
            changes.counts,
            changes.contractors.lines(),
            changes.rules.lines(),
            changes.shown(),
            changes.total,
            changes.told());
    Files.write(
        folder.resolve(Outputs.SINCE),
        new Pages(request.output().style()).since(view).getBytes(StandardCharsets.UTF_8));
    return changes.counts;
  }

  /** Whether a rule may judge a record otherwise only because the as-of date is another. */
  private boolean mayHangOnAsOf(String pack, String rule) {
    return plan.packs().stream()
        .filter(each -> each.id().equals(pack))
        .flatMap(each -> each.rules().stream())
        .anyMatch(each -> each.id().equals(rule) && each.program().mayHangOnAsOf());
  }

  /** Writes what was said of findings, as a draft of a table of settled ones. */
  private void explained() throws IOException {
    List<Explained> explained = plan.answers().toLookAt();
    if (!explained.isEmpty()) {
      ByteText text = new ByteText().put(Explained.HEADER);
      explained.forEach(each -> each.put(text));
      ReportFiles.write(folder.resolve(Outputs.EXPLAINED_CSV), text);
    }
  }

  private static <T> List<T> first(List<T> all, Cap cap) {
    return all.subList(0, Math.min(cap.most(), all.size()));
  }

  /** Files at the top of the folder, those still to be written too. */
  private List<String> written() throws IOException {
    Set<String> names = new LinkedHashSet<>();
    for (Path path : Folders.list(folder)) {
      if (Files.isRegularFile(path)) {
        names.add(path.getFileName().toString());
      }
    }
    names.remove(Outputs.INDEX);
    names.add(Outputs.RUN_JSON);
    return names.stream().sorted().toList();
  }

  private RunFacts facts(SheetFiles sheets, NoticeFiles notices, List<InputLine> lines)
      throws IOException, InterruptedException, RunFailure {
    Map<String, String> options = new LinkedHashMap<>();
    options.put("sheets", request.output().sheets().name().toLowerCase(Locale.ROOT));
    options.put("most-sheets", String.valueOf(request.output().mostSheets()));
    NoticeOptions asked = request.notices();
    options.put("notices", asked.wanted() ? "all" : "none");
    if (asked.wanted()) {
      options.put("most-notices", String.valueOf(asked.most()));
      options.put("reply-days", String.valueOf(asked.replyDays()));
      if (asked.template() != null) {
        options.put("notice", hashes.of(asked.template()));
      }
    }
    options.put("outcomes", request.output().outcomes() ? "yes" : "no");
    options.put("crosscheck", request.looks().crosscheck() ? "yes" : "no");
    options.put("language", request.output().style().language().code());
    options.put("units", request.output().style().units().code());
    options.put("position-accuracy", RunJson.number(request.output().positionAccuracy()));
    if (request.input().headers() != null) {
      options.put("headers", hashes.of(request.input().headers()));
    }
    LookOptions looks = request.looks();
    if (looks.answers() != null) {
      options.put("answers", hashes.of(looks.answers()));
    }
    if (looks.settled() != null) {
      options.put("settled", hashes.of(looks.settled()));
    }
    if (looks.earlier() != null) {
      options.put("earlier", hashes.of(looks.earlier().resolve(Outputs.RUN_JSON)));
    }
    Map<String, Long> counts = totals.named(merged.inputs.filesSetAside());
    counts.put("sheets", (long) sheets.addresses().size());
    counts.put("notices", (long) notices.written());
    counts.put("answersApplied", plan.answers().corrections());
    counts.put("answersNotApplied", (long) plan.answers().refused().size());
    counts.put("answersUnmatched", (long) plan.answers().unmatched().size());
    counts.put("answersNotToApply", (long) plan.answers().saidVoid().size());
    counts.put("explanations", (long) plan.answers().explained().size());
    counts.put("settledNotApplied", (long) plan.settled().refused().size());
    counts.put("settledOtherwise", (long) plan.settled().ofAnother().size());
    counts.put("settledUnmatched", (long) plan.settled().unmatched().size());
    counts.put("idleVariances", merged.idleVarianceCount);
    counts.put("namedElsewhere", merged.elsewhere.records());
    return new RunFacts(
        Version.text(),
        request.asOf(),
        options,
        lines,
        InputLedger.notRead(inputs),
        plan.packs(),
        counts,
        cuts.all());
  }

  /** Why nothing was screened, of the first row; empty where something was. */
  private String firstSetAside() {
    if (totals.screened() > 0 || totals.setAsideShown().isEmpty()) {
      return "";
    }
    SetAsideLine line = totals.setAsideShown().get(0);
    return line.file() + (line.row() > 0 ? ", row " + line.row() : "") + ": " + line.reason();
  }

  /** A file of which most rows were set aside, and why the first of them was. */
  private String lost(InputLine line) {
    String why =
        totals.setAsideShown().stream()
            .filter(row -> row.file().equals(line.file()))
            .findFirst()
            .map(row -> "; the first: " + row.reason())
            .orElse("");
    return line.file()
        + ": "
        + line.setAside()
        + " of "
        + (line.rowsRead() + line.joined())
        + " rows set aside"
        + why;
  }

  private ScreenSummary summary(FollowUp followUp, List<InputLine> lines) {
    @Nullable Flagged only = merged.only();
    List<String> sentences = new ArrayList<>();
    if (only != null) {
      FindingSentence sentence = new FindingSentence(PageStyle.PLAIN);
      Screener screener =
          new Screener(plan.packs().get(only.pack()), request.asOf(), PageStyle.PLAIN.speech());
      screener.outcomes(only.record());
      for (Finding finding : screener.findings()) {
        sentences.add(finding.rule().kind().label() + ": " + sentence.of(finding));
      }
    }
    return new ScreenSummary(
        totals.rowsRead(),
        totals.screened(),
        totals.setAside(),
        merged.inputs.filesSetAside(),
        merged.inputs.brokenOff(),
        lines.stream().filter(InputLine::isMostlySetAside).map(this::lost).toList(),
        inputs.passedOver().stream().map(over -> over.file() + ": " + over.reason()).toList(),
        totals.withFindings(),
        totals.findings(),
        merged.elsewhere,
        firstSetAside(),
        followUp,
        totals.outcome(Outcome.CANNOT_TELL),
        cuts.all(),
        only == null ? "" : only.line().recordId(),
        sentences);
  }
}
