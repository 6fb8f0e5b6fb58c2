package org.wellcurb.intake;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Finds rows with bytes that are no character. The encoding is decided on the beginning of a file;
 * where other bytes follow, as in exports that were put together, their characters are lost, and it
 * must be said.
 */
final class LostCharacters {
  private LostCharacters() {}

  /** Counts such rows. */
  static void count(CutRows rows, ChunkTally tally) {
    RowMarks marks = rows.marks;
    int n = marks.count();
    if (n == 0 || ByteScan.isAscii(rows.bytes, marks.from(0), marks.to(n - 1))) {
      return;
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer out = CharBuffer.allocate(4096);
    for (int i = 0; i < n; i++) {
      int from = marks.from(i);
      int to = marks.to(i);
      if (!ByteScan.isAscii(rows.bytes, from, to) && isLost(rows.bytes, from, to, decoder, out)) {
        tally.lostCharacters(rows.line(i));
      }
    }
  }

  /** True if some bytes are no UTF-8, or stand for a character that was lost before. */
  private static boolean isLost(
      byte[] bytes, int from, int to, CharsetDecoder decoder, CharBuffer out) {
    ByteBuffer in = ByteBuffer.wrap(bytes, from, to - from);
    decoder.reset();
    boolean more = true;
    while (more) {
      out.clear();
      var result = decoder.decode(in, out, true);
      if (result.isError()) {
        return true;
      }
      more = result.isOverflow();
      out.flip();
      while (out.hasRemaining()) {
        if (out.get() == '\uFFFD') {
          return true;
        }
      }
    }
    return false;
  }
}
