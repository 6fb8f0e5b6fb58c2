package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * Pairs of records that are worth being compared entry by entry, found in time that grows with the
 * number of records.
 *
 * <p>Near copies agree in all that is measured, or in all of it but one of four parts and then, as
 * {@link Alike} has it, in where or in the days between their dates, unless much is measured.
 * Records that agree so are laid beside a few that stand next to them, in an order that hangs on
 * their numbers and not on their rows. Agreeing in a few measured entries alone is no reason: of
 * short forms a hundred do, and the copy would not stand among the few.
 */
final class CopyPairs {
  /** Records beside which each is laid. */
  private static final int WINDOW = 6;

  /** The same among records of which only what is measured is known to agree. */
  private static final int WINDOW_OF_MEASURED = 2;

  /** Pairs at least, however small the batch. */
  private static final int LEAST = 1_000_000;

  /** In place of a column: all that is measured. */
  private static final int MEASURED = -1;

  /** In what records agree beside what is measured. */
  private enum Beside {
    NOTHING,
    PLACE,
    DAYS,
    MUCH
  }

  /**
   * One way to agree.
   *
   * @param column of {@link SurveyRow}, or {@link #MEASURED}
   */
  private record Way(int column, Beside beside) {}

  private final SurveyFile survey;
  private final LongBuffer ids;
  private final List<Way> ways = new ArrayList<>();

  /** By way, the keys that more records share than are laid beside one another. */
  private final List<int[]> shared = new ArrayList<>();

  private final IntBuffer place;
  private final IntBuffer days;
  private final IntBuffer measured;
  private final ByteBuffer flags;
  private LongBuffer pairs = LongBuffer.allocate(1024);
  private int size;
  private boolean isFull;

  /**
   * @param ids marks of the numbers of all records; two of one number are no pair
   */
  CopyPairs(SurveyFile survey, LongBuffer ids) throws IOException {
    this.survey = survey;
    this.ids = ids;
    Columns columns = survey.columns();
    place = place();
    days = survey.ints(SurveyRow.DAYS);
    flags = survey.flags();
    IntBuffer agreed = columns.ints(ids.capacity());
    measured = measured(agreed);
    ways.add(new Way(SurveyRow.WHOLE, Beside.NOTHING));
    for (Beside beside : List.of(Beside.PLACE, Beside.DAYS, Beside.MUCH)) {
      for (int group = 0; group < SurveyRow.GROUP_COUNT; group++) {
        ways.add(new Way(SurveyRow.GROUPS + 4 * group, beside));
      }
    }
    for (Beside beside : List.of(Beside.PLACE, Beside.DAYS, Beside.NOTHING)) {
      ways.add(new Way(MEASURED, beside));
    }
    LongBuffer keyed = columns.longs(ids.capacity());
    LongBuffer spare = columns.longs(ids.capacity());
    IntBuffer order = order(keyed, spare);
    for (Way way : ways) {
      agreed(way, agreed);
      add(way, agreed, order, keyed, spare);
    }
    KeySort.sort(pairs, size, columns);
  }

  private IntBuffer place() throws IOException {
    FloatBuffer latitude = survey.floats(SurveyRow.LATITUDE);
    FloatBuffer longitude = survey.floats(SurveyRow.LONGITUDE);
    IntBuffer places = survey.columns().ints(ids.capacity());
    for (int i = 0; i < places.capacity(); i++) {
      int north = Float.floatToIntBits(latitude.get(i));
      places.put(i, mixed(north, Float.floatToIntBits(longitude.get(i))));
    }
    return places;
  }

  private IntBuffer measured(IntBuffer room) throws IOException {
    IntBuffer all = survey.columns().ints(ids.capacity());
    for (int group = 0; group < SurveyRow.GROUP_COUNT; group++) {
      survey.ints(SurveyRow.GROUPS + 4 * group, room);
      for (int i = 0; i < room.capacity(); i++) {
        int hash = room.get(i);
        all.put(i, hash == 0 && all.get(i) == 0 ? 0 : mixed(all.get(i), hash));
      }
    }
    return all;
  }

