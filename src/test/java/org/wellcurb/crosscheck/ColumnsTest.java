package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Numbers of every record, in the heap or in files. */
class ColumnsTest {
  private static final int MANY = 40_000;

  @TempDir Path folder;

  @Test
  void onlyFewNumbersAreInTheHeap() throws IOException {
    Columns columns = new Columns(folder, 100);
    assertFalse(columns.longs(100).isDirect());
    assertFalse(columns.bytes(100).isDirect());
    assertTrue(columns.longs(101).isDirect());
    assertTrue(columns.ints(101).isDirect());
    assertTrue(columns.floats(101).isDirect());
    assertTrue(columns.bytes(101).isDirect());
  }

  @Test
  void columnsInFilesKeepEveryNumber() throws IOException {
    Columns columns = new Columns(folder, 100);
    LongBuffer longs = columns.longs(MANY);
    IntBuffer ints = columns.ints(MANY);
    FloatBuffer floats = columns.floats(MANY);
    ByteBuffer bytes = columns.bytes(MANY);
    assertEquals(MANY, longs.capacity());
    assertEquals(0, longs.get(MANY - 1));
    for (int i = 0; i < MANY; i++) {
      longs.put(i, Long.MIN_VALUE + i);
      ints.put(i, -i);
      floats.put(i, i / 7f);
      bytes.put(i, (byte) i);
    }
    for (int i = 0; i < MANY; i++) {
      assertEquals(Long.MIN_VALUE + i, longs.get(i));
      assertEquals(-i, ints.get(i));
      assertEquals(i / 7f, floats.get(i));
      assertEquals((byte) i, bytes.get(i));
    }
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(0, left.count(), "no file is left behind");
    }
  }

  @Test
  void aFolderThatIsNotThereIsSaid() {
    Columns columns = new Columns(folder.resolve("none"), 0);
    assertThrows(IOException.class, () -> columns.ints(5));
  }

  private static Area area() {
    return new Area(21, 3000).plantCopies(10).plantCopying(2, 0.6);
  }

  /** What is found does not hang on where the numbers are, nor on how many threads look. */
  @Test
  void aRegionInFilesIsTheRegionInTheHeap() throws IOException {
    CrossResult inHeap = area().check(folder, 1 << 20, 1);
    assertFalse(inHeap.duplicates().nearCopies().isEmpty());
    assertTrue(inHeap.equals(area().check(folder, 0, 1)), "seed 21, one thread");
    assertTrue(inHeap.equals(area().check(folder, 0, 2)), "seed 21, two threads");
  }
}
