package org.wellcurb.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Entry;

/**
 * A table whose rows probably belong to the records of another.
 *
 * @param survey what it holds; a column fills no entry that the other table fills
 * @param id place of its column that says which record a row belongs to, from 0
 * @param matches place of the column of the other table that says the same
 */
public record JoinGuess(HeaderSurvey survey, int id, int matches) {
  /** Share of its ids that the other table must have. */
  private static final double SHARED = 0.5;

  /** The same where the ids of the other table are too many to be counted one by one. */
  private static final double SHARED_OF_MANY = 0.05;

  /** Which of some tables belong to one, in the order given. */
  public static List<JoinGuess> of(HeaderSurvey main, List<HeaderSurvey> others) {
    Set<Entry> filled = new HashSet<>(entries(main.columns()));
    List<JoinGuess> joins = new ArrayList<>();
    for (HeaderSurvey other : others) {
      @Nullable JoinGuess join = of(main, other, filled);
      if (join != null) {
        joins.add(join);
        filled.addAll(entries(join.survey.columns()));
      }
    }
    return joins;
  }

  private static List<Entry> entries(List<ColumnGuess> columns) {
    List<Entry> entries = new ArrayList<>();
    for (ColumnGuess column : columns) {
      @Nullable Entry entry = column.entry();
      if (entry != null) {
        entries.add(entry);
        if (column.bottom() != null) {
          entries.add(column.bottom());
        }
      }
    }
    return entries;
  }

  private static @Nullable JoinGuess of(HeaderSurvey main, HeaderSurvey other, Set<Entry> filled) {
    @Nullable JoinGuess best = null;
    int most = 0;
    for (int m = 0; m < main.columns().size(); m++) {
      ColumnGuess column = main.columns().get(m);
      @Nullable Entry entry = column.entry();
      boolean isId = entry != null && entry.index() == 0;
      if (!isId && !column.survey().isAllDifferent()) {
        continue;
      }
      for (int c = 0; c < other.columns().size(); c++) {
        int shared = shared(column.survey(), other.columns().get(c).survey());
        boolean same =
            ColumnName.fold(column.survey().name())
                .equals(ColumnName.fold(other.columns().get(c).survey().name()));
        // Numbers of lines are shared by chance; a name is not.
        int weight = shared == 0 ? 0 : shared + (same ? 1_000_000 : 0) + (isId ? 10_000 : 0);
        if (weight > most) {
          best = new JoinGuess(other, c, m);
          most = weight;
        }
      }
    }
    return best == null ? null : best.withoutFilled(filled);
  }

  /** How many different texts of the second the first holds, too; 0 if too few. */
  private static int shared(ColumnSurvey main, ColumnSurvey other) {
    Map<String, Integer> ids = main.texts();
    if (other.filled() < other.rows() || ids.size() < 2) {
      return 0;
    }
    int shared = (int) other.texts().keySet().stream().filter(ids::containsKey).count();
    double least = main.isManyTexts() ? SHARED_OF_MANY : SHARED;
    return shared >= 2 && shared >= least * other.texts().size() ? shared : 0;
  }

  /** The same without what is filled already; null if nothing is left. */
  private @Nullable JoinGuess withoutFilled(Set<Entry> filled) {
    List<LayerGuess> layers = LayerGroups.ofRows(survey.columns());
    List<ColumnGuess> columns = LayerGroups.said(survey.columns(), layers);
    for (int i = 0; i < columns.size(); i++) {
      ColumnGuess column = columns.get(i);
      List<Entry> own = entries(List.of(column));
      if (i == id) {
        columns.set(i, column.as(ColumnGuess.Role.REST, "it says which record the row belongs to"));
      } else if (own.stream().anyMatch(entry -> entry.index() == 0 || filled.contains(entry))) {
        columns.set(i, column.as(ColumnGuess.Role.ENTRY, "another table fills its entry"));
      }
    }
    return layers.isEmpty() && entries(columns).isEmpty()
        ? null
        : new JoinGuess(survey.with(columns, layers), id, matches);
  }
}
