package org.wellcurb.batch;

/** Which records get a sheet. */
public enum SheetsFor {
  /** Those with findings; and a record that is the only one. */
  FLAGGED,
  ALL,
  NONE
}
