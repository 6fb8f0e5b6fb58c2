package org.wellcurb.report.words;

/** Letters that name findings on a page: A, B, ... Z, AA, AB, ... */
public final class Letters {
  private Letters() {}

  /** The letters of the finding at this place, from 0. */
  public static String at(int place) {
    return place < 26
        ? String.valueOf((char) ('A' + place))
        : at(place / 26 - 1) + (char) ('A' + place % 26);
  }
}
