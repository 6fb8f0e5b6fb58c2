package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.LongBuffer;

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

  private final IntBuffer area;
  private final IntBuffer place;
  private final int count;

  /**
   * @param latitude by record, in degrees; NaN where it is not known
   * @param longitude by record, in degrees; NaN where it is not known
   * @param zone by record
   * @param columns where room is made
   */
  Areas(FloatBuffer latitude, FloatBuffer longitude, IntBuffer zone, Columns columns)
      throws IOException {
    int n = zone.capacity();
    area = columns.ints(n);
    place = columns.ints(n);
    LongBuffer keys = columns.longs(n);
    for (int i = 0; i < n; i++) {
      long key = key(latitude.get(i), longitude.get(i), zone.get(i));
      keys.put(i, key);
      long here = key < 0 ? key : cell(latitude.get(i), longitude.get(i), PLACE);
      place.put(i, Long.hashCode(mixed(here)));
    }
    Distinct areas = new Distinct(keys, columns.longs(n));
    count = areas.count();
    for (int i = 0; i < n; i++) {
      area.put(i, areas.code(key(latitude.get(i), longitude.get(i), zone.get(i))));
    }
  }

  /**
   * @param area of each record, less than their count
   * @param place a mark of the place of each
   */
  Areas(int[] area, int[] place, int count) {
    this.area = IntBuffer.wrap(area.clone());
    this.place = IntBuffer.wrap(place.clone());
    this.count = count;
  }

  static Areas of(SurveyFile survey, IntBuffer zone) throws IOException {
    return new Areas(
        survey.floats(SurveyRow.LATITUDE),
        survey.floats(SurveyRow.LONGITUDE),
        zone,
        survey.columns());
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
    return area.get(record);
  }

  /** A mark of the place of a record. */
  int place(int record) {
    return place.get(record);
  }

  /** How many areas there are. */
  int count() {
    return count;
  }
}
