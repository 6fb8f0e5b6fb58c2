package org.wellcurb.intake;

import java.util.Arrays;

/** Where the rows of a chunk begin and end, and what is known of each from its quotes alone. */
final class RowMarks {
  /** No cell is quoted: cells lie between delimiters. */
  static final byte PLAIN = 0;

  /** A cell is quoted, and the quoting is sound. */
  static final byte QUOTED = 1;

  /** A quoted cell is not closed within {@code Bounds.ROW}, or at all: the row's first line. */
  static final byte NOT_CLOSED = 2;

  /** Text follows a closing quote: the row's first line. */
  static final byte TEXT_AFTER_QUOTE = 3;

  /** Longer than {@code Bounds.ROW}: the row's first line, cut to that. */
  static final byte TOO_LONG = 4;

  /** The input broke off here: the row as far as it came, perhaps nothing. */
  static final byte CUT = 5;

  /** Something else than a JSON object. */
  static final byte NOT_AN_OBJECT = 6;

  /** Text after the end of a JSON array. */
  static final byte AFTER_END = 7;

  /** A quoted cell has swallowed the rows after it: the row's first line. */
  static final byte SWALLOWS = 8;

  private int[] from = new int[64];
  private int[] to = new int[64];
  private int[] line = new int[64];
  private byte[] status = new byte[64];
  private int count;
  private String fault = "";

  /** Why the input broke off, where a row is {@link #CUT}. */
  String fault() {
    return fault;
  }

  void cut(int from, int to, int line, String why) {
    add(from, to, line, CUT);
    fault = why;
  }

  void add(int from, int to, int line, byte status) {
    if (count == this.from.length) {
      int more = count * 2;
      this.from = Arrays.copyOf(this.from, more);
      this.to = Arrays.copyOf(this.to, more);
      this.line = Arrays.copyOf(this.line, more);
      this.status = Arrays.copyOf(this.status, more);
    }
    this.from[count] = from;
    this.to[count] = to;
    this.line[count] = line;
    this.status[count] = status;
    count++;
  }

  int count() {
    return count;
  }

  /** Its first byte. */
  int from(int i) {
    return from[i];
  }

  /** Past its last byte, the line end not counted. */
  int to(int i) {
    return to[i];
  }

  /** Lines between the first of the chunk and the one on which it starts. */
  int line(int i) {
    return line[i];
  }

  byte status(int i) {
    return status[i];
  }
}
