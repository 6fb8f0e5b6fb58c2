package org.wellcurb.intake;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.wellcurb.quantity.Bounds;

/**
 * Files that hold other files. One level only: an archive in an archive is passed over, a packed
 * text in it is not.
 */
final class Archive {
  private Archive() {}

  /** Adds each member of a {@code .zip}, by code point order of their names. */
  static void members(Path path, String name, List<Input> inputs, List<PassedOver> passedOver)
      throws IOException {
    List<? extends ZipEntry> entries;
    try (ZipFile zip = zip(path)) {
      entries =
          zip.stream()
              .filter(e -> !e.isDirectory())
              .sorted(Comparator.comparing(e -> memberName(e), Inputs.CODE_POINTS))
              .toList();
    } catch (ZipException e) {
      inputs.add(
          new Input(
              name,
              path,
              Form.TABLE,
              () -> {
                throw new CutShort(
                    "is not a zip archive that can be read (" + e.getMessage() + ")");
              }));
      return;
    }
    Set<String> seen = new HashSet<>();
    int count = 0;
    for (ZipEntry entry : entries) {
      String member = name + "!" + memberName(entry);
      Form form = Form.of(member);
      if (form == null) {
        passedOver.add(new PassedOver(member, "its name ends as no records do"));
      } else if (form == Form.ARCHIVE || (form == Form.PACKED && !isPackedText(member))) {
        passedOver.add(new PassedOver(member, "an archive in an archive is not opened"));
      } else if (!seen.add(entry.getName())) {
        passedOver.add(new PassedOver(member, "the archive holds this name twice"));
      } else if (++count > Bounds.MEMBERS) {
        passedOver.add(new PassedOver(member, "beyond " + Bounds.MEMBERS + " members"));
      } else if (form == Form.SHEETS) {
        Workbooks.Book book = Workbooks.of(() -> member(path, entry.getName()));
        Workbooks.sheets(book, path, member, inputs, passedOver);
      } else if (form == Form.PACKED) {
        Input.Opener opener = () -> unpack(member(path, entry.getName()));
        inputs.add(new Input(member, path, Form.ofPacked(member), opener));
      } else {
        inputs.add(new Input(member, path, form, () -> member(path, entry.getName())));
      }
    }
  }

  /** True for a {@code .csv.gz} and its like: packed twice, yet no archive. */
  private static boolean isPackedText(String member) {
    Form inside = Form.ofPacked(member);
    return inside == Form.TABLE || inside == Form.JSON || inside == Form.JSON_LINES;
  }

  /** The bytes of a {@code .gz}. */
  static InputStream unpack(Path path) throws IOException {
    return unpack(Files.newInputStream(path));
  }

  /** The bytes that this stream packs. */
  static InputStream unpack(InputStream packed) throws IOException {
    Counting counted = new Counting(packed);
    try {
      return new Unpacking(
          new GZIPInputStream(new BufferedInputStream(counted, 64 << 10), 64 << 10),
          () -> counted.count);
    } catch (ZipException | java.io.EOFException e) {
      packed.close();
      throw new CutShort("is not a gzip file that can be read (" + e.getMessage() + ")");
    }
  }

  /** The bytes that this stream packs if it begins as a gzip file does; else the stream itself. */
  static InputStream unpackIfPacked(InputStream in) throws IOException {
    byte[] first = in.readNBytes(2);
    InputStream whole = new SequenceInputStream(new ByteArrayInputStream(first), in);
    boolean packed = first.length == 2 && first[0] == 0x1F && first[1] == (byte) 0x8B;
    return packed ? unpack(whole) : whole;
  }

  private static String memberName(ZipEntry entry) {
    return entry.getName().replace('\\', '/');
  }

  private static ZipFile zip(Path path) throws IOException {
    try {
      return new ZipFile(path.toFile(), StandardCharsets.UTF_8);
    } catch (ZipException e) {
      // Old archives write names in the code page of their time; any byte is a character here.
      return new ZipFile(path.toFile(), Charset.forName("windows-1252"));
    }
  }

  private static InputStream member(Path path, String name) throws IOException {
    ZipFile zip = zip(path);
    ZipEntry entry = zip.getEntry(name);
    if (entry == null) {
      zip.close();
      throw new IntakeException(path + ": changed while it was read; run again");
    }
    InputStream in = zip.getInputStream(entry);
    return new Unpacking(in, entry::getCompressedSize) {
      @Override
      public void close() throws IOException {
        super.close();
        zip.close();
      }
    };
  }

  /** Counts the bytes that pass. */
  private static final class Counting extends FilterInputStream {
    long count;

    Counting(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      int b = in.read();
      count += b < 0 ? 0 : 1;
      return b;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
      int n = in.read(into, from, length);
      count += Math.max(0, n);
      return n;
    }
  }
}
