package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;

/**
 * Another table whose rows belong to the records of the main one.
 *
 * @param file the input that holds it, or the end of its name after a {@code /} or {@code !}
 * @param id its column that says which record a row belongs to
 * @param matches the column of the main table that says the same; null for that of {@code
 *     record.id}
 * @param table how its columns are to be understood
 */
public record Join(String file, ColumnName id, @Nullable ColumnName matches, TableMap table) {

  boolean isOf(String input) {
    return input.equals(file) || input.endsWith("/" + file) || input.endsWith("!" + file);
  }
}
