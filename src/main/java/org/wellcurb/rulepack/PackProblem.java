package org.wellcurb.rulepack;

/**
 * Something in a pack that keeps it from being used.
 *
 * @param file the file, as messages name it
 * @param pointer JSON pointer of the value (RFC 6901); empty for the whole file
 * @param line line, from 1; 0 where there is no place in a file
 * @param column column, from 1, counted in characters; inside a formula too
 * @param what what is wrong
 * @param mend what would mend it; may be empty
 * @param sourceLine the line of the file that it stands in; empty where there is none
 * @param width how many characters are wrong, at least 1
 */
public record PackProblem(
    String file,
    String pointer,
    int line,
    int column,
    String what,
    String mend,
    String sourceLine,
    int width) {

  /** Most characters of a source line that a message shows. */
  static final int SHOWN = 110;

  /** A problem with no place in a file. */
  static PackProblem without(String file, String what, String mend) {
    return new PackProblem(file, "", 0, 0, what, mend, "", 1);
  }

  /** One line: where, what, what would mend it. */
  public String text() {
    StringBuilder out = new StringBuilder(file);
    if (line > 0) {
      out.append(':').append(line).append(':').append(column);
    }
    if (!pointer.isEmpty()) {
      out.append(' ').append(pointer);
    }
    out.append(": ").append(what);
    return mend.isEmpty() ? out.toString() : out.append("; ").append(mend).toString();
  }

  /** The line, and below it the line of the file with the place underlined. */
  public String shown() {
    if (sourceLine.isEmpty()) {
      return text();
    }
    int[] points = sourceLine.codePoints().toArray();
    int start = column - 1;
    int from = points.length <= SHOWN ? 0 : Math.max(0, Math.min(start - SHOWN / 3, points.length));
    int to = Math.min(points.length, from + SHOWN);
    StringBuilder source = new StringBuilder(from > 0 ? "... " : "");
    StringBuilder under = new StringBuilder(from > 0 ? "    " : "");
    for (int i = from; i < to; i++) {
      boolean control = points[i] != '\t' && Character.isISOControl(points[i]);
      source.appendCodePoint(control ? '?' : points[i]);
      if (i < start) {
        under.append(points[i] == '\t' ? '\t' : ' ');
      }
    }
    if (to < points.length) {
      source.append(" ...");
    }
    int marks = Math.max(1, Math.min(width, to - Math.max(start, from)));
    return text() + "\n    " + source + "\n    " + under + "^".repeat(marks);
  }
}
