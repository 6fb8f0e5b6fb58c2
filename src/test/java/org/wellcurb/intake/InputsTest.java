package org.wellcurb.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.quantity.Bounds;

class InputsTest {
  private static final String CSV = "record.id,well.tag\nA,1\nB,2\n";

  @TempDir Path folder;

  private Path write(String name, byte[] bytes) throws IOException {
    Path path = folder.resolve(name);
    Files.createDirectories(path.getParent());
    return Files.write(path, bytes);
  }

  private Path write(String name) throws IOException {
    return write(name, CSV.getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] gzip(byte[] bytes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (OutputStream packed = new GZIPOutputStream(out)) {
      packed.write(bytes);
    }
    return out.toByteArray();
  }

  private static byte[] zip(String... names) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (String name : names) {
        zip.putNextEntry(new ZipEntry(name));
        byte[] csv = CSV.getBytes(StandardCharsets.UTF_8);
        zip.write(name.endsWith(".gz") ? gzip(csv) : csv);
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }

  private static Inputs of(Object... arguments) throws IOException {
    List<String> texts = Arrays.stream(arguments).map(Object::toString).toList();
    return Inputs.of(texts, InputStream.nullInputStream());
  }

  private static List<String> names(Inputs inputs) {
    return inputs.inputs().stream().map(Input::file).toList();
  }

  private static List<String> passed(Inputs inputs) {
    return inputs.passedOver().stream().map(PassedOver::file).toList();
  }

  @Test
  void aFolderGivesItsFilesByCodePointAndNamesTheOthers() throws IOException {
    for (String name : List.of("b.csv", "B.TSV", "a/z.json", "a.txt", "\uFF5E.csv", "😀.csv")) {
      write(name);
    }
    write("notes.docx");
    write("a/.hidden");
    Files.createSymbolicLink(folder.resolve("link.csv"), folder.resolve("b.csv"));
    Inputs inputs = of(folder);
    assertEquals(
        List.of("B.TSV", "a.txt", "a/z.json", "b.csv", "\uFF5E.csv", "😀.csv"), names(inputs));
    assertEquals(List.of("a/.hidden", "link.csv", "notes.docx"), passed(inputs));
  }

  @Test
  void filesOfOneNameKeepNamesOfTheirOwnAndOneFileIsReadOnce() throws IOException {
    Path a = write("a/x.csv");
    Path b = write("b/x.csv");
    Inputs inputs = of(a, b, a);
    assertEquals(List.of("x.csv", "2/x.csv"), names(inputs));
    assertEquals("is given twice", inputs.passedOver().get(0).reason());
  }

  @Test
  void whatIsNotThereIsSaidInOneLine() {
    IntakeException e =
        assertThrows(IntakeException.class, () -> of(folder.resolve("missing.csv")));
    assertTrue(e.getMessage().endsWith("missing.csv: is not there; check the path"));
    assertThrows(IntakeException.class, () -> of("a\0b"));
  }

  @Test
  void standardInputIsReadByWhatIsInIt() throws IOException {
    for (byte[] bytes :
        List.of(
            CSV.getBytes(StandardCharsets.UTF_8),
            "[{\"record\":{\"id\":\"A\"}},{\"record\":{\"id\":\"B\"}}]"
                .getBytes(StandardCharsets.UTF_8),
            gzip(CSV.getBytes(StandardCharsets.UTF_8)))) {
      Inputs inputs = Inputs.of(List.of("-", "-"), new ByteArrayInputStream(bytes));
      assertEquals(List.of("-"), names(inputs));
      assertEquals(List.of("A", "B"), Gathered.of(inputs.inputs().get(0), RowSplitter.CHUNK).ids());
    }
  }

  @Test
  void packedFilesAreUnpacked() throws IOException {
    Path gz = write("a.csv.gz", gzip(CSV.getBytes(StandardCharsets.UTF_8)));
    Inputs inputs = of(gz);
    assertEquals(List.of("a.csv.gz"), names(inputs));
    assertEquals(List.of("A", "B"), Gathered.of(inputs.inputs().get(0), 10).ids());
  }

  @Test
  void eachMemberOfAnArchiveIsAnInput() throws IOException {
    Path zip = write("a.zip", zip("d/c.csv", "b.csv", "x.zip", "y.csv.gz", "read.me"));
    Inputs inputs = of(zip);
    assertEquals(List.of("a.zip!b.csv", "a.zip!d/c.csv", "a.zip!y.csv.gz"), names(inputs));
    assertEquals(List.of("a.zip!read.me", "a.zip!x.zip"), passed(inputs));
    for (Input input : inputs.inputs()) {
      assertEquals(List.of("A", "B"), Gathered.of(input, 10).ids());
    }
  }

  @Test
  void moreMembersThanTheBoundAreNamed() throws IOException {
    String[] names = new String[Bounds.MEMBERS + 2];
    Arrays.setAll(names, i -> String.format("%05d.csv", i));
    Inputs inputs = of(write("many.zip", zip(names)));
    assertEquals(Bounds.MEMBERS, inputs.inputs().size());
    assertEquals(2, inputs.passedOver().size());
  }

  @Test
  void whatIsNoArchiveIsSetAsideWhole() throws IOException {
    for (String name : List.of("bad.zip", "bad.csv.gz")) {
      Inputs inputs = of(write(name));
      Gathered all = Gathered.of(inputs.inputs().get(0), 10);
      assertTrue(all.aside.get(0).isFile());
    }
  }

  @Test
  void aPackedFileThatBreaksOffKeepsWhatCameBefore() throws IOException {
    StringBuilder text = new StringBuilder("record.id,well.tag\n");
    for (int i = 0; i < 200_000; i++) {
      text.append("R").append(i).append(',').append(i * 7919 % 1000).append('\n');
    }
    byte[] whole = gzip(text.toString().getBytes(StandardCharsets.UTF_8));
    Path cut = write("cut.csv.gz", Arrays.copyOf(whole, whole.length / 2));
    Gathered all = Gathered.counted(of(cut).inputs().get(0));
    assertTrue(all.recordCount > 50_000);
    assertEquals(all.recordCount + 1, all.rows);
    assertTrue(all.last().reason().contains("break off"), all.last().reason());
    assertEquals(all.recordCount + 2, all.last().row());
  }

  @Test
  void whatUnpacksBeyondItsBoundsIsCutThere() throws IOException {
    byte[] zeros = new byte[100_000];
    long[] packed = {100};
    InputStream tooLarge =
        new Unpacking(new ByteArrayInputStream(zeros), () -> packed[0], 50_000, 10_000, 0);
    assertThrows(CutShort.class, tooLarge::readAllBytes);
    InputStream tooDense =
        new Unpacking(new ByteArrayInputStream(zeros), () -> packed[0], 1_000_000, 100, 20_000);
    assertThrows(CutShort.class, tooDense::readAllBytes);
    InputStream fits =
        new Unpacking(new ByteArrayInputStream(zeros), () -> packed[0], 100_000, 1000, 0);
    assertEquals(100_000, fits.readAllBytes().length);
  }
}
