package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Records that are nearly the same under different numbers, put together in groups. A position that
 * two records share says nothing, for many positions are section centres.
 *
 * <p>They are found in time that grows with the number of records: near copies agree in all
 * measured entries but those of one of four parts, or in all that they say. Records that do so are
 * laid beside a few that stand next to them, in an order that hangs on their numbers and not on
 * their rows, and are compared entry by entry unless they are known to be of one group.
 */
final class NearCopies {
  /** Records beside which each is laid. */
  private static final int WINDOW = 6;

  /** Metres within which wells are alike for honest reasons. */
  private static final double STREET = 2000;

  /** Pairs that are compared at least, however small the batch. */
  private static final int LEAST_CANDIDATES = 1_000_000;

  /** Columns of hashes in which near copies agree. */
  private static final int[] HASHES = new int[SurveyRow.GROUP_COUNT + 1];

  static {
    Arrays.setAll(HASHES, i -> SurveyRow.GROUPS + 4 * i);
    HASHES[SurveyRow.GROUP_COUNT] = SurveyRow.WHOLE;
  }

  private final SurveyFile survey;
  private final Alike alike;
  private final LongBuffer ids;

  /** By record, one that stands before it in its group; itself if there is none. */
  private final IntBuffer before;

  /** By the first record of each group, the entries in which its records differ. */
  private final NavigableMap<Integer, BitSet> groups = new TreeMap<>();

  /** By hash, those that more records share than are laid beside one another. */
  private final List<int[]> shared = new ArrayList<>();

  private @Nullable Commonness commonness;

  private LongBuffer pairs = LongBuffer.allocate(1024);
  private int size;
  private boolean isFull;

  NearCopies(SurveyFile survey, Alike alike, LongBuffer ids) throws IOException {
    this.survey = survey;
    this.alike = alike;
    this.ids = ids;
    Columns columns = survey.columns();
    LongBuffer keys = columns.longs(ids.capacity());
    LongBuffer spare = columns.longs(ids.capacity());
    IntBuffer order = order(keys, spare);
    IntBuffer hashes = columns.ints(ids.capacity());
    for (int hash : HASHES) {
      survey.ints(hash, hashes);
      candidates(hashes, order, keys, spare);
    }
    KeySort.sort(pairs, size, columns);
    before = columns.ints(ids.capacity());
    for (int i = 0; i < before.capacity(); i++) {
      before.put(i, i);
    }
    compare();
  }

  /** Records in an order that hangs on their numbers alone. */
  private IntBuffer order(LongBuffer keys, LongBuffer spare) throws IOException {
    for (int i = 0; i < keys.capacity(); i++) {
      keys.put(i, (Areas.mixed(ids.get(i)) & -(1L << Integer.SIZE)) | i);
    }
    KeySort.sort(keys, keys.capacity(), spare);
    IntBuffer order = survey.columns().ints(keys.capacity());
    for (int i = 0; i < keys.capacity(); i++) {
      order.put(i, (int) keys.get(i));
    }
    return order;
  }

  /**
   * Adds pairs that agree in a hash, the earlier record in the upper half. As many as there are
   * records, at most: in a batch where that is too few, most forms are empty.
   */
  private void candidates(IntBuffer hashes, IntBuffer order, LongBuffer keyed, LongBuffer spare)
      throws IOException {
    int room = Math.max(LEAST_CANDIDATES, ids.capacity());
    int count = 0;
    for (int i = 0; i < order.capacity(); i++) {
      int hash = hashes.get(order.get(i));
      if (hash != 0) {
        keyed.put(count++, ((long) hash << Integer.SIZE) | i);
      }
    }
    KeySort.sort(keyed, count, spare);
    int[] wide = new int[8];
    int wides = 0;
    for (int i = 0; i < count; i++) {
      int hash = hash(keyed.get(i));
      for (int j = i + 1; j < count && hash(keyed.get(j)) == hash; j++) {
        if (j > i + WINDOW) {
          if (wides == 0 || wide[wides - 1] != hash) {
            wide = wides == wide.length ? Arrays.copyOf(wide, 2 * wides) : wide;
            wide[wides++] = hash;
          }
          break;
        }
        add(order.get((int) keyed.get(i)), order.get((int) keyed.get(j)), room);
      }
    }
    shared.add(Arrays.copyOf(wide, wides));
  }

  private static int hash(long keyed) {
    return (int) (keyed >>> Integer.SIZE);
  }

  private void add(int a, int b, int room) throws IOException {
    if (ids.get(a) == ids.get(b)) {
      return;
    }
    if (size == room) {
      isFull = true;
      return;
    }
    if (size == pairs.capacity()) {
      pairs = survey.columns().longs(2 * size).put(0, pairs, 0, size);
    }
    pairs.put(size++, ((long) Math.min(a, b) << Integer.SIZE) | Math.max(a, b));
  }

