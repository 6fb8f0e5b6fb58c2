package org.wellcurb.intake;

import java.util.List;

/**
 * How an office's own export is turned into records.
 *
 * @param title what the export is
 * @param main its main table: one row a record, unless {@code byId}
 * @param constants entries that are the same in every record
 * @param byId true if the rows of one id make one record
 * @param joins other tables that belong to it
 */
public record HeaderMap(
    String title, TableMap main, List<Constant> constants, boolean byId, List<Join> joins) {

  /** No map: headers are keys. */
  public static final HeaderMap NONE =
      new HeaderMap("", TableMap.NONE, List.of(), false, List.of());

  /**
   * An entry that is the same in every record.
   *
   * @param entry place in the catalogue
   * @param text as a cell would have it
   */
  public record Constant(int entry, String text) {}

  public HeaderMap {
    constants = List.copyOf(constants);
    joins = List.copyOf(joins);
  }
}
