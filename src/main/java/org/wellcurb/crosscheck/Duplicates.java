package org.wellcurb.crosscheck;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/**
 * Records that stand in a batch more than once: under the same number, or nearly word for word
 * under another. A position that two records share says nothing, for many positions are section
 * centres.
 *
 * <p>Near copies are found in time that grows with the number of records: records that agree in one
 * of four groups of entries are laid beside a few that stand next to them in that group's order,
 * and compared entry by entry.
 */
public final class Duplicates {
  /** Records beside which each is laid in the order of a group. */
  private static final int WINDOW = 6;

  /** Entries that may differ between near copies. */
  static final int MOST_DIFFERENT = 3;

  /** Measured entries that must agree: wells alike on a form differ in these. */
  static final int LEAST_MEASURED = 4;

  /** Measured entries that may differ. */
  static final int MOST_MEASURED_DIFFERENT = 1;

  /** Entries that must agree in all. */
  static final int LEAST_EQUAL = 8;

  /** Pairs that are compared at least, however small the batch. */
  private static final int MOST_CANDIDATES = 1_000_000;

  private final SurveyFile survey;
  private final Entry[] entries;
  private final boolean[] isIdentity;
  private final boolean[] isMeasured;
  private final int most;
  private boolean isCut;

  /**
   * @param most groups and pairs that are described; all are counted
   */
  public Duplicates(SurveyFile survey, Catalogue catalogue, int most) {
    this.survey = survey;
    this.entries = catalogue.entries().toArray(Entry[]::new);
    isIdentity = new boolean[entries.length];
    isMeasured = new boolean[entries.length];
    for (int i = 0; i < entries.length; i++) {
      isIdentity[i] = SurveyRow.isIdentity(entries[i]);
      isMeasured[i] = isMeasured(entries[i]);
    }
    this.most = most;
  }

  /**
   * Records of one number.
   *
   * @param rows on how many rows it stands
   * @param records where they stand, in input order, at most so many
   * @param different keys of entries in which they differ; empty where they say the same
   */
  public record SameNumber(int rows, List<Seen> records, List<String> different) {
    public SameNumber {
      records = List.copyOf(records);
      different = List.copyOf(different);
    }
  }

  /**
   * Two records that are nearly the same under different numbers.
   *
   * @param first the one that stands first
   * @param second the other
   * @param equal entries in which they agree
   * @param different keys of entries in which they differ
   */
  public record NearCopy(Seen first, Seen second, int equal, List<String> different) {
    public NearCopy {
      different = List.copyOf(different);
    }
  }

  /**
   * What was found.
   *
   * @param sameNumbers numbers that stand on several rows, in input order, at most so many
   * @param sameNumberTotal how many such numbers there are
   * @param sameNumberRows on how many rows
   * @param nearCopies near copies, in input order, at most so many
   * @param nearCopyTotal how many there are among those compared
   * @param isCut whether so many forms are alike that not all of them were compared
   */
  public record Found(
      List<SameNumber> sameNumbers,
      long sameNumberTotal,
      long sameNumberRows,
      List<NearCopy> nearCopies,
      long nearCopyTotal,
      boolean isCut) {
    public Found {
      sameNumbers = List.copyOf(sameNumbers);
      nearCopies = List.copyOf(nearCopies);
    }
  }

  /** Looks for both. */
  public Found find() throws IOException {
    long[] ids = survey.ids();
    List<int[]> groups = sameNumbers(ids);
    long rows = 0;
    List<SameNumber> same = new ArrayList<>();
    for (int[] group : groups) {
      rows += group.length;
      if (same.size() < most) {
        same.add(described(group));
      }
    }
    long[] pairs = candidates(ids);
    List<NearCopy> near = new ArrayList<>();
    long total = 0;
    byte[] a = new byte[entries.length];
    byte[] b = new byte[entries.length];
    for (int i = 0; i < pairs.length; i++) {
      if (i > 0 && pairs[i] == pairs[i - 1]) {
        continue;
      }
      long pair = pairs[i];
      int first = (int) (pair >>> 32);
      int second = (int) pair;
      survey.marks(first, a);
      survey.marks(second, b);
      if (isNear(a, b)) {
        total++;
        if (near.size() < most) {
          near.add(
              new NearCopy(survey.seen(first), survey.seen(second), equal(a, b), different(a, b)));
        }
      }
    }
    return new Found(same, groups.size(), rows, near, total, isCut);
  }

