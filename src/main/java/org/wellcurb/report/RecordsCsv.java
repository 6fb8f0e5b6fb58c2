package org.wellcurb.report;

import org.wellcurb.record.WellRecord;

/** {@code records.csv}: one line a record, in input order. */
public final class RecordsCsv {
  public static final String HEADER =
      "record_id,file,row,pack,meets,falls_short,cannot_tell,not_applicable,waived,deficiency,"
          + "discrepancy,omission,advisory\n";

  private RecordsCsv() {}

  /**
   * Adds one line.
   *
   * @param outcomes how often each outcome, by ordinal
   * @param kinds how many findings of each kind, by ordinal
   */
  public static void put(
      ByteText out, WellRecord record, String pack, int[] outcomes, int[] kinds) {
    CsvLine line = new CsvLine(out);
    line.written(record, 0).text(record.file()).whole(record.row()).text(pack);
    for (int count : outcomes) {
      line.whole(count);
    }
    for (int count : kinds) {
      line.whole(count);
    }
    line.end();
  }
}
