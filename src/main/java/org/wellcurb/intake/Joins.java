package org.wellcurb.intake;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;

/** The tables of a run that a header map joins to others, read and indexed. */
final class Joins {
  static final Joins NONE = new Joins(Map.of());

  /** The rows of a joined table belong to the record of their id. */
  static final int BY_ID = -1;

  /** The column is lacking that says which rows of a joined table belong to a record. */
  static final int LACKING = -2;

  private final Map<String, JoinTable> byFile;
  private final Map<JoinTable, Join> joins = new LinkedHashMap<>();

  private Joins(Map<String, JoinTable> byFile) {
    this.byFile = byFile;
  }

  /** Reads every table that the map joins. */
  static Joins read(Catalogue catalogue, HeaderMap map, List<Input> inputs) throws IOException {
    if (map.joins().isEmpty()) {
      return NONE;
    }
    Joins read = new Joins(new LinkedHashMap<>());
    for (Join join : map.joins()) {
      boolean found = false;
      for (Input input : inputs) {
        if (join.isOf(input.file())) {
          JoinTable table = read(catalogue, map, join, input);
          read.byFile.put(input.file(), table);
          read.joins.put(table, join);
          found = true;
        }
      }
      if (!found) {
        throw new IntakeException(
            join.file() + ": the header map joins it, and it is not among the inputs; give it too");
      }
    }
    return read;
  }

  /** True if the map says in which units its records are written. */
  private static boolean saysUnits(Catalogue catalogue, HeaderMap map) {
    int units = catalogue.index("record.units");
    return map.constants().stream().anyMatch(constant -> constant.entry() == units)
        || map.main().columns().stream()
            .flatMap(columns -> columns.targets().stream())
            .anyMatch(target -> target.entry().index() == units);
  }

  private static JoinTable read(Catalogue catalogue, HeaderMap map, Join join, Input input)
      throws IOException {
    try (InputStream in = input.opener().open()) {
      Sampled text = Sampled.of(input, in, join.table());
      TableOpening opening =
          new TableOpening(
              catalogue, join.table(), text, saysUnits(catalogue, map), List.of(join.id()));
      if (!opening.problem().isEmpty()) {
        throw new IntakeException(input.file() + ": " + opening.problem());
      }
      ColumnPlan plan = opening.plan();
      Step id = opening.step(join.id());
      if (id == null) {
        throw new IntakeException(
            input.file() + ": has no column " + join.id().label() + "; see the header map");
      }
      RowSplitter rows =
          new RowSplitter(
              opening.rows(),
              new RowScanner(plan.delimiter, plan.usualCells()),
              opening.firstLine(),
              RowSplitter.CHUNK);
      return new JoinTable(input.file(), plan, id, rows);
    } catch (CutShort e) {
      throw new IntakeException(input.file() + ": " + e.reason(), e);
    }
  }

  List<JoinTable> tables() {
    return List.copyOf(joins.keySet());
  }

  /** What the map says of a table. */
  Join join(JoinTable table) {
    return Objects.requireNonNull(joins.get(table));
  }

  /** The table that was made of an input; null if it is not joined to others. */
  @Nullable JoinTable table(Input input) {
    return byFile.get(input.file());
  }

  /**
   * The column of the main table that holds the ids of a joined one; {@link #BY_ID} where that is
   * {@code record.id}, {@link #LACKING} where the table has no such column.
   */
  int matches(JoinTable table, TableLayout main) {
    Join join = joins.get(table);
    ColumnName matches = join == null ? null : join.matches();
    if (matches == null) {
      return BY_ID;
    }
    int found = matches.find(main.columns().stream().map(Column::name).toList());
    return found < 0 ? LACKING : found;
  }

  /** The main inputs, then the joined ones. */
  Inputs sort(Inputs given, String sheet) {
    List<Input> main = new ArrayList<>();
    List<Input> joined = new ArrayList<>();
    List<PassedOver> passedOver = new ArrayList<>(given.passedOver());
    for (Input input : given.inputs()) {
      if (table(input) != null) {
        joined.add(input);
      } else if (sheet.isEmpty() || input.sheet().isEmpty() || input.sheet().equals(sheet)) {
        main.add(input);
      } else {
        passedOver.add(new PassedOver(input.file(), "the header map wants the sheet " + sheet));
      }
    }
    main.addAll(joined);
    return new Inputs(main, passedOver);
  }
}
