package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Wells that are unlike their nearest neighbours, where these agree among themselves: depth, the
 * height of the water above the sea where elevations are known, and yield.
 *
 * <p>Only positions that are written finely and shared by no other record are compared: a section
 * centre says nothing of a neighbour.
 */
final class Neighbours {
  /** Neighbours that are asked for. */
  static final int NEAREST = 8;

  /** Fewest that must be there. */
  static final int LEAST = 5;

  /** Metres within which wells are neighbours. */
  static final double WITHIN = 2000;

  /** Spreads from the median at which a well is unlike its neighbours. */
  static final double FAR = 8;

  /** Distance from the neighbours as a share of that from all wells, both in the middle. */
  private static final double MOST_AWAY = 0.7;

  private static final int UNKNOWN = 0;
  private static final int KNOWN = 1;

  private final Neighbourhood all;
  private final Columns columns;

  /**
   * A well unlike its neighbours.
   *
   * @param place the record
   * @param field what was measured
   * @param value its value, in SI; for water levels its height above the sea
   * @param median of its neighbours
   * @param spread of its neighbours, comparable with a standard deviation
   * @param believed the same, never less than a floor
   * @param neighbours how many
   * @param score how many believed spreads away
   */
  record Unlike(
      int place,
      Field field,
      double value,
      double median,
      double spread,
      double believed,
      int neighbours,
      double score) {}

  /** What was found on one field, and how it was looked at. */
  record Found(List<Unlike> unlike, CrossResult.Looked looked) {}

  Neighbours(SurveyFile survey) throws IOException {
    columns = survey.columns();
    FloatBuffer latitude = survey.floats(SurveyRow.LATITUDE);
    FloatBuffer longitude = survey.floats(SurveyRow.LONGITUDE);
    BitSet usable = Positions.ownAndFine(survey, latitude, longitude);
    all = new Neighbourhood(latitude, longitude, usable, Positions.marks(survey), columns);
  }

  /**
   * Whether neighbours tell anything of a well in this batch: wells must be clearly nearer to the
   * middle of their neighbours than to the middle of all wells.
   */
  private static boolean isTold(FloatBuffer compared, FloatBuffer away, int count) {
    float middle = Spread.middle(compared, count);
    for (int i = 0; i < count; i++) {
      compared.put(i, Math.abs(compared.get(i) - middle));
    }
    return Spread.middle(away, count) <= MOST_AWAY * Spread.middle(compared, count);
  }

  /**
   * Looks at one field.
   *
   * @param values by record, comparable as they stand; NaN where not known
   * @param floor least spread that is believed
   * @param agree greatest spread at which neighbours agree, as a share of their median where {@code
   *     isShare}
   */
  Found find(Field field, FloatBuffer values, double floor, double agree, boolean isShare)
      throws IOException {
    List<Unlike> unlike = new ArrayList<>();
    FloatBuffer own = all.inOrder(values);
    FloatBuffer away = columns.floats(all.size());
    FloatBuffer compared = columns.floats(all.size());
    int lookedAt = 0;
    IntBuffer codes = columns.ints(all.size());
    for (int at = 0; at < all.size(); at++) {
      codes.put(at, Float.isNaN(own.get(at)) ? UNKNOWN : KNOWN);
    }
    NearestWells walk = new NearestWells(all, NEAREST, WITHIN, codes);
    double[] theirs = new double[NEAREST];
    for (int at = 0; at < all.size(); at++) {
      int count = codes.get(at) == KNOWN ? around(walk, at, own, theirs) : 0;
      if (count < LEAST) {
        continue;
      }
      double median = Spread.median(theirs, count);
      double spread = Spread.of(theirs, count, median);
      if (spread > (isShare ? agree * Math.abs(median) : agree)) {
        continue;
      }
      compared.put(lookedAt, own.get(at));
      away.put(lookedAt++, (float) Math.abs(own.get(at) - median));
      double believed = Math.max(spread, isShare ? floor * Math.abs(median) : floor);
      double score = Math.abs(own.get(at) - median) / believed;
      if (score > FAR) {
        unlike.add(
            new Unlike(all.record(at), field, own.get(at), median, spread, believed, count, score));
      }
    }
    if (lookedAt == 0) {
      return found(List.of(), field, lookedAt, CrossResult.How.NONE_NEAR);
    }
    if (!isTold(compared, away, lookedAt)) {
      return found(List.of(), field, lookedAt, CrossResult.How.TELLS_TOO_LITTLE);
    }
    unlike.sort(
        Comparator.comparingDouble((Unlike each) -> -each.score()).thenComparingInt(Unlike::place));
    return found(unlike, field, lookedAt, CrossResult.How.COMPARED);
  }

  private static Found found(List<Unlike> unlike, Field field, long wells, CrossResult.How how) {
    return new Found(unlike, new CrossResult.Looked(field, wells, how));
  }

  /** The values of the nearest wells whose value is known. */
  private static int around(NearestWells walk, int of, FloatBuffer values, double[] into) {
    int count = walk.nearest(of, UNKNOWN);
    for (int n = 0; n < count; n++) {
      into[n] = values.get(walk.near(n));
    }
    return count;
  }
}
