package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.report.AskLine;

/** How many outcomes that cannot be told name each entry, and of how many records. */
final class AskCounts {
  private static final Comparator<AskLine> MOST_FIRST =
      Comparator.<AskLine>comparingLong(line -> -line.outcomes())
          .thenComparing(Comparator.comparingLong(line -> -line.records()));

  private final Catalogue catalogue = Catalogue.standard();
  private final long[] outcomes = new long[catalogue.size()];
  private final long[] records = new long[catalogue.size()];
  private final long[] lastRecord = new long[catalogue.size()];
  private long counted;

  AskCounts() {
    Arrays.fill(lastRecord, -1);
  }

  /** Counts an outcome of the record at hand: the entries that would settle it. */
  void outcome(List<Entry> needs) {
    for (Entry entry : needs) {
      int i = entry.index();
      outcomes[i]++;
      if (lastRecord[i] != counted) {
        lastRecord[i] = counted;
        records[i]++;
      }
    }
  }

  /** Goes on to the next record. */
  void endRecord() {
    counted++;
  }

  /** Adds the counts of another part. */
  void add(AskCounts part) {
    for (int i = 0; i < outcomes.length; i++) {
      outcomes[i] += part.outcomes[i];
      records[i] += part.records[i];
    }
    counted += part.counted;
  }

  void clear() {
    Arrays.fill(outcomes, 0);
    Arrays.fill(records, 0);
    Arrays.fill(lastRecord, -1);
    counted = 0;
  }

  /** Records over which was counted. */
  long records() {
    return counted;
  }

  /** The entries named most often, in the order of the form among equals. */
  List<AskLine> lines(int most) {
    List<AskLine> lines = new ArrayList<>();
    for (int i = 0; i < outcomes.length; i++) {
      if (outcomes[i] > 0) {
        lines.add(new AskLine(catalogue.entry(i).key(), outcomes[i], records[i]));
      }
    }
    lines.sort(MOST_FIRST);
    return lines.subList(0, Math.min(most, lines.size()));
  }
}
