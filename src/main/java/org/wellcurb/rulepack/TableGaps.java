package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says where amounts between two rows of a table come to a row that takes any: {@code <= 4 in},
 * {@code 5 in to 8 in}, {@code *} leaves 4 1/2 inches to the last.
 */
final class TableGaps {
  private TableGaps() {}

  static void say(Table table, ProofNotes notes) {
    for (int key = 0; key < table.by().size(); key++) {
      Entry entry = table.by().get(key);
      @Nullable Dimension dimension = entry.kind().dimension();
      boolean isMeasured =
          dimension != null
              && !dimension.equals(Dimension.DATE)
              && !dimension.equals(Dimension.WIRE_GAUGE)
              && !dimension.equals(Dimension.NUMBER);
      if (isMeasured) {
        column(table, key, entry, notes);
      }
    }
  }

  private static void column(Table table, int key, Entry entry, ProofNotes notes) {
    Map<List<Table.Cell>, List<Table.Range>> alike = new LinkedHashMap<>();
    for (Table.Row row : table.rows()) {
      if (row.cells().get(key) instanceof Table.Range range) {
        List<Table.Cell> others = new ArrayList<>(row.cells());
        others.remove(key);
        alike.computeIfAbsent(others, cells -> new ArrayList<>()).add(range);
      }
    }
    for (Map.Entry<List<Table.Cell>, List<Table.Range>> each : alike.entrySet()) {
      int last = rest(table, key, each.getKey());
      if (last >= 0) {
        gaps(table, entry, each.getValue(), last, notes);
      }
    }
  }

  /** The row that takes what these leave; -1 if none does. */
  private static int rest(Table table, int key, List<Table.Cell> others) {
    for (int i = 0; i < table.rows().size(); i++) {
      List<Table.Cell> cells = new ArrayList<>(table.rows().get(i).cells());
      boolean isAny = cells.remove(key) instanceof Table.Any;
      boolean takes = true;
      for (int j = 0; j < cells.size(); j++) {
        takes &= cells.get(j) instanceof Table.Any || cells.get(j).equals(others.get(j));
      }
      if (isAny && takes) {
        return i;
      }
    }
    return -1;
  }

  private static void gaps(
      Table table, Entry entry, List<Table.Range> ranges, int last, ProofNotes notes) {
    List<Table.Range> sorted =
        ranges.stream().sorted(Comparator.comparingDouble(r -> r.range().lo())).toList();
    double end = sorted.get(0).range().hi();
    boolean isSize = sorted.get(0).range().isPoint();
    for (Table.Range range : sorted.subList(1, sorted.size())) {
      double next = range.range().lo();
      // Between single sizes there is nothing that a form would say.
      boolean isGap = next > end && !isSize && !range.range().isPoint();
      isSize = range.range().isPoint();
      if (isGap) {
        @Nullable Unit unit = entry.unit(UnitSystem.US);
        Speech speech = Speech.plain();
        notes.say(
            Weight.NOTE,
            "table",
            table.name(),
            unit == null
                ? "what lies between two of its rows comes to row "
                    + (WrittenRows.number(table, last) + 1)
                : entry.key()
                    + " between "
                    + speech.amount(end, unit)
                    + " and "
                    + speech.amount(next, unit)
                    + " comes to row "
                    + (WrittenRows.number(table, last) + 1)
                    + ", which takes any");
      }
      end = Math.max(end, range.range().hi());
    }
  }
}
