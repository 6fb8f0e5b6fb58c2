package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Figures that one contractor repeats, rounds, or writes in a row far more than all others in the
 * same areas, and last digits that it prefers. That is worth a look and no proof: wells of one
 * street are alike, so that the same figure at one place counts once.
 *
 * <p>What others write is the measure, in each area as much as the contractor works there. A
 * contractor who rounds to a step of fives, tens or rod lengths is measured by how many of all
 * others' figures that step would bring to the same figure, so that honest rounding raises nothing;
 * only multiples of fifty are looked at as such. Each p-value is the greater of an exact binomial
 * tail and a normal one whose variance is widened by as much as contractors differ from one another
 * anyway, and by what is not known of all others.
 */
public final class Copying {
  /** Fewest figures of a contractor in a zone. */
  public static final int LEAST_OWN = 20;

  /** Fewest figures of all others there. */
  public static final int LEAST_OTHERS = 60;

  /** Fewest times that a figure is repeated. */
  static final int LEAST_REPEATS = 5;

  /** Least share of a contractor's figures that is worth saying. */
  static final double LEAST_SHARE = 0.15;

  /** How many times the share of all others it must be. */
  static final double LEAST_RATIO = 3;

  /** By how much a share of round figures must be greater than that of all others. */
  static final double LEAST_MORE_ROUND = 0.35;

  /** By how much the share of a last digit must be greater than that of all others. */
  static final double LEAST_MORE_DIGIT = 0.2;

  /** What counts as a round figure. */
  static final float ROUND = 50;

  /** Fewest equal figures in a row. */
  static final int LEAST_RUN = 5;

  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

  /** The median of the square of a standard normal. */
  private static final double MEDIAN_OF_SQUARE = 0.45494;

  /** The median of chi-square with seven degrees of freedom. */
  private static final double MEDIAN_OF_DIGITS = 6.34581;

  /** Fewest expected repeats from which the spread between contractors is told. */
  private static final double EXPECTED = 4;

  /** Zones in the upper halves of the keys, contractors in the lower. */
  private final Distinct groups;

  /** The code of the contractor in its zone, by record. */
  private final IntBuffer group;

  private final int nobody;

  /** How many contractors there are. */
  private final int contractors;

  private final Areas areas;
  private final Columns columns;

  /** What was looked at. */
  public enum Kind {
    /** One figure again and again. */
    REPEATED,
    /** Multiples of fifty. */
    ROUND,
    /** The same figure in a row of records. */
    RUN,
    /** One last digit, of figures that no rounding makes. */
    DIGIT
  }

  /**
   * One test of one contractor in one zone.
   *
   * @param contractor code of the contractor
   * @param zone code of the zone
   * @param field what was measured
   * @param kind what was looked at
   * @param figure the figure, or the last digit; NaN where it is about multiples of fifty
   * @param hits how often it stands there, or how long the row is
   * @param own figures of the contractor there
   * @param stands how often it stands there; of a row its figure, on whatever record
   * @param othersShare share of it among the figures of all others there; of a row the share that
   *     it was laid beside
   * @param p how likely that would be if the contractor were like all others
   * @param isMarked whether it is great enough to be worth saying, whatever p is
   */
  record Tried(
      int contractor,
      int zone,
      Field field,
      Kind kind,
      double figure,
      int hits,
      int own,
      int stands,
      double othersShare,
      double p,
      boolean isMarked) {}

  Copying(SurveyFile survey) throws IOException {
    columns = survey.columns();
    int records = survey.rows();
    IntBuffer contractor = survey.ints(SurveyRow.CONTRACTOR);
    IntBuffer zone = survey.ints(SurveyRow.ZONE);
    LongBuffer keys = columns.longs(records);
    for (int i = 0; i < records; i++) {
      keys.put(i, key(contractor.get(i), zone.get(i)));
    }
    groups = new Distinct(keys, columns.longs(records));
    group = columns.ints(records);
    for (int i = 0; i < records; i++) {
      group.put(i, groups.code(key(contractor.get(i), zone.get(i))));
    }
    contractors = survey.contractors().size();
    nobody = survey.contractors().indexOf("");
    areas = Areas.of(survey, zone);
  }

  private static long key(int contractor, int zone) {
    return ((long) zone << 32) | contractor;
  }

  private int contractor(int record) {
    return (int) groups.key(group.get(record));
  }

