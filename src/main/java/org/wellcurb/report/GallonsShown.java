package org.wellcurb.report;

/** Whether a page holds amounts in gallons, which may be US or imperial ones. */
final class GallonsShown {
  private GallonsShown() {}

  /** True if a figure, or the end of one in a tag of its own, stands before a unit of gallons. */
  static boolean in(String page) {
    for (int at = page.indexOf('g'); at >= 0; at = page.indexOf('g', at + 1)) {
      int end = unit(page, at);
      if (end < 0 || (end < page.length() && Character.isLetterOrDigit(page.charAt(end)))) {
        continue;
      }
      int before = at - 1;
      if (before >= 0 && isBlank(page.charAt(before))) {
        before--;
      }
      if (before >= 0 && (page.charAt(before) == '>' || isFigure(page.charAt(before)))) {
        return true;
      }
    }
    return false;
  }

  private static int unit(String page, int at) {
    boolean is =
        page.startsWith("gal", at)
            || page.startsWith("gpm", at)
            || page.startsWith("gpd", at)
            || page.startsWith("gph", at);
    return is ? at + 3 : -1;
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\u00a0' || c == '\u202f';
  }

  private static boolean isFigure(char c) {
    return c >= '0' && c <= '9';
  }
}
