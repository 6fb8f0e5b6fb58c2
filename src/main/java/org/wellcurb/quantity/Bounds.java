package org.wellcurb.quantity;

/**
 * Every limit on what is read, in one place. What goes past a limit is never dropped in silence: it
 * is set aside with the limit named, or the run stops with one line.
 */
public final class Bounds {
  /** Most bytes of one row of a table, or of one JSON record. */
  public static final int ROW = 1 << 20;

  /** Most bytes of one cell, or of one JSON text. */
  public static final int CELL = 64 << 10;

  /** Most columns of a table. */
  public static final int COLUMNS = 4096;

  /** How much of a file is looked at to tell encoding, delimiter and header: bytes. */
  public static final int SAMPLE = 1 << 20;

  /** Most records before which the header must have come. */
  public static final int PREAMBLE = 50;

  /** Deepest nesting of JSON. */
  public static final int DEPTH = 16;

  /** Most names and values in one JSON record. */
  public static final int JSON_VALUES = 20_000;

  /** Most files in one archive. */
  public static final int MEMBERS = 10_000;

  /** Most bytes that one compressed input may unpack to. */
  public static final long UNPACKED = 64L << 30;

  /** Most times its packed size that an input may unpack to, once it is past {@link #SMALL}. */
  public static final int RATIO = 200;

  /** Unpacked bytes below which the ratio is not looked at. */
  public static final long SMALL = 16L << 20;

  /** Most bytes of a file that the desk opens. */
  public static final int DESK_BODY = 8 << 20;

  /** Most records of one file that the desk offers to choose from. */
  public static final int DESK_RECORDS = 200;

  /** Most bytes of the texts of a workbook, which are held in memory. */
  public static final long TEXTS = 256L << 20;

  /** Most bytes of the tables that a header map joins to others, which are held in memory. */
  public static final long JOINED = 256L << 20;

  private Bounds() {}
}
