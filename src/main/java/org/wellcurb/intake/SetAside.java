package org.wellcurb.intake;

import java.nio.charset.StandardCharsets;

/** A row that could not be read as a record, kept to be corrected and run again. */
public final class SetAside {
  private final String file;
  private final long row;
  private final String column;
  private final String reason;
  private final byte[] raw;

  /**
   * A row.
   *
   * @param file the input, as outputs name it
   * @param row the physical line on which it starts, or the place in a JSON array, from 1
   * @param column the column or JSON pointer at fault; empty where it is the row as a whole
   * @param reason why, in one line
   * @param raw the row as it stands, in UTF-8, without its line end
   */
  public SetAside(String file, long row, String column, String reason, byte[] raw) {
    this.file = file;
    this.row = row;
    this.column = column;
    this.reason = oneLine(reason);
    this.raw = raw.clone();
  }

  /** A reason may name a header, and a header may hold line ends. */
  private static String oneLine(String text) {
    boolean plain = text.chars().noneMatch(Character::isISOControl);
    return plain ? text : text.replaceAll("\\p{Cntrl}+", " ").strip();
  }

  /** A whole file. */
  public static SetAside file(String file, String reason) {
    return new SetAside(file, 0, "", reason, new byte[0]);
  }

  /** True for a whole file. */
  public boolean isFile() {
    return row == 0;
  }

  /** The input, as outputs name it. */
  public String file() {
    return file;
  }

  /**
   * The physical line on which it starts, or the place in a JSON array, from 1; 0 for a whole file.
   */
  public long row() {
    return row;
  }

  /** The column or JSON pointer at fault; empty where it is the row as a whole. */
  public String column() {
    return column;
  }

  /** Why, in one line. */
  public String reason() {
    return reason;
  }

  /** The row as it stands, in UTF-8, without its line end; empty for a whole file. */
  public byte[] raw() {
    return raw.clone();
  }

  /** The raw row as text; bytes that are not UTF-8 become the replacement character. */
  public String text() {
    return new String(raw, StandardCharsets.UTF_8);
  }

  @Override
  public String toString() {
    return file + ":" + row + ": " + column + ": " + reason;
  }
}
