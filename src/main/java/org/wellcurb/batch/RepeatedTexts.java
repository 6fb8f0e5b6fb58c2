package org.wellcurb.batch;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Whose;

/**
 * Texts that stand in record after record, such as licences: made once, as long as another does not
 * take their place. One for each thread.
 */
final class RepeatedTexts {
  private static final int SLOTS = 1 << 12;

  private final @Nullable String[] texts = new @Nullable String[SLOTS];

  /** The bytes of each text, as they stood in the source. */
  private final byte[][] bytes = new byte[SLOTS][];

  /** What a record gives in an entry, as written; empty where it gives nothing. */
  String of(WellRecord record, int entry) {
    if (!record.isGiven(entry) || !record.liesInSource(entry)) {
      return Whose.written(record, entry);
    }
    byte[] source = record.source();
    int from = record.writtenFrom(entry);
    int to = record.writtenTo(entry);
    int hash = 0;
    for (int i = from; i < to; i++) {
      hash = hash * 31 + source[i];
    }
    int slot = (hash * 0x9E3779B1) >>> 20;
    String known = texts[slot];
    if (known != null && Arrays.equals(bytes[slot], 0, bytes[slot].length, source, from, to)) {
      return known;
    }
    String text = record.written(entry);
    texts[slot] = text;
    bytes[slot] = Arrays.copyOfRange(source, from, to);
    return text;
  }
}
