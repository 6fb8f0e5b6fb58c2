package org.wellcurb.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.words.Words;

/**
 * A column that was hardly read, or not as it was meant: findings that rest on it say more of the
 * header map than of the wells, so it comes before them.
 *
 * @param input the file
 * @param column its counts
 * @param doubt what speaks against how it was read; null where its cells could not be read
 * @param cells how many cells; 0 where it is the column as a whole
 */
record ReadingTrouble(InputLine input, ColumnLine column, @Nullable ColumnDoubt doubt, long cells) {
  /** Fewer cells are a matter of their records, not of the column. */
  private static final long FEW = 5;

  /** Cells that could not be read: one in so many, where they are many. */
  private static final long UNREAD_ONE_IN = 10;

  private static final long MANY = 20;

  /** Figures that no well has: one in so many. */
  private static final long BEYOND_ONE_IN = 50;

  /** Doubts that are about the whole column, or about cells that were surely meant otherwise. */
  private static final Set<String> GRAVE =
      Set.of("unit_changes", "units_mixed", "two_orders", "nines");

  private static final Set<String> COUNTED = Set.of("beyond", "empty_days", "year_days");

  /** The columns of all inputs, those with most such cells first. */
  static List<ReadingTrouble> of(List<InputLine> inputs) {
    List<ReadingTrouble> troubles = new ArrayList<>();
    for (InputLine input : inputs) {
      for (ColumnLine column : input.columns()) {
        add(troubles, input, column);
      }
    }
    troubles.sort(Comparator.comparingLong(trouble -> -trouble.weight()));
    return troubles;
  }

  private static void add(List<ReadingTrouble> troubles, InputLine input, ColumnLine column) {
    long unread = column.unreadable();
    long written = written(column);
    boolean half = unread >= FEW && unread * 2 >= written;
    if (half || (unread >= MANY && unread * UNREAD_ONE_IN >= written)) {
      troubles.add(new ReadingTrouble(input, column, null, unread));
      return;
    }
    for (ColumnDoubt doubt : column.doubts()) {
      boolean many = doubt.cells() >= FEW && doubt.cells() * BEYOND_ONE_IN >= written;
      if (GRAVE.contains(doubt.kind()) || (many && COUNTED.contains(doubt.kind()))) {
        troubles.add(new ReadingTrouble(input, column, doubt, doubt.cells()));
        return;
      }
    }
  }

  private static long written(ColumnLine column) {
    return column.given() + column.unknown() + column.notApplicable() + column.unreadable();
  }

  private long weight() {
    return cells == 0 ? written(column) : cells;
  }

  /** The column, with its file where there are several. */
  private String name(boolean isOnly) {
    return isOnly ? column.name() : input.file() + ": " + column.name();
  }

  /** The column, and in brackets what is the matter. */
  String briefly(Words words, boolean isOnly) {
    return doubt == null
        ? words.say("trouble.unread", name(isOnly), cells, written(column))
        : words.say("trouble." + doubt.kind(), name(isOnly), cells);
  }

  /** The same, with all that is known of why. */
  String fully(Words words, boolean isOnly) {
    List<String> notes = new ArrayList<>();
    if (doubt == null) {
      notes.addAll(ReadingPart.notes(column, words));
      column.doubts().forEach(said -> notes.add(ReadingPart.said(said, words)));
    } else {
      notes.add(ReadingPart.said(doubt, words));
    }
    return words.say("trouble.why", briefly(words, isOnly), String.join(" ", notes));
  }
}
