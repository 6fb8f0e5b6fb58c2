package org.wellcurb.crosscheck;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.wellcurb.record.Catalogue;

/**
 * The rows of a whole batch, in input order, in a file of their own. Columns are read when a check
 * needs them, so that only a few numbers a record are in memory at a time.
 *
 * <p>The file is a row of blocks of so many records each. In a block each number of the head of a
 * {@link SurveyRow} has a column of its own, as far from the block's start as the number is from
 * the row's, times the records of a block; then comes what the rules said, record by record, and
 * last the marks of all its records, as many as they are. So a column is read in long pieces.
 */
public final class SurveyFile implements Closeable {
  private static final int BLOCK = 4096;

  private final FileChannel channel;
  private final Columns columns;
  private final int rowLength;
  private final int marksLength;
  private final SurveyPart.Names contractors;
  private final SurveyPart.Names zones;
  private final List<String> files = new ArrayList<>();
  private final RuleSet rules;
  private final ByteBuffer block;

  /** The marks of the block at hand. */
  private ByteBuffer marks = ByteBuffer.allocate(0);

  /** Where each block begins, and where the next will; the block at hand is the last. */
  private long[] starts = new long[2];

  private boolean isWritten = true;
  private long unnamed;
  private int rows;

  /**
   * Makes the file; it is removed by whoever owns its folder.
   *
   * @param rules what judges the batch
   * @param mostNames licences and zones that are told apart, of each; records of those met after
   *     are taken for records that name none
   */
  public SurveyFile(Path path, Catalogue catalogue, RuleSet rules, int mostNames)
      throws IOException {
    this(path, catalogue, rules, mostNames, new Columns(path.toAbsolutePath().resolveSibling("")));
  }

  /** The same, with where checks make room. */
  SurveyFile(Path path, Catalogue catalogue, RuleSet rules, int mostNames, Columns columns)
      throws IOException {
    this.rules = rules;
    this.columns = columns;
    contractors = new SurveyPart.Names(mostNames);
    zones = new SurveyPart.Names(mostNames);
    marksLength = SurveyRow.marksLength(catalogue);
    rowLength = SurveyRow.length(rules.most());
    block = ByteBuffer.allocate(BLOCK * rowLength);
    channel =
        FileChannel.open(
            path, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE);
  }

  /**
   * Adds the rows of the next part.
   *
   * @param file the input that they come from
   */
  public void append(SurveyPart part, String file) throws IOException {
    int place = files.size() - 1;
    if (place < 0 || !files.get(place).equals(file)) {
      files.add(file);
      place++;
    }
    int[] contractorOf = codes(part.contractors(), contractors);
    int[] zoneOf = codes(part.zones(), zones);
    ByteBuffer bytes = part.rows();
    int end = bytes.position();
    for (int at = 0; at < end; at += rowLength) {
      boolean isUnnamed =
          isUnnamed(
                  part.contractors(),
                  bytes.getInt(at + SurveyRow.CONTRACTOR),
                  contractorOf,
                  contractors)
              || isUnnamed(part.zones(), bytes.getInt(at + SurveyRow.ZONE), zoneOf, zones);
      unnamed += isUnnamed ? 1 : 0;
      recode(bytes, at + SurveyRow.CONTRACTOR, contractorOf);
      recode(bytes, at + SurveyRow.ZONE, zoneOf);
      bytes.putInt(at + SurveyRow.FILE, place);
    }
    for (int at = 0; at < end; ) {
      int count = Math.min(BLOCK - rows % BLOCK, (end - at) / rowLength);
      put(bytes, at, count, part.marks());
      rows += count;
      at += count * rowLength;
      if (rows % BLOCK == 0) {
        writeBlock();
        marks.clear();
        if (starts.length < rows / BLOCK + 2) {
          starts = Arrays.copyOf(starts, 2 * starts.length);
        }
      }
    }
  }

