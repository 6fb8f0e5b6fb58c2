package org.wellcurb.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * One input to read: a file, a member of an archive, or standard input.
 *
 * @param file how outputs name it: the path relative to the argument given, with {@code /}; a
 *     member is {@code a.zip!b.csv}; {@code -} is standard input
 * @param path the file that holds it; null for standard input
 * @param form what its name promises; null to tell from what is in it
 * @param sheet the sheet of a workbook; empty for anything else
 * @param opener gives its bytes, unpacked
 */
public record Input(
    String file, @Nullable Path path, @Nullable Form form, String sheet, Opener opener) {

  Input(String file, @Nullable Path path, @Nullable Form form, Opener opener) {
    this(file, path, form, "", opener);
  }

  /** A file that someone holds in memory; its form is told by its name. */
  public static Input of(String file, byte[] bytes) {
    return new Input(file, null, Form.of(file), () -> new ByteArrayInputStream(bytes));
  }

  /** Gives the bytes of an input. */
  @FunctionalInterface
  interface Opener {
    InputStream open() throws IOException;
  }
}
