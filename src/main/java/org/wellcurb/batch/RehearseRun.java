package org.wellcurb.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.intake.Inputs;
import org.wellcurb.intake.Sources;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.Cap;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.Pages;
import org.wellcurb.report.RehearsalView;
import org.wellcurb.report.RehearsalView.Difference;
import org.wellcurb.report.RehearsalView.RuleChange;
import org.wellcurb.report.RehearsalView.Turn;
import org.wellcurb.report.RehearsalView.Turns;
import org.wellcurb.report.RunFacts;
import org.wellcurb.report.RunJson;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;

/**
 * Judges the same records by two packs, or two editions of one, and writes which outcomes change:
 * whole, or not at all. Each pack judges every record, whatever jurisdiction it names.
 */
public final class RehearseRun {
  private final RehearseRequest request;
  private final Progress progress;
  private final Stop stop;

  public RehearseRun(RehearseRequest request, Progress progress, Stop stop) {
    this.request = request;
    this.progress = progress;
    this.stop = stop;
  }

  /**
   * Runs to the end.
   *
   * @throws RunFailure if nothing was written, with the line that says why
   */
  public RehearseSummary run() throws RunFailure {
    Sources sources = new Sources(Catalogue.standard(), Opening.headers(request.input().headers()));
    List<Pack> packs = Opening.packs(List.of(request.before(), request.after()));
    try (Hashes hashes = new Hashes(request.input().standardInput())) {
      Inputs inputs =
          Opening.inputs(
              request.input().records(), request.out(), request.input().headers(), sources, hashes);
      try (FreshFolder folder = FreshFolder.beside(request.out())) {
        RehearseSummary summary = write(folder.path(), packs, sources, inputs, hashes);
        stop.check();
        folder.swapIn();
        stop.isInPlace();
        return summary;
      } catch (IOException e) {
        throw FreshFolder.unwritable(request.out(), e);
      }
    } catch (InterruptedException e) {
      throw RunFailure.unusable("interrupted: nothing was written", e);
    }
  }

  private RehearseSummary write(
      Path folder, List<Pack> packs, Sources sources, Inputs inputs, Hashes hashes)
      throws IOException, RunFailure, InterruptedException {
    Pack before = packs.get(0);
    Pack after = packs.get(1);
    RulePairs pairs = new RulePairs(before, after);
    try (RehearseMerged merged = new RehearseMerged(folder, pairs.size(), stop, progress);
        RecordParts parts = new RecordParts(inputs.inputs(), sources, stop)) {
      Pipeline.<Part, RehearsePart>run(
          parts,
          request.workers(),
          () ->
              new RehearseWork(
                  before, after, pairs, request.asOf(), request.positionAccuracy(), stop),
          () -> new RehearsePart(pairs.size()),
          merged);
      merged.finish();
      if (merged.inputs.filesSetAside() == inputs.inputs().size()) {
        throw RunFailure.noInput(merged.inputs.firstFileSetAside() + "; nothing was written");
      }
      String page =
          new Pages(request.style().about(packs)).rehearsal(view(before, after, pairs, merged));
      Files.write(folder.resolve(Outputs.INDEX), page.getBytes(StandardCharsets.UTF_8));
      RunJson.write(
          Files.newOutputStream(folder.resolve(Outputs.RUN_JSON)),
          facts(packs, merged, inputs, hashes));
      return new RehearseSummary(
          packs,
          merged.screened + merged.setAside,
          merged.screened,
          merged.setAside,
          differences(pairs, merged).size(),
          merged.turns.counts());
    }
  }

  private RehearsalView view(Pack before, Pack after, RulePairs pairs, RehearseMerged merged) {
    List<RuleChange> rules = new ArrayList<>();
    for (int pair = 0; pair < pairs.size(); pair++) {
      Rule rule = pairs.rule(pair);
      for (int from = 0; from < RulePairs.OUTCOMES; from++) {
        for (int to = 0; to < RulePairs.OUTCOMES; to++) {
          long records = from == to ? 0 : merged.count(pair, from, to);
          if (records > 0) {
            rules.add(
                new RuleChange(
                    rule.id(),
                    rule.title(),
                    RulePairs.outcome(from),
                    RulePairs.outcome(to),
                    records));
          }
        }
      }
    }
    rules.sort(Comparator.comparing(each -> Turn.of(each.from(), each.to())));
    return new RehearsalView(
        before,
        after,
        request.asOf(),
        merged.screened,
        merged.setAside,
        merged.turns.counts(),
        differences(pairs, merged),
        rules,
        first(merged.years.byName()),
        first(merged.zones.lines()),
        first(merged.contractors.lines()),
        merged.shown.all(),
        merged.changeLines);
  }

  private static List<Difference> differences(RulePairs pairs, RehearseMerged merged) {
    List<Difference> all = new ArrayList<>();
    for (int pair = 0; pair < pairs.size(); pair++) {
      if (!pairs.difference(pair).isNone()) {
        all.add(
            new Difference(
                pairs.ruleBefore(pair),
                pairs.ruleAfter(pair),
                pairs.difference(pair),
                merged.judged(pair, false),
                merged.judged(pair, true),
                merged.fallShort(pair, false),
                merged.fallShort(pair, true),
                merged.changed(pair),
                merged.reach[pair]));
      }
    }
    return all;
  }

  private static <T> List<T> first(List<T> all) {
    return all.subList(0, Math.min(Cap.CONTRACTORS_ON_PAGE.most(), all.size()));
  }

  private RunFacts facts(List<Pack> packs, RehearseMerged merged, Inputs inputs, Hashes hashes)
      throws IOException, InterruptedException, RunFailure {
    Map<String, String> options = new LinkedHashMap<>();
    options.put("rules", packs.get(0).id());
    options.put("against", packs.get(1).id());
    options.put("language", request.style().language().code());
    options.put("position-accuracy", RunJson.number(request.positionAccuracy()));
    if (request.input().headers() != null) {
      options.put("headers", hashes.of(request.input().headers()));
    }
    Map<String, Long> counts = new LinkedHashMap<>();
    counts.put("rowsRead", merged.screened + merged.setAside);
    counts.put("screened", merged.screened);
    counts.put("setAside", merged.setAside);
    counts.put("filesSetAside", merged.inputs.filesSetAside());
    Turns turns = merged.turns.counts();
    counts.put("recordsChanged", turns.changed());
    counts.put("recordsNewlyShort", turns.newlyShort());
    counts.put("recordsNewlyShortCleanBefore", turns.firstShort());
    counts.put("recordsNewlyShortOlderThanTheEdition", turns.older());
    counts.put("recordsNoLongerShort", turns.noLongerShort());
    counts.put("recordsNewlyUnknown", turns.newlyUnknown());
    counts.put("recordsNoLongerUnknown", turns.noLongerUnknown());
    counts.put("recordsNewlyWaived", turns.newlyWaived());
    counts.put("recordsNoLongerWaived", turns.noLongerWaived());
    counts.put("outcomesChanged", merged.changeLines);
    Cuts cuts = new Cuts();
    cuts.note(Cap.CHANGES_ON_PAGE, merged.changeLines);
    cuts.note(Cap.CONTRACTORS_ON_PAGE, merged.contractors.lines().size());
    return new RunFacts(
        Version.text(),
        request.asOf(),
        options,
        merged.inputs.lines(inputs, hashes),
        InputLedger.notRead(inputs),
        packs,
        counts,
        cuts.all());
  }
}