  /** Places of the records of each number that stands more than once, by first place. */
  private static List<int[]> sameNumbers(long[] ids) {
    long[] sorted = ids.clone();
    KeySort.sort(sorted, sorted.length);
    int repeated = 0;
    for (int i = 1; i < sorted.length; i++) {
      if (sorted[i] == sorted[i - 1] && (repeated == 0 || sorted[repeated - 1] != sorted[i])) {
        sorted[repeated++] = sorted[i];
      }
    }
    int[][] groups = new int[repeated][];
    int[] size = new int[repeated];
    int[] first = new int[repeated];
    for (int i = 0; i < ids.length; i++) {
      int group = Arrays.binarySearch(sorted, 0, repeated, ids[i]);
      if (group >= 0) {
        if (groups[group] == null) {
          groups[group] = new int[2];
          first[group] = i;
        } else if (size[group] == groups[group].length) {
          groups[group] = Arrays.copyOf(groups[group], 2 * size[group]);
        }
        groups[group][size[group]++] = i;
      }
    }
    List<int[]> all = new ArrayList<>();
    for (int i = 0; i < repeated; i++) {
      all.add(Arrays.copyOf(groups[i], size[i]));
    }
    all.sort(java.util.Comparator.comparingInt(group -> group[0]));
    return all;
  }

  private SameNumber described(int[] group) throws IOException {
    List<Seen> seen = new ArrayList<>();
    byte[] first = new byte[entries.length];
    byte[] other = new byte[entries.length];
    boolean[] differs = new boolean[entries.length];
    survey.marks(group[0], first);
    for (int i = 0; i < group.length; i++) {
      if (i < most) {
        seen.add(survey.seen(group[i]));
      }
      survey.marks(group[i], other);
      for (int e = 0; e < entries.length; e++) {
        differs[e] |= first[e] != other[e];
      }
    }
    List<String> different = new ArrayList<>();
    for (int e = 0; e < entries.length; e++) {
      if (differs[e]) {
        different.add(entries[e].key());
      }
    }
    return new SameNumber(group.length, seen, different);
  }

  /**
   * Pairs that agree in a group of entries, the earlier place in the upper half, sorted. As many as
   * there are records, at most: in a batch where that is too few, most forms are empty.
   */
  private long[] candidates(long[] ids) throws IOException {
    int room = Math.max(MOST_CANDIDATES, ids.length);
    long[] pairs = new long[1024];
    int size = 0;
    for (int group = 0; group < SurveyRow.GROUP_COUNT; group++) {
      int[] hashes = survey.ints(SurveyRow.GROUPS + 4 * group);
      long[] keyed = new long[hashes.length];
      int count = 0;
      for (int i = 0; i < hashes.length; i++) {
        if (hashes[i] != 0) {
          keyed[count++] = ((long) hashes[i] << 32) | i;
        }
      }
      KeySort.sort(keyed, count);
      for (int i = 0; i < count; i++) {
        for (int j = i + 1; j < count && keyed[i] >>> 32 == keyed[j] >>> 32; j++) {
          if (j > i + WINDOW) {
            isCut = true;
            break;
          }
          int a = (int) keyed[i];
          int b = (int) keyed[j];
          if (ids[a] != ids[b] && size == room) {
            isCut = true;
          } else if (ids[a] != ids[b]) {
            if (size == pairs.length) {
              pairs = Arrays.copyOf(pairs, 2 * size);
            }
            pairs[size++] = ((long) a << 32) | b;
          }
        }
      }
    }
    pairs = Arrays.copyOf(pairs, size);
    KeySort.sort(pairs, size);
    return pairs;
  }

  private boolean isNear(byte[] a, byte[] b) {
    int equal = 0;
    int different = 0;
    int measured = 0;
    int measuredDifferent = 0;
    for (int e = 0; e < entries.length; e++) {
      if ((a[e] | b[e]) != 0 && !isIdentity[e]) {
        if (a[e] == b[e]) {
          equal++;
          measured += isMeasured[e] ? 1 : 0;
        } else {
          different++;
          measuredDifferent += isMeasured[e] ? 1 : 0;
        }
      }
    }
    return different <= MOST_DIFFERENT
        && measuredDifferent <= MOST_MEASURED_DIFFERENT
        && measured >= LEAST_MEASURED
        && equal >= LEAST_EQUAL;
  }

  /** Depths, levels and flows: what differs from well to well, however alike their fittings. */
  private static boolean isMeasured(Entry entry) {
    return entry.datum().isMovable() || Dimension.FLOW.equals(entry.kind().dimension());
  }

  private int equal(byte[] a, byte[] b) {
    int equal = 0;
    for (int e = 0; e < entries.length; e++) {
      equal += a[e] != 0 && a[e] == b[e] && !isIdentity[e] ? 1 : 0;
    }
    return equal;
  }

  private List<String> different(byte[] a, byte[] b) {
    List<String> keys = new ArrayList<>();
    for (int e = 0; e < entries.length; e++) {
      if (a[e] != b[e] && !isIdentity[e]) {
        keys.add(entries[e].key());
      }
    }
    return keys;
  }
}
