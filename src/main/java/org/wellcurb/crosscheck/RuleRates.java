package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How often records fall short of each rule, by contractor, zone or year, over the records of which
 * the rule could be told; and what that would lead one to expect of each record. One reading of the
 * survey counts all; counts by group are kept for the largest groups only.
 *
 * <p>Records of licences whose depths are in another unit are no measure of anyone: they are
 * counted in their own groups, and not among all others.
 */
final class RuleRates {
  /** Groups of one kind, the largest, that are counted rule by rule. */
  static final int MOST_GROUPS = 4000;

  /**
   * The most that groups are taken to differ anyway, as a standard deviation of log odds: where
   * they differ more, some of them are apart, and are said to be.
   */
  static final double MOST_BETWEEN = 0.7;

  /** Fewest groups of which it can be told how much they differ anyway. */
  private static final int LEAST_GROUPS = 5;

  /** The largest groups, of which it is told over all rules how much they differ anyway. */
  private static final int MOST_TOLD_BY = 256;

  /** Fewest shortfalls expected of a group for that. */
  private static final double LEAST_EXPECTED = 4;

  private final SurveyFile survey;

  /** Records that are not counted among all others. */
  private final BitSet off;

  private final int[] starts;
  private final List<Groups> kinds = new ArrayList<>();

  /** By rule, of all records that count among others. */
  private final long[] told;

  private final long[] fallsShort;

  /** Where the words of each pack begin, if what all packs said stood in one row. */
  private final int[] words;

  /** Groups of one kind, with the place of each that is counted. */
  private static final class Groups {
    final IntBuffer codes;

    /** Where its records stand; null where that is what makes a group. */
    @Nullable Strata strata;

    /** Whether a group is a time: then rules whose text changed say nothing of it. */
    final boolean isTime;

    final int[] counted;
    final int[] place;
    final int leftOut;
    BitCounts counts = new BitCounts(0, 0);

    /** What of that does not count among others; null where all does. */
    @Nullable BitCounts off;

    Groups(IntBuffer codes, boolean isTime) {
      this.codes = codes;
      this.isTime = isTime;
      int[] size = new int[Columns.greatest(codes) + 1];
      for (int i = 0; i < codes.capacity(); i++) {
        if (codes.get(i) >= 0) {
          size[codes.get(i)]++;
        }
      }
      long[] largest = new long[size.length];
      int able = 0;
      for (int code = 0; code < size.length; code++) {
        if (size[code] >= RuleFloors.OF_GROUP) {
          largest[able++] = ((long) -size[code] << 32) | code;
        }
      }
      Arrays.sort(largest, 0, able);
      counted = new int[Math.min(able, MOST_GROUPS)];
      leftOut = able - counted.length;
      place = new int[size.length];
      Arrays.fill(place, -1);
      for (int i = 0; i < counted.length; i++) {
        counted[i] = (int) largest[i];
        place[counted[i]] = i;
      }
    }

    /** Records of a group of which the rule of a bit could be told. */
    int told(int group, int bit) {
      return counts.count(group, bit) + counts.count(group, bit + 1);
    }

    int fallsShort(int group, int bit) {
      return counts.count(group, bit + 1);
    }

    /** Records of a group in which a bit is set that count among the others of another group. */
    int counting(int group, int bit) {
      BitCounts without = off;
      return counts.count(group, bit) - (without == null ? 0 : without.count(group, bit));
    }

    /** The place of the group of a record, less than 0 if it is not counted. */
    int group(int record) {
      int code = codes.get(record);
      return code < 0 ? -1 : place[code];
    }
  }

  /**
   * A test of one rule in one group.
   *
   * @param group its code
   * @param pack place of the pack
   * @param rule place of the rule in it
   * @param fallsShort records that fall short
   * @param told records of which it could be told
   * @param othersShare share that falls short among all others of which it could be told, in the
   *     same places
   * @param between how much groups differ on the rule anyway, as a standard deviation of log odds
   * @param p how likely as many, or more, would be if the group were like all others
   * @param isMarked whether it is great enough to be worth saying, whatever p is
   */
  record Tried(
      int group,
      int pack,
      int rule,
      int fallsShort,
      int told,
      double othersShare,
      double between,
      double p,
      boolean isMarked) {}

  /**
   * @param off records that are not counted among all others
   */
  RuleRates(SurveyFile survey, BitSet off) {
    this.survey = survey;
    this.off = off;
    starts = survey.rules().starts();
    int rules = starts[starts.length - 1];
    told = new long[rules];
    fallsShort = new long[rules];
    words = new int[starts.length];
    for (int pack = 0; pack + 1 < starts.length; pack++) {
      words[pack + 1] = words[pack] + Told.words(starts[pack + 1] - starts[pack]);
    }
  }

