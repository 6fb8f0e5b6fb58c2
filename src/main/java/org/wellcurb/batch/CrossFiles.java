package org.wellcurb.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.wellcurb.crosscheck.CrossCheck;
import org.wellcurb.crosscheck.CrossResult;
import org.wellcurb.crosscheck.Duplicates;
import org.wellcurb.crosscheck.RuleSet;
import org.wellcurb.crosscheck.Seen;
import org.wellcurb.crosscheck.SurveyFile;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.Cap;
import org.wellcurb.report.CrossView;
import org.wellcurb.report.CrosscheckJson;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.RuleCount;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Tally;

/** Looks at the whole batch and writes {@code crosscheck.json}. */
final class CrossFiles {
  private CrossFiles() {}

  /** The rules of the packs, as the look at the whole batch needs them. */
  static RuleSet rules(List<Pack> packs) {
    return new RuleSet(
        packs.stream()
            .map(
                pack ->
                    new RuleSet.RulesOfPack(
                        pack.id(),
                        pack.rules().stream().map(Rule::id).toList(),
                        pack.rules().stream().map(Rule::title).toList(),
                        pack.rules().stream()
                            .map(rule -> rule.kind() == FindingKind.DEFICIENCY)
                            .toList(),
                        pack.rules().stream().map(Rule::isDated).toList()))
            .toList());
  }

  static CrossView write(
      Path folder, SurveyFile survey, List<Tally> tallies, AskCounts asks, int threads)
      throws IOException {
    CrossResult result =
        new CrossCheck(survey, Catalogue.standard(), Cap.CROSS_IN_FILE.most()).run(threads);
    CrossView view =
        new CrossView(
            result,
            RuleCount.of(tallies),
            asks.lines(Cap.ASKS_ON_PAGE.most()),
            asks.records(),
            RecordIds.of(folder, places(result)));
    CrosscheckJson.write(Files.newOutputStream(folder.resolve(Outputs.CROSSCHECK_JSON)), view);
    return view;
  }

  private static NavigableSet<Integer> places(CrossResult result) {
    NavigableSet<Integer> places = new TreeSet<>();
    for (Duplicates.SameNumber same : result.duplicates().sameNumbers()) {
      same.records().forEach(seen -> places.add(seen.place()));
    }
    for (Duplicates.NearCopy near : result.duplicates().nearCopies()) {
      near.records().forEach(seen -> places.add(seen.place()));
    }
    for (CrossResult.FigureHint hint : result.figures()) {
      hint.seen().stream().map(Seen::place).forEach(places::add);
    }
    for (CrossResult.SlipHint hint : result.slips()) {
      hint.seen().stream().map(Seen::place).forEach(places::add);
    }
    for (CrossResult.NeighbourHint hint : result.unlike()) {
      places.add(hint.seen().place());
    }
    return places;
  }
}
