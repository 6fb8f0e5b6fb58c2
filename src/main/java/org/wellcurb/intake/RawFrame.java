package org.wellcurb.intake;

/**
 * What stands around raw rows in a file of rows set aside, so that it can be corrected and read
 * again. It is written in UTF-8.
 *
 * @param file name of that file, relative, with {@code /}
 * @param before what comes first: the header of a table
 * @param between what parts two rows
 * @param after what comes last
 */
public record RawFrame(String file, String before, String between, String after) {

  /**
   * A name for rows set aside of this input: one that says what they are when it is read again.
   *
   * @param end what the name must end with, unless it promises that form already
   */
  static String nameOf(String file, String end) {
    String name = file.equals("-") ? "standard-input" : file;
    if (Form.of(name) == Form.PACKED) {
      name = name.substring(0, name.length() - ".gz".length());
    }
    return Form.of(name) == Form.of(end) ? name : name + end;
  }
}
