package org.wellcurb.rulepack;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/**
 * The bytes of a pack file.
 *
 * @param text its text, without a byte order mark
 * @param sha256 hash of its bytes, in lower-case hexadecimal
 * @param french what its texts are in French
 */
record PackBytes(String text, String sha256, Map<String, String> french) {
  PackBytes {
    french = Map.copyOf(french);
  }

  /** Greatest size of a pack file in bytes. */
  static final int MOST = 4 << 20;

  /**
   * Reads a file.
   *
   * @throws PackException where it cannot be read, is too large, or is not UTF-8
   */
  static PackBytes read(PackFinder.Found found) throws PackException {
    byte[] bytes;
    try (InputStream in = found.open()) {
      bytes = in.readNBytes(MOST + 1);
    } catch (IOException e) {
      throw refuse(found, "the file cannot be read", "look whether it is a file that you may read");
    }
    if (bytes.length > MOST) {
      throw refuse(
          found,
          "the file is larger than " + (MOST >> 20) + " MiB",
          "split it: a pack can be built on others");
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    try {
      String text = decoder.decode(ByteBuffer.wrap(bytes)).toString();
      return new PackBytes(
          text.startsWith("\uFEFF") ? text.substring(1) : text,
          sha256(bytes),
          FrenchTexts.beside(found));
    } catch (CharacterCodingException e) {
      throw refuse(found, notUtf8(bytes), "save it as UTF-8");
    }
  }

  private static String notUtf8(byte[] bytes) {
    int line = 1;
    String text = new String(bytes, StandardCharsets.UTF_8);
    int bad = text.indexOf('\uFFFD');
    for (int i = 0; i < bad; i++) {
      if (text.charAt(i) == '\n') {
        line++;
      }
    }
    return "the file is not UTF-8: line " + line + " has other bytes";
  }

  private static PackException refuse(PackFinder.Found found, String what, String mend) {
    return new PackException(List.of(PackProblem.without(found.shown(), what, mend)));
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
