package org.wellcurb.batch;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.ChunkTally;
import org.wellcurb.report.ByteText;

/** What came of one part of a rehearsal. Used again and again. */
final class RehearsePart {
  final ByteText changes = new ByteText();
  final ByteText features = new ByteText();
  final ByteText setAsideLines = new ByteText();

  /** The first changes, for the page. */
  final FirstChanges shown = new FirstChanges();

  final GroupChanges contractors = new GroupChanges();
  final GroupChanges zones = new GroupChanges();
  final GroupChanges years = new GroupChanges();

  /** Records by pair of rules, outcome before, outcome after. */
  final long[] counts;

  /** Records by pair of rules that are newly short and older than the pack tried. */
  final long[] reach;

  final RecordTurns turns = new RecordTurns();

  long screened;
  long setAside;
  long changeLines;
  @Nullable Part part;
  @Nullable ChunkTally reading;

  RehearsePart(int pairs) {
    counts = new long[pairs * RulePairs.OUTCOMES * RulePairs.OUTCOMES];
    reach = new long[pairs];
  }

  void count(int pair, int from, int to) {
    counts[(pair * RulePairs.OUTCOMES + from) * RulePairs.OUTCOMES + to]++;
  }

  void clear() {
    changes.clear();
    features.clear();
    setAsideLines.clear();
    shown.clear();
    contractors.clear();
    zones.clear();
    years.clear();
    turns.clear();
    Arrays.fill(counts, 0);
    Arrays.fill(reach, 0);
    screened = 0;
    setAside = 0;
    changeLines = 0;
    part = null;
    reading = null;
  }
}
