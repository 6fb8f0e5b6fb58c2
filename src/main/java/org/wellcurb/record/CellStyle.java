package org.wellcurb.record;

import org.wellcurb.quantity.Comma;
import org.wellcurb.quantity.DateOrder;
import org.wellcurb.quantity.DayNumbers;

/**
 * How the cells of one column are written, as far as a cell alone cannot tell.
 *
 * @param comma what a comma inside a number means
 * @param dateOrder order of day and month in dates of figures
 * @param pivotYear first year of the hundred that two-digit years stand for (1930: 30 is 1930, 29
 *     is 2029); 0 where none is stated, and two-digit years are then not read
 * @param dayNumbers whether bare numbers are a spreadsheet's count of days
 * @param sentinels what means no value, beyond the usual words
 */
public record CellStyle(
    Comma comma, DateOrder dateOrder, int pivotYear, DayNumbers dayNumbers, Sentinels sentinels) {
  /** Commas separate thousands, dates are ISO, nothing else means no value. */
  public static final CellStyle PLAIN =
      new CellStyle(Comma.THOUSANDS, DateOrder.ISO_ONLY, 0, DayNumbers.NONE, Sentinels.NONE);

  /** The same with another meaning of commas. */
  public CellStyle withComma(Comma other) {
    return new CellStyle(other, dateOrder, pivotYear, dayNumbers, sentinels);
  }

  /** The same with another order of dates. */
  public CellStyle withDateOrder(DateOrder other) {
    return new CellStyle(comma, other, pivotYear, dayNumbers, sentinels);
  }

  /** The same with another first year of two-digit years. */
  public CellStyle withPivotYear(int other) {
    return new CellStyle(comma, dateOrder, other, dayNumbers, sentinels);
  }

  /** The same with another meaning of bare numbers among dates. */
  public CellStyle withDayNumbers(DayNumbers other) {
    return new CellStyle(comma, dateOrder, pivotYear, other, sentinels);
  }

  /** The same with other sentinels. */
  public CellStyle withSentinels(Sentinels other) {
    return new CellStyle(comma, dateOrder, pivotYear, dayNumbers, other);
  }
}
