package org.wellcurb.report;

import org.wellcurb.record.WellRecord;
import org.wellcurb.screening.VarianceUse;
import org.wellcurb.screening.VarianceUse.Does;

/** {@code variances.csv}: one line for each variance that a record names, and what it does. */
public final class VariancesCsv {
  public static final String HEADER = "record_id,file,row,pack,rule,reference,does,near_rule\n";

  private VariancesCsv() {}

  /** Adds one line. */
  public static void put(ByteText out, WellRecord record, String pack, VarianceUse use) {
    new CsvLine(out)
        .written(record, 0)
        .text(record.file())
        .whole(record.row())
        .text(pack)
        .text(use.variance().rule())
        .text(use.variance().reference())
        .word(word(use.does()))
        .text(use.near())
        .end();
  }

  private static String word(Does does) {
    return switch (does) {
      case WAIVES -> "waives";
      case MET -> "already met";
      case NOT_APPLICABLE -> "does not apply";
      case NOT_ALLOWED -> "may not be waived";
      case NO_RULE -> "no such rule";
    };
  }
}
