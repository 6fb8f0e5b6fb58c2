package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Wells unlike their neighbours, over all fields.
 *
 * @param shown the farthest, farthest first
 * @param total how many there are
 * @param looked how each field was looked at
 */
record NeighbourHints(
    List<CrossResult.NeighbourHint> shown, long total, List<CrossResult.Looked> looked) {
  NeighbourHints {
    shown = List.copyOf(shown);
    looked = List.copyOf(looked);
  }

  /**
   * Looks at all fields, one after the other.
   *
   * @param off records of licences whose depths seem to be in another unit: what is said of these
   *     is said there, and they tell nothing of those around them
   */
  static NeighbourHints of(SurveyFile survey, BitSet off, int most) throws IOException {
    Neighbours neighbours = new Neighbours(survey);
    List<Neighbours.Unlike> unlike = new ArrayList<>();
    List<CrossResult.Looked> looked = new ArrayList<>();
    for (Field field : Field.values()) {
      Neighbours.Found found = find(neighbours, survey, off, field);
      unlike.addAll(found.unlike());
      looked.add(found.looked());
    }
    unlike.sort(
        Comparator.comparingDouble((Neighbours.Unlike each) -> -each.score())
            .thenComparingInt(Neighbours.Unlike::place));
    List<CrossResult.NeighbourHint> shown = new ArrayList<>();
    for (Neighbours.Unlike each : unlike.subList(0, Math.min(most, unlike.size()))) {
      shown.add(
          new CrossResult.NeighbourHint(
              survey.seen(each.place()),
              each.field(),
              each.value(),
              each.median(),
              each.spread(),
              each.believed(),
              each.neighbours(),
              each.score()));
    }
    return new NeighbourHints(shown, unlike.size(), looked);
  }

  /** Depths as shares of the median; water in metres above the sea; yields in logarithms. */
  private static Neighbours.Found find(
      Neighbours neighbours, SurveyFile survey, BitSet off, Field field) throws IOException {
    FloatBuffer values = survey.floats(SurveyRow.VALUES + 4 * field.ordinal());
    if (field != Field.YIELD) {
      off.stream().forEach(record -> values.put(record, Float.NaN));
    }
    return switch (field) {
      case DEPTH -> neighbours.find(field, values, 0.1, 0.25, true);
      case STATIC_LEVEL -> {
        FloatBuffer elevation = survey.floats(SurveyRow.ELEVATION);
        for (int i = 0; i < values.capacity(); i++) {
          values.put(i, elevation.get(i) - values.get(i));
        }
        yield neighbours.find(field, values, 1, 3, false);
      }
      case YIELD -> {
        for (int i = 0; i < values.capacity(); i++) {
          float yield = values.get(i);
          values.put(i, yield > 0 ? (float) Math.log10(yield) : Float.NaN);
        }
        yield neighbours.find(field, values, 0.1, 0.2, false);
      }
    };
  }
}
