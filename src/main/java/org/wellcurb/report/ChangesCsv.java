package org.wellcurb.report;

import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Rule;

/** {@code changes.csv}: one line for each outcome that differs between two packs, input order. */
public final class ChangesCsv {
  public static final String HEADER = "record_id,file,row,rule,kind,title,in_use,tried\n";

  /** Stands where a pack has no such rule. */
  private static final String NO_RULE = "no such rule";

  private ChangesCsv() {}

  /**
   * Adds one line.
   *
   * @param before outcome under the pack in use; null where it has no such rule
   * @param after outcome under the pack tried; null where it has no such rule
   */
  public static void put(
      ByteText out,
      WellRecord record,
      Rule rule,
      @Nullable Outcome before,
      @Nullable Outcome after) {
    new CsvLine(out)
        .text(record.id())
        .text(record.file())
        .whole(record.row())
        .text(rule.id())
        .word(rule.kind().label())
        .text(rule.title())
        .word(before == null ? NO_RULE : before.label())
        .word(after == null ? NO_RULE : after.label())
        .end();
  }
}
