package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.report.AskLine;

/** What to ask for is counted over records of the whole batch, in whatever order they stand. */
class AskSampleTest {
  private static final long SEED = 20265;
  private static final int RECORDS = 60_000;
  private static final int MOST = 2000;
  private static final int PART = 700;

  private final Entry early = Catalogue.standard().entry(20);
  private final Entry late = Catalogue.standard().entry(30);

  /** By record its mark; the first third lacks one entry, all others another. */
  private AskCounts counted(long[] marks, boolean isBackwards, int partSize, int behind) {
    AskSample all = new AskSample();
    AskSample part = new AskSample();
    int[] seen = new int[behind + 1];
    for (int n = 0; n < RECORDS; n++) {
      int i = isBackwards ? RECORDS - 1 - n : n;
      int level = AskSample.level(marks[i]);
      // A worker sees what is needed no more only after a while.
      if (level >= seen[0]) {
        part.at(level).outcome(0, 0, List.of(i < RECORDS / 3 ? early : late));
        part.at(level).endRecord();
      }
      if (n % partSize == partSize - 1 || n == RECORDS - 1) {
        all.add(part, MOST);
        part.clear();
        System.arraycopy(seen, 1, seen, 0, behind);
        seen[behind] = all.least();
      }
    }
    return all.all();
  }

  @Test
  void aThirdOfTheBatchIsAThirdOfTheSample() {
    AskCounts counts = counted(new Random(SEED).longs(RECORDS).toArray(), false, PART, 1);
    assertTrue(counts.records() <= MOST && counts.records() >= MOST / 2 - 150, "" + SEED);
    List<AskLine> lines = counts.lines(9);
    assertEquals(List.of(late.key(), early.key()), lines.stream().map(AskLine::entry).toList());
    double share = (double) lines.get(1).records() / counts.records();
    // Four standard deviations of a third of a thousand.
    assertEquals(1.0 / 3, share, 0.06, "" + SEED);
  }

  @Test
  void neitherOrderNorPartsNorWorkersTell() {
    long[] marks = new Random(SEED).longs(RECORDS).toArray();
    List<AskLine> lines = counted(marks, false, PART, 0).lines(9);
    assertEquals(lines, counted(marks, true, PART, 0).lines(9));
    assertEquals(lines, counted(marks, true, 91, 5).lines(9));
    assertEquals(lines, counted(marks, false, RECORDS, 3).lines(9));
  }

  @Test
  void aSmallBatchIsCountedWhole() {
    AskSample all = new AskSample();
    AskSample part = new AskSample();
    for (long mark = 0; mark < MOST; mark++) {
      part.at(AskSample.level(mark)).endRecord();
    }
    all.add(part, MOST);
    assertEquals(MOST, all.all().records());
  }
}
