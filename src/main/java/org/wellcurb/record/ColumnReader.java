package org.wellcurb.record;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;

/**
 * Reads the cells of one column, and remembers what it made of short ones: most columns of a table
 * hold the same few words and figures again and again. What it gives is what would be made anew, so
 * remembering changes no result; a column whose cells hardly come again is soon read without.
 *
 * <p>Cells hold no NUL. One reader per worker, as the {@link CellReader} behind it.
 */
public final class ColumnReader {
  private static final VarHandle LONG =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
  private static final int LONGEST = 2 * Long.BYTES;
  private static final int SLOT_BITS = 10;

  /** What a miss takes from the trust in a column, a cell found again giving one. */
  private static final int MISS = 2;

  private static final int TRUST = 4096;

  private final CellReader cells;
  private final int entry;
  private final @Nullable Unit unit;
  private final CellStyle style;
  private final boolean isLevel;
  private @Nullable KeptCell[][] kept = new @Nullable KeptCell[UnitSystem.values().length][];
  private int trust;

  /**
   * @param entry the entry that the column fills
   * @param unit unit that the column's header states, or null
   */
  public ColumnReader(CellReader cells, int entry, @Nullable Unit unit, CellStyle style) {
    this.cells = cells;
    this.entry = entry;
    this.unit = unit;
    this.style = style;
    isLevel = cells.isLevel(entry);
    trust = cells.isOfItself(entry) || isLevel ? TRUST : 0;
  }

  /**
   * Reads a cell of UTF-8 bytes, as {@link CellReader} does.
   *
   * @param recordSystem units of numbers for which nothing else states one
   */
  public void read(RecordFiller into, byte[] source, int from, int to, UnitSystem recordSystem) {
    int length = to - from;
    if (trust <= 0 || length > LONGEST || from > source.length - LONGEST || into.has(entry)) {
      cells.read(into, entry, source, from, to, unit, recordSystem, style);
      return;
    }
    long head = (long) LONG.get(source, from);
    long tail = 0;
    if (length < Long.BYTES) {
      head &= (1L << (length << 3)) - 1;
    } else {
      // Those bytes that belong to it are shifted to the top; of none, nothing must be left.
      long next = (long) LONG.get(source, from + Long.BYTES);
      tail = length == Long.BYTES ? 0 : next << ((LONGEST - length) << 3);
    }
    KeptCell[] slots = kept[recordSystem.ordinal()];
    if (slots == null) {
      slots = new KeptCell[1 << SLOT_BITS];
      kept[recordSystem.ordinal()] = slots;
    }
    int slot =
        (int) (((head ^ (tail * 0xC2B2AE3D27D4EB4FL)) * 0x9E3779B97F4A7C15L) >>> (64 - SLOT_BITS));
    KeptCell cell = slots[slot];
    if (cell != null && cell.head() == head && cell.tail() == tail) {
      trust = Math.min(trust + 1, TRUST);
      into.again(entry, cell, source, from);
      return;
    }
    trust -= MISS;
    boolean mayKeep = cells.read(into, entry, source, from, to, unit, recordSystem, style);
    if (trust <= 0) {
      kept = new @Nullable KeptCell[UnitSystem.values().length][];
    } else if (mayKeep && (!isLevel || isFigure(into.record()))) {
      slots[slot] = into.keep(entry, head, tail, from);
    }
  }

  /** True of a level that is a figure below the ground: words and zeros hang on other entries. */
  private boolean isFigure(WellRecord record) {
    return record.isPoint(entry) && record.lo(entry) > 0 && record.noteId(entry) == 0;
  }
}
