package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.wellcurb.report.Cap;
import org.wellcurb.report.ContractorLine;
import org.wellcurb.report.GridView;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;

/** Lays the rules that are fallen short of most beside the licences with most findings. */
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
    List<ContractorLine> lines =
        licences.lines().stream().filter(line -> line.kinds().total() > 0).toList();
    List<ContractorLine> shown =
        lines.subList(0, Math.min(Cap.GRID_CONTRACTORS.most(), lines.size()));
    RuleSums all = licences.byRule();
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
    return new GridView(shown, rows, lines.size(), most.length);
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
