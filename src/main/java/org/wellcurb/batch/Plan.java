package org.wellcurb.batch;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.Maps;
import org.wellcurb.rulepack.Pack;

/**
 * What all threads of a run share; nothing in it changes but the bars.
 *
 * @param request what was asked
 * @param packs the packs, in the order given
 * @param choice which of them judges a record
 * @param answers corrections that came back
 * @param repeated numbers that answers or settled findings name and that stand on several rows;
 *     null where that is not known
 * @param settled findings that someone has looked at
 * @param earlier an earlier report to lay this one beside; null where none was given
 * @param before its findings; null where none was given
 * @param entries the entries that each rule reads
 * @param bars what a record must be worse than to be listed
 */
record Plan(
    ScreenRequest request,
    List<Pack> packs,
    PackChoice choice,
    Answers answers,
    @Nullable Set<String> repeated,
    Settled settled,
    @Nullable EarlierReport earlier,
    @Nullable EarlierFindings before,
    OwnEntries entries,
    Bars bars) {
  Plan {
    packs = List.copyOf(packs);
    repeated = repeated == null ? null : Set.copyOf(repeated);
  }

  /** Rules of the longest pack. */
  int mostRules() {
    return packs.stream().mapToInt(pack -> pack.rules().size()).max().orElse(0);
  }

  /** Empty maps, one for each pack. */
  Maps maps() {
    return new Maps(packs.size(), request.output().positionAccuracy());
  }
}
