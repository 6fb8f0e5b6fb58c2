package org.wellcurb.report;

/**
 * What stands at the foot of each sheet of paper of a page, so that a loose one can be put back:
 * the page's title, and which sheet it is of how many.
 */
final class RunningFoot {
  private static final String FONT =
      "font-family:\"Liberation Sans\",\"Noto Sans\",\"Helvetica Neue\",sans-serif;font-size:8pt";

  private RunningFoot() {}

  /** A style sheet of its own, as its text is the page's. */
  static Inline of(String title) {
    return new Inline(
        "@page{@bottom-left{content:\""
            + escape(title)
            + "\";"
            + FONT
            + "}@bottom-right{content:counter(page) \" / \" counter(pages);white-space:nowrap;"
            + FONT
            + "}}");
  }

  /** Text for a string of a style sheet: all but plain letters and figures by their number. */
  static String escape(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              boolean isPlain =
                  (c >= '0' && c <= '9')
                      || (c >= 'A' && c <= 'Z')
                      || (c >= 'a' && c <= 'z')
                      || c == '-';
              if (isPlain) {
                escaped.appendCodePoint(c);
              } else {
                escaped.append('\\').append(Integer.toHexString(c < 0x20 ? 0xFFFD : c)).append(' ');
              }
            });
    return escaped.toString();
  }
}