  /**
   * All tests on one field.
   *
   * @param written by record; figures that do not count become NaN
   */
  List<Tried> tried(Field field, FloatBuffer written) throws IOException {
    BitSet breaks = breaks(written);
    FloatBuffer everywhere = columns.floats(written.capacity());
    everywhere.put(0, written, 0, written.capacity());
    FiguresByArea all = new FiguresByArea(written, group::get, areas, columns);
    List<Compared> able = able(written, breaks, all);
    double spreadOfRepeats = spreadOfRepeats(able);
    double spreadOfRounds = spreadOfRounds(able);
    double spreadOfDigits = spreadOfDigits(able);
    List<Share> rows = shares(able, everywhere);
    List<Tried> tried = new ArrayList<>();
    for (int i = 0; i < able.size(); i++) {
      Compared each = able.get(i);
      tried.add(repeats(field, each, spreadOfRepeats));
      tried.add(rounds(field, each, spreadOfRounds));
      tried.add(run(field, each, rows.get(i)));
      if (each.digits.isAble()) {
        tried.add(digits(field, each, spreadOfDigits));
      }
    }
    return tried;
  }

  /**
   * Records at which a contractor writes another figure than on its record before, in whatever zone
   * that stands, or none at all.
   */
  private BitSet breaks(FloatBuffer written) {
    float[] last = new float[contractors];
    BitSet breaks = new BitSet();
    for (int i = 0; i < written.capacity(); i++) {
      int contractor = contractor(i);
      if (!(written.get(i) == last[contractor])) {
        breaks.set(i);
      }
      last[contractor] = written.get(i);
    }
    return breaks;
  }

  /** Contractors in zones who wrote enough where others wrote enough, by zone and contractor. */
  private List<Compared> able(FloatBuffer written, BitSet breaks, FiguresByArea all)
      throws IOException {
    int[] ends = new int[groups.count() + 1];
    for (int i = 0; i < written.capacity(); i++) {
      ends[group.get(i) + 1] += counts(written, i) ? 1 : 0;
    }
    for (int g = 0; g < groups.count(); g++) {
      ends[g + 1] += ends[g];
    }
    IntBuffer records = columns.ints(ends[groups.count()]);
    int[] at = Arrays.copyOf(ends, groups.count());
    int[] rows = new int[contractors];
    int[] lastRow = new int[groups.count()];
    BitSet begins = new BitSet();
    for (int i = 0; i < written.capacity(); i++) {
      int row = rows[contractor(i)] += breaks.get(i) ? 1 : 0;
      if (counts(written, i)) {
        int g = group.get(i);
        begins.set(at[g], lastRow[g] != row);
        lastRow[g] = row;
        records.put(at[g]++, i);
      }
    }
    OwnAndOthers gather = new OwnAndOthers(written, areas, all, columns);
    List<Compared> able = new ArrayList<>();
    for (int g = 0; g < groups.count(); g++) {
      if (ends[g + 1] - ends[g] >= LEAST_OWN) {
        Habits habits = gather.of(records, ends[g], ends[g + 1], begins);
        if (habits.size >= LEAST_OWN && habits.worth >= LEAST_OTHERS) {
          able.add(new Compared((int) groups.key(g), (int) (groups.key(g) >>> 32), habits));
        }
      }
    }
    return able;
  }

  private boolean counts(FloatBuffer written, int record) {
    return !Float.isNaN(written.get(record)) && contractor(record) != nobody;
  }

  /** The figure that stands out most, paid for by the number of figures that it could have been. */
  private static Tried repeats(Field field, Compared habits, double spread) {
    double least = 2;
    int most = -1;
    double widened = habits.widened(spread);
    for (int i = 0; i < habits.figures.length; i++) {
      double p = tail(habits.counts[i], habits.size, habits.othersShares[i], widened, least);
      if (p < least) {
        least = p;
        most = i;
      }
    }
    int hits = habits.counts[most];
    double share = habits.othersShares[most];
    double ownShare = (double) hits / habits.size;
    boolean isMarked =
        hits >= LEAST_REPEATS && ownShare >= LEAST_SHARE && ownShare >= LEAST_RATIO * share;
    double p = Math.min(1, least * habits.figures.length);
    double figure = habits.figures[most];
    return tried(field, habits, Kind.REPEATED, figure, hits, habits.size, share, p, isMarked);
  }

  private static Tried rounds(Field field, Compared habits, double spread) {
    int round = habits.round;
    double others = habits.othersRound;
    double p = tail(round, habits.size, others, habits.widened(spread));
    boolean isMarked = (double) round / habits.size - others >= LEAST_MORE_ROUND;
    return tried(field, habits, Kind.ROUND, Double.NaN, round, habits.size, others, p, isMarked);
  }

