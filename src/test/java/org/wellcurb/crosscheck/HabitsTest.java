package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.BitSet;
import org.apache.commons.statistics.inference.ChiSquareTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a contractor writes, beside all others in the same areas. */
class HabitsTest {
  @TempDir static Path folder;

  private static Habits habits(float[] own, float[] others, boolean isOnePlace) throws IOException {
    int n = own.length + others.length;
    float[] written = Arrays.copyOf(own, n);
    System.arraycopy(others, 0, written, own.length, others.length);
    int[] contractor = new int[n];
    Arrays.fill(contractor, own.length, n, 1);
    int[] places = new int[n];
    Arrays.setAll(places, i -> isOnePlace ? 0 : i);
    Areas areas = new Areas(new int[n], places, 1);
    FiguresByArea all =
        new FiguresByArea(
            FloatBuffer.wrap(written), record -> contractor[record], areas, new Columns(folder));
    int[] records = new int[own.length];
    int count = 0;
    for (int i = 0; i < own.length; i++) {
      if (!Float.isNaN(written[i])) {
        records[count++] = i;
      }
    }
    return new OwnAndOthers(FloatBuffer.wrap(written), areas, all, new Columns(folder))
        .of(IntBuffer.wrap(records), 0, count, new BitSet());
  }

  private static float[] figures(int count, float from, float step) {
    float[] figures = new float[count];
    for (int i = 0; i < count; i++) {
      figures[i] = from + i * step;
    }
    return figures;
  }

  @Test
  void aFigureAtOnePlaceCountsOnce() throws IOException {
    float[] own = new float[30];
    Arrays.fill(own, 40);
    assertEquals(1, habits(own, figures(50, 20, 1), true).size);
    assertEquals(30, habits(own, figures(50, 20, 1), false).size);
  }

  /** Where wells stand is not known: they may all be of one street. */
  @Test
  void recordsWithoutAPositionAreOfOnePlaceAZone() throws IOException {
    FloatBuffer nowhere = FloatBuffer.wrap(new float[] {Float.NaN, Float.NaN, Float.NaN, 44.005f});
    IntBuffer zones = IntBuffer.wrap(new int[] {1, 1, 2, 1});
    Areas areas = new Areas(nowhere, nowhere, zones, new Columns(folder));
    assertEquals(areas.place(0), areas.place(1));
    assertNotEquals(areas.place(0), areas.place(2));
    assertNotEquals(areas.place(0), areas.place(3));
    assertEquals(3, areas.count());
  }

  @Test
  void areasWithFewOthersAreNotCompared() throws IOException {
    assertEquals(0, habits(figures(30, 20, 1), figures(14, 20, 1), false).size);
    assertEquals(30, habits(figures(30, 20, 1), figures(15, 20, 1), false).size);
  }

  @Test
  void allOthersWorthIsTheirNumberInOneArea() throws IOException {
    Habits habits = habits(figures(30, 20, 1), figures(80, 20, 1), false);
    assertEquals(80, habits.worth, 1e-9);
    assertEquals(80.5 / 81, habits.othersRound(1), 1e-9, "all are whole feet");
  }

  /** Who rounds to tens is measured by all figures that tens would make of others'. */
  @Test
  void honestRoundingIsMeasuredByItsStep() throws IOException {
    float[] own = new float[40];
    for (int i = 0; i < own.length; i++) {
      own[i] = 20 + 10 * (i % 10);
    }
    Habits habits = habits(own, figures(100, 20, 1), false);
    assertTrue(habits.othersShare(40) >= 10.0 / 101, "" + habits.othersShare(40));
    assertTrue(habits.othersShare(40) <= 12.0 / 101, "" + habits.othersShare(40));
  }

