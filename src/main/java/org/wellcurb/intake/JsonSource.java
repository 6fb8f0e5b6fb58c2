package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;

/** JSON, cut into chunks of objects: one a line, an array of them, or one after another. */
public final class JsonSource implements RecordSource {
  private final String file;
  private final TextEncoding encoding;
  private final boolean lines;
  private final boolean passesMapBy;
  private final InputStream in;
  private final RowSplitter splitter;

  /**
   * @param lines true if each line is an object
   * @param passesMapBy true if a header map was given, which says nothing of JSON
   */
  JsonSource(
      String file,
      TextEncoding encoding,
      boolean lines,
      boolean passesMapBy,
      InputStream in,
      int chunkSize) {
    this.file = file;
    this.passesMapBy = passesMapBy;
    this.encoding = encoding;
    this.lines = lines;
    this.in = in;
    this.splitter =
        new RowSplitter(in, lines ? new LineCutter() : new ObjectCutter(), 1, chunkSize);
  }

  @Override
  public String file() {
    return file;
  }

  /** How its characters are written. */
  public TextEncoding encoding() {
    return encoding;
  }

  /** True if each line is an object; else objects are counted by their place. */
  public boolean isLines() {
    return lines;
  }

  /** True if a header map was given: it is for tables, and the names of JSON are keys. */
  public boolean passesMapBy() {
    return passesMapBy;
  }

  @Override
  public @Nullable Chunk next() throws IOException {
    CutRows rows = splitter.next();
    return rows == null ? null : new JsonChunk(this, rows);
  }

  @Override
  public @Nullable SetAside unusable() {
    return null;
  }

  @Override
  public RawFrame rawFrame() {
    String name = RawFrame.nameOf(file, lines ? ".ndjson" : ".json");
    return lines ? new RawFrame(name, "", "\n", "\n") : new RawFrame(name, "[\n", ",\n", "\n]\n");
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
