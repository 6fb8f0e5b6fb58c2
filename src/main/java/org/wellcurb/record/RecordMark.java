package org.wellcurb.record;

/**
 * A mark of what a record was read as: two records with one mark say the same, entry by entry,
 * whatever columns they stood in. 64 bits: chance makes two of a million records alike once in some
 * thirty million batches.
 */
public final class RecordMark {
  private static final long FACTOR = 0x9E3779B97F4A7C15L;

  private static final int LAYERS = Catalogue.standard().index("layers");

  private RecordMark() {}

  /** The mark of a record. */
  public static long of(WellRecord record) {
    long mark = 1;
    for (int i = 0; i < record.state.length; i++) {
      mark = entry(mark, record, i);
    }
    return others(mark, record);
  }

  /**
   * The marks of the first {@code count} records. Each step of a mark waits for the one before, so
   * the marks of two records are worked out in turn: the steps of one fill the waits of the other.
   *
   * @param marks takes the marks
   */
  public static void of(WellRecord[] records, int count, long[] marks) {
    int k = 0;
    for (; k + 1 < count; k += 2) {
      WellRecord a = records[k];
      WellRecord b = records[k + 1];
      byte[] stateOfA = a.state;
      byte[] stateOfB = b.state;
      long markOfA = 1;
      long markOfB = 1;
      for (int i = 0; i < stateOfA.length; i++) {
        if (stateOfA[i] != WellRecord.UNKNOWN) {
          markOfA = given(markOfA, a, i);
        }
        if (stateOfB[i] != WellRecord.UNKNOWN) {
          markOfB = given(markOfB, b, i);
        }
      }
      marks[k] = others(markOfA, a);
      marks[k + 1] = others(markOfB, b);
    }
    if (k < count) {
      marks[k] = of(records[k]);
    }
  }

  /**
   * A hash of the value of each entry.
   *
   * @param hashes takes the hashes of entries that are given, by entry; the others are left alone.
   *     Neither units nor how finely a value is written count in them
   */
  public static void hashes(WellRecord record, int[] hashes) {
    byte[] state = record.state;
    for (int i = 0; i < state.length; i++) {
      if (state[i] != WellRecord.UNKNOWN) {
        String text = record.text[i];
        long lo = Double.doubleToLongBits(record.lo[i]);
        long hi = Double.doubleToLongBits(record.hi[i]);
        long value = text == null ? lo * FACTOR + Long.rotateLeft(hi, 32) : of(state[i], text);
        hashes[i] = hash(value + state[i]);
      }
    }
  }

  private static long others(long before, WellRecord record) {
    long mark = before;
    for (Layer layer : record.layers) {
      mark = of(mark, layer.toString());
    }
    for (Variance variance : record.variances) {
      mark = of(mark, variance.toString());
    }
    return mark;
  }

  private static int hash(long bits) {
    return (int) (((bits ^ (bits >>> 29)) * FACTOR) >>> 32);
  }

  /**
   * The mark of some entries of a record, and of its variances.
   *
   * @param entries their places in the catalogue
   */
  public static long ofEntries(WellRecord record, int[] entries) {
    long mark = 1;
    for (int i : entries) {
      mark = entry(mark, record, i);
      if (i == LAYERS) {
        for (Layer layer : record.layers) {
          mark = of(mark, layer.toString());
        }
      }
    }
    for (Variance variance : record.variances) {
      mark = of(mark, variance.toString());
    }
    return mark;
  }

  private static long entry(long before, WellRecord record, int i) {
    return record.state[i] == WellRecord.UNKNOWN ? before : given(before, record, i);
  }

  private static long given(long before, WellRecord record, int i) {
    byte state = record.state[i];
    long mark = mix(before, ((long) i << 16) | ((state & 0xFF) << 8) | (record.unit[i] & 0xFF));
    mark = mix(mark, Double.doubleToLongBits(record.lo[i]));
    mark = mix(mark, Double.doubleToLongBits(record.hi[i]));
    mark = mix(mark, Double.doubleToLongBits(record.halfPlace[i]));
    String text = record.text[i];
    return text == null ? mark : of(mark, text);
  }

  /** A mark of some texts, in order. */
  public static long of(String... texts) {
    long mark = 1;
    for (String text : texts) {
      mark = of(mark, text);
    }
    return mark;
  }

  private static long of(long mark, String text) {
    long all = mix(mark, text.length());
    for (int i = 0; i < text.length(); i++) {
      all = (all ^ text.charAt(i)) * 0x100000001B3L;
    }
    return mix(all, 0);
  }

  private static long mix(long mark, long value) {
    long all = (mark ^ value) * FACTOR;
    return all ^ (all >>> 32);
  }
}