  /** One crew of three has rods of 21 feet: its figures are laid beside all within half a rod. */
  @Test
  void aCrewThatRoundsToRodsIsMeasuredByThem() throws IOException {
    float[] own = figures(30, 20, 2);
    float[] rods = {42, 63, 63, 63, 63, 63, 84, 84, 84, 105, 105, 42};
    float[] both = Arrays.copyOf(own, own.length + rods.length);
    System.arraycopy(rods, 0, both, own.length, rods.length);
    Habits habits = habits(both, figures(100, 20, 1), false);
    assertTrue(habits.othersShare(63) >= 21.0 / 101, "" + habits.othersShare(63));
    Arrays.fill(both, own.length, both.length, 63);
    habits = habits(both, figures(100, 20, 1), false);
    assertTrue(habits.othersShare(63) <= 3.0 / 101, "one figure is no step");
  }

  /** Rods of 6 metres, written in whole feet: 118, 138, 157, 177, 197, ... */
  @Test
  void rodsOfMetresWrittenInFeetAreHonest() throws IOException {
    float[] own = new float[60];
    for (int i = 0; i < own.length; i++) {
      own[i] = Math.round((6 + i % 5) * 6 / 0.3048f);
    }
    Habits habits = habits(own, figures(100, 100, 1), false);
    assertTrue(habits.othersShare(138) >= 18.0 / 101, "" + habits.othersShare(138));
    assertFalse(new LastDigits(habits).isAble(), "their last digits are those of rods");
  }

  /** Rods of 21 or 20 feet and 2 feet of casing above ground: 65, 86, 107; 62, 82, 102. */
  @Test
  void rodsAndWhatStandsAboveGroundAreHonest() throws IOException {
    for (int rod : new int[] {20, 21}) {
      float[] own = new float[80];
      for (int i = 0; i < own.length; i++) {
        own[i] = i % 6 == 0 ? 60 + i : rod * (3 + i % 5) + 2;
      }
      Habits habits = habits(own, figures(100, 50, 1), false);
      float three = 3 * rod + 2;
      assertTrue(habits.othersShare(three) >= (rod - 1) / 101.0, rod + " ft");
      assertFalse(new LastDigits(habits).isAble(), "their last digits are those of rods");
    }
  }

  /** One figure again and again, or sevens, are no rods and a constant. */
  @Test
  void repeatsAndSevensAreNoRods() throws IOException {
    float[] own = figures(60, 51, 1);
    Arrays.fill(own, 0, 40, 68);
    assertTrue(habits(own, figures(100, 50, 1), false).othersShare(68) <= 4.0 / 101);
    for (int i = 0; i < own.length; i++) {
      own[i] = 57 + 10 * (i % 8);
    }
    Habits habits = habits(own, figures(800, 50, 0.25f), false);
    assertFalse(habits.isOfRods());
  }

  @Test
  void digitsThatRoundingMakesDoNotCount() {
    assertEquals(0, LastDigits.digit(40));
    assertEquals(0, LastDigits.digit(45));
    assertEquals(0, LastDigits.digit(63), "three rods of 21 feet");
    assertEquals(0, LastDigits.digit(30.48f));
    assertEquals(7, LastDigits.digit(37));
  }

  /** With all others' shares known nearly for certain it is the library's chi-square. */
  @Test
  void theStatisticIsTheLibrarys() throws IOException {
    float[] others = new float[80_000];
    float[] digits = {31, 32, 33, 34, 36, 37, 38, 39};
    for (int i = 0; i < others.length; i++) {
      others[i] = digits[i % 8];
    }
    long[] counts = {9, 5, 7, 6, 4, 22, 8, 3};
    float[] own = new float[64];
    for (int d = 0, at = 0; d < 8; d++) {
      for (int i = 0; i < counts[d]; i++) {
        own[at++] = digits[d];
      }
    }
    LastDigits last = new LastDigits(habits(own, others, false));
    assertTrue(last.isAble());
    double library = ChiSquareTest.withDefaults().statistic(counts);
    assertEquals(library, last.statistic(), 0.01 * library);
    assertEquals(
        ChiSquareTest.withDefaults().test(counts).getPValue(), LastDigits.p(library, 1), 1e-12);
    assertEquals(7, last.preferred());
    assertFalse(new LastDigits(habits(Arrays.copyOf(own, 39), others, false)).isAble());
  }
}
