package org.wellcurb.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;

/** The beginning of a text in UTF-8, looked at before it is read. */
final class Sampled {
  private static final int SMALL = 16 << 10;

  private final byte[] sample;
  private final boolean whole;
  private final TextEncoding encoding;
  private final InputStream rest;
  private final @Nullable String sheet;
  private final String why;

  private Sampled(
      Head head, TextEncoding encoding, InputStream rest, @Nullable String sheet, String why) {
    this.sheet = sheet;
    this.why = why;
    this.sample = head.bytes;
    this.whole = head.whole;
    this.encoding = encoding;
    this.rest = rest;
  }

  /** Its first bytes, at most {@link Bounds#SAMPLE}. */
  byte[] sample() {
    return sample;
  }

  /** True if that is all of it. */
  boolean whole() {
    return whole;
  }

  /** How it was written. */
  TextEncoding encoding() {
    return encoding;
  }

  /** Why it is taken to be written so; empty where nothing speaks against UTF-8. */
  String why() {
    return why;
  }

  private static String why(TextEncoding found, @Nullable TextEncoding named, byte[] bytes) {
    boolean isMarked = found.markLength() > 0;
    if (named != null) {
      return isMarked
          ? named.charset().equals(found.charset())
              ? ""
              : "its byte order mark says "
                  + found.label()
                  + ", which goes before "
                  + named.label()
                  + ", as the header map has it"
          : "read as " + named.label() + ", as the header map says";
    }
    if (isMarked && !found.isUtf8()) {
      return "read as " + found.label() + ", as its byte order mark says";
    }
    if (found != TextEncoding.WINDOWS_1252) {
      return "";
    }
    int at = TextEncoding.firstBeyondUtf8(bytes);
    int line = 1;
    for (int i = 0; i < at; i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    return String.format(
        Locale.ROOT,
        "read as %s: the byte %02X on line %d is none of UTF-8; where letters look wrong, a map"
            + " names the encoding under table",
        found.label(),
        bytes[at] & 0xFF,
        line);
  }

  private static final class Head {
    final byte[] bytes;
    final boolean whole;

    Head(byte[] bytes, boolean whole) {
      this.bytes = bytes;
      this.whole = whole;
    }

    /** Reads the beginning; where the input breaks off, what came before that. */
    static Head of(InputStream in) throws IOException {
      byte[] bytes = new byte[SMALL];
      int length = 0;
      try {
        while (length < Bounds.SAMPLE) {
          if (length == bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.min(length * 4, Bounds.SAMPLE));
          }
          int n = in.read(bytes, length, bytes.length - length);
          if (n < 0) {
            return new Head(Arrays.copyOf(bytes, length), true);
          }
          length += n;
        }
      } catch (CutShort e) {
        return new Head(Arrays.copyOf(bytes, length), false);
      }
      return new Head(bytes, false);
    }
  }

  /**
   * Looks at the beginning of an input.
   *
   * @param in must go on failing in the same way once it has been cut short
   * @param named the encoding if no byte order mark says another; null to find it
   */
  static Sampled of(InputStream in, @Nullable TextEncoding named) throws IOException {
    Head raw = Head.of(in);
    TextEncoding found = TextEncoding.of(raw.bytes, raw.whole);
    TextEncoding encoding = named != null && found.markLength() == 0 ? named : found;
    int mark = found.markLength();
    String why = why(found, named, raw.bytes);
    InputStream text =
        new SequenceInputStream(
            new ByteArrayInputStream(raw.bytes, mark, raw.bytes.length - mark), in);
    if (encoding == TextEncoding.UTF_8) {
      return new Sampled(raw, encoding, in, null, why);
    }
    if (!encoding.isUtf8()) {
      text = new Utf8Stream(text, encoding.charset());
    }
    Head head = Head.of(text);
    return new Sampled(head, encoding, text, null, why);
  }

  /** Looks at the beginning of an input, as its form and what a map says of it want. */
  static Sampled of(Input input, InputStream in, TableMap map) throws IOException {
    if (input.form() == Form.SHEETS) {
      return ofSheet(in, input.sheet());
    }
    InputStream bytes = input.form() == null ? Archive.unpackIfPacked(in) : in;
    return of(bytes, map.form().encoding());
  }

  /** Looks at the beginning of a sheet that is written out as a table in UTF-8. */
  private static Sampled ofSheet(InputStream in, String name) throws IOException {
    return new Sampled(Head.of(in), TextEncoding.UTF_8, in, name, "");
  }

  /** The text from this place of the sample on. */
  InputStream from(int at) {
    return new SequenceInputStream(new ByteArrayInputStream(sample, at, sample.length - at), rest);
  }

  /** Its first byte that is no blank; -1 if there is none. */
  int firstByte() {
    for (byte b : sample) {
      if (b != ' ' && b != '\t' && b != '\r' && b != '\n') {
        return b & 0xFF;
      }
    }
    return -1;
  }

  /** True if its first line is an object, whole, and the next begins another. */
  boolean isObjectsByLine() {
    int start = 0;
    while (start < sample.length && sample[start] != '{') {
      start++;
    }
    int lineEnd = ByteScan.lineFeed(sample, start, sample.length);
    int next = lineEnd;
    while (next < sample.length && (sample[next] <= ' ' && sample[next] >= 0)) {
      next++;
    }
    return Braces.end(sample, start, lineEnd) > 0 && next < sample.length && sample[next] == '{';
  }

  /** True if it is a sheet of a workbook, written out as a table. */
  boolean isSheet() {
    return sheet != null;
  }

  /** The name of that sheet; null for any other text. */
  @Nullable String sheet() {
    return sheet;
  }

  /** True if it begins as a zip archive does. */
  boolean looksLikeArchive() {
    return sample.length > 3 && sample[0] == 'P' && sample[1] == 'K' && sample[2] < 9;
  }

  /** True for text of two bytes a character that says so by no mark: every other byte is zero. */
  boolean looksLikeUnmarkedUtf16() {
    int zeros = 0;
    int looked = Math.min(sample.length, 1000);
    for (int i = 0; i < looked; i++) {
      zeros += sample[i] == 0 ? 1 : 0;
    }
    return looked > 0 && zeros * 4 > looked;
  }
}
