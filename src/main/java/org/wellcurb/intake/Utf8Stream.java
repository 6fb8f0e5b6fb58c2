package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Text of another encoding, as UTF-8, while it is read. What is no character becomes U+FFFD. */
final class Utf8Stream extends InputStream {
  private static final byte[] NO_CHARACTER = {(byte) 0xEF, (byte) 0xBF, (byte) 0xBD};

  private final InputStream in;
  private final CharsetDecoder decoder;
  private final CharsetEncoder encoder =
      StandardCharsets.UTF_8
          .newEncoder()
          .replaceWith(NO_CHARACTER)
          .onMalformedInput(CodingErrorAction.REPLACE)
          .onUnmappableCharacter(CodingErrorAction.REPLACE);
  private final ByteBuffer source = ByteBuffer.allocate(16 << 10).flip();
  private final CharBuffer chars = CharBuffer.allocate(16 << 10).flip();
  private final ByteBuffer bytes = ByteBuffer.allocate(64 << 10).flip();
  private boolean atEnd;
  private @Nullable CutShort cut;

  Utf8Stream(InputStream in, Charset charset) {
    this.in = in;
    this.decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPLACE)
            .onUnmappableCharacter(CodingErrorAction.REPLACE);
  }

  @Override
  public int read() throws IOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] into, int from, int length) throws IOException {
    if (length == 0) {
      return 0;
    }
    while (!bytes.hasRemaining()) {
      if (atEnd && !source.hasRemaining() && !chars.hasRemaining()) {
        if (cut != null) {
          throw cut;
        }
        return -1;
      }
      recode();
    }
    int n = Math.min(length, bytes.remaining());
    bytes.get(into, from, n);
    return n;
  }

  private void recode() throws IOException {
    if (!atEnd) {
      source.compact();
      int n = -1;
      try {
        n = in.read(source.array(), source.position(), source.remaining());
      } catch (CutShort e) {
        cut = e;
      }
      atEnd = n < 0;
      source.position(source.position() + Math.max(0, n)).flip();
    }
    chars.compact();
    decoder.decode(source, chars, atEnd);
    chars.flip();
    bytes.clear();
    encoder.encode(chars, bytes, atEnd && !source.hasRemaining());
    bytes.flip();
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
