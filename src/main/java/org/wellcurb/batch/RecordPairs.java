package org.wellcurb.batch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToLongFunction;
import org.wellcurb.report.SinceView.Told;

/**
 * Which record of an earlier run each record of this one is, where its number stands for several.
 * Records that say the same, entry by entry, are the same wherever they stand now: a row that was
 * removed or sorted elsewhere moves all others. What is left is told by file and row, and at last
 * by being the only one left on either side. The others have no counterpart.
 */
final class RecordPairs {
  /** No counterpart. */
  static final int NONE = -1;

  private static final Told SAID = Told.BY_WHAT_IT_SAYS;

  private final SinceLog before;
  private final SinceLog now;
  private final int[] earlier;
  private final int[] later;
  private final byte[] howNow;
  private final byte[] howBefore;

  /** Earlier records that may be any of several now. */
  private final BitSet unsure = new BitSet();

  RecordPairs(SinceLog before, MarkedRecords beforeIds, SinceLog now, MarkedRecords nowIds) {
    this.before = before;
    this.now = now;
    earlier = new int[now.size()];
    later = new int[before.size()];
    howNow = new byte[now.size()];
    howBefore = new byte[before.size()];
    Arrays.fill(earlier, NONE);
    Arrays.fill(later, NONE);
    BitSet done = new BitSet();
    for (int i = 0; i < now.size(); i++) {
      long id = now.id(i);
      if (!done.get(i) && (nowIds.count(id) > 1 || beforeIds.count(id) > 1)) {
        List<Integer> ours = new ArrayList<>();
        List<Integer> theirs = new ArrayList<>();
        nowIds.each(id, ours::add);
        beforeIds.each(id, theirs::add);
        ours.forEach(done::set);
        pair(ours, theirs);
      }
    }
    for (int i = 0; i < before.size(); i++) {
      if (howBefore[i] == 0 && beforeIds.count(before.id(i)) > 1) {
        howBefore[i] = (byte) Told.BY_NOTHING.ordinal();
      }
    }
  }

  private void pair(List<Integer> ours, List<Integer> theirs) {
    List<Integer> left = new ArrayList<>(theirs);
    List<Integer> open = new ArrayList<>(ours);
    // What says the same at the same place comes first, so that equal rows are not swapped.
    pair(open, left, i -> said(i) + now.spot(i), i -> said(before, i) + before.spot(i), SAID);
    pair(open, left, this::said, i -> said(before, i), SAID);
    pair(open, left, now::spot, before::spot, Told.BY_ROW);
    if (open.size() == 1 && left.size() == 1) {
      set(open.get(0), left.get(0), Told.AS_THE_ONLY_ONE_LEFT);
      open.clear();
      left.clear();
    }
    open.forEach(i -> howNow[i] = (byte) Told.BY_NOTHING.ordinal());
    left.forEach(i -> howBefore[i] = (byte) Told.BY_NOTHING.ordinal());
    if (!open.isEmpty()) {
      left.forEach(unsure::set);
    }
  }

  private long said(int record) {
    return now.mark(record);
  }

  /** The mark of what an earlier record says; one that no record has where it was not kept. */
  private static long said(SinceLog log, int record) {
    return log.mark(record) == 0 ? ~log.spot(record) : log.mark(record);
  }

  private void pair(
      List<Integer> open,
      List<Integer> left,
      IntToLongFunction ours,
      IntToLongFunction theirs,
      Told how) {
    Map<Long, Deque<Integer>> byKey = new HashMap<>();
    left.forEach(i -> byKey.computeIfAbsent(theirs.applyAsLong(i), k -> new ArrayDeque<>()).add(i));
    open.removeIf(
        i -> {
          Deque<Integer> same = byKey.get(ours.applyAsLong(i));
          Integer first = same == null ? null : same.poll();
          if (first == null) {
            return false;
          }
          set(i, first, how);
          return true;
        });
    left.removeIf(i -> later[i] != NONE);
  }

  private void set(int ours, int theirs, Told how) {
    earlier[ours] = theirs;
    later[theirs] = ours;
    howNow[ours] = (byte) how.ordinal();
    howBefore[theirs] = (byte) how.ordinal();
  }

  /** The earlier record of one of this run; {@link #NONE} if none or if its number tells it. */
  int earlier(int record) {
    return earlier[record];
  }

  /** The record of this run that an earlier one is now; {@link #NONE} likewise. */
  int later(int record) {
    return later[record];
  }

  /**
   * Whether an earlier record without a counterpart may still be here: others of its number are of
   * which it is not known what they were.
   */
  boolean isUnsure(int record) {
    return unsure.get(record);
  }

  /** How a record of this run was told. */
  Told howNow(int record) {
    return Told.of(howNow[record]);
  }

  /** How a record of the earlier run was told. */
  Told howBefore(int record) {
    return Told.of(howBefore[record]);
  }
}
