package org.wellcurb.batch;

import java.util.Comparator;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.RecordLine;

/**
 * A record that may get a sheet.
 *
 * @param part number of the part of the batch that it stands in
 * @param place its place in that part
 * @param pack place of the pack that judges it
 * @param line what the batch page says of it
 * @param record a copy of its own
 */
record Flagged(long part, int place, int pack, RecordLine line, WellRecord record) {
  static final Comparator<Flagged> WORST_FIRST =
      Comparator.comparing(Flagged::line, RecordLine.WORST_FIRST);

  static final Comparator<Flagged> INPUT_ORDER =
      Comparator.comparingLong(Flagged::part).thenComparingInt(Flagged::place);
}
