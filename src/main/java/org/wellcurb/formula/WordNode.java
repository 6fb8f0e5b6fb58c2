package org.wellcurb.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.record.WellRecord;

/** A compiled word: what it may be, in lower case. */
abstract class WordNode {
  /** All that it may be; empty if anything; null if it does not apply. */
  abstract @Nullable List<String> words(Frame f);

  /** True for a list of words of which any will do (not: one of which nobody knows which). */
  boolean isAnyOf() {
    return false;
  }

  static final class OneOf extends WordNode {
    private final List<String> words;

    OneOf(List<String> words) {
      this.words = words;
    }

    @Override
    List<String> words(Frame f) {
      return words;
    }

    @Override
    boolean isAnyOf() {
      return true;
    }
  }

  static final class OfEntry extends WordNode {
    private final Entry entry;

    OfEntry(Entry entry) {
      this.entry = entry;
    }

    @Override
    @Nullable List<String> words(Frame f) {
      int i = entry.index();
      if (f.state(i) == WellRecord.NOT_APPLICABLE) {
        return null;
      }
      if (f.state(i) != WellRecord.GIVEN) {
        return List.of();
      }
      @Nullable String word =
          entry.kind() == Kind.CHOICE
              ? entry.choices().get((int) f.record().lo(i)).toLowerCase(Locale.ROOT)
              : f.record().text(i);
      return word == null ? List.of() : List.of(word);
    }
  }

  static final class OfTable extends WordNode {
    private final Table table;
    private final TableRows rows;

    OfTable(Table table) {
      this.table = table;
      rows = new TableRows(table);
    }

    @Override
    @Nullable List<String> words(Frame f) {
      for (int key : rows.keys()) {
        if (f.state(key) == WellRecord.NOT_APPLICABLE) {
          return null;
        }
      }
      List<String> words = new ArrayList<>();
      for (int i = 0; i < table.rows().size(); i++) {
        int match = rows.match(f, i);
        if (match != Truth.FALSE) {
          words.add(((Table.Word) table.rows().get(i).value()).word());
        }
        if (match == Truth.TRUE) {
          break;
        }
      }
      return words;
    }
  }
}
