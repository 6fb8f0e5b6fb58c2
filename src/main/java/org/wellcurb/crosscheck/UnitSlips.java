package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * Contractors, and inputs, whose depths are a factor of 0.3048 or 3.2808 off those of the wells
 * around them: metres in a column of feet, or feet in one of metres.
 *
 * <p>Who stands beside one that slips looks as if it slipped the other way. So no more than two
 * wells of one licence are neighbours of a well, wells of one place tell as much as one of them,
 * and what stands out most is taken out of the neighbours of all others before these are tested
 * again. Nothing hangs on the order of the rows.
 */
final class UnitSlips {
  /** Fewest wells of a group with neighbours of others. */
  static final int LEAST = 10;

  /** Fewest places, of some 1 km, that they stand at. */
  static final int LEAST_PLACES = 3;

  /** Neighbours that are asked for, of other groups. */
  private static final int NEAREST = 7;

  /** Neighbours of one licence, at most. */
  static final int MOST_OF_LICENCE = 2;

  private static final int LEAST_NEIGHBOURS = 4;
  private static final double WITHIN = 5000;

  /** How often what stands out most is taken out, at most. */
  private static final int MOST_STEPS = 20;

  /** Share of places that are off anyway, by which it is told what stands out most. */
  private static final double USUAL = 0.05;

  /** The logarithm of 1 / 0.3048. */
  static final double FACTOR = Math.log(1 / 0.3048);

  /** How near to the factor a ratio is, in logarithms, to count for it. */
  private static final double NEAR = 0.35;

  /** The same of the middle one of a group: it errs less. */
  static final double NEAR_MIDDLE = 0.25;

  /** Share of a group's wells, and of its places, that must be near the factor. */
  static final double LEAST_SHARE = 0.5;

  /** The depth is 0.3048 of those around it. */
  static final byte SHALLOW = 1;

  /** The depth is 3.2808 of those around it. */
  static final byte DEEP = 2;

  private final int records;
  private final Columns columns;
  private final Neighbourhood all;
  private final FloatBuffer depth;

  /** By place; {@link NearestWells#NO_KIND} where a well names no licence. */
  private final IntBuffer licence;

  /** Wells of licences that were found to be off: they are no neighbours of any. */
  private final BitSet isOff = new BitSet();

  /**
   * A test of one group.
   *
   * @param group its code
   * @param hits wells whose depth is off by the factor
   * @param of wells with neighbours of others
   * @param places at how many places these stand
   * @param placesOff at how many of them the middle one is off
   * @param isShallow whether the factor looked for is 0.3048, and not 3.2808
   * @param ratio median of depth over that of the neighbours
   * @param othersShare share of such places among those of all other groups
   * @param p how likely as many such places would be if the group were like all others
   * @param isMarked whether it is great enough to be worth saying, whatever p is
   */
  record Tried(
      int group,
      int hits,
      int of,
      int places,
      int placesOff,
      boolean isShallow,
      double ratio,
      double othersShare,
      double p,
      boolean isMarked) {
    /** The same of a group that is not known to be off after all. */
    Tried unfounded() {
      return new Tried(group, hits, of, places, placesOff, isShallow, ratio, othersShare, 1, false);
    }

    /** The less, the more it stands out. */
    double standing() {
      return Copying.tail(placesOff, places, USUAL, 1);
    }
  }

  /** Tests on groups of one kind. */
  static final class Found {
    /** What was tested of groups that no record belongs to. */
    static final Found NOTHING = new Found(List.of(), ByteBuffer.allocate(0));

    private final List<Tried> tried;
    private final ByteBuffer ways;

    private Found(List<Tried> tried, ByteBuffer ways) {
      this.tried = tried;
      this.ways = ways;
    }

    List<Tried> tried() {
      return tried;
    }

    /** {@link #SHALLOW} or {@link #DEEP}; 0 where the depth of the record is not off. */
    byte way(int record) {
      return ways.get(record);
    }
  }

  UnitSlips(SurveyFile survey) throws IOException {
    columns = survey.columns();
    records = survey.rows();
    FloatBuffer latitude = survey.floats(SurveyRow.LATITUDE);
    FloatBuffer depths = survey.floats(SurveyRow.VALUES + 4 * Field.DEPTH.ordinal());
    BitSet usable = Positions.any(latitude);
    for (int i = 0; i < records; i++) {
      if (!(depths.get(i) > 0)) {
        usable.clear(i);
      }
    }
    FloatBuffer longitude = survey.floats(SurveyRow.LONGITUDE);
    all = new Neighbourhood(latitude, longitude, usable, Positions.marks(survey), columns);
    depth = all.inOrder(depths);
    licence = all.inOrder(survey.ints(SurveyRow.CONTRACTOR));
    int nobody = survey.contractors().indexOf("");
    for (int at = 0; at < all.size(); at++) {
      if (licence.get(at) == nobody) {
        licence.put(at, NearestWells.NO_KIND);
      }
    }
  }

  /** Tests on each licence. What is found off is no neighbour of any from then on. */
  Found byLicence() throws IOException {
    return find(licence, true);
  }

  /** Records of licences that were found to be off. */
  BitSet off() {
    BitSet off = new BitSet();
    isOff.stream().forEach(at -> off.set(all.record(at)));
    return off;
  }

