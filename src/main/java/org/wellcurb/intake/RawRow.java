package org.wellcurb.intake;

/** The row that a record was read from. Valid only while the sink is being called. */
@FunctionalInterface
public interface RawRow {
  /** A copy of the row as it stands, in UTF-8, without its line end. */
  byte[] bytes();
}
