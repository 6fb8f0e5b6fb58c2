package org.wellcurb.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;

/** Everything that an input gives, for tests. */
final class Gathered implements RecordSink {
  private static final ChunkReader READER = new ChunkReader(Catalogue.standard());

  final List<WellRecord> records = new ArrayList<>();
  final List<SetAside> aside = new ArrayList<>();
  final List<String> raw = new ArrayList<>();
  long rows;
  long recordCount;
  long leftOut;
  long joinedRows;
  long endedBeyond;
  String frame = "";
  String label = "";
  List<String> notes = List.of();
  private SetAside last;
  private long kept;
  private final long most;

  private Gathered(long most) {
    this.most = most;
  }

  /** Only the first few records and rows set aside are kept, of a file of very many. */
  static Gathered counted(String text) {
    return counted("test.csv", text);
  }

  static Gathered counted(String name, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return counted(new Input(name, null, Form.of(name), () -> new ByteArrayInputStream(bytes)));
  }

  static Gathered csv(String text) {
    return csv(text.getBytes(StandardCharsets.UTF_8));
  }

  static Gathered csv(byte[] bytes) {
    return of("test.csv", bytes, RowSplitter.CHUNK);
  }

  static Gathered of(String name, byte[] bytes, int chunkSize) {
    return of(
        new Input(name, null, Form.of(name), () -> new ByteArrayInputStream(bytes)), chunkSize);
  }

  static Gathered of(Input input, int chunkSize) {
    return of(input, chunkSize, new Gathered(Long.MAX_VALUE));
  }

  private static Gathered of(Input input, int chunkSize, Gathered all) {
    return all.read(new Sources(Catalogue.standard(), HeaderMap.NONE, chunkSize), input);
  }

  /** Reads with a header map. */
  static Gathered mapped(HeaderMap map, String name, String text) throws IOException {
    return mapped(map, name, text.getBytes(StandardCharsets.UTF_8));
  }

  static Gathered mapped(HeaderMap map, String name, byte[] bytes) throws IOException {
    Input input = new Input(name, null, Form.of(name), () -> new ByteArrayInputStream(bytes));
    Sources sources = new Sources(Catalogue.standard(), map, 100);
    return of(sources, sources.prepare(new Inputs(List.of(input), List.of())).inputs());
  }

  static Gathered of(Sources sources, List<Input> inputs) {
    Gathered all = new Gathered(Long.MAX_VALUE);
    inputs.forEach(input -> all.read(sources, input));
    return all;
  }

  private Gathered read(Sources sources, Input input) {
    Gathered all = this;
    try (RecordSource source = sources.open(input)) {
      SetAside whole = source.unusable();
      all.frame = source.rawFrame().before();
      all.notes = source instanceof TableSource table ? table.layout().notes() : List.of();
      all.label = source instanceof TableSource table ? table.layout().label() : "";
      if (whole != null) {
        all.aside.add(whole);
      }
      for (Chunk chunk = source.next(); chunk != null; chunk = source.next()) {
        ChunkTally tally = READER.read(chunk, all);
        all.rows += tally.rows();
        all.recordCount += tally.records();
        all.leftOut += tally.rowsLeftOut();
        all.joinedRows += tally.rowsJoined();
        all.endedBeyond += tally.rowsEndedBeyond();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }

  /** Only the first few records and the last row set aside are kept. */
  static Gathered counted(Input input) {
    return of(input, RowSplitter.CHUNK, new Gathered(10));
  }

  /** The last row set aside. */
  SetAside last() {
    return java.util.Objects.requireNonNull(last);
  }

  @Override
  public void record(WellRecord record, RawRow row) {
    if (kept++ >= most) {
      return;
    }
    records.add(record.copy());
    raw.add(new String(row.bytes(), StandardCharsets.UTF_8));
  }

  @Override
  public void setAside(SetAside row) {
    last = row;
    if (kept++ < most) {
      aside.add(row);
    }
  }

  /** The reasons of what was set aside, with the row. */
  List<String> reasons() {
    return aside.stream().map(a -> a.row() + ": " + a.reason()).toList();
  }

  List<String> ids() {
    return records.stream().map(WellRecord::id).toList();
  }

  /** Everything in words, to compare two ways of reading. */
  List<String> told() {
    List<String> told = new ArrayList<>();
    for (WellRecord r : records) {
      StringBuilder out = new StringBuilder().append(r.row());
      for (int i = 0; i < r.catalogue().size(); i++) {
        if (!r.written(i).isEmpty()) {
          out.append('|').append(r.catalogue().entry(i).key()).append('=').append(r.written(i));
          out.append('/').append(r.state(i)).append('/').append(r.interval(i));
        }
      }
      told.add(out.append(r.extras()).toString());
    }
    for (SetAside a : aside) {
      told.add(a + "|" + a.text());
    }
    return told;
  }
}
