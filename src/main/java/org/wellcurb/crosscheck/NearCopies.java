package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Records that are nearly the same under different numbers, put together in groups. A position that
 * two records share says nothing, for many positions are section centres.
 *
 * <p>{@link CopyPairs} are compared entry by entry unless they are known to be of one group.
 */
final class NearCopies {
  /** Metres within which wells are alike for honest reasons. */
  private static final double STREET = 2000;

  private final SurveyFile survey;
  private final Alike alike;
  private final LongBuffer ids;

  /** By record, one that stands before it in its group; itself if there is none. */
  private final IntBuffer before;

  /** By the first record of each group, the entries in which its records differ. */
  private final NavigableMap<Integer, BitSet> groups = new TreeMap<>();

  private final CopyPairs pairs;
  private @Nullable Commonness commonness;

  NearCopies(SurveyFile survey, Alike alike, LongBuffer ids) throws IOException {
    this.survey = survey;
    this.alike = alike;
    this.ids = ids;
    before = survey.columns().ints(ids.capacity());
    for (int i = 0; i < before.capacity(); i++) {
      before.put(i, i);
    }
    pairs = new CopyPairs(survey, ids);
    compare();
  }

  private void compare() throws IOException {
    int[] a = alike.marks();
    int[] b = alike.marks();
    int read = -1;
    for (int i = 0; i < pairs.size(); i++) {
      long pair = pairs.pair(i);
      int first = (int) (pair >>> Integer.SIZE);
      int second = (int) pair;
      if ((i > 0 && pair == pairs.pair(i - 1)) || first(first) == first(second)) {
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
    pairs.clear();
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

  /** Records among which copies may have been missed. */
  long notCompared() throws IOException {
    return pairs.missed(this::first);
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
