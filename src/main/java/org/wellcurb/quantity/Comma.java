package org.wellcurb.quantity;

/** What a comma inside a number means. It depends on where the number stands. */
public enum Comma {
  /** A separator of thousands, {@code 1,250.5}: where a comma parts the cells, and in JSON. */
  THOUSANDS,
  /**
   * Either: {@code 12,5} is twelve and a half and {@code 1,250.5} has thousands, but in {@code
   * 1,250} nothing tells, so it is not read. Where something else parts the cells.
   */
  EITHER,

  /**
   * The same, and the point is no surer: in {@code 1.250} it may part thousands, as commas are
   * decimal signs beside it. Neither {@code 1,250} nor {@code 1.250} is read.
   */
  NEITHER,
  /** A decimal comma, {@code 1.250,5}: where the header map or the column settles it. */
  DECIMAL,
  /**
   * The same in a sheet of a workbook: texts have decimal commas, and a bare figure with a point is
   * a number as the workbook stores it, {@code 6.125}. A text that looks so has an apostrophe.
   */
  STORED;

  /** True if a comma is a decimal sign. */
  public boolean isDecimal() {
    return this == DECIMAL || this == STORED;
  }
}
