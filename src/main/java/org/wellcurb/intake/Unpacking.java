package org.wellcurb.intake;

import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.LongSupplier;
import java.util.zip.ZipException;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;

/** Bytes that are being unpacked, within the bounds on size and ratio. */
class Unpacking extends FilterInputStream {
  private final LongSupplier packed;
  private final long most;
  private final int ratio;
  private final long small;
  private long unpacked;
  private @Nullable CutShort cut;

  /**
   * @param packed how many packed bytes have been read so far
   */
  Unpacking(InputStream in, LongSupplier packed) {
    this(in, packed, Bounds.UNPACKED, Bounds.RATIO, Bounds.SMALL);
  }

  Unpacking(InputStream in, LongSupplier packed, long most, int ratio, long small) {
    super(in);
    this.packed = packed;
    this.most = most;
    this.ratio = ratio;
    this.small = small;
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] into, int from, int length) throws IOException {
    if (cut != null) {
      throw cut;
    }
    try {
      int n = in.read(into, from, length);
      unpacked += Math.max(0, n);
      check();
      return n;
    } catch (EOFException | ZipException e) {
      cut = new CutShort("the packed data break off here (" + e.getMessage() + ")");
      throw cut;
    } catch (CutShort e) {
      cut = e;
      throw e;
    }
  }

  private void check() throws CutShort {
    if (unpacked > most) {
      throw new CutShort("unpacks to more than " + most + " bytes; split it");
    }
    if (unpacked > small && unpacked / ratio > packed.getAsLong()) {
      throw new CutShort("unpacks to more than " + ratio + " times its size; unpack it first");
    }
  }
}
