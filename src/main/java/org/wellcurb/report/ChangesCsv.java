package org.wellcurb.report;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.report.RehearsalView.RecordChange;
import org.wellcurb.screening.Finding;

/**
 * {@code changes.csv}: one line for each outcome that differs between two packs, input order. What
 * was compared is that of the pack tried, or of the pack in use where the other has no such rule.
 */
public final class ChangesCsv {
  public static final String HEADER =
      "record_id,file,row,completed,rule,kind,title,entry,written,value,unit,in_use,in_use_limit,"
          + "tried,tried_limit\n";

  /** Stands where a pack has no such rule. */
  private static final String NO_RULE = "no such rule";

  private ChangesCsv() {}

  /** Adds one line. */
  public static void put(ByteText out, RecordChange change) {
    Deciding was = Objects.requireNonNullElse(change.was(), Finding.NOTHING);
    Deciding is = Objects.requireNonNullElse(change.is(), Finding.NOTHING);
    Deciding compared = change.compared();
    CsvLine line = new CsvLine(out);
    line.text(change.recordId())
        .text(change.file())
        .whole(change.row())
        .text(change.completed())
        .text(change.rule().id())
        .word(change.rule().kind().label())
        .text(change.rule().title())
        .text(compared.entry())
        .text(compared.written());
    FindingsCsv.value(line, compared);
    line.word(outcome(change.from()));
    FindingsCsv.limit(line, was);
    line.word(outcome(change.to()));
    FindingsCsv.limit(line, is);
    line.end();
  }

  private static String outcome(@Nullable Outcome outcome) {
    return outcome == null ? NO_RULE : outcome.label();
  }
}
