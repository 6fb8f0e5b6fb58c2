package org.wellcurb.report.drawing;

/**
 * A line of a legend.
 *
 * @param svg the sign as it is drawn, escaped; empty where the line speaks of no sign
 * @param text what it means
 */
public record Sign(String svg, String text) {
  /** A line that speaks of no sign. */
  static Sign of(String text) {
    return new Sign("", text);
  }
}