  private void compare() throws IOException {
    int[] a = alike.marks();
    int[] b = alike.marks();
    int read = -1;
    for (int i = 0; i < size; i++) {
      long pair = pairs.get(i);
      int first = (int) (pair >>> Integer.SIZE);
      int second = (int) pair;
      if ((i > 0 && pair == pairs.get(i - 1)) || first(first) == first(second)) {
        continue;
      }
      if (first != read) {
        survey.marks(first, a);
        read = first;
      }
      survey.marks(second, b);
      if (isAlike(first, second, a, b)) {
        unite(first(first), first(second), a, b);
      }
    }
    pairs = LongBuffer.allocate(0);
  }

  private boolean isAlike(int first, int second, int[] a, int[] b) throws IOException {
    return alike.isSame(a, b)
        || (alike.isNear(a, b)
            && (alike.isNearWithinStreet(a, b) || isFar(first, second))
            && commonness().expected(a, b) <= Alike.MOST_BY_CHANCE);
  }

  /** How common what records say is: counted once it is asked for. */
  private Commonness commonness() throws IOException {
    Commonness known = commonness;
    if (known == null) {
      known = new Commonness(survey, alike, ids);
      commonness = known;
    }
    return known;
  }

  /** Whether wells are known to stand too far apart to be of one street. */
  private boolean isFar(int one, int other) throws IOException {
    double latitude = survey.latitude(one);
    double north = latitude - survey.latitude(other);
    double east =
        (survey.longitude(one) - survey.longitude(other)) * Math.cos(Math.toRadians(latitude));
    return Math.hypot(north, east) * Neighbourhood.DEGREE > STREET;
  }

  /** The first record of a record's group. */
  private int first(int record) {
    int first = record;
    while (before.get(first) != first) {
      before.put(first, before.get(before.get(first)));
      first = before.get(first);
    }
    return first;
  }

  private void unite(int one, int other, int[] a, int[] b) {
    BitSet different = new BitSet();
    alike.different(a, b, different);
    for (int group : new int[] {one, other}) {
      BitSet known = groups.remove(group);
      if (known != null) {
        different.or(known);
      }
    }
    before.put(Math.max(one, other), Math.min(one, other));
    groups.put(Math.min(one, other), different);
  }

  /** How many groups there are. */
  long groups() {
    return groups.size();
  }

  /** How many records are in groups. */
  long records() {
    long records = 0;
    for (int i = 0; i < before.capacity(); i++) {
      records += before.get(i) != i || groups.containsKey(i) ? 1 : 0;
    }
    return records;
  }

  /**
   * Records among which copies may have been missed: where many share a hash and are not of one
   * group, not all of them were laid beside one another.
   */
  long notCompared() throws IOException {
    if (isFull) {
      return ids.capacity();
    }
    BitSet left = new BitSet();
    IntBuffer hashes = survey.columns().ints(ids.capacity());
    for (int group = 0; group < HASHES.length; group++) {
      int[] wide = shared.get(group);
      if (wide.length == 0) {
        continue;
      }
      Arrays.sort(wide);
      survey.ints(HASHES[group], hashes);
      BitSet several = several(hashes, wide);
      for (int i = 0; i < hashes.capacity(); i++) {
        int at = Arrays.binarySearch(wide, hashes.get(i));
        if (at >= 0 && several.get(at)) {
          left.set(i);
        }
      }
    }
    return left.cardinality();
  }

  /** Places of hashes whose records are of several groups. */
  private BitSet several(IntBuffer hashes, int[] wide) {
    BitSet several = new BitSet();
    int[] met = new int[wide.length];
    Arrays.fill(met, -1);
    for (int i = 0; i < hashes.capacity(); i++) {
      int at = Arrays.binarySearch(wide, hashes.get(i));
      if (at < 0) {
        continue;
      }
      boolean isOther = met[at] >= 0 && ids.get(i) != ids.get(met[at]);
      if (isOther && first(i) != first(met[at])) {
        several.set(at);
      }
      met[at] = i;
    }
    return several;
  }

  /** The first groups, in input order. */
  List<Duplicates.NearCopy> shown(int most) throws IOException {
    NavigableMap<Integer, List<Seen>> seen = new TreeMap<>();
    NavigableMap<Integer, Integer> sizes = new TreeMap<>();
    groups.keySet().stream().limit(most).forEach(first -> seen.put(first, new ArrayList<>()));
    for (int i = 0; i < before.capacity() && !seen.isEmpty(); i++) {
      List<Seen> named = seen.get(first(i));
      if (named != null) {
        sizes.merge(first(i), 1, Integer::sum);
        if (named.size() < CrossCheck.NAMED) {
          named.add(survey.seen(i));
        }
      }
    }
    List<Duplicates.NearCopy> shown = new ArrayList<>();
    int[] marks = alike.marks();
    for (int first : seen.keySet()) {
      survey.marks(first, marks);
      BitSet different = groups.getOrDefault(first, new BitSet());
      shown.add(
          new Duplicates.NearCopy(
              sizes.getOrDefault(first, 0),
              seen.getOrDefault(first, List.of()),
              alike.equal(marks, different),
              alike.keys(different)));
    }
    return shown;
  }
}
