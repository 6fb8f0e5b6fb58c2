package org.wellcurb.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.screening.Screener;

/** {@code outcomes.csv}: one line for each rule on each record. */
public final class OutcomesCsv {
  public static final String HEADER = "record_id,file,row,pack,rule,outcome,margin,needs\n";

  private OutcomesCsv() {}

  /**
   * Adds the lines of one record.
   *
   * @param screener what judged the record, and no other since
   * @param outcomes what it said
   */
  public static void put(ByteText out, WellRecord record, Screener screener, byte[] outcomes) {
    String id = record.id();
    List<Rule> rules = screener.pack().rules();
    CsvLine line = new CsvLine(out);
    for (int i = 0; i < outcomes.length; i++) {
      Outcome outcome = Outcome.at(outcomes[i]);
      line.text(id)
          .text(record.file())
          .whole(record.row())
          .text(screener.pack().id())
          .text(rules.get(i).id())
          .word(outcome.label())
          .number(margin(screener, i, outcome))
          .word(outcome == Outcome.CANNOT_TELL ? needs(screener.needs(i)) : "")
          .end();
    }
  }

  private static double margin(Screener screener, int rule, Outcome outcome) {
    if (outcome == Outcome.NOT_APPLICABLE) {
      return Double.NaN;
    }
    @Nullable Deciding deciding = screener.deciding(rule);
    return deciding == null ? Double.NaN : deciding.margin();
  }

  private static String needs(List<Entry> entries) {
    StringBuilder keys = new StringBuilder();
    for (Entry entry : entries) {
      keys.append(keys.isEmpty() ? "" : " ").append(entry.key());
    }
    return keys.toString();
  }
}
