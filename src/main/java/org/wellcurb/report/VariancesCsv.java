package org.wellcurb.report;

import org.wellcurb.record.Variance;
import org.wellcurb.record.WellRecord;

/** {@code variances.csv}: one line for each variance that a record names, and what it does. */
public final class VariancesCsv {
  public static final String HEADER = "record_id,file,row,pack,rule,reference,does\n";

  /** What a variance does. */
  public enum Does {
    WAIVES("waives"),
    /** The rule is met, or does not apply. */
    NOTHING("nothing to waive"),
    /** The pack that judges the record has no such rule. */
    NO_RULE("no such rule");

    private final String word;

    Does(String word) {
      this.word = word;
    }
  }

  private VariancesCsv() {}

  /** Adds one line. */
  public static void put(
      ByteText out, WellRecord record, String pack, Variance variance, Does does) {
    new CsvLine(out)
        .written(record, 0)
        .text(record.file())
        .whole(record.row())
        .text(pack)
        .text(variance.rule())
        .text(variance.reference())
        .word(does.word)
        .end();
  }
}