  /**
   * Asks for the counts of groups of one kind, before {@link #count}.
   *
   * @param codes by record; negative for none
   * @param isTime whether a group is a time: its records are then judged by the texts of their day,
   *     and by rules of which there are several it is not laid beside others
   * @return the number of this kind, to ask with
   */
  int by(IntBuffer codes, boolean isTime) {
    kinds.add(new Groups(codes, isTime));
    return kinds.size() - 1;
  }

  /**
   * The same, of groups that are laid beside those who work in the same places only: licences.
   *
   * @see Strata
   */
  int byWhereTheyWork(IntBuffer codes) throws IOException {
    Groups groups = new Groups(codes, false);
    groups.strata = new Strata(survey, groups::group, groups.counted.length, off);
    kinds.add(groups);
    return kinds.size() - 1;
  }

  /** Groups with enough records that are not counted rule by rule. */
  long leftOut() {
    return kinds.stream().mapToLong(groups -> groups.leftOut).sum();
  }

  /** Reads the survey. */
  void count() throws IOException {
    int row = words[words.length - 1];
    BitCounts all = new BitCounts(1, row);
    for (Groups groups : kinds) {
      groups.counts = new BitCounts(groups.counted.length, row);
      groups.off = off.isEmpty() ? null : new BitCounts(groups.counted.length, row);
      if (groups.strata != null) {
        groups.strata.begin(row);
      }
    }
    long[] bits = new long[row];
    survey.outcomes(
        (place, pack, said, at, end) -> {
          int count = words[pack + 1] - words[pack];
          Told.words(said, at, end, bits, count);
          boolean isOff = off.get(place);
          if (!isOff) {
            all.add(0, bits, words[pack], count);
          }
          for (Groups groups : kinds) {
            Strata strata = groups.strata;
            if (strata != null) {
              strata.add(place, bits, words[pack], count);
            }
            int group = groups.group(place);
            if (group >= 0) {
              groups.counts.add(group, bits, words[pack], count);
              BitCounts without = groups.off;
              if (isOff && without != null) {
                without.add(group, bits, words[pack], count);
              }
            }
          }
        });
    for (int pack = 0; pack + 1 < starts.length; pack++) {
      for (int r = starts[pack]; r < starts[pack + 1]; r++) {
        int bit = bit(pack, r);
        fallsShort[r] = all.count(0, bit + 1);
        told[r] = all.count(0, bit) + fallsShort[r];
      }
    }
  }

  /** The bit that a rule sets where it is met; the next is where a record falls short of it. */
  private int bit(int pack, int r) {
    return words[pack] * Long.SIZE + 2 * (r - starts[pack]);
  }

  /**
   * How likely a deficiency is to be found on each record, by what could be told of it and by how
   * often all records fall short of those rules; of groups that are laid beside those who work in
   * the same places, by how often all others do there. So a full form is not laid beside an empty
   * one, nor hard ground beside easy. Of a time, by how often it falls short itself of a rule whose
   * text changed: an older limit is no merit, nor a later one a fault. Without rules all are as
   * likely.
   *
   * @param kind of groups
   */
  FloatBuffer expected(int kind) throws IOException {
    Groups groups = kinds.get(kind);
    Strata strata = groups.strata;
    long[] dated = new long[words[words.length - 1]];
    double[] shares = new double[words[words.length - 1] * Told.IN_WORD];
    long[] counts = new long[words[words.length - 1]];
    List<RuleSet.RulesOfPack> packs = survey.rules().packs();
    for (int pack = 0; pack < packs.size(); pack++) {
      for (int r = starts[pack]; r < starts[pack + 1]; r++) {
        if (packs.get(pack).isDeficiency().get(r - starts[pack]) && told[r] > 0) {
          int bit = bit(pack, r);
          counts[bit / Long.SIZE] |= 1L << bit;
          if (groups.isTime && isDated(pack, r)) {
            dated[bit / Long.SIZE] |= 1L << bit;
          }
          shares[bit / 2] = (double) fallsShort[r] / told[r];
        }
      }
    }
    FloatBuffer expected = survey.columns().floats(survey.rows());
    for (int i = 0; i < expected.capacity() && packs.isEmpty(); i++) {
      expected.put(i, 1);
    }
    long[] bits = new long[counts.length];
    survey.outcomes(
        (place, pack, said, at, end) -> {
          Told.words(said, at, end, bits, words[pack + 1] - words[pack]);
          double none = 1;
          for (int word = words[pack]; word < words[pack + 1]; word++) {
            long one = bits[word - words[pack]];
            for (long left = (one | (one >>> 1)) & counts[word]; left != 0; left &= left - 1) {
              int bit = word * Long.SIZE + Long.numberOfTrailingZeros(left);
              double share = shares[bit / 2];
              int own = (dated[word] & (1L << bit)) == 0 ? -1 : groups.group(place);
              if (own >= 0) {
                share = (double) groups.fallsShort(own, bit) / groups.told(own, bit);
              }
              none *= 1 - (strata == null ? share : strata.share(place, bit, share));
            }
          }
          expected.put(place, (float) (1 - none));
        });
    return expected;
  }

