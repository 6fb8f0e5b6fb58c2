package org.wellcurb.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLongArray;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Bounds;
import org.wellcurb.quantity.UnitSystem;

/**
 * A table whose rows belong to the records of another, or of which several rows make one record:
 * held in memory, its rows found by id. Workers share it; each has views of its own.
 */
final class JoinTable {
  private static final int[] NONE = new int[0];

  private final String file;
  private final ColumnPlan plan;
  private final Step id;
  private final List<CutRows> chunks = new ArrayList<>();

  /** For each row: its chunk, its place in it, why it is no row. */
  private int[] chunkOf = new int[64];

  private int[] placeOf = new int[64];
  private final Map<Integer, Fault> faults = new HashMap<>();
  private int rows;

  private final Map<String, int[]> byId = new HashMap<>();

  /**
   * Rows that became part of a record: of one that says no units, that says US ones, metric ones.
   * Each worker only ever sets what is true for good.
   */
  private final boolean[][] taken;

  /** Rows of an id that the map leaves out of the tables that this one belongs to. */
  private final boolean[] leftOut;

  private final AtomicLongArray differing;

  /** Ids that stand on several rows of the tables that this one belongs to, once these are read. */
  private final Set<String> owned = new HashSet<>();

  private final Set<String> shared = new HashSet<>();

  /**
   * Reads a table to its end.
   *
   * @param id what says which record a row belongs to
   * @throws IntakeException if it is larger than {@link Bounds#JOINED}
   */
  JoinTable(String file, ColumnPlan plan, Step id, TableSource.Rows splitter) throws IOException {
    this.file = file;
    this.plan = plan;
    this.id = id;
    long size = 0;
    for (CutRows cut = splitter.next(); cut != null; cut = splitter.next()) {
      chunks.add(cut);
      size += cut.bytes.length;
      if (size > Bounds.JOINED) {
        throw new IntakeException(
            file
                + ": is larger than the "
                + Bounds.JOINED
                + " bytes that a header map can join; split it by record");
      }
    }
    RowView view = new RowView(plan.columns);
    for (int c = 0; c < chunks.size(); c++) {
      for (int i = 0; i < chunks.get(c).marks.count(); i++) {
        index(c, i, view);
      }
    }
    taken = new boolean[3][rows];
    leftOut = new boolean[rows];
    differing = new AtomicLongArray(plan.columns);
  }

  private void index(int chunk, int place, RowView view) {
    if (rows == chunkOf.length) {
      chunkOf = Arrays.copyOf(chunkOf, rows * 2);
      placeOf = Arrays.copyOf(placeOf, rows * 2);
    }
    int row = rows++;
    chunkOf[row] = chunk;
    placeOf[row] = place;
    @Nullable Fault fault = RowFault.show(chunks.get(chunk), place, view, plan);
    if (fault == null && plan.takes(view)) {
      String key = key(Combining.text(id, view));
      if (key.isEmpty()) {
        fault = Fault.row(RowFault.NO_ID);
      } else {
        byId.merge(key, new int[] {row}, JoinTable::append);
      }
    }
    if (fault != null) {
      faults.put(row, fault);
    }
  }

  private static int[] append(int[] before, int[] more) {
    int[] both = Arrays.copyOf(before, before.length + 1);
    both[before.length] = more[0];
    return both;
  }

  /** Ids are compared without case and outer blanks. */
  private static String key(String id) {
    boolean marked = id.length() > 1 && id.charAt(0) == '\'';
    return ColumnName.fold(marked ? id.substring(1) : id);
  }

  /** True if its rows are lists that are of one well only, such as the layers of its log. */
  boolean holdsLists() {
    return plan.layers.length > 0 || plan.setbacks != null;
  }

  /** Notes a record of this id, before any is made. */
  void own(String id) {
    String key = key(id);
    if (byId.containsKey(key) && !owned.add(key)) {
      shared.add(key);
    }
  }

  /** True if several records have this id, so that nothing says to which of them a row belongs. */
  boolean isShared(String id) {
    return !shared.isEmpty() && shared.contains(key(id));
  }

  /** The same of the id of a row that a view shows. */
  boolean isShared(RowView view) {
    return !shared.isEmpty() && isShared(Combining.text(id, view));
  }

  /** The id of the row that a view shows, as it is written. */
  String id(RowView view) {
    return Combining.text(id, view);
  }

  String file() {
    return file;
  }

  ColumnPlan plan() {
    return plan;
  }

  int rows() {
    return rows;
  }

  /** The rows of an id, in order. */
  int[] rows(String id) {
    return byId.getOrDefault(key(id), NONE);
  }

  /** Moves a view to a row that is sound. */
  void show(int row, RowView view) {
    RowFault.show(chunks.get(chunkOf[row]), placeOf[row], view, plan);
  }

  /** Why a row is none; null if it is one. */
  @Nullable Fault fault(int row) {
    return faults.get(row);
  }

  /** Counts rows with bytes that are no character. */
  void countLost(ChunkTally tally) {
    chunks.forEach(chunk -> LostCharacters.count(chunk, tally));
  }

  long line(int row) {
    return chunks.get(chunkOf[row]).line(placeOf[row]);
  }

  byte[] raw(int row) {
    CutRows cut = chunks.get(chunkOf[row]);
    int place = placeOf[row];
    return Arrays.copyOfRange(cut.bytes, cut.marks.from(place), cut.marks.to(place));
  }

  /** A row became part of a record of these units. */
  void take(int row, UnitSystem system, boolean saysUnits) {
    taken[!saysUnits ? 0 : system == UnitSystem.US ? 1 : 2][row] = true;
  }

  boolean isTaken(int row) {
    return taken[0][row] || taken[1][row] || taken[2][row];
  }

  /** The map leaves out a row of this id of a table that this one belongs to. */
  void leaveOut(String id) {
    for (int row : rows(id)) {
      leftOut[row] = true;
    }
  }

  boolean isLeftOut(int row) {
    return leftOut[row];
  }

  /** The units of the records that a row belongs to; US if they are of both systems. */
  UnitSystem system(int row) {
    return taken[2][row] && !taken[0][row] && !taken[1][row] ? UnitSystem.METRIC : UnitSystem.US;
  }

  /** True if all records that a row belongs to say their units. */
  boolean saysUnits(int row) {
    return !taken[0][row];
  }

  /** A record has rows that differ in this column. */
  void differs(int column) {
    differing.incrementAndGet(column);
  }

  long differing(int column) {
    return differing.get(column);
  }

  /** Its rows once more, as they were cut; closing closes what they came from. */
  TableSource.Rows again(TableSource.Rows read) {
    Iterator<CutRows> again = chunks.iterator();
    return new TableSource.Rows() {
      @Override
      public @Nullable CutRows next() {
        return again.hasNext() ? again.next() : null;
      }

      @Override
      public void close() throws IOException {
        read.close();
      }
    };
  }
}
