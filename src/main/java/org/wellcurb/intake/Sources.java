package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import org.wellcurb.record.Catalogue;

/** Opens inputs: tells encoding, form, delimiter and header, and makes a source of it. */
public final class Sources {
  private final Catalogue catalogue;
  private final HeaderMap map;
  private final int chunkSize;

  /** Inputs whose headers are keys. */
  public Sources(Catalogue catalogue) {
    this(catalogue, HeaderMap.NONE);
  }

  /** Inputs whose tables are as a header map says. */
  public Sources(Catalogue catalogue, HeaderMap map) {
    this(catalogue, map, RowSplitter.CHUNK);
  }

  Sources(Catalogue catalogue, HeaderMap map, int chunkSize) {
    this.catalogue = catalogue;
    this.map = map;
    this.chunkSize = chunkSize;
  }

  /**
   * Opens an input. One that cannot be read as records is a source that says why and has no chunks.
   *
   * @throws IOException if the disk fails; not for what stands in the file
   */
  public RecordSource open(Input input) throws IOException {
    InputStream in;
    try {
      in = input.opener().open();
    } catch (CutShort e) {
      return unusable(input, e.reason());
    }
    try {
      RecordSource source = open(input, in);
      if (source instanceof UnusableSource) {
        in.close();
      }
      return source;
    } catch (IOException | RuntimeException e) {
      in.close();
      throw e;
    }
  }

  private RecordSource open(Input input, InputStream in) throws IOException {
    Form form = input.form();
    if (form == Form.SHEETS) {
      return table(input, Sampled.ofSheet(in));
    }
    Sampled text =
        Sampled.of(form == null ? Archive.unpackIfPacked(in) : in, map.main().form().encoding());
    int first = text.firstByte();
    if (first < 0) {
      return unusable(input, "is empty");
    }
    if (form == null && text.looksLikeArchive()) {
      return unusable(input, "is an archive or a workbook; give it as a file with its usual name");
    }
    boolean looksJson = first == '{' || first == '[';
    if (form == Form.JSON || form == Form.JSON_LINES) {
      return looksJson ? json(input, text) : unusable(input, "is not JSON");
    }
    return looksJson && form == null ? json(input, text) : table(input, text);
  }

  private RecordSource json(Input input, Sampled text) {
    boolean lines =
        text.firstByte() == '{' && (input.form() == Form.JSON_LINES || text.isObjectsByLine());
    return new JsonSource(input.file(), text.encoding(), lines, text.from(0), chunkSize);
  }

  private RecordSource table(Input input, Sampled text) {
    TableOpening opening = new TableOpening(catalogue, map.main(), map.constants(), text);
    String problem = opening.problem();
    if (problem.isEmpty() && !opening.hasId()) {
      problem = opening.noId();
    }
    if (!problem.isEmpty()) {
      return unusable(input, problem);
    }
    int size = text.whole() ? Math.min(chunkSize, text.sample().length) : chunkSize;
    return new TableSource(input.file(), opening.plan(), opening.rows(), opening.firstLine(), size);
  }

  private static RecordSource unusable(Input input, String reason) {
    return new UnusableSource(input.file(), SetAside.file(input.file(), reason));
  }
}
