package org.wellcurb.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The version of this program. */
public final class Version {
  private Version() {}

  /** Such as {@code 1.0.0}. */
  public static String text() {
    try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
      return new String(
              Objects.requireNonNull(in, "version.txt").readAllBytes(), StandardCharsets.UTF_8)
          .strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