  /**
   * How common the figure of each longest row is on all records of the contractor there, those at
   * one place too. Of what counts once at each place the commonest figures come first: their share
   * among what counts says less of a row than this.
   */
  private List<Share> shares(List<Compared> able, FloatBuffer everywhere) {
    int[] of = new int[groups.count()];
    int[] hits = new int[groups.count()];
    float[] figures = new float[groups.count()];
    for (Compared each : able) {
      figures[groups.code(key(each.contractor, each.zone))] = each.row.figure();
    }
    for (int i = 0; i < everywhere.capacity(); i++) {
      float figure = everywhere.get(i);
      of[group.get(i)] += figure > 0 ? 1 : 0;
      hits[group.get(i)] += figure == figures[group.get(i)] ? 1 : 0;
    }
    List<Share> shares = new ArrayList<>();
    for (Compared each : able) {
      int code = groups.code(key(each.contractor, each.zone));
      shares.add(Share.of(hits[code], of[code]));
    }
    return shares;
  }

  /**
   * A row of equal figures: each next one is as likely as that figure is, among all others, where
   * the row goes through, or among its own, whichever is most: rows come by being repeated often,
   * too.
   */
  private static Tried run(Field field, Compared habits, Share own) {
    int length = habits.row.length();
    double share = Math.max(habits.ofRow, own.share());
    double p = LongestRow.p(length, (int) own.of(), share);
    return new Tried(
        habits.contractor,
        habits.zone,
        field,
        Kind.RUN,
        habits.row.figure(),
        length,
        (int) own.of(),
        (int) own.hits(),
        share,
        p,
        length >= LEAST_RUN);
  }

  private static Tried digits(Field field, Compared habits, double spread) {
    LastDigits digits = habits.digits;
    int digit = digits.preferred();
    double share = digits.share(digit);
    boolean isMarked = (double) digits.own[digit] / digits.size - share >= LEAST_MORE_DIGIT;
    double p = LastDigits.p(digits.statistic(), spread);
    return tried(
        field, habits, Kind.DIGIT, digit, digits.own[digit], digits.size, share, p, isMarked);
  }

  private static Tried tried(
      Field field,
      Compared habits,
      Kind kind,
      double figure,
      int hits,
      int own,
      double share,
      double p,
      boolean isMarked) {
    return new Tried(
        habits.contractor, habits.zone, field, kind, figure, hits, own, hits, share, p, isMarked);
  }

  /** Whether a figure is one of those that a test is about. */
  static boolean isAbout(Tried tried, float written) {
    return switch (tried.kind()) {
      case ROUND -> Habits.isMultiple(written, ROUND);
      case DIGIT -> LastDigits.digit(written) == (int) tried.figure();
      case REPEATED, RUN -> written == (float) tried.figure();
    };
  }

  /** How likely as many, or more, are; never less than with the wider variance. */
  static double tail(int hits, int of, double share, double spread) {
    return tail(hits, of, share, spread, Double.POSITIVE_INFINITY);
  }

  /**
   * The same, but where it is not less than a bound, as soon as that is seen: the exact tail takes
   * far longer than the normal one.
   */
  private static double tail(int hits, int of, double share, double spread, double bound) {
    if (hits == 0) {
      return 1;
    }
    double deviation = Math.sqrt(of * share * (1 - share) * spread);
    double wide =
        STANDARD.survivalProbability((hits - 0.5 - of * share) / Math.max(deviation, 1e-12));
    if (wide >= bound) {
      return wide;
    }
    double exact = BinomialDistribution.of(of, share).survivalProbability(hits - 1);
    return Math.max(exact, wide);
  }

  /** How much more than by chance contractors differ in how often they write a common figure. */
  private static double spreadOfRepeats(List<Compared> able) {
    double[] squares = new double[64];
    int count = 0;
    for (Compared habits : able) {
      for (int i = 0; i < habits.figures.length; i++) {
        double share = habits.othersShares[i];
        if (share * habits.size >= EXPECTED) {
          if (count == squares.length) {
            squares = Arrays.copyOf(squares, 2 * count);
          }
          squares[count++] = square(habits.counts[i], habits, share);
        }
      }
    }
    return spread(squares, count);
  }

  private static double spreadOfRounds(List<Compared> able) {
    double[] squares =
        able.stream().mapToDouble(each -> square(each.round, each, each.othersRound)).toArray();
    return spread(squares, squares.length);
  }

  private static double spreadOfDigits(List<Compared> able) {
    double[] statistics =
        able.stream()
            .map(each -> each.digits)
            .filter(LastDigits::isAble)
            .mapToDouble(LastDigits::statistic)
            .toArray();
    return statistics.length < 5
        ? 1
        : Math.max(1, Spread.median(statistics, statistics.length) / MEDIAN_OF_DIGITS);
  }

  private static double square(int hits, Compared habits, double share) {
    return square(hits, habits.size, share) / habits.widened(1);
  }

  static double square(int hits, int of, double share) {
    double away = hits - of * share;
    return away * away / (of * share * (1 - share));
  }

  /** How much more than by chance; 1 where there are too few to say. */
  static double spread(double[] squares, int count) {
    return count < 5 ? 1 : Math.max(1, Spread.median(squares, count) / MEDIAN_OF_SQUARE);
  }
}
