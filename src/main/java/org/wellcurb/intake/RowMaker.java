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

/** Makes a record of a row whose cells are known, and of the rows that belong to it. */
final class RowMaker {
  /** What became of a row. */
  enum Result {
    RECORD,
    /** It went into the record of another row. */
    JOINED,
    NONE
  }

  private final Catalogue catalogue;
  private final RecordFiller filler;
  private final CellReader reader;
  private final CellsReader cells;
  private final RowListsReader lists;
  private final int unitsEntry;
  private final Supplier<List<Extra>> extras = this::extras;

  private TableSource source;
  private ColumnPlan plan;
  private RowView view;
  private @Nullable JoinedRows own;
  private List<JoinedRows> joins = List.of();
  private @Nullable Fault fault;

  @SuppressWarnings("NullAway.Init")
  RowMaker(Catalogue catalogue) {
    this.catalogue = catalogue;
    filler = new RecordFiller(catalogue);
    reader = new CellReader(catalogue);
    cells = new CellsReader(reader);
    lists = new RowListsReader(catalogue, reader);
    unitsEntry = catalogue.index("record.units");
  }

  /** The rows to come are of this table. */
  void use(TableSource table, RowView rows) {
    source = table;
    plan = table.plan();
    view = rows;
    JoinTable ownRows = table.ownRows();
    own = ownRows == null ? null : new JoinedRows(ownRows, cells, catalogue);
    joins = table.joins().stream().map(j -> new JoinedRows(j.table(), cells, catalogue)).toList();
  }

  /** The record that was made. */
  WellRecord record() {
    return filler.record();
  }

  /** Why there is none. */
  @Nullable Fault fault() {
    return fault;
  }

  /** Makes a record of the row that the view shows. */
  Result make(long line, ChunkTally tally) {
    fault = null;
    filler.clear(source.file(), line);
    WellRecord record = filler.record();
    Step id = plan.id();
    first(id, UnitSystem.US);
    if (!record.isGiven(0)) {
      fault = new Fault(plan.name(id.column()), RowFault.NO_ID);
      return Result.NONE;
    }
    fault = RowFault.ofId(record.id(), plan.name(id.column()));
    if (fault == null) {
      fault = RowFault.ofRemark(record.id(), id.column(), view, plan);
    }
    if (fault != null) {
      return Result.NONE;
    }
    CellsReader.count(id, view, record, tally);
    for (HeaderMap.Constant constant : plan.constants) {
      reader.read(filler, constant.entry(), constant.text(), null, UnitSystem.US, CellStyle.PLAIN);
    }
    if (plan.units != null) {
      first(plan.units, UnitSystem.US);
      CellsReader.count(plan.units, view, record, tally);
    }
    UnitSystem system =
        "metric".equals(record.choice(unitsEntry)) ? UnitSystem.METRIC : UnitSystem.US;
    cells.rest(plan, view, filler, system, tally);
    Kept.count(plan, view, tally);
    lists.clear();
    lists.read(plan, view, filler, system, tally);
    if (own != null && !own.isFirst(record.id(), line)) {
      return Result.JOINED;
    }
    join(line, system, tally);
    lists.fill(filler);
    if (plan.unknown.length > 0 || own != null || !joins.isEmpty() || lists.hasStrays()) {
      filler.extras(extras);
    }
    return Result.RECORD;
  }

  private void join(long line, UnitSystem system, ChunkTally tally) {
    String id = filler.record().id();
    if (own != null) {
      own.add(id, line, filler, lists, system, tally);
    }
    for (int i = 0; i < joins.size(); i++) {
      int matches = source.joins().get(i).matches();
      String key =
          matches == Joins.BY_ID ? id : matches == Joins.LACKING ? "" : view.trimmed(matches);
      joins.get(i).add(key, 0, filler, lists, system, null);
    }
  }

  /** Reads what must be known before the rest. */
  private void first(Step step, UnitSystem system) {
    int column = step.column();
    if (!step.isPlain() || view.isText()) {
      cells.step(step, view, filler, system);
      return;
    }
    Target target = step.target();
    reader.read(
        filler,
        target.entry().index(),
        view.bytes(),
        view.from(column),
        view.to(column),
        target.unit(),
        system,
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
