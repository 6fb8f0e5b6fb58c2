package org.wellcurb.quantity;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What kind of amount a text should hold, so that it can be read without guessing.
 *
 * <p>Build one with {@link #of} and change it by the {@code with} methods; it is immutable.
 */
public final class Expected {
  private final Dimension dimension;
  private final boolean negative;
  private final boolean whole;
  private final boolean head;
  private final boolean upward;
  private final double least;
  private final double most;
  private final List<String> nouns;
  private final @Nullable Unit[] taken;

  private Expected(
      Dimension dimension,
      boolean negative,
      boolean whole,
      boolean head,
      boolean upward,
      double most,
      List<String> nouns) {
    this.dimension = dimension;
    this.negative = negative;
    this.whole = whole;
    this.head = head;
    this.upward = upward;
    this.most = most;
    this.nouns = List.copyOf(nouns);
    this.least = least(dimension, negative, most);
    this.taken = taken(dimension, head);
  }

  /** An amount of this dimension; those that cannot be negative start at 0. */
  public static Expected of(Dimension dimension, boolean negative) {
    return new Expected(
        dimension, negative, false, false, false, Double.POSITIVE_INFINITY, List.of());
  }

  /** The same, of which only whole numbers make sense; {@code nouns} may follow the number. */
  public Expected counting(List<String> nouns) {
    return new Expected(dimension, negative, true, head, upward, most, nouns);
  }

  /** The same, where a length is a head of water. */
  public Expected orHead() {
    return new Expected(dimension, negative, whole, true, upward, most, nouns);
  }

  /** The same, where a plus sign may mean above the datum: with one it is not read. */
  public Expected plusIsUnclear() {
    return new Expected(dimension, negative, whole, head, true, most, nouns);
  }

  /** The same, of which no value is beyond {@code most} SI units either way (positions). */
  public Expected within(double most) {
    return new Expected(dimension, negative, whole, head, upward, most, nouns);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The least that such an amount can be, in SI; minus infinity where there is none. */
  public double least() {
    return least;
  }

  /** The most that such an amount can be, in SI. */
  public double most() {
    return most;
  }

  /**
   * Where {@code <x} starts: 0 for amounts that cannot be negative, else minus infinity.
   *
   * @return the end in SI
   */
  double floor() {
    return negative ? Double.NEGATIVE_INFINITY : 0;
  }

  boolean whole() {
    return whole;
  }

  boolean plusUnclear() {
    return upward;
  }

  List<String> nouns() {
    return nouns;
  }

  /** Amounts that people write as fractions; {@code 115/230} volts is a pair, not a fraction. */
  boolean fractions() {
    return dimension.equals(Dimension.LENGTH)
        || dimension.equals(Dimension.VOLUME)
        || dimension.equals(Dimension.FLOW)
        || dimension.equals(Dimension.PRESSURE)
        || dimension.equals(Dimension.POWER)
        || dimension.equals(Dimension.MASS)
        || dimension.equals(Dimension.TIME)
        || dimension.equals(Dimension.NUMBER);
  }

  /**
   * The unit in which an amount written in {@code unit} is taken; null if that is of the wrong
   * dimension.
   */
  public @Nullable Unit taken(Unit unit) {
    return taken[unit.id()];
  }

  /**
   * What is wrong with an exact amount; {@link Note#NONE} if nothing is.
   *
   * @param si the value
   * @param unit what it was written in
   */
  public Note problem(double si, Unit unit) {
    if (si < least || si > most * (1 + 1e-12) || Double.isInfinite(si)) {
      return Note.IMPOSSIBLE;
    }
    boolean mustBeWhole = whole || unit.equals(Units.AWG);
    return mustBeWhole && si != Math.rint(si) ? Note.NOT_WHOLE : Note.NONE;
  }

  private static double least(Dimension dimension, boolean negative, double most) {
    if (dimension.equals(Dimension.TEMPERATURE)) {
      return 0;
    }
    return negative ? -most : 0;
  }

  private static @Nullable Unit[] taken(Dimension dimension, boolean head) {
    List<Unit> all = Units.all();
    @Nullable Unit[] taken = new @Nullable Unit[all.size()];
    for (Unit unit : all) {
      if (unit.dimension().equals(dimension) && !unit.equals(Units.PERCENT)) {
        taken[unit.id()] = unit;
      }
    }
    if (head) {
      taken[Units.FOOT.id()] = Units.FOOT_OF_WATER;
      taken[Units.METRE.id()] = Units.METRE_OF_WATER;
    }
    return taken;
  }
}
