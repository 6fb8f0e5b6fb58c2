package org.wellcurb.quantity;

/** The order of day, month and year in dates of figures that do not start with four digits. */
public enum DateOrder {
  /** None is declared: only what has one reading is read. */
  ISO_ONLY,
  /** {@code 31/05/2009}. */
  DAY_FIRST,
  /** {@code 05/31/2009}. */
  MONTH_FIRST,
  /** {@code 09/05/31}. */
  YEAR_FIRST
}
