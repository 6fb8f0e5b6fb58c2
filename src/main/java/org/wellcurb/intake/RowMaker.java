package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.Extra;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.WellRecord;

/**
 * Makes records of rows whose cells are known, and of the rows that belong to them: some rows at a
 * time, so that their cells are read column by column.
 */
final class RowMaker {
  /** Rows at a time: their records are some hundred kilobytes, which stay near the processor. */
  private static final int MOST = 16;

  private final Catalogue catalogue;
  private final CellReader reader;
  private final CellsReader cells;
  private final RowListsReader lists;
  private final int unitsEntry;
  private final Supplier<List<Extra>> extras = this::extras;
  private final RecordFiller[] fillers = new RecordFiller[MOST];
  private OpenRow[] rows = new OpenRow[MOST];
  private int waiting;

  private TableSource source;
  private ColumnPlan plan;

  /** The row that was finished last. */
  private RowView view;

  private @Nullable JoinedRows own;
  private List<JoinedRows> joins = List.of();

  @SuppressWarnings("NullAway.Init")
  RowMaker(Catalogue catalogue) {
    this.catalogue = catalogue;
    reader = new CellReader(catalogue);
    cells = new CellsReader(reader);
    lists = new RowListsReader(catalogue, reader);
    unitsEntry = catalogue.index("record.units");
  }

  /** The rows to come are of this table. */
  void use(TableSource table) {
    source = table;
    plan = table.plan();
    rows = new OpenRow[MOST];
    JoinTable ownRows = table.ownRows();
    own = ownRows == null ? null : new JoinedRows(ownRows, cells, catalogue);
    joins = table.joins().stream().map(j -> new JoinedRows(j.table(), cells, catalogue)).toList();
  }

  /** Where the next row is put, to {@link #begin} it. */
  OpenRow next() {
    OpenRow next = rows[waiting];
    if (next == null) {
      RecordFiller filler = fillers[waiting];
      if (filler == null) {
        filler = new RecordFiller(catalogue);
        fillers[waiting] = filler;
      }
      next = new OpenRow(new RowView(plan.columns), filler);
      rows[waiting] = next;
    }
    return next;
  }

  /** How many rows wait. */
  int waiting() {
    return waiting;
  }

  /** True if those that wait must be finished. */
  boolean isFull() {
    return waiting == MOST;
  }

  /** One of the rows that wait. */
  OpenRow row(int place) {
    return rows[place];
  }

  /** Forgets the rows that wait. */
  void clear() {
    waiting = 0;
  }

  /**
   * Begins the record of the {@link #next} row, which waits from then on; why there is none, or
   * null.
   */
  @Nullable Fault begin(long line, int place, ChunkTally tally) {
    OpenRow row = next();
    row.line = line;
    row.place = place;
    RecordFiller filler = row.filler;
    filler.clear(source.file(), line);
    WellRecord record = filler.record();
    Step id = plan.id();
    first(id, row);
    if (!record.isGiven(0)) {
      return new Fault(plan.name(id.column()), RowFault.NO_ID);
    }
    @Nullable Fault fault = RowFault.ofId(record.id(), plan.name(id.column()));
    if (fault == null) {
      fault = RowFault.ofRemark(record.id(), id.column(), row.view, plan);
    }
    if (fault != null) {
      return fault;
    }
    CellsReader.count(id, row.view, record, tally);
    for (HeaderMap.Constant constant : plan.constants) {
      reader.read(filler, constant.entry(), constant.text(), null, UnitSystem.US, CellStyle.PLAIN);
    }
    if (plan.units != null) {
      first(plan.units, row);
      CellsReader.count(plan.units, row.view, record, tally);
    }
    row.system = "metric".equals(record.choice(unitsEntry)) ? UnitSystem.METRIC : UnitSystem.US;
    waiting++;
    return null;
  }

  /** Reads the cells of all rows that wait. */
  void read(ChunkTally tally) {
    if (waiting > 0) {
      cells.rest(plan, rows, waiting, tally);
    }
  }

  /**
   * Adds to a record that was read what other rows say of it, one record after the other.
   *
   * @return false if the row went into the record of another row
   */
  boolean finish(int place, ChunkTally tally) {
    OpenRow row = rows[place];
    RecordFiller filler = row.filler;
    view = row.view;
    Kept.count(plan, view, tally);
    lists.clear();
    lists.read(plan, view, filler, row.system, tally);
    if (own != null && !own.isFirst(row.record().id(), row.line)) {
      return false;
    }
    join(row, tally);
    lists.fill(filler);
    if (plan.unknown.length > 0 || own != null || !joins.isEmpty() || lists.hasStrays()) {
      filler.extras(extras);
    }
    return true;
  }

  private void join(OpenRow row, ChunkTally tally) {
    String id = row.record().id();
    if (own != null) {
      own.add(id, row.line, row.filler, lists, row.system, tally);
    }
    for (int i = 0; i < joins.size(); i++) {
      String key = source.joins().get(i).key(id, view);
      joins.get(i).add(key, 0, row.filler, lists, row.system, null);
    }
  }

  /** Reads what must be known before the rest. */
  private void first(Step step, OpenRow row) {
    int column = step.column();
    if (!step.isPlain() || row.view.isText()) {
      cells.step(step, row.view, row.filler, UnitSystem.US);
      return;
    }
    Target target = step.target();
    reader.read(
        row.filler,
        target.entry().index(),
        row.view.bytes(),
        row.view.from(column),
        row.view.to(column),
        target.unit(),
        UnitSystem.US,
        target.style());
  }

  /** What is kept with the record beside its entries; made when somebody asks. */
  private List<Extra> extras() {
    List<Extra> kept = new ArrayList<>(Kept.of(plan, view, ""));
    kept.addAll(lists.strays());
    if (own != null) {
      kept.addAll(own.extras());
    }
    joins.forEach(join -> kept.addAll(join.extras()));
    return kept;
  }
}
