package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When wells are compared with those around them, and what is said where they are not. */
class UnlikeNeighboursTest {
  private static final long SEED = 5;

  @TempDir Path folder;

  /**
   * Wells 200 m apart on a square.
   *
   * @param slope by how many feet the ground water is deeper from row to row
   * @param noise by how many feet a well may be off that
   */
  private static Batches square(double slope, int noise) {
    Random random = new Random(SEED);
    Batches batch = new Batches();
    for (int row = 0; row < 20; row++) {
      for (int column = 0; column < 20; column++) {
        batch.add(
            "record.id",
            row + "-" + column,
            "site.latitude",
            String.format(java.util.Locale.ROOT, "%.5f", 45 + 0.0018 * row + 1e-5),
            "site.longitude",
            String.format(java.util.Locale.ROOT, "%.5f", -70 + 0.0025 * column + 1e-5),
            "well.depth",
            Math.round(200 + slope * row + noise * (random.nextDouble() - 0.5)) + " ft");
      }
    }
    return batch;
  }

  private static CrossResult.Looked looked(CrossResult result, Field field) {
    return result.looked().get(field.ordinal());
  }

  @Test
  void whereNeighboursTellMuchAFarOneIsSaid() throws Exception {
    Batches batch = square(15, 20);
    batch.records.get(210).put("well.depth", "2000 ft");
    CrossResult result = batch.check(folder);
    assertEquals(CrossResult.How.COMPARED, looked(result, Field.DEPTH).how());
    assertEquals(result.comparedWells(), looked(result, Field.DEPTH).wells());
    assertTrue(result.comparedWells() > 300, result.looked()::toString);
    assertEquals(1, result.unlikeTotal(), result.unlike()::toString);
    assertEquals(210, result.unlike().get(0).seen().place());
    assertEquals(
        new CrossResult.Looked(Field.STATIC_LEVEL, 0, CrossResult.How.NONE_NEAR),
        looked(result, Field.STATIC_LEVEL));
  }

  /** All wells are alike, so that those around a well tell no more of it than any others do. */
  @Test
  void whereTheyTellLittleNothingIsComparedAndThatIsSaid() throws Exception {
    CrossResult result = square(0, 60).check(folder);
    assertEquals(CrossResult.How.TELLS_TOO_LITTLE, looked(result, Field.DEPTH).how());
    assertTrue(looked(result, Field.DEPTH).wells() > 300, "they agree among themselves");
    assertEquals(0, result.comparedWells());
    assertEquals(0, result.unlikeTotal());
  }
}