  /**
   * Tests on each input. One that has no neighbours left once another was found off is not told
   * from it, and both are said.
   *
   * @param inputs code of the input by record
   */
  Found byInput(IntBuffer inputs) throws IOException {
    return find(all.inOrder(inputs), false);
  }

  private Found find(IntBuffer own, boolean isLicence) throws IOException {
    SlipWalk walk = new SlipWalk(own, Columns.greatest(own) + 1);
    List<Tried> tried = walk.tests();
    for (int step = 0; step < MOST_STEPS; step++) {
      boolean[] found = strongest(tried, walk.isFound);
      if (found.length == 0) {
        break;
      }
      walk.takeOut(found);
      tried = kept(tried, walk.tests(), isLicence);
    }
    if (isLicence) {
      for (int at = 0; at < all.size(); at++) {
        isOff.set(at, own.get(at) >= 0 && walk.isFound[own.get(at)]);
      }
    }
    return new Found(tried, walk.ways());
  }

  /**
   * The tests after a step, one for each before it: where a group has too few neighbours left to be
   * tested again, a licence is let off, and an input keeps what was said.
   */
  private static List<Tried> kept(List<Tried> before, List<Tried> after, boolean isLicence) {
    List<Tried> kept = new ArrayList<>();
    int at = 0;
    for (Tried each : before) {
      boolean isAgain =
          at < after.size()
              && after.get(at).group() == each.group()
              && after.get(at).isShallow() == each.isShallow();
      if (isAgain) {
        kept.add(after.get(at++));
      } else {
        kept.add(isLicence ? each.unfounded() : each);
      }
    }
    return kept;
  }

  /**
   * The group that stands out most, with those next to it that are off the same way: these are not
   * so because of it, for it makes what is around it look off the other way. None if none does. All
   * are laid beside one share here: that of all others is the greater, the more are off alike.
   */
  private static boolean[] strongest(List<Tried> tried, boolean[] isFound) {
    List<Tried> out = new ArrayList<>();
    for (Tried each : tried) {
      if (each.isMarked() && each.p() <= CrossResult.ACCEPTED && !isFound[each.group()]) {
        out.add(each);
      }
    }
    out.sort(
        Comparator.comparingDouble((Tried each) -> each.standing())
            .thenComparingDouble(each -> -(double) each.hits() / each.of())
            .thenComparingInt(each -> -each.of()));
    boolean[] found = new boolean[out.isEmpty() ? 0 : isFound.length];
    for (Tried each : out) {
      if (each.isShallow() != out.get(0).isShallow()) {
        break;
      }
      found[each.group()] = true;
    }
    return found;
  }

  /** Which factor the logarithm of a depth over that of its neighbours is near to. */
  static byte way(double ratio) {
    return Math.abs(ratio + FACTOR) < NEAR ? SHALLOW : Math.abs(ratio - FACTOR) < NEAR ? DEEP : 0;
  }

  /** The depths of the wells of groups of one kind beside those around them. */
  private final class SlipWalk {
    private final IntBuffer own;
    private final IntBuffer codes;

    /** By place, the logarithm of its depth over that of its neighbours; NaN where they are few. */
    private final FloatBuffer ratios;

    /** By place, one of 32 bits for each group among its neighbours. */
    private final IntBuffer around;

    private final NearestWells walk;
    private final double[] theirs = new double[NEAREST];
    final boolean[] isFound;

    SlipWalk(IntBuffer own, int groups) throws IOException {
      this.own = own;
      isFound = new boolean[groups];
      codes = columns.ints(all.size());
      for (int at = 0; at < all.size(); at++) {
        codes.put(at, isOff.get(at) ? NearestWells.NEVER : own.get(at));
      }
      ratios = columns.floats(all.size());
      around = columns.ints(all.size());
      walk = new NearestWells(all, NEAREST, WITHIN, codes, licence, MOST_OF_LICENCE);
      for (int at = 0; at < all.size(); at++) {
        look(at);
      }
    }

    private void look(int at) {
      ratios.put(at, Float.NaN);
      if (own.get(at) < 0) {
        return;
      }
      int count = walk.nearest(at, own.get(at));
      int groups = 0;
      for (int n = 0; n < count; n++) {
        theirs[n] = depth.get(walk.near(n));
        groups |= 1 << own.get(walk.near(n));
      }
      around.put(at, groups);
      if (count >= LEAST_NEIGHBOURS) {
        ratios.put(at, (float) Math.log(depth.get(at) / Spread.median(theirs, count)));
      }
    }

    /** Takes groups out of the neighbours of all, and looks again where they were among them. */
    void takeOut(boolean[] found) {
      int bits = 0;
      for (int group = 0; group < found.length; group++) {
        isFound[group] |= found[group];
        bits |= found[group] ? 1 << group : 0;
      }
      for (int at = 0; at < all.size(); at++) {
        if (own.get(at) >= 0 && found[own.get(at)]) {
          codes.put(at, NearestWells.NEVER);
        }
      }
      for (int at = 0; at < all.size(); at++) {
        if ((around.get(at) & bits) != 0) {
          look(at);
        }
      }
    }

    ByteBuffer ways() throws IOException {
      ByteBuffer ways = columns.bytes(records);
      for (int at = 0; at < all.size(); at++) {
        ways.put(all.record(at), way(ratios.get(at)));
      }
      return ways;
    }

    List<Tried> tests() throws IOException {
      return new SlipTests(all, own, ratios, isFound, columns).all();
    }
  }
}
