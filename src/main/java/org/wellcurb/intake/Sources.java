package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.wellcurb.quantity.Comma;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellStyle;

/** Opens inputs: tells encoding, form, delimiter and header, and makes a source of it. */
public final class Sources {
  private final LayoutReader layouts;
  private final int chunkSize;

  public Sources(Catalogue catalogue) {
    this(catalogue, RowSplitter.CHUNK);
  }

  Sources(Catalogue catalogue, int chunkSize) {
    this.layouts = new LayoutReader(catalogue);
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
      return unusable(input, "spreadsheets are not read");
    }
    Sampled text = Sampled.of(form == null ? Archive.unpackIfPacked(in) : in);
    int first = text.firstByte();
    if (first < 0) {
      return unusable(input, "is empty");
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
    HeaderFinder.Found found = HeaderFinder.find(text.sample(), text.whole(), layouts::isName);
    if (found == null) {
      return unusable(input, "no header line could be read");
    }
    if (text.looksLikeUnmarkedUtf16()) {
      return unusable(input, "looks like UTF-16 without a byte order mark; save it as UTF-8");
    }
    CellStyle style =
        CellStyle.PLAIN.withComma(found.delimiter() == ',' ? Comma.THOUSANDS : Comma.EITHER);
    List<Column> columns = layouts.columns(found.cells(), style);
    String problem = LayoutReader.problem(columns);
    if (!problem.isEmpty()) {
      return unusable(input, problem);
    }
    TableLayout layout =
        new TableLayout(
            text.encoding(),
            (char) found.delimiter(),
            found.line(),
            found.preamble(),
            found.text(),
            columns);
    int size = text.whole() ? Math.min(chunkSize, text.sample().length) : chunkSize;
    return new TableSource(input.file(), layout, text.from(found.next()), found.nextLine(), size);
  }

  private static RecordSource unusable(Input input, String reason) {
    return new UnusableSource(input.file(), SetAside.file(input.file(), reason));
  }
}