  private static int mixed(int one, int other) {
    return (int) (Areas.mixed(((long) one << Integer.SIZE) ^ (other & 0xFFFFFFFFL)) >>> 32) | 1;
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

  /** What records that agree in this way share; 0 for those of which nothing is said. */
  private void agreed(Way way, IntBuffer into) throws IOException {
    if (way.column() != MEASURED) {
      survey.ints(way.column(), into);
    }
    for (int i = 0; i < into.capacity(); i++) {
      int hash = way.column() == MEASURED ? measured.get(i) : into.get(i);
      boolean isMuch = (flags.get(i) & SurveyRow.MUCH) != 0;
      int key =
          switch (way.beside()) {
            case NOTHING -> hash;
            case PLACE -> mixed(hash, place.get(i));
            case DAYS -> mixed(hash, days.get(i));
            case MUCH -> isMuch ? hash : 0;
          };
      into.put(i, hash == 0 ? 0 : key);
    }
  }

  /**
   * Adds pairs that agree, the earlier record in the upper half. As many as there are records, at
   * most: in a batch where that is too few, most forms are empty.
   */
  private void add(Way way, IntBuffer agreed, IntBuffer order, LongBuffer keyed, LongBuffer spare)
      throws IOException {
    boolean isMeasuredAlone = way.column() == MEASURED && way.beside() == Beside.NOTHING;
    int window = isMeasuredAlone ? WINDOW_OF_MEASURED : WINDOW;
    int room = Math.max(LEAST, ids.capacity());
    int count = 0;
    for (int i = 0; i < order.capacity(); i++) {
      int key = agreed.get(order.get(i));
      if (key != 0) {
        keyed.put(count++, ((long) key << Integer.SIZE) | i);
      }
    }
    KeySort.sort(keyed, count, spare);
    int[] wide = new int[8];
    int wides = 0;
    for (int i = 0; i < count; i++) {
      int key = key(keyed.get(i));
      for (int j = i + 1; j < count && key(keyed.get(j)) == key; j++) {
        if (j > i + window) {
          if (wides == 0 || wide[wides - 1] != key) {
            wide = wides == wide.length ? Arrays.copyOf(wide, 2 * wides) : wide;
            wide[wides++] = key;
          }
          break;
        }
        add(order.get((int) keyed.get(i)), order.get((int) keyed.get(j)), room);
      }
    }
    shared.add(Arrays.copyOf(wide, wides));
  }

  private static int key(long keyed) {
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

  /** How many pairs there are; those that agree in several ways stand there as often. */
  int size() {
    return size;
  }

  /** A pair, the earlier record in the upper half; they are sorted. */
  long pair(int place) {
    return pairs.get(place);
  }

  /** Lets the pairs go. */
  void clear() {
    pairs = LongBuffer.allocate(0);
    size = 0;
  }

  /**
   * Records among which copies may have been missed: where many agree in one way and are not of one
   * group, not all of them were laid beside one another.
   *
   * @param first by record, the first of its group
   */
  long missed(IntUnaryOperator first) throws IOException {
    if (isFull) {
      return ids.capacity();
    }
    BitSet left = new BitSet();
    IntBuffer agreed = survey.columns().ints(ids.capacity());
    for (int way = 0; way < ways.size(); way++) {
      int[] wide = shared.get(way);
      if (wide.length == 0) {
        continue;
      }
      Arrays.sort(wide);
      agreed(ways.get(way), agreed);
      BitSet several = several(agreed, wide, first);
      for (int i = 0; i < agreed.capacity(); i++) {
        int at = Arrays.binarySearch(wide, agreed.get(i));
        if (at >= 0 && several.get(at)) {
          left.set(i);
        }
      }
    }
    return left.cardinality();
  }

  /** Places of keys whose records are of several groups. */
  private BitSet several(IntBuffer agreed, int[] wide, IntUnaryOperator first) {
    BitSet several = new BitSet();
    int[] met = new int[wide.length];
    Arrays.fill(met, -1);
    for (int i = 0; i < agreed.capacity(); i++) {
      int at = Arrays.binarySearch(wide, agreed.get(i));
      if (at < 0) {
        continue;
      }
      boolean isOther = met[at] >= 0 && ids.get(i) != ids.get(met[at]);
      if (isOther && first.applyAsInt(i) != first.applyAsInt(met[at])) {
        several.set(at);
      }
      met[at] = i;
    }
    return several;
  }
}
