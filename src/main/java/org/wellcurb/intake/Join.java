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

  /** True if an input is this table, or what was set aside of it and is read again. */
  boolean isOf(String input) {
    return input.equals(file)
        || input.endsWith("/" + file)
        || input.endsWith("!" + file)
        || plain(input).equals(plain(setAsideName()));
  }

  /** The name under which its rows are set aside. */
  String setAsideName() {
    return RawFrame.nameOf(file, ".csv");
  }

  /** As a name is made that any disk can hold. */
  private static String plain(String name) {
    return name.replaceAll("[^\\p{L}\\p{N}]+", "-");
  }
}
