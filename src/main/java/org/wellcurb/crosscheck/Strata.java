package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What rules said by licence and by where the wells are, so that a licence is laid beside those who
 * work in the same zone: who drills only where frost is deep or rock is near falls short of other
 * rules than who does not, and is no worse for it. Records that name no zone are told apart by
 * where they stand, some 25 km; those without a position, too, are of one stratum.
 */
final class Strata {
  /** Licences in strata, the largest, that are counted: some 2 kB each. */
  static final int MOST_PAIRS = 6000;

  /** Degrees within which wells without a zone are of one stratum. */
  private static final double AREA = 0.25;

  private static final long COLUMNS = 1L << 20;

  /** By record, the pair of licence and stratum; less than 0 where it is not counted. */
  private final IntBuffer pair;

  /** By record. */
  private final IntBuffer stratum;

  /** By pair. */
  private final int[] stratumOf;

  /** Pairs of each group, one after the other. */
  private final List<int[]> pairs;

  private final int strata;
  private final BitSet off;
  private BitCounts own = new BitCounts(0, 0);

  /** What of that does not count among others. */
  private BitCounts ownOff = new BitCounts(0, 0);

  private BitCounts all = new BitCounts(0, 0);

  /**
   * @param group the place of the licence of a record, less than 0 if it is not counted
   * @param groups how many there are
   * @param off records that are not counted among all others
   */
  Strata(SurveyFile survey, Group group, int groups, BitSet off) throws IOException {
    this.off = off;
    Columns columns = survey.columns();
    int rows = survey.rows();
    stratum = columns.ints(rows);
    Distinct places = strata(survey, stratum);
    strata = places.count();
    LongBuffer keys = columns.longs(rows);
    for (int i = 0; i < rows; i++) {
      keys.put(i, key(group.of(i), stratum.get(i)));
    }
    Distinct found = new Distinct(keys, columns.longs(rows));
    pair = columns.ints(rows);
    int[] size = new int[found.count()];
    for (int i = 0; i < rows; i++) {
      int code = found.code(key(group.of(i), stratum.get(i)));
      pair.put(i, code);
      size[code]++;
    }
    int[] kept =
        IntStream.range(0, found.count())
            .filter(code -> found.key(code) >= 0)
            .boxed()
            .sorted(Comparator.comparingInt((Integer code) -> -size[code]))
            .limit(MOST_PAIRS)
            .mapToInt(Integer::intValue)
            .toArray();
    int[] place = new int[found.count()];
    Arrays.fill(place, -1);
    stratumOf = new int[kept.length];
    int[][] ofGroup = new int[groups][0];
    for (int i = 0; i < kept.length; i++) {
      place[kept[i]] = i;
      stratumOf[i] = (int) found.key(kept[i]);
      int of = (int) (found.key(kept[i]) >>> 32);
      ofGroup[of] = Arrays.copyOf(ofGroup[of], ofGroup[of].length + 1);
      ofGroup[of][ofGroup[of].length - 1] = i;
    }
    pairs = List.of(ofGroup);
    for (int i = 0; i < rows; i++) {
      pair.put(i, place[pair.get(i)]);
    }
  }

  /** Says of which licence a record is. */
  interface Group {
    int of(int record);
  }

  private static long key(int group, int stratum) {
    return group < 0 ? -1 : ((long) group << 32) | stratum;
  }

  /** Puts the stratum of each record. */
  private static Distinct strata(SurveyFile survey, IntBuffer into) throws IOException {
    IntBuffer zone = survey.ints(SurveyRow.ZONE);
    FloatBuffer latitude = survey.floats(SurveyRow.LATITUDE);
    FloatBuffer longitude = survey.floats(SurveyRow.LONGITUDE);
    int nowhere = survey.zones().indexOf("");
    LongBuffer keys = survey.columns().longs(survey.rows());
    for (int i = 0; i < survey.rows(); i++) {
      keys.put(i, stratum(zone.get(i), nowhere, latitude.get(i), longitude.get(i)));
    }
    Distinct strata = new Distinct(keys, survey.columns().longs(survey.rows()));
    for (int i = 0; i < survey.rows(); i++) {
      into.put(i, strata.code(stratum(zone.get(i), nowhere, latitude.get(i), longitude.get(i))));
    }
    return strata;
  }

  private static long stratum(int zone, int nowhere, float latitude, float longitude) {
    if (zone != nowhere) {
      return zone;
    }
    if (Float.isNaN(latitude) || Float.isNaN(longitude)) {
      return -1;
    }
    long row = (long) Math.floor((latitude + 90) / AREA);
    return -2 - row * COLUMNS - (long) Math.floor((longitude + 180) / AREA);
  }

  /** Makes room for so many words of each. */
  void begin(int words) {
    own = new BitCounts(stratumOf.length, words);
    ownOff = new BitCounts(off.isEmpty() ? 0 : stratumOf.length, words);
    all = new BitCounts(strata, words);
  }

  /** Counts what rules said of a record. */
  void add(int record, long[] bits, int from, int count) {
    boolean isOff = off.get(record);
    if (!isOff) {
      all.add(stratum.get(record), bits, from, count);
    }
    int at = pair.get(record);
    if (at >= 0) {
      own.add(at, bits, from, count);
      if (isOff) {
        ownOff.add(at, bits, from, count);
      }
    }
  }

  /** Others of a pair in whose records a bit is set. */
  private int others(int at, int bit) {
    int without = off.isEmpty() ? 0 : ownOff.count(at, bit);
    return all.count(stratumOf[at], bit) - own.count(at, bit) + without;
  }

  /**
   * A group beside all others, over the strata where enough others are: each weighs as much as the
   * group has records there.
   *
   * @param bit of a rule that is met; the next is that it falls short
   */
  OwnBeside beside(int group, int bit) {
    int hits = 0;
    int of = 0;
    double expected = 0;
    double squares = 0;
    for (int at : pairs.get(group)) {
      int fewer = own.count(at, bit + 1);
      int here = fewer + own.count(at, bit);
      int shortOthers = others(at, bit + 1);
      int rest = shortOthers + others(at, bit);
      if (here > 0 && rest >= RuleFloors.IN_STRATUM) {
        hits += fewer;
        of += here;
        expected += (double) here * shortOthers / rest;
        squares += (double) here * here / rest;
      }
    }
    return OwnBeside.of(hits, of, expected, squares);
  }

  /**
   * How often all others fall short of a rule where a record is; with its own licence, where too
   * few of them are there to say, so that who works alone is as is expected.
   *
   * @param everywhere the share of all records, as much as one record of them
   */
  double share(int record, int bit, double everywhere) {
    int at = pair.get(record);
    int of = stratum.get(record);
    int hits = at < 0 ? all.count(of, bit + 1) : others(at, bit + 1);
    int told = hits + (at < 0 ? all.count(of, bit) : others(at, bit));
    if (at >= 0 && told < RuleFloors.IN_STRATUM) {
      hits += own.count(at, bit + 1);
      told += own.count(at, bit + 1) + own.count(at, bit);
    }
    return (hits + everywhere) / (told + 1.0);
  }
}
