package org.wellcurb.crosscheck;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.wellcurb.record.Catalogue;

/**
 * The rows of a whole batch, in input order, in a file of their own. Columns are read when a check
 * needs them, so that only a few numbers a record are in memory at a time.
 */
public final class SurveyFile implements Closeable {
  private static final int ROWS_AT_A_TIME = 4096;

  private final FileChannel channel;
  private final int rowLength;
  private final SurveyPart.Names contractors = new SurveyPart.Names();
  private final SurveyPart.Names zones = new SurveyPart.Names();
  private final List<String> files = new ArrayList<>();
  private final RuleSet rules;
  private final int saidAt;
  private int rows;

  /**
   * Makes the file; it is removed by whoever owns its folder.
   *
   * @param rules what judges the batch
   */
  public SurveyFile(Path path, Catalogue catalogue, RuleSet rules) throws IOException {
    this.rules = rules;
    saidAt = SurveyRow.HEAD + catalogue.size();
    rowLength = SurveyRow.length(catalogue, rules.most());
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
      recode(bytes, at + SurveyRow.CONTRACTOR, contractorOf);
      recode(bytes, at + SurveyRow.ZONE, zoneOf);
      bytes.putInt(at + SurveyRow.FILE, place);
      rows++;
    }
    bytes.flip();
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
  }

  private static void recode(ByteBuffer bytes, int at, int[] codes) {
    bytes.putInt(at, codes[bytes.getInt(at)]);
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

  /** What is done with a row: its place, and where it begins in the buffer. */
  private interface Each {
    void row(int place, ByteBuffer bytes, int at);
  }

  private void all(Each each) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(rowLength * ROWS_AT_A_TIME);
    for (int first = 0; first < rows; first += ROWS_AT_A_TIME) {
      int count = Math.min(ROWS_AT_A_TIME, rows - first);
      read(bytes.clear().limit(count * rowLength), (long) first * rowLength);
      for (int i = 0; i < count; i++) {
        each.row(first + i, bytes, i * rowLength);
      }
    }
  }

  private void read(ByteBuffer into, long position) throws IOException {
    long at = position;
    while (into.hasRemaining()) {
      int count = channel.read(into, at);
      if (count < 0) {
        throw new IOException("the survey of the batch is shorter than it was written");
      }
      at += count;
    }
  }

  long[] ids() throws IOException {
    long[] ids = new long[rows];
    all((place, bytes, at) -> ids[place] = bytes.getLong(at + SurveyRow.ID));
    return ids;
  }

  int[] ints(int offset) throws IOException {
    int[] values = new int[rows];
    all((place, bytes, at) -> values[place] = bytes.getInt(at + offset));
    return values;
  }

  float[] floats(int offset) throws IOException {
    float[] values = new float[rows];
    all((place, bytes, at) -> values[place] = bytes.getFloat(at + offset));
    return values;
  }

  short[] years() throws IOException {
    short[] years = new short[rows];
    all((place, bytes, at) -> years[place] = bytes.getShort(at + SurveyRow.YEAR));
    return years;
  }

  byte[] flags() throws IOException {
    byte[] flags = new byte[rows];
    all((place, bytes, at) -> flags[place] = bytes.get(at + SurveyRow.FLAGS));
    return flags;
  }

  /** What is done with what the rules said of a record. */
  interface EachSaid {
    void record(int place, int pack, ByteBuffer bytes, int at);
  }

  /** Goes through what the rules said, in input order. */
  void outcomes(EachSaid each) throws IOException {
    if (rules.packs().isEmpty()) {
      return;
    }
    all(
        (place, bytes, at) ->
            each.record(place, bytes.getShort(at + SurveyRow.PACK) & 0xFFFF, bytes, at + saidAt));
  }

  /** What judged the batch. */
  public RuleSet rules() {
    return rules;
  }

  /** The marks of the entries of one record. */
  void marks(int place, byte[] into) throws IOException {
    read(ByteBuffer.wrap(into), (long) place * rowLength + SurveyRow.HEAD);
  }

  /** Where a record stood. */
  Seen seen(int place) throws IOException {
    ByteBuffer row = ByteBuffer.allocate(SurveyRow.HEAD);
    read(row, (long) place * rowLength);
    return new Seen(files.get(row.getInt(SurveyRow.FILE)), row.getInt(SurveyRow.LINE), place);
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
