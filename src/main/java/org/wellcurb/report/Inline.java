package org.wellcurb.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Objects;

/**
 * A style sheet or script that stands in the page itself, with the hash by which the page's content
 * security policy lets it (and nothing else) act.
 *
 * @param text its text, exactly as it stands between the tags
 * @param hash {@code 'sha256-...'} with its quotes, as the policy writes it
 */
record Inline(String text, String hash) {

  /** The resource of this name beside the templates. */
  static Inline of(String name) {
    try (InputStream in =
        Objects.requireNonNull(Inline.class.getResourceAsStream("/org/wellcurb/report/" + name))) {
      return new Inline(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Text that is made for one page. */
  Inline(String text) {
    this(text, hash(text));
  }

  private static String hash(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
