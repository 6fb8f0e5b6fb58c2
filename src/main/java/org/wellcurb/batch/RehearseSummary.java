package org.wellcurb.batch;

import java.util.List;
import org.wellcurb.report.RehearsalView.Turns;
import org.wellcurb.rulepack.Pack;

/**
 * What a rehearsal came to.
 *
 * @param packs the pack in use and the pack tried
 * @param rowsRead rows read
 * @param screened records judged by both packs
 * @param setAside rows set aside
 * @param differences rules that differ between the packs
 * @param turns records by what the pack tried does to them
 */
public record RehearseSummary(
    List<Pack> packs, long rowsRead, long screened, long setAside, long differences, Turns turns) {

  public RehearseSummary {
    packs = List.copyOf(packs);
  }
}