  /** Puts rows into the block, column by column. */
  private void put(ByteBuffer from, int start, int count, ByteBuffer partMarks) {
    isWritten = false;
    int first = rows % BLOCK;
    int said = rowLength - SurveyRow.HEAD;
    for (int i = 0; i < count; i++) {
      int at = start + i * rowLength;
      int to = first + i;
      block.putLong(BLOCK * SurveyRow.ID + 8 * to, from.getLong(at + SurveyRow.ID));
      for (int column = SurveyRow.GROUPS; column < SurveyRow.YEAR; column += 4) {
        block.putInt(BLOCK * column + 4 * to, from.getInt(at + column));
      }
      block.putShort(BLOCK * SurveyRow.YEAR + 2 * to, from.getShort(at + SurveyRow.YEAR));
      block.put(BLOCK * SurveyRow.FLAGS + to, from.get(at + SurveyRow.FLAGS));
      block.putShort(BLOCK * SurveyRow.PACK + 2 * to, from.getShort(at + SurveyRow.PACK));
      block.put(BLOCK * SurveyRow.HEAD + said * to, from, at + SurveyRow.HEAD, said);
      int theirs = from.getInt(at + SurveyRow.MARKS);
      int bytes = SurveyRow.MARK_COUNT + SurveyRow.MARK * partMarks.getShort(theirs);
      marks = SurveyPart.withRoom(marks, bytes);
      int ours = marks.position();
      block.putInt(BLOCK * SurveyRow.MARKS + 4 * to, ours);
      marks.put(ours, partMarks, theirs, bytes).position(ours + bytes);
    }
  }

  private void writeBlock() throws IOException {
    int number = (rows - 1) / BLOCK;
    write(block.clear(), starts[number]);
    ByteBuffer own = marks.duplicate().flip();
    starts[number + 1] = starts[number] + block.capacity() + own.limit();
    write(own, starts[number] + block.capacity());
    isWritten = true;
  }

  private void write(ByteBuffer bytes, long at) throws IOException {
    while (bytes.hasRemaining()) {
      channel.write(bytes, at + bytes.position());
    }
  }

  private static void recode(ByteBuffer bytes, int at, int[] codes) {
    bytes.putInt(at, codes[bytes.getInt(at)]);
  }

  /** Whether a name was one too many. */
  private static boolean isUnnamed(
      SurveyPart.Names part, int code, int[] codes, SurveyPart.Names all) {
    return all.written().get(codes[code]).isBlank() && !part.written().get(code).isBlank();
  }

  /** Records whose licence or zone came after as many as are told apart. */
  long unnamed() {
    return unnamed;
  }

  private static int[] codes(SurveyPart.Names from, SurveyPart.Names to) {
    return from.written().stream().mapToInt(to::place).toArray();
  }

  /** Records. */
  public int rows() {
    return rows;
  }

  /** Licences of drillers by code, as first written; one is empty if any record gives none. */
  List<String> contractors() {
    return contractors.written();
  }

  List<String> zones() {
    return zones.written();
  }

  /** Inputs by code. */
  List<String> files() {
    return files;
  }

  /** Writes what is not written yet: from then on several threads may read. */
  void complete() throws IOException {
    if (!isWritten) {
      writeBlock();
    }
  }

  private void read(ByteBuffer into, int block, long offset) throws IOException {
    complete();
    long at = starts[block] + offset;
    while (into.hasRemaining()) {
      int count = channel.read(into, at);
      if (count < 0) {
        throw new IOException("the survey of the batch is shorter than it was written");
      }
      at += count;
    }
    into.flip();
  }

  /** What is done with a piece of a column: the place of its first record, and how many. */
  private interface Piece {
    void take(ByteBuffer bytes, int first, int count) throws IOException;
  }

