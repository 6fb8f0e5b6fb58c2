package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;

/** Which words of its keys a table has no row for: rules that read it cannot be told there. */
public final class TableLacks {
  /** Stands for any text that no cell of a column names. */
  public static final String OTHER = "\0";

  /**
   * Combinations of words without a row.
   *
   * @param words for each key the words; none where it may be any
   * @param isAll true if no amount has a row beside these words, false if only some have none
   */
  public record Lack(List<List<String>> words, boolean isAll) {
    public Lack {
      words = words.stream().map(List::copyOf).toList();
    }
  }

  private final Table table;

  private TableLacks(Table table) {
    this.table = table;
  }

  /** All of them, in the order of the keys' words; empty where each record comes to some row. */
  public static List<Lack> of(Table table) {
    return new TableLacks(table).from(0, table.rows());
  }

  /** What these rows lack in the keys from this on. */
  private List<Lack> from(int key, List<Table.Row> rows) {
    if (key == table.by().size()) {
      return end(rows);
    }
    Entry entry = table.by().get(key);
    if (entry.kind().isAmount()) {
      return with(List.of(), from(key + 1, rows));
    }
    Set<String> all = words(entry, key);
    Map<List<Lack>, List<String>> alike = new LinkedHashMap<>();
    for (String word : all) {
      List<Table.Row> left =
          rows.stream().filter(row -> holds(row.cells().get(key), word)).toList();
      List<Lack> lacks = from(key + 1, left);
      if (!lacks.isEmpty()) {
        alike.computeIfAbsent(lacks, none -> new ArrayList<>()).add(word);
      }
    }
    List<Lack> found = new ArrayList<>();
    alike.forEach(
        (lacks, some) -> found.addAll(with(some.size() == all.size() ? List.of() : some, lacks)));
    return found;
  }

  /** The amounts beside words that are chosen. */
  private List<Lack> end(List<Table.Row> rows) {
    if (rows.isEmpty()) {
      return List.of(new Lack(List.of(), true));
    }
    List<Integer> keys = new ArrayList<>();
    for (int i = 0; i < table.by().size(); i++) {
      if (table.by().get(i).kind().isAmount()) {
        keys.add(i);
      }
    }
    List<List<List<Table.Cell>>> cells =
        rows.stream()
            .map(row -> keys.stream().map(i -> List.of(row.cells().get(i))).toList())
            .toList();
    List<Entry> by = keys.stream().map(i -> table.by().get(i)).toList();
    return new RowReach(by, cells).isComplete() ? List.of() : List.of(new Lack(List.of(), false));
  }

  private static List<Lack> with(List<String> words, List<Lack> lacks) {
    List<Lack> longer = new ArrayList<>();
    for (Lack lack : lacks) {
      List<List<String>> all = new ArrayList<>();
      all.add(words);
      all.addAll(lack.words());
      longer.add(new Lack(all, lack.isAll()));
    }
    return longer;
  }

  private Set<String> words(Entry entry, int key) {
    Set<String> words = new LinkedHashSet<>();
    if (entry.kind() == Kind.CHOICE) {
      entry.choices().forEach(choice -> words.add(choice.toLowerCase(Locale.ROOT)));
    } else if (entry.kind() == Kind.YES_NO) {
      words.add("yes");
      words.add("no");
    } else {
      for (Table.Row row : table.rows()) {
        if (row.cells().get(key) instanceof Table.Words some) {
          words.addAll(some.words());
        }
      }
      words.add(OTHER);
    }
    return words;
  }

  private static boolean holds(Table.Cell cell, String word) {
    return cell instanceof Table.Any
        || (cell instanceof Table.Words some && some.words().contains(word));
  }
}
