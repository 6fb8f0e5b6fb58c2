package org.wellcurb.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

  /**
   * A file that someone holds in memory; its form is told by its name, of a packed one by what is
   * in it. Of a workbook each sheet that can be seen.
   */
  public static List<Input> of(String file, byte[] bytes) {
    @Nullable Form form = Form.of(file);
    if (form == Form.SHEETS) {
      List<Input> sheets = new ArrayList<>();
      Workbooks.sheets(Workbooks.of(bytes), null, file, sheets, new ArrayList<>());
      return sheets;
    }
    boolean isPacked = form == Form.ARCHIVE || form == Form.PACKED;
    return List.of(
        new Input(file, null, isPacked ? null : form, () -> new ByteArrayInputStream(bytes)));
  }

  /** Gives the bytes of an input. */
  @FunctionalInterface
  interface Opener {
    InputStream open() throws IOException;
  }
}
