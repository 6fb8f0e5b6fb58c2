package org.wellcurb.intake;

/**
 * Something in a header map that keeps it from being used.
 *
 * @param file the file, as messages name it
 * @param pointer JSON pointer of the value (RFC 6901); empty for the whole file
 * @param line line, from 1; 0 where there is no place in a file
 * @param column column, from 1
 * @param what what is wrong
 * @param mend what would mend it; may be empty
 */
public record MapProblem(
    String file, String pointer, int line, int column, String what, String mend) {

  /** One line: where, what, what would mend it. */
  public String text() {
    String place = line > 0 ? ":" + line + ":" + column : "";
    String at = pointer.isEmpty() ? "" : " " + pointer;
    return file + place + at + ": " + what + (mend.isEmpty() ? "" : "; " + mend);
  }
}
