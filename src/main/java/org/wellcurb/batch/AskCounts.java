package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.report.AskLine;
import org.wellcurb.report.RuleAsk;

/** How many outcomes that cannot be told name each entry, and of how many records. */
final class AskCounts {
  private static final Comparator<AskLine> MOST_FIRST =
      Comparator.<AskLine>comparingLong(line -> -line.outcomes())
          .thenComparing(Comparator.comparingLong(line -> -line.records()));

  private final Catalogue catalogue = Catalogue.standard();
  private final long[] outcomes = new long[catalogue.size()];
  private final long[] records = new long[catalogue.size()];
  private final long[] lastRecord = new long[catalogue.size()];

  /** By pack and rule: outcomes that name each entry, and last of all the outcomes. */
  private final NavigableMap<Long, long[]> byRule = new TreeMap<>();

  private long counted;

  AskCounts() {
    Arrays.fill(lastRecord, -1);
  }

  /**
   * Counts an outcome of the record at hand.
   *
   * @param pack place of the pack
   * @param rule place of the rule in it
   * @param needs the entries that would settle it
   */
  void outcome(int pack, int rule, List<Entry> needs) {
    long[] ofRule = byRule.computeIfAbsent(key(pack, rule), none -> new long[catalogue.size() + 1]);
    ofRule[catalogue.size()]++;
    for (Entry entry : needs) {
      int i = entry.index();
      ofRule[i]++;
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
    part.byRule.forEach(
        (rule, counts) -> {
          long[] sums = byRule.computeIfAbsent(rule, none -> new long[counts.length]);
          for (int i = 0; i < counts.length; i++) {
            sums[i] += counts[i];
          }
        });
    counted += part.counted;
  }

  void clear() {
    Arrays.fill(outcomes, 0);
    Arrays.fill(records, 0);
    Arrays.fill(lastRecord, -1);
    byRule.values().forEach(counts -> Arrays.fill(counts, 0));
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

  /** The rules that cannot be told most often, each with the entries named most often for it. */
  List<RuleAsk> byRule(int most, int mostEntries) {
    List<RuleAsk> asks = new ArrayList<>();
    byRule.forEach(
        (rule, counts) -> {
          long untold = counts[catalogue.size()];
          if (untold > 0) {
            int pack = (int) (rule >> 32);
            asks.add(new RuleAsk(pack, rule.intValue(), untold, named(counts, mostEntries)));
          }
        });
    asks.sort(Comparator.comparingLong(ask -> -ask.records()));
    return asks.subList(0, Math.min(most, asks.size()));
  }

  /** Rules that cannot be told of some record. */
  int rules() {
    return (int) byRule.values().stream().filter(counts -> counts[catalogue.size()] > 0).count();
  }

  private List<AskLine> named(long[] counts, int most) {
    List<AskLine> lines = new ArrayList<>();
    for (int i = 0; i < catalogue.size(); i++) {
      if (counts[i] > 0) {
        lines.add(new AskLine(catalogue.entry(i).key(), counts[i], counts[i]));
      }
    }
    lines.sort(MOST_FIRST);
    return List.copyOf(lines.subList(0, Math.min(most, lines.size())));
  }

  private static long key(int pack, int rule) {
    return (long) pack << 32 | rule;
  }
}
