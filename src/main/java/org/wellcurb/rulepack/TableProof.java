package org.wellcurb.rulepack;

import java.util.List;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.rulepack.Statement.Weight;

/** Says which tables have no row for some records whose keys are known. */
final class TableProof {
  private TableProof() {}

  static void run(Pack pack, ProofNotes notes) {
    for (String name : notes.own("table")) {
      Table table = pack.tables().get(name);
      if (table == null) {
        continue;
      }
      TableGaps.say(table, notes);
      sayRest(table, notes);
      if (!isComplete(table)) {
        List<String> keys = table.by().stream().map(Entry::key).toList();
        notes.say(
            Weight.NOTE,
            "table",
            name,
            "it has no row for some values of "
                + String.join(" and ", keys)
                + ": rules that read it cannot tell there");
      }
    }
  }

  /** A last row for any words of a free text takes those that were misspelt, too. */
  private static void sayRest(Table table, ProofNotes notes) {
    List<Table.Cell> last = table.rows().get(table.rows().size() - 1).cells();
    for (int i = 0; i < last.size(); i++) {
      int key = i;
      Entry entry = table.by().get(key);
      boolean isNamed =
          table.rows().stream().anyMatch(row -> row.cells().get(key) instanceof Table.Words);
      if (entry.kind() == Kind.TEXT && isNamed && last.get(key) instanceof Table.Any) {
        notes.say(
            Weight.NOTE,
            "table",
            table.name(),
            "its last row takes whatever stands in "
                + entry.key()
                + " that no row names, a name in another spelling too; without it rules cannot tell"
                + " there");
      }
    }
  }

  private static boolean isComplete(Table table) {
    List<List<List<Table.Cell>>> rows =
        table.rows().stream().map(row -> row.cells().stream().map(List::of).toList()).toList();
    return new RowReach(table.by(), rows).isComplete();
  }
}
