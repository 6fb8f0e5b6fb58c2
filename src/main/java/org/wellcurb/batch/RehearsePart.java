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

  /** Records by pair of rules, outcome before, outcome after; only those that differ. */
  final long[] counts;

  long screened;
  long setAside;
  long changed;
  long newlyShort;
  long noLongerShort;
  long changeLines;
  @Nullable Part part;
  @Nullable ChunkTally reading;

  RehearsePart(int pairs) {
    counts = new long[pairs * RulePairs.OUTCOMES * RulePairs.OUTCOMES];
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
    Arrays.fill(counts, 0);
    screened = 0;
    setAside = 0;
    changed = 0;
    newlyShort = 0;
    noLongerShort = 0;
    changeLines = 0;
    part = null;
    reading = null;
  }
}
