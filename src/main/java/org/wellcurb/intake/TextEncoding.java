package org.wellcurb.intake;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** How the characters of an input are written as bytes: told from its first bytes. */
public enum TextEncoding {
  UTF_8("UTF-8", StandardCharsets.UTF_8, 0),
  UTF_8_MARKED("UTF-8 with a byte order mark", StandardCharsets.UTF_8, 3),
  UTF_16_LE("UTF-16 (little end first)", StandardCharsets.UTF_16LE, 2),
  UTF_16_BE("UTF-16 (big end first)", StandardCharsets.UTF_16BE, 2),
  WINDOWS_1252("Windows-1252", Charset.forName("windows-1252"), 0);

  private final String label;
  private final Charset charset;
  private final int markLength;

  TextEncoding(String label, Charset charset, int markLength) {
    this.label = label;
    this.charset = charset;
    this.markLength = markLength;
  }

  /** How the report names it. */
  public String label() {
    return label;
  }

  Charset charset() {
    return charset;
  }

  /** Bytes of the mark before the text. */
  int markLength() {
    return markLength;
  }

  boolean isUtf8() {
    return charset.equals(StandardCharsets.UTF_8);
  }

  /**
   * The encoding of a text that begins so. Without a byte order mark it is UTF-8 where the bytes
   * are that, else Windows-1252, in which any bytes can be read.
   *
   * @param whole true if the sample is all there is, so that it may not end within a character
   */
  static TextEncoding of(byte[] sample, boolean whole) {
    if (startsWith(sample, 0xEF, 0xBB, 0xBF)) {
      return UTF_8_MARKED;
    }
    if (startsWith(sample, 0xFF, 0xFE)) {
      return UTF_16_LE;
    }
    if (startsWith(sample, 0xFE, 0xFF)) {
      return UTF_16_BE;
    }
    return isUtf8(sample, whole) ? UTF_8 : WINDOWS_1252;
  }

  private static boolean startsWith(byte[] bytes, int... mark) {
    for (int i = 0; i < mark.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean isUtf8(byte[] sample, boolean whole) {
    return beyondUtf8(sample, whole) < 0;
  }

  /** Where the first byte stands that is none of UTF-8; the last one if all may be. */
  static int firstBeyondUtf8(byte[] sample) {
    int at = beyondUtf8(sample, true);
    return at < 0 ? sample.length - 1 : at;
  }

  private static int beyondUtf8(byte[] sample, boolean whole) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(sample);
    CharBuffer out = CharBuffer.allocate(8192);
    while (true) {
      CoderResult result = decoder.decode(in, out, whole);
      if (result.isError()) {
        return in.position();
      }
      if (result.isUnderflow()) {
        return -1;
      }
      out.clear();
    }
  }
}
