package org.wellcurb.report;

/**
 * A code of a column, or another text that is no figure.
 *
 * @param written as it stands in the cells; empty for all that were not counted one by one
 * @param read what it was taken for: a choice, {@code yes}, {@code no}, {@code unknown}, {@code
 *     n/a}, {@code not sure}, {@code unreadable}; empty for those others
 * @param cells in how many cells
 */
public record CodeLine(String written, String read, long cells) {
  /** True if it says a value. */
  boolean isValue() {
    return switch (read) {
      case "", "unknown", "n/a", "not sure", "unreadable" -> false;
      default -> true;
    };
  }

  /** True if nothing was made of it. */
  boolean isUnread() {
    return read.equals("unreadable") || read.equals("not sure");
  }
}
