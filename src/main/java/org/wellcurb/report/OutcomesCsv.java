package org.wellcurb.report;

import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.WellRecord;
import org.wellcurb.screening.RecordResult;
import org.wellcurb.screening.RuleResult;

/** {@code outcomes.csv}: one line for each rule on each record. */
public final class OutcomesCsv {
  public static final String HEADER = "record_id,file,row,pack,rule,outcome,margin,needs\n";

  private OutcomesCsv() {}

  /** Adds the lines of one record. */
  public static void put(ByteText out, RecordResult result) {
    WellRecord record = result.record();
    String id = record.id();
    CsvLine line = new CsvLine(out);
    for (RuleResult rule : result.results()) {
      Deciding deciding = rule.explanation().deciding();
      line.text(id)
          .text(record.file())
          .whole(record.row())
          .text(result.pack().id())
          .text(rule.rule().id())
          .word(rule.outcome().label())
          .number(deciding == null ? Double.NaN : deciding.margin())
          .text(
              rule.outcome() == Outcome.CANNOT_TELL
                  ? String.join(" ", rule.explanation().needs())
                  : "")
          .end();
    }
  }
}
