package org.wellcurb.crosscheck;

import java.io.IOException;

/**
 * Where records are, coarsely: the area whose figures are like theirs, and the place where wells of
 * one street stand. Records without a position have their zone for both: they may all stand in one
 * street.
 */
final class Areas {
  /** Degrees of an area: some 5 km. */
  private static final double AREA = 0.05;

  /** Degrees of a place: some 1 km, about a section. */
  private static final double PLACE = 0.01;

  private static final long COLUMNS = 1L << 20;

  private final int[] area;
  private final int[] place;
  private final int count;

  Areas(float[] latitude, float[] longitude, int[] zone) {
    int n = latitude.length;
    area = new int[n];
    place = new int[n];
    long[] keys = new long[n];
    for (int i = 0; i < n; i++) {
      keys[i] = key(latitude[i], longitude[i], zone[i]);
      long here = keys[i] < 0 ? keys[i] : cell(latitude[i], longitude[i], PLACE);
      place[i] = Long.hashCode(mixed(here));
    }
    Distinct areas = new Distinct(keys);
    count = areas.count();
    for (int i = 0; i < n; i++) {
      area[i] = areas.code(key(latitude[i], longitude[i], zone[i]));
    }
  }

  /**
   * @param area of each record, less than their count
   * @param place a mark of the place of each
   */
  Areas(int[] area, int[] place, int count) {
    this.area = area.clone();
    this.place = place.clone();
    this.count = count;
  }

  static Areas of(SurveyFile survey, int[] zone) throws IOException {
    return new Areas(survey.floats(SurveyRow.LATITUDE), survey.floats(SurveyRow.LONGITUDE), zone);
  }

  private static long key(float latitude, float longitude, int zone) {
    return Float.isNaN(latitude) || Float.isNaN(longitude)
        ? -1L - zone
        : cell(latitude, longitude, AREA);
  }

  private static long cell(float latitude, float longitude, double size) {
    return (long) Math.floor((latitude + 90) / size) * COLUMNS
        + (long) Math.floor((longitude + 180) / size);
  }

  static long mixed(long key) {
    long mixed = (key ^ (key >>> 31)) * 0x9E3779B97F4A7C15L;
    return mixed ^ (mixed >>> 29);
  }

  /** The area of a record, from 0. */
  int area(int record) {
    return area[record];
  }

  /** A mark of the place of a record. */
  int place(int record) {
    return place[record];
  }

  /** How many areas there are. */
  int count() {
    return count;
  }
}
