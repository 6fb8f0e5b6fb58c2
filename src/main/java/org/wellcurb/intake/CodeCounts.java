package org.wellcurb.intake;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Note;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;

/**
 * The different texts of a column whose cells are words or codes, how often each was met and what
 * it was taken for. Of a column of figures, dates or texts it counts those that are no value: what
 * could not be read, and every word taken for unknown or for what does not apply.
 *
 * <p>The first texts are counted one by one, the cells of others together.
 */
public final class CodeCounts {
  /** Texts that are counted one by one. */
  public static final int MOST = 40;

  private static final int SLOTS = 128;

  private final @Nullable Slot[] slots = new @Nullable Slot[SLOTS];
  private final List<Slot> inOrder = new ArrayList<>();
  private long more;

  /** The text met last: the next is often the same. */
  private @Nullable Slot last;

  private static final class Slot {
    final byte[] text;
    final String read;
    long cells;

    Slot(byte[] text, String read) {
      this.text = text;
      this.read = read;
    }
  }

  /** One text: as written, what it was taken for, and in how many cells. */
  public record Met(String written, String read, long cells) {}

  /** True if the texts of this cell are worth counting. */
  static boolean counts(WellRecord record, int entry, boolean isWord) {
    byte state = record.state(entry);
    if (isWord || state == WellRecord.UNREADABLE || state == WellRecord.NOT_APPLICABLE) {
      return true;
    }
    return state == WellRecord.UNKNOWN
        && record.isWritten(entry)
        && record.noteId(entry) != Note.DOUBTED_ZERO.ordinal();
  }

  /** True for entries of choices, and of yes and no. */
  static boolean isWord(Entry entry) {
    return entry.kind() == Kind.CHOICE || entry.kind() == Kind.YES_NO;
  }

  void see(WellRecord record, int entry) {
    @Nullable Slot again = last;
    if (again != null && record.isWrittenAs(entry, again.text)) {
      again.cells++;
      return;
    }
    int at = record.writtenHash(entry) & (SLOTS - 1);
    @Nullable Slot slot = slots[at];
    while (slot != null && !record.isWrittenAs(entry, slot.text)) {
      at = (at + 1) & (SLOTS - 1);
      slot = slots[at];
    }
    if (slot != null) {
      slot.cells++;
      last = slot;
    } else if (inOrder.size() == MOST) {
      more++;
    } else {
      byte[] text = record.written(entry).getBytes(StandardCharsets.UTF_8);
      put(at, new Slot(text, meaning(record, entry))).cells = 1;
    }
  }

  private Slot put(int at, Slot slot) {
    slots[at] = slot;
    inOrder.add(slot);
    return slot;
  }

  /** What a cell was taken for, in words of the catalogue and of a header map. */
  private static String meaning(WellRecord record, int entry) {
    return switch (record.state(entry)) {
      case WellRecord.UNKNOWN ->
          record.note(entry) == Note.SENTINEL ? "unknown" : said(record, entry);
      case WellRecord.NOT_APPLICABLE -> "n/a";
      case WellRecord.UNREADABLE -> "unreadable";
      default -> {
        String choice = record.choice(entry);
        yield choice != null ? choice : record.lo(entry) == 1 ? "yes" : "no";
      }
    };
  }

  /** What is not sure is no way to say unknown. */
  private static String said(WellRecord record, int entry) {
    return record.note(entry) == Note.NONE ? "unknown" : "not sure";
  }

  /** Adds the counts of later rows. */
  void add(CodeCounts later) {
    for (Slot other : later.inOrder) {
      int at = WellRecord.hash(other.text, 0, other.text.length) & (SLOTS - 1);
      @Nullable Slot slot = slots[at];
      while (slot != null && !Arrays.equals(slot.text, other.text)) {
        at = (at + 1) & (SLOTS - 1);
        slot = slots[at];
      }
      if (slot == null && inOrder.size() == MOST) {
        more += other.cells;
      } else {
        Slot mine = slot == null ? put(at, new Slot(other.text, other.read)) : slot;
        mine.cells += other.cells;
      }
    }
    more += later.more;
  }

  /** The texts that were counted one by one, in the order met. */
  public List<Met> met() {
    List<Met> met = new ArrayList<>();
    for (Slot slot : inOrder) {
      met.add(new Met(new String(slot.text, StandardCharsets.UTF_8), slot.read, slot.cells));
    }
    return met;
  }

  /** Cells whose texts were not counted one by one. */
  public long more() {
    return more;
  }
}
