package org.wellcurb.screening;

import org.wellcurb.quantity.Unit;

/**
 * One way in which an entry may have been meant.
 *
 * @param kind what kind of slip it would be
 * @param entry the entry
 * @param value what was meant, in SI; NaN for no value at all
 * @param unit the unit that it was meant in
 * @param other the entry that it changed places with; -1 if none
 * @param otherValue what that entry was meant to be, in SI
 */
record Slip(Kind kind, int entry, double value, Unit unit, int other, double otherValue) {

  /** Kinds of slips, the commonest first: a rarer one is not offered where a commoner one fits. */
  enum Kind {
    /**
     * The other unit of its kind. Nearly any number that is too large would fit: it takes two
     * faults.
     */
    UNIT,
    /** Two entries in each other's place. */
    SWAPPED,
    /** A lost sign. */
    SIGN,
    /** Nitrate stated as nitrate and not as nitrogen. */
    NITRATE,
    /** A date in a number's column. */
    DATE,
    /** A decimal point one place off. */
    DECIMAL,
    /** Two neighbouring digits changed over. */
    DIGITS
  }

  static Slip of(Kind kind, int entry, double value, Unit unit) {
    return new Slip(kind, entry, value, unit, -1, Double.NaN);
  }
}
