package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.LongBuffer;
import java.util.Arrays;

/**
 * How common what records say is in a batch, so that forms that agree by chance are told from
 * copies: figures are heaped on fives, and among many wells some agree in all of them.
 *
 * <p>Counted are records of a sample that hangs on their numbers and not on their rows; those that
 * are the same in all that is measured count as one, for copies make nothing common. Of entries
 * that hang on one another, such as the depth of a well and of its pump, the rarest tells most. Not
 * for several threads.
 */
final class Commonness {
  /** Records that are counted, at most: some more than half of so many. */
  private static final int SAMPLE = 1 << 15;

  private static final int BUCKETS = 1 << 20;

  /** The share of a value of which nothing is known, and how many records that guess is worth. */
  private static final double GUESS = 0.05;

  private static final double WORTH = 20;

  /** What stands in place of an entry for a position, and for the days between dates. */
  private static final int WHERE = -1;

  private static final int BETWEEN = -2;

  private final Alike alike;
  private final int records;
  private final int[] counts = new int[BUCKETS];
  private int counted;

  /**
   * @param ids marks of the numbers of all records
   */
  Commonness(SurveyFile survey, Alike alike, LongBuffer ids) throws IOException {
    this.alike = alike;
    records = ids.capacity();
    int shift = Long.SIZE;
    for (int left = ids.capacity(); left > SAMPLE / 4 * 3; left /= 2) {
      shift--;
    }
    int[] marks = alike.marks();
    long[] measured = new long[SAMPLE];
    int[] places = new int[SAMPLE];
    int size = 0;
    for (int i = 0; i < ids.capacity(); i++) {
      // The highest bits of the mixed number are 0 for one record in two, in four, ...
      if (size < SAMPLE && (shift == Long.SIZE || Areas.mixed(ids.get(i)) >>> shift == 0)) {
        survey.marks(i, marks);
        measured[size] = ((long) alike.measured(marks) << Integer.SIZE) | size;
        places[size++] = i;
      }
    }
    Arrays.sort(measured, 0, size);
    for (int i = 0; i < size; i++) {
      if (i == 0 || measured[i] >> Integer.SIZE != measured[i - 1] >> Integer.SIZE) {
        survey.marks(places[(int) measured[i]], marks);
        count(marks);
      }
    }
  }

  private void count(int[] marks) {
    counted++;
    for (int e = 0; e < marks.length; e++) {
      if (alike.saying(e) != Alike.NOTHING && marks[e] != 0) {
        counts[bucket(e, marks[e])]++;
      }
    }
    counts[bucket(WHERE, alike.where(marks))]++;
    counts[bucket(BETWEEN, alike.between(marks))]++;
  }

  private static int bucket(int entry, int mark) {
    return (int) (Areas.mixed(((long) entry << Integer.SIZE) ^ (mark & 0xFFFFFFFFL)) >>> 44);
  }

  private double share(int entry, int mark) {
    // The two that are laid beside one another tell nothing of all others.
    int others = Math.max(0, counts[bucket(entry, mark)] - 2);
    return (others + GUESS * WORTH) / (Math.max(0, counted - 2) + WORTH);
  }

  /** How many records of the batch agree with one by chance where these two do. */
  double expected(int[] a, int[] b) {
    int where = alike.where(a);
    boolean isOnePlace = where != 0 && where == alike.where(b);
    double expected = records * (isOnePlace ? share(WHERE, where) : 1);
    if (!alike.isOneDay(a, b) && alike.isBetweenEqual(a, b)) {
      expected *= share(BETWEEN, alike.between(a));
    }
    for (int saying = 1; saying < Alike.SAYINGS; saying++) {
      // Wells of one place are one contractor's for honest reasons.
      expected *= isOnePlace && saying == Alike.BY_WHOM ? 1 : share(saying, a, b);
    }
    return expected;
  }

  /**
   * The share of records that say the same of one kind. Another figure of the kind tells half of
   * what it would tell alone, and the same figure once more tells nothing.
   */
  private double share(int saying, int[] a, int[] b) {
    double rarest = 1;
    double second = 1;
    int mark = 0;
    for (int e = 0; e < a.length; e++) {
      if (alike.saying(e) != saying || a[e] != b[e] || a[e] == 0) {
        continue;
      }
      double share = share(e, a[e]);
      if (a[e] == mark) {
        rarest = Math.min(rarest, share);
      } else if (share < rarest) {
        second = rarest;
        rarest = share;
        mark = a[e];
      } else {
        second = Math.min(second, share);
      }
    }
    return rarest * Math.sqrt(second);
  }
}
