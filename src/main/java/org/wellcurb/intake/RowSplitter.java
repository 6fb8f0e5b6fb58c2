package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;

/**
 * Cuts an input into chunks of whole rows. This is the one place that decides where a row ends; the
 * readers of chunks only look inside rows.
 */
final class RowSplitter implements TableSource.Rows {
  /** Bytes of a chunk; a longer row gets a chunk of its own. */
  static final int CHUNK = 960 << 10;

  private final InputStream in;
  private final Cutter cutter;
  private final int chunkSize;
  private byte[] carried = new byte[0];
  private boolean atEnd;
  private @Nullable CutShort cut;
  private boolean missed;
  private long line;
  private long number;

  /**
   * @param in the rows, in UTF-8, the header not among them
   * @param cutter finds where they end
   * @param line the physical line of the first row, or its place
   */
  RowSplitter(InputStream in, Cutter cutter, long line, int chunkSize) {
    this.in = in;
    this.cutter = cutter;
    this.line = line;
    this.chunkSize = chunkSize;
  }

  /** The next chunk; null at the end. */
  @Override
  public @Nullable CutRows next() throws IOException {
    byte[] bytes = Arrays.copyOf(carried, Math.max(chunkSize, carried.length + chunkSize / 2 + 1));
    int limit = carried.length;
    int at = 0;
    int lines = 0;
    RowMarks rows = new RowMarks();
    while (true) {
      limit = fill(bytes, limit);
      while (at < limit) {
        // What the input broke off in is no row, even if it would pass for one.
        int status = cutter.scan(bytes, at, limit, atEnd && cut == null);
        if (status == Cutter.MORE) {
          break;
        }
        int from = cutter.from();
        if (cutter.to() > from) {
          rows.add(from, Math.min(cutter.to(), from + Bounds.ROW), lines, (byte) status);
        }
        lines += cutter.lines();
        if (cutter.next() == Cutter.MORE) {
          skipLine(bytes[limit - 1] == '\r');
          return chunk(bytes, lines, rows);
        }
        at = cutter.next();
      }
      if (atEnd && at >= limit && cut == null && !cutter.missing().isEmpty() && !missed) {
        missed = true;
        rows.cut(at, at, lines, cutter.missing());
      }
      if (atEnd && cut != null) {
        rows.cut(at, Math.min(limit, at + Bounds.ROW), lines, cut.reason());
        cut = null;
        at = limit;
      }
      if (rows.count() > 0 || (atEnd && at >= limit)) {
        break;
      }
      // Blank lines, or the beginning of one long row: make room and read on.
      System.arraycopy(bytes, at, bytes, 0, limit - at);
      cutter.shift(at);
      limit -= at;
      at = 0;
      line += lines;
      lines = 0;
      if (limit > bytes.length / 2) {
        bytes = Arrays.copyOf(bytes, bytes.length * 2);
      }
    }
    carried = Arrays.copyOfRange(bytes, at, limit);
    cutter.shift(at);
    return rows.count() == 0 ? null : chunk(bytes, lines, rows);
  }

  @Override
  public void close() throws IOException {
    in.close();
  }

  private CutRows chunk(byte[] bytes, int lines, RowMarks rows) {
    CutRows cutRows = new CutRows(number++, bytes, line, rows);
    line += lines;
    return cutRows;
  }

  private int fill(byte[] bytes, int from) throws IOException {
    int limit = from;
    while (!atEnd && limit < bytes.length) {
      try {
        int n = in.read(bytes, limit, bytes.length - limit);
        atEnd = n < 0;
        limit += Math.max(0, n);
      } catch (CutShort e) {
        atEnd = true;
        cut = e;
      }
    }
    return limit;
  }

  /** Drops the rest of a line that is too long to hold; {@code cr} if its CR is already past. */
  private void skipLine(boolean cr) throws IOException {
    cutter.forget();
    byte[] bytes = new byte[64 << 10];
    boolean ended = cr;
    while (true) {
      int limit = fill(bytes, 0);
      if (ended || limit == 0) {
        carried = Arrays.copyOfRange(bytes, limit > 0 && bytes[0] == '\n' ? 1 : 0, limit);
        return;
      }
      int end = ByteScan.lineEnd(bytes, 0, limit);
      ended = end < limit;
      if (ended && (bytes[end] == '\n' || end + 1 < limit)) {
        carried = Arrays.copyOfRange(bytes, ByteScan.afterLineEnd(bytes, end, limit), limit);
        return;
      }
    }
  }
}
