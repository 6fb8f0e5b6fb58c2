package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;

/** Opens inputs: tells encoding, form, delimiter and header, and makes a source of it. */
public final class Sources {
  private final Catalogue catalogue;
  private final HeaderMap map;
  private final int chunkSize;
  private final Progress progress = new Progress();
  private Joins joins = Joins.NONE;

  /** Inputs whose headers are keys. */
  public Sources(Catalogue catalogue) {
    this(catalogue, HeaderMap.NONE);
  }

  /** Inputs whose tables are as a header map says. */
  public Sources(Catalogue catalogue, HeaderMap map) {
    this(catalogue, map, RowSplitter.CHUNK);
  }

  /**
   * Sources whose parts are small: for runs that write far more of a record than they read of it.
   */
  public static Sources inSmallParts(Catalogue catalogue, HeaderMap map) {
    return new Sources(catalogue, map, RowSplitter.CHUNK / 16);
  }

  Sources(Catalogue catalogue, HeaderMap map, int chunkSize) {
    this.catalogue = catalogue;
    this.map = map;
    this.chunkSize = chunkSize;
  }

  /**
   * Reads the tables that the header map joins to others. Their rows are counted after all others
   * have been read, so they come last among the inputs; sheets that the map does not want are
   * passed over.
   *
   * @throws IntakeException if a table that the map names is not among the inputs or cannot be read
   */
  public Inputs prepare(Inputs given) throws IOException {
    joins = Joins.read(catalogue, map, given.inputs());
    Inputs sorted = joins.sort(given, map.main().form().sheet());
    if (joins.tables().stream().anyMatch(JoinTable::holdsLists)) {
      Sources before = new Sources(catalogue, map, chunkSize);
      before.joins = joins;
      for (Input input : sorted.inputs()) {
        // What can be read but once is not read ahead.
        if (input.path() != null && joins.table(input) == null) {
          before.own(input);
        }
      }
    }
    return sorted;
  }

  /** Tells the joined tables that hold lists of the records of an input. */
  private void own(Input input) throws IOException {
    try (RecordSource source = open(input)) {
      if (!(source instanceof TableSource table)) {
        return;
      }
      RowView view = new RowView(table.plan().columns);
      for (Chunk chunk = table.next(); chunk != null; chunk = table.next()) {
        if (chunk instanceof RowsChunk rows) {
          for (int i = 0; i < rows.rows().marks.count(); i++) {
            own(table, rows.rows(), i, view);
          }
        }
      }
    } catch (CutShort e) {
      // It is said when the input is read.
    }
  }

  private static void own(TableSource table, CutRows rows, int place, RowView view) {
    ColumnPlan plan = table.plan();
    if (RowFault.show(rows, place, view, plan) != null || !plan.takes(view)) {
      return;
    }
    String id = Combining.text(plan.id(), view);
    JoinTable ownRows = table.ownRows();
    if (ownRows != null) {
      int[] all = ownRows.rows(id);
      if (all.length > 0 && ownRows.line(all[0]) != rows.line(place)) {
        return;
      }
    }
    for (TableSource.Joined joined : table.joins()) {
      if (joined.table().holdsLists()) {
        joined.table().own(joined.key(id, view));
      }
    }
  }

  /**
   * Opens an input. One that cannot be read as records is a source that says why and has no chunks.
   *
   * @throws IOException if the disk fails; not for what stands in the file
   */
  public RecordSource open(Input input) throws IOException {
    JoinTable table = joins.table(input);
    if (table != null) {
      return new JoinSource(table, joins.join(table), progress);
    }
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
      return table(input, Sampled.of(input, in, map.main()));
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
    return new JsonSource(
        input.file(), text.encoding(), lines, !map.equals(HeaderMap.NONE), text.from(0), chunkSize);
  }

  private RecordSource table(Input input, Sampled text) throws IOException {
    TableOpening opening = new TableOpening(catalogue, map, text);
    String problem = opening.problem();
    if (problem.isEmpty() && !opening.hasId()) {
      problem = opening.noId();
    } else if (problem.isEmpty()) {
      problem = opening.otherTable();
    }
    if (!problem.isEmpty()) {
      return unusable(input, problem);
    }
    ColumnPlan plan = opening.plan();
    TableSource.Rows rows = splitter(opening, plan, text);
    @Nullable JoinTable ownRows = null;
    if (map.byId()) {
      ownRows = new JoinTable(input.file(), plan, plan.id(), rows);
      rows = ownRows.again(rows);
    }
    List<TableSource.Joined> joined = new ArrayList<>();
    for (JoinTable table : joins.tables()) {
      joined.add(new TableSource.Joined(table, joins.matches(table, plan.layout)));
    }
    return new TableSource(input.file(), plan, rows, ownRows, joined, progress);
  }

  private RowSplitter splitter(TableOpening opening, ColumnPlan plan, Sampled text) {
    int size = text.whole() ? Math.min(chunkSize, text.sample().length) : chunkSize;
    Cutter cutter = new RowScanner(plan.delimiter, plan.usualCells());
    return new RowSplitter(opening.rows(), cutter, opening.firstLine(), size);
  }

  private static RecordSource unusable(Input input, String reason) {
    return new UnusableSource(input.file(), SetAside.file(input.file(), reason));
  }
}
