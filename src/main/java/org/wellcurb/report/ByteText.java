package org.wellcurb.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Text being written, as UTF-8 bytes: the lines of one chunk of a batch, kept until its turn comes.
 * Used again and again, so that a million records make no garbage.
 */
public final class ByteText {
  private static final int FIRST_SIZE = 1 << 12;
  private static final byte REPLACEMENT = '?';

  private static final byte[] HEX = "0123456789abcdef".getBytes(StandardCharsets.US_ASCII);

  private byte[] bytes = new byte[FIRST_SIZE];
  private int length;

  /** Bytes written since the last {@link #clear()}. */
  public int length() {
    return length;
  }

  /** Forgets what was written. */
  public void clear() {
    length = 0;
  }

  /** Forgets what was written after the first {@code length} bytes. */
  public void cutTo(int length) {
    if (length < 0 || length > this.length) {
      throw new IllegalArgumentException("cannot cut " + this.length + " bytes to " + length);
    }
    this.length = length;
  }

  /** Adds one ASCII character. */
  public ByteText put(char ascii) {
    room(1);
    bytes[length++] = (byte) ascii;
    return this;
  }

  /** Adds bytes that are UTF-8 already. */
  public ByteText put(byte[] utf8, int from, int to) {
    int count = to - from;
    room(count);
    System.arraycopy(utf8, from, bytes, length, count);
    length += count;
    return this;
  }

  /** Adds what another text holds. */
  public ByteText put(ByteText other) {
    return put(other.bytes, 0, other.length);
  }

  /** Adds text; half of a surrogate pair becomes a question mark. */
  public ByteText put(String text) {
    int count = text.length();
    room(3 * count);
    for (int i = 0; i < count; i++) {
      char c = text.charAt(i);
      if (c < 0x80) {
        bytes[length++] = (byte) c;
      } else if (c < 0x800) {
        bytes[length++] = (byte) (0xC0 | (c >> 6));
        bytes[length++] = (byte) (0x80 | (c & 0x3F));
      } else if (!Character.isSurrogate(c)) {
        bytes[length++] = (byte) (0xE0 | (c >> 12));
        bytes[length++] = (byte) (0x80 | ((c >> 6) & 0x3F));
        bytes[length++] = (byte) (0x80 | (c & 0x3F));
      } else if (Character.isHighSurrogate(c)
          && i + 1 < count
          && Character.isLowSurrogate(text.charAt(i + 1))) {
        int point = Character.toCodePoint(c, text.charAt(++i));
        bytes[length++] = (byte) (0xF0 | (point >> 18));
        bytes[length++] = (byte) (0x80 | ((point >> 12) & 0x3F));
        bytes[length++] = (byte) (0x80 | ((point >> 6) & 0x3F));
        bytes[length++] = (byte) (0x80 | (point & 0x3F));
      } else {
        bytes[length++] = REPLACEMENT;
      }
    }
    return this;
  }

  /** Adds a whole number. */
  public ByteText whole(long number) {
    if (number < 0) {
      return put(Long.toString(number));
    }
    int digits = 1;
    for (long rest = number; rest >= 10; rest /= 10) {
      digits++;
    }
    room(digits);
    length += digits;
    long rest = number;
    for (int at = length - 1; at >= length - digits; at--) {
      bytes[at] = (byte) ('0' + rest % 10);
      rest /= 10;
    }
    return this;
  }

  /** Adds 16 hexadecimal digits. */
  public ByteText hex(long bits) {
    room(16);
    for (int shift = 60; shift >= 0; shift -= 4) {
      bytes[length++] = HEX[(int) (bits >>> shift) & 0xF];
    }
    return this;
  }

  /** Writes it all out. */
  public void writeTo(OutputStream out) throws IOException {
    out.write(bytes, 0, length);
  }

  /** A copy of the bytes. */
  public byte[] toBytes() {
    return Arrays.copyOf(bytes, length);
  }

  @Override
  public String toString() {
    return new String(bytes, 0, length, StandardCharsets.UTF_8);
  }

  private void room(int more) {
    if (more > bytes.length - length) {
      bytes = Arrays.copyOf(bytes, Math.max(Math.addExact(length, more), 2 * bytes.length));
    }
  }
}
