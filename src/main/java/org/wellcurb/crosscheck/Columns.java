package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Room for numbers of every record of a batch, one column each: in the heap where they are few, in
 * files that are mapped into memory where they are more, so that the heap does not grow with the
 * batch. All numbers are 0 at first.
 *
 * <p>A file is removed as soon as it is mapped, or, where a system does not let go of mapped files,
 * with the folder that it stands in. For several threads.
 */
final class Columns {
  /** Numbers of a column that is in the heap, at most. */
  static final int MOST_IN_HEAP = 1 << 16;

  private static final int PIECE = 1 << 16;

  private final Path folder;
  private final int mostInHeap;

  /**
   * @param folder where files may be made
   */
  Columns(Path folder) {
    this(folder, MOST_IN_HEAP);
  }

  /** The same with another bound. */
  Columns(Path folder, int mostInHeap) {
    this.folder = folder;
    this.mostInHeap = mostInHeap;
  }

  LongBuffer longs(int count) throws IOException {
    return count <= mostInHeap
        ? LongBuffer.allocate(count)
        : mapped((long) Long.BYTES * count).asLongBuffer();
  }

  IntBuffer ints(int count) throws IOException {
    return count <= mostInHeap
        ? IntBuffer.allocate(count)
        : mapped((long) Integer.BYTES * count).asIntBuffer();
  }

  FloatBuffer floats(int count) throws IOException {
    return count <= mostInHeap
        ? FloatBuffer.allocate(count)
        : mapped((long) Float.BYTES * count).asFloatBuffer();
  }

  ByteBuffer bytes(int count) throws IOException {
    return count <= mostInHeap ? ByteBuffer.allocate(count) : mapped(count);
  }

  /** The greatest of some codes; -1 if all are less than 0. */
  static int greatest(IntBuffer codes) {
    int most = -1;
    for (int i = 0; i < codes.capacity(); i++) {
      most = Math.max(most, codes.get(i));
    }
    return most;
  }

  private ByteBuffer mapped(long size) throws IOException {
    Path file = Files.createTempFile(folder, "column-", "");
    try (FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            StandardOpenOption.DELETE_ON_CLOSE)) {
      // Written out, and not only made long: a full disk is to be told here and not at some later
      // number, where no one could say so.
      ByteBuffer zeros = ByteBuffer.allocate((int) Math.min(PIECE, size));
      for (long at = 0; at < size; ) {
        at += channel.write(zeros.clear().limit((int) Math.min(PIECE, size - at)), at);
      }
      return channel.map(FileChannel.MapMode.READ_WRITE, 0, size).order(ByteOrder.nativeOrder());
    }
  }
}