  private void column(int offset, int width, Piece piece) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(BLOCK * width);
    for (int first = 0; first < rows; first += BLOCK) {
      int count = Math.min(BLOCK, rows - first);
      read(bytes.clear().limit(count * width), first / BLOCK, (long) BLOCK * offset);
      piece.take(bytes, first, count);
    }
  }

  /** Where checks make room for what they keep of each record. */
  Columns columns() {
    return columns;
  }

  LongBuffer ids() throws IOException {
    LongBuffer ids = columns.longs(rows);
    column(
        SurveyRow.ID, 8, (bytes, first, count) -> ids.put(first, bytes.asLongBuffer(), 0, count));
    return ids;
  }

  IntBuffer ints(int offset) throws IOException {
    IntBuffer values = columns.ints(rows);
    ints(offset, values);
    return values;
  }

  /** The same into room that is there. */
  void ints(int offset, IntBuffer into) throws IOException {
    column(offset, 4, (bytes, first, count) -> into.put(first, bytes.asIntBuffer(), 0, count));
  }

  FloatBuffer floats(int offset) throws IOException {
    FloatBuffer values = columns.floats(rows);
    column(offset, 4, (bytes, first, count) -> values.put(first, bytes.asFloatBuffer(), 0, count));
    return values;
  }

  /** The year of completion of each record; less than 1 where it is not known. */
  IntBuffer years() throws IOException {
    IntBuffer years = columns.ints(rows);
    column(
        SurveyRow.YEAR,
        2,
        (bytes, first, count) -> {
          for (int i = 0; i < count; i++) {
            years.put(first + i, bytes.getShort(2 * i));
          }
        });
    return years;
  }

  ByteBuffer flags() throws IOException {
    ByteBuffer flags = columns.bytes(rows);
    column(SurveyRow.FLAGS, 1, (bytes, first, count) -> flags.put(first, bytes, 0, count));
    return flags;
  }

  /** What is done with what the rules said of a record, as {@link Told} has it. */
  interface EachSaid {
    void record(int place, int pack, byte[] said, int at, int end);
  }

  /** Goes through what the rules said, in input order. */
  void outcomes(EachSaid each) throws IOException {
    if (rules.packs().isEmpty()) {
      return;
    }
    int said = rowLength - SurveyRow.HEAD;
    byte[] all = new byte[BLOCK * said];
    short[] packs = new short[BLOCK];
    ByteBuffer packBytes = ByteBuffer.allocate(2 * BLOCK);
    column(
        SurveyRow.HEAD,
        said,
        (bytes, first, count) -> {
          read(packBytes.clear().limit(2 * count), first / BLOCK, (long) BLOCK * SurveyRow.PACK);
          packBytes.asShortBuffer().get(packs, 0, count);
          bytes.get(all, 0, count * said);
          for (int i = 0; i < count; i++) {
            each.record(first + i, packs[i] & 0xFFFF, all, i * said, (i + 1) * said);
          }
        });
  }

  /** What judged the batch. */
  public RuleSet rules() {
    return rules;
  }

  /**
   * The marks of what one record says.
   *
   * @param into by entry, and then what stands beside them; 0 where nothing is said
   */
  void marks(int place, int[] into) throws IOException {
    int number = place / BLOCK;
    long offset = (long) BLOCK * rowLength + one(place, SurveyRow.MARKS);
    long length = starts[number + 1] - starts[number];
    ByteBuffer bytes = ByteBuffer.allocate((int) Math.min(marksLength, length - offset));
    read(bytes, number, offset);
    Arrays.fill(into, 0);
    for (int left = bytes.getShort(); left > 0; left--) {
      into[bytes.getShort()] = bytes.getInt();
    }
  }

  /** Where a record stood. */
  Seen seen(int place) throws IOException {
    return new Seen(files.get(one(place, SurveyRow.FILE)), one(place, SurveyRow.LINE), place);
  }

  /** In degrees; NaN where it is not known. */
  float latitude(int place) throws IOException {
    return Float.intBitsToFloat(one(place, SurveyRow.LATITUDE));
  }

  float longitude(int place) throws IOException {
    return Float.intBitsToFloat(one(place, SurveyRow.LONGITUDE));
  }

  private int one(int place, int column) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(4);
    read(bytes, place / BLOCK, (long) BLOCK * column + 4L * (place % BLOCK));
    return bytes.getInt(0);
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