  private boolean isDated(int pack, int r) {
    return survey.rules().packs().get(pack).isDated().get(r - starts[pack]);
  }

  /** All tests on groups of one kind but one, which may be the records that name none. */
  List<Tried> tried(int kind, int but) {
    Groups groups = kinds.get(kind);
    List<Tried> tried = new ArrayList<>();
    double anyway = between(groups);
    for (int pack = 0; pack + 1 < starts.length; pack++) {
      for (int r = starts[pack]; r < starts[pack + 1]; r++) {
        if (groups.isTime && isDated(pack, r)) {
          continue;
        }
        List<OwnBeside> able = new ArrayList<>();
        int[] codes = new int[groups.counted.length];
        Counted counted = new Counted();
        for (int g = 0; g < groups.counted.length; g++) {
          OwnBeside beside = beside(groups, g, r, bit(pack, r));
          if (beside.isAble()) {
            counted.add(beside);
            codes[able.size()] = groups.counted[g];
            able.add(beside);
          }
        }
        double between = Math.max(anyway, counted.between());
        for (int i = 0; i < able.size(); i++) {
          if (codes[i] != but) {
            tried.add(test(codes[i], able.get(i), r - starts[pack], pack, between));
          }
        }
      }
    }
    return tried;
  }

  /** A group beside all others, where both are. */
  private OwnBeside beside(Groups groups, int group, int r, int bit) {
    Strata strata = groups.strata;
    if (strata != null) {
      return strata.beside(group, bit);
    }
    int own = groups.told(group, bit);
    long others = told[r] - groups.counting(group, bit) - groups.counting(group, bit + 1);
    long hits = fallsShort[r] - groups.counting(group, bit + 1);
    return others == 0
        ? OwnBeside.of(0, 0, 0, 0)
        : OwnBeside.of(
            groups.fallsShort(group, bit),
            own,
            (double) own * hits / others,
            (double) own * own / others);
  }

  private static Tried test(int group, OwnBeside beside, int rule, int pack, double between) {
    int hits = beside.hits();
    int own = beside.of();
    double others = beside.share();
    boolean isMarked = RuleFloors.isGreat(hits, own, others);
    double p = beside.p(between);
    return new Tried(group, pack, rule, hits, own, others, between, p, isMarked);
  }

  /** What a rule, or all rules, say of groups. */
  private static final class Counted {
    int[] hits = new int[64];
    int[] of = new int[64];
    double[] shares = new double[64];
    int size;

    void add(OwnBeside beside) {
      if (size == hits.length) {
        hits = Arrays.copyOf(hits, 2 * size);
        of = Arrays.copyOf(of, 2 * size);
        shares = Arrays.copyOf(shares, 2 * size);
      }
      hits[size] = beside.hits();
      of[size] = beside.of();
      shares[size++] = beside.share();
    }

    /** How much groups differ anyway, beyond chance. */
    double between() {
      return size < LEAST_GROUPS ? 0 : MixedTail.between(hits, of, shares, size, MOST_BETWEEN);
    }
  }

  /** The same over all rules, of the largest groups: one rule alone tells it badly. */
  private double between(Groups groups) {
    Counted counted = new Counted();
    int most = Math.min(MOST_TOLD_BY, groups.counted.length);
    for (int pack = 0; pack + 1 < starts.length; pack++) {
      for (int r = starts[pack]; r < starts[pack + 1]; r++) {
        for (int g = 0; g < most && !(groups.isTime && isDated(pack, r)); g++) {
          OwnBeside beside = beside(groups, g, r, bit(pack, r));
          if (beside.isAble() && beside.of() * beside.share() >= LEAST_EXPECTED) {
            counted.add(beside);
          }
        }
      }
    }
    return counted.between();
  }
}
