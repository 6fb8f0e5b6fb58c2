package org.wellcurb.batch;

import org.jspecify.annotations.Nullable;
import org.wellcurb.report.KindCounts;
import org.wellcurb.report.RecordLine;
import org.wellcurb.screening.Harm;

/**
 * What a record must come before to be listed, or to get a sheet, as far as the parts merged so far
 * tell. Parts still under way look here so as not to keep what would be thrown away; what is kept
 * in the end is the same whatever they see.
 */
final class Bars {
  private volatile @Nullable RecordLine lines;
  private volatile @Nullable RecordLine sheets;
  private volatile int asksFrom;

  void set(@Nullable RecordLine lines, @Nullable RecordLine sheets) {
    this.lines = lines;
    this.sheets = sheets;
  }

  /** Sets the level below which what to ask for need not be counted any more. */
  void asksFrom(int level) {
    asksFrom = level;
  }

  /** The level of {@link AskSample} from which what to ask for may have to be counted. */
  int asksFrom() {
    return asksFrom;
  }

  boolean mayBeListed(KindCounts kinds, Harm harm, String file, long row) {
    return isBefore(kinds, harm, file, row, lines);
  }

  boolean mayHaveSheet(KindCounts kinds, Harm harm, String file, long row) {
    return isBefore(kinds, harm, file, row, sheets);
  }

  /** True if a record with these findings comes before a bar; null is none. */
  static boolean isBefore(
      KindCounts kinds, Harm harm, String file, long row, @Nullable RecordLine bar) {
    return bar == null || bar.isAfter(kinds, harm, file, row);
  }
}
