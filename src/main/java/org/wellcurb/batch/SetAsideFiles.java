package org.wellcurb.batch;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.RawFrame;
import org.wellcurb.report.ByteText;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.SafeNames;

/**
 * {@code set-aside/FILE}: rows as they stand, each input's under its own header, to be corrected
 * and run again. The names are made safe: a member of an archive may be called anything.
 */
final class SetAsideFiles implements Closeable {
  private final Path folder;
  private final SafeNames names = new SafeNames();
  private @Nullable OutputStream open;
  private byte[] between = new byte[0];
  private byte[] after = new byte[0];

  SetAsideFiles(Path folder) {
    this.folder = folder.resolve(Outputs.SET_ASIDE);
  }

  /** Adds rows of the input that is being read. */
  void append(RawFrame frame, ByteText rows) throws IOException {
    if (rows.length() == 0) {
      return;
    }
    OutputStream out = open;
    if (out == null) {
      Files.createDirectories(folder);
      out = Files.newOutputStream(folder.resolve(name(frame.file())));
      open = out;
      between = utf8(frame.between());
      after = utf8(frame.after());
      out.write(utf8(frame.before()));
    } else {
      out.write(between);
    }
    rows.writeTo(out);
  }

  /** Ends the file of the input that has ended, if it has one. */
  void endInput() throws IOException {
    OutputStream out = open;
    if (out != null) {
      open = null;
      try (out) {
        out.write(after);
      }
    }
  }

  /** Keeps the end of the name, by which the file is read again as what it is. */
  private String name(String file) {
    int slash = Math.max(file.lastIndexOf('/'), file.lastIndexOf('!'));
    int point = file.lastIndexOf('.');
    if (point <= slash + 1 || !isPlain(file.substring(point + 1))) {
      return names.name(file, ".csv");
    }
    return names.name(file.substring(0, point), file.substring(point));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static boolean isPlain(String ending) {
    return !ending.isEmpty() && ending.chars().allMatch(c -> c < 0x80 && Character.isLetter(c));
  }

  @Override
  public void close() throws IOException {
    if (open != null) {
      open.close();
      open = null;
    }
  }
}
