package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.report.Cap;
import org.wellcurb.report.ContractorLine;
import org.wellcurb.report.GridView;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;

/**
 * Lays the rules that are fallen short of most beside the licences that stand out most: on one rule
 * they have more findings than their records lead one to expect, in standard deviations. Those with
 * few records come after all others.
 */
final class RuleGrid {
  private RuleGrid() {}

  /** By pack, where its rules begin in the row of all packs' rules. */
  static int[] starts(List<Pack> packs) {
    int[] starts = new int[packs.size()];
    for (int i = 1; i < starts.length; i++) {
      starts[i] = starts[i - 1] + packs.get(i - 1).rules().size();
    }
    return starts;
  }

  static GridView of(List<Pack> packs, LicenceCounts licences) {
    RuleSums all = licences.byRule();
    List<ContractorLine> every = licences.lines();
    long records = every.stream().mapToLong(ContractorLine::records).sum();
    List<ContractorLine> lines = every.stream().filter(line -> line.kinds().total() > 0).toList();
    Map<ContractorLine, Double> standing = new HashMap<>();
    for (ContractorLine line : lines) {
      double share = records == 0 ? 0 : (double) line.records() / records;
      standing.put(line, standing(all, licences.byRule(line.licence()), share));
    }
    List<ContractorLine> shown =
        lines.stream()
            .sorted(
                Comparator.<ContractorLine, Boolean>comparing(
                        line -> line.licence().isBlank() || line.records() < GridView.FEW)
                    .thenComparing(line -> -standing.getOrDefault(line, 0.0))
                    .thenComparing(ContractorLine.MOST_FIRST))
            .limit(Cap.GRID_CONTRACTORS.most())
            .toList();
    List<RuleSums> columns = shown.stream().map(line -> licences.byRule(line.licence())).toList();
    int[] starts = starts(packs);
    int[] most = order(all, packs, starts);
    List<GridView.Row> rows = new ArrayList<>();
    for (int i = 0; i < Math.min(Cap.GRID_RULES.most(), most.length); i++) {
      int rule = most[i];
      int pack = pack(rule, starts);
      List<Long> counts = columns.stream().map(column -> column.of(rule)).toList();
      rows.add(new GridView.Row(pack, rule - starts[pack], all.of(rule), counts));
    }
    return new GridView(shown, rows, lines.size(), most.length, records);
  }

  /** How far a licence stands out on the rule where it does so most. */
  private static double standing(RuleSums all, RuleSums own, double share) {
    double most = 0;
    for (int rule : own.rules()) {
      double expected = all.of(rule) * share;
      most = Math.max(most, (own.of(rule) - expected) / Math.sqrt(expected + 1));
    }
    return most;
  }

  /** The rules with findings, most first; among equals the graver kind, then as packs have them. */
  private static int[] order(RuleSums all, List<Pack> packs, int[] starts) {
    return Arrays.stream(all.rules())
        .boxed()
        .sorted(
            Comparator.<Integer>comparingLong(rule -> -all.of(rule))
                .thenComparing(rule -> kind(rule, packs, starts))
                .thenComparing(Comparator.naturalOrder()))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  private static FindingKind kind(int rule, List<Pack> packs, int[] starts) {
    int pack = pack(rule, starts);
    return packs.get(pack).rules().get(rule - starts[pack]).kind();
  }

  private static int pack(int rule, int[] starts) {
    int pack = starts.length - 1;
    while (starts[pack] > rule) {
      pack--;
    }
    return pack;
  }
}
