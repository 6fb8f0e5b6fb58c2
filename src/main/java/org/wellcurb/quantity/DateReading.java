package org.wellcurb.quantity;

/**
 * What became of a text that should hold a date.
 *
 * @param isRead true if a date was read; the ends mean nothing otherwise
 * @param from first day, days since 1970-01-01, or minus infinity
 * @param to last day, included, or infinity
 * @param note what is to be said about it, or why it was not read
 */
public record DateReading(boolean isRead, double from, double to, Note note) {
  static DateReading of(double from, double to, Note note) {
    return new DateReading(true, from, to, note);
  }

  static DateReading not(Note note) {
    return new DateReading(false, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, note);
  }
}
