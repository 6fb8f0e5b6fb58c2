package org.wellcurb.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;

/** Workbooks: each sheet that is shown is an input. */
final class Workbooks {
  private static final ReadingOptions OPTIONS = new ReadingOptions(true, true);

  /** For a workbook that has no formats at all, as simple writers make them. */
  private static final ReadingOptions PLAIN = new ReadingOptions(false, true);

  private static final String TYPES = "[Content_Types].xml";
  private static final String STYLES = "spreadsheetml.styles+xml";

  private Workbooks() {}

  /** Gives a workbook, as often as it is asked. */
  interface Book {
    ReadableWorkbook open() throws IOException;
  }

  /** A workbook in a file of its own. */
  static Book of(Path path) {
    return () -> {
      return new ReadableWorkbook(path.toFile(), check(path) ? OPTIONS : PLAIN);
    };
  }

  /** A workbook that someone holds in memory. */
  static Book of(byte[] bytes) {
    return () -> {
      for (ZipEntry entry : entries(bytes)) {
        check(entry);
      }
      return open(bytes);
    };
  }

  /** A workbook in an archive; it is held in memory while it is read. */
  static Book of(Input.Opener opener) {
    return () -> {
      try (InputStream in = opener.open()) {
        return open(in.readAllBytes());
      }
    };
  }

  private static ReadableWorkbook open(byte[] bytes) throws IOException {
    boolean hasStyles = true;
    try (var zip = zip(bytes)) {
      var types = zip.getEntry(TYPES);
      if (types != null) {
        try (InputStream in = zip.getInputStream(types)) {
          hasStyles = namesStyles(in);
        }
      }
    }
    return new ReadableWorkbook(new ByteArrayInputStream(bytes), hasStyles ? OPTIONS : PLAIN);
  }

  private static boolean namesStyles(InputStream types) throws IOException {
    byte[] some = types.readNBytes(Bounds.ROW);
    return new String(some, StandardCharsets.UTF_8).contains(STYLES);
  }

  /** Adds each sheet; a workbook with one only goes by the name of its file. */
  static void sheets(
      Book book,
      @Nullable Path path,
      String name,
      List<Input> inputs,
      List<PassedOver> passedOver) {
    List<Sheet> shown;
    try (ReadableWorkbook workbook = book.open()) {
      List<Sheet> sheets = workbook.getSheets().toList();
      shown = sheets.stream().filter(s -> s.getVisibility() == SheetVisibility.VISIBLE).toList();
      for (Sheet sheet : sheets) {
        if (!shown.contains(sheet)) {
          passedOver.add(new PassedOver(name + "!" + sheet.getName(), "is a hidden sheet"));
        }
      }
    } catch (IOException | RuntimeException e) {
      inputs.add(new Input(name, path, Form.SHEETS, "", () -> unreadable(e)));
      return;
    }
    for (Sheet sheet : shown) {
      String file = shown.size() == 1 ? name : name + "!" + sheet.getName();
      inputs.add(
          new Input(file, path, Form.SHEETS, sheet.getName(), () -> open(book, sheet.getIndex())));
    }
  }

  private static InputStream unreadable(Exception e) throws CutShort {
    throw new CutShort("is not a workbook that can be read (" + e.getMessage() + ")");
  }

  private static InputStream open(Book book, int index) throws IOException {
    ReadableWorkbook workbook = book.open();
    try {
      Sheet sheet = workbook.getSheet(index).orElseThrow();
      return new SheetStream(sheet.openStream().iterator(), workbook.isDate1904(), workbook);
    } catch (IOException e) {
      workbook.close();
      throw e;
    } catch (RuntimeException e) {
      workbook.close();
      return unreadable(e);
    }
  }

  /**
   * A workbook is an archive, and its texts are held in memory: it must be within the bounds.
   *
   * @return whether it says that it has formats of cells; without, no number is shown as a date
   */
  private static boolean check(Path path) throws IOException {
    try (ZipFile zip = new ZipFile(path.toFile())) {
      for (ZipEntry entry : zip.stream().map(ZipEntry.class::cast).toList()) {
        check(entry);
      }
      ZipEntry types = zip.getEntry(TYPES);
      if (types == null) {
        return true;
      }
      try (InputStream in = zip.getInputStream(types)) {
        return namesStyles(in);
      }
    }
  }

  private static List<? extends ZipEntry> entries(byte[] bytes) throws IOException {
    try (var zip = zip(bytes)) {
      return Collections.list(zip.getEntries());
    }
  }

  private static org.apache.commons.compress.archivers.zip.ZipFile zip(byte[] bytes)
      throws IOException {
    return org.apache.commons.compress.archivers.zip.ZipFile.builder()
        .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
        .get();
  }

  static void check(ZipEntry entry) throws CutShort {
    boolean dense = entry.getSize() / Bounds.RATIO > Math.max(1, entry.getCompressedSize());
    if (entry.getSize() > Bounds.SMALL && dense) {
      throw new CutShort("unpacks to more than " + Bounds.RATIO + " times its size");
    }
    if (entry.getName().endsWith("sharedStrings.xml") && entry.getSize() > Bounds.TEXTS) {
      throw new CutShort("holds more than " + Bounds.TEXTS + " bytes of texts; save it as CSV");
    }
  }
}
