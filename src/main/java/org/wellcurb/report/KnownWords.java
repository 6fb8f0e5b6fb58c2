package org.wellcurb.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;

/** The words that packs know of entries that hold free text: jurisdictions, keys of tables. */
public final class KnownWords {
  private static final String JURISDICTION = "record.jurisdiction";

  private KnownWords() {}

  /** Of each such entry, by its key, the words of all these packs in their order. */
  public static Map<String, List<String>> of(List<Pack> packs) {
    Map<String, Set<String>> known = new LinkedHashMap<>();
    for (Pack pack : packs) {
      known
          .computeIfAbsent(JURISDICTION, none -> new LinkedHashSet<>())
          .addAll(pack.jurisdictions());
      for (Table table : pack.tables().values()) {
        for (int i = 0; i < table.by().size(); i++) {
          if (table.by().get(i).kind() == Kind.TEXT) {
            known
                .computeIfAbsent(table.by().get(i).key(), none -> new LinkedHashSet<>())
                .addAll(words(table, i));
          }
        }
      }
    }
    Map<String, List<String>> all = new LinkedHashMap<>();
    known.forEach((key, words) -> all.put(key, List.copyOf(words)));
    return all;
  }

  /**
   * Of each entry of the record whose text a table of the pack lacks, by its key, the words that
   * the table has.
   */
  public static Map<String, List<String>> lacking(Pack pack, WellRecord record) {
    Map<String, List<String>> lacking = new LinkedHashMap<>();
    for (Table table : pack.tables().values()) {
      for (int i = 0; i < table.by().size(); i++) {
        Entry entry = table.by().get(i);
        if (entry.kind() == Kind.TEXT && record.isGiven(entry.index()) && !takesAny(table, i)) {
          String said = record.written(entry.index()).strip();
          List<String> words = words(table, i);
          if (words.stream().noneMatch(said::equalsIgnoreCase)) {
            lacking.putIfAbsent(entry.key(), words);
          }
        }
      }
    }
    return lacking;
  }

  private static boolean takesAny(Table table, int column) {
    return table.rows().stream().anyMatch(row -> row.cells().get(column) instanceof Table.Any);
  }

  private static List<String> words(Table table, int column) {
    Set<String> words = new LinkedHashSet<>();
    for (Table.Row row : table.rows()) {
      if (row.cells().get(column) instanceof Table.Words some) {
        words.addAll(some.shown());
      }
    }
    return new ArrayList<>(words);
  }
}
