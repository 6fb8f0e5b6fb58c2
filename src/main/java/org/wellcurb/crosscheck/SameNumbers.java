package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The numbers that stand on several rows of a batch. */
final class SameNumbers {
  private final LongBuffer ids;

  /** Numbers that stand more than once, in order, before what is left over. */
  private final LongBuffer repeated;

  private final int count;

  /** By repeated number, the place of its first record. */
  private final IntBuffer firsts;

  /** By repeated number, on how many rows it stands. */
  private final IntBuffer sizes;

  private long rows;

  /**
   * @param ids marks of the numbers of all records
   */
  SameNumbers(LongBuffer ids, Columns columns) throws IOException {
    this.ids = ids;
    repeated = columns.longs(ids.capacity()).put(0, ids, 0, ids.capacity());
    KeySort.sort(repeated, ids.capacity(), columns);
    int found = 0;
    for (int i = 1; i < ids.capacity(); i++) {
      long id = repeated.get(i);
      if (id == repeated.get(i - 1) && (found == 0 || repeated.get(found - 1) != id)) {
        repeated.put(found++, id);
      }
    }
    count = found;
    firsts = columns.ints(count);
    sizes = columns.ints(count);
    for (int i = 0; i < ids.capacity() && count > 0; i++) {
      int group = KeySort.find(repeated, count, ids.get(i));
      if (group >= 0) {
        rows++;
        firsts.put(group, sizes.get(group) == 0 ? i : firsts.get(group));
        sizes.put(group, sizes.get(group) + 1);
      }
    }
  }

  /** How many such numbers there are. */
  int count() {
    return count;
  }

  /** On how many rows they stand. */
  long rows() {
    return rows;
  }

  /** Places of the records of the first so many numbers, by first place. */
  List<int[]> first(int most) {
    Map<Integer, IntBuffer> groups = new LinkedHashMap<>();
    for (int i = 0; i < ids.capacity() && count > 0; i++) {
      int group = KeySort.find(repeated, count, ids.get(i));
      if (group >= 0 && firsts.get(group) == i && groups.size() < most) {
        groups.put(group, IntBuffer.allocate(sizes.get(group)));
      }
      IntBuffer places = groups.get(group);
      if (places != null) {
        places.put(i);
      }
    }
    return groups.values().stream().map(IntBuffer::array).toList();
  }
}
