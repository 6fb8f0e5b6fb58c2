package org.wellcurb.workings;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * An entry that a working reads.
 *
 * @param key key of the entry
 * @param need whether the working can do without it
 * @param take which number of the entry the function is given
 * @param code for {@link Take#TEXT_CODE}, what numbers the text; else null
 * @param besides keys of entries of which any, where it is given, makes this one needed: one that
 *     is optional before all that only help (a liner of which the depths are given takes its
 *     diameter), one that is helpful among those, and else it is none of them
 */
public record Input(
    String key, Need need, Take take, @Nullable TextCode code, List<String> besides) {

  public Input {
    besides = List.copyOf(besides);
  }

  Input(String key, Need need, Take take, @Nullable TextCode code) {
    this(key, need, take, code, List.of());
  }

  /** Whether a working can do without an input. */
  public enum Need {
    /**
     * Where it is blank the working is unknown and names it; where it is n/a the working is void.
     */
    REQUIRED,
    /**
     * One of several that would do: where it is blank or n/a the function is given NaN, and where
     * the working then cannot be known it names this among the entries that would give it.
     */
    HELPFUL,
    /** Where it is blank or n/a the function is given NaN and goes by its stated default. */
    OPTIONAL
  }

  /** Which number of an entry a function is given. */
  public enum Take {
    /** The amount in SI, the place of a choice, 1 or 0, the day. */
    VALUE,
    /**
     * The size of a casing: where it is nominal a table tells the true one, and between two sizes
     * of a table there is nothing, so that a range says no more than a blank.
     */
    SIZE,
    /** Half a unit of its last written decimal place, in SI: a single number; 0 where none. */
    HALF_PLACE,
    /** The number that {@link Input#code} gives to its text, or all that it may be if unsaid. */
    TEXT_CODE,
    /** Of the layers of the log: where they begin. */
    LOG_TOP,
    /** Of the layers of the log: where they end. */
    LOG_BOTTOM,
    /** Of the layers of the log: what they leave out. */
    LOG_GAP,
    /** Of the layers of the log: by how much one is upside down. */
    LOG_OVERTURN
  }

  public static Input required(String key) {
    return new Input(key, Need.REQUIRED, Take.VALUE, null);
  }

  public static Input helpful(String key) {
    return new Input(key, Need.HELPFUL, Take.VALUE, null);
  }

  public static Input optional(String key) {
    return new Input(key, Need.OPTIONAL, Take.VALUE, null);
  }

  /** Optional, but needed first where one of these entries is given. */
  static Input neededBeside(String key, String... besides) {
    return new Input(key, Need.OPTIONAL, Take.VALUE, null, List.of(besides));
  }

  /** Helpful where one of these entries is given, and optional elsewhere. */
  static Input helpfulBeside(String key, String... besides) {
    return new Input(key, Need.HELPFUL, Take.VALUE, null, List.of(besides));
  }

  /** Whether it is needed before all that only help, given which entries have a figure. */
  public boolean isNeededFirst(Predicate<String> isGiven) {
    return need == Need.OPTIONAL && besides.stream().anyMatch(isGiven);
  }

  /** Whether it is among those that help, given which entries have a figure. */
  public boolean isHelpful(Predicate<String> isGiven) {
    return need == Need.HELPFUL && (besides.isEmpty() || besides.stream().anyMatch(isGiven));
  }

  /** A size of a table: a range of it is as good as nothing. */
  public static Input size(String key) {
    return new Input(key, Need.REQUIRED, Take.SIZE, null);
  }

  /** How finely an entry was written. */
  public static Input halfPlace(String key) {
    return new Input(key, Need.OPTIONAL, Take.HALF_PLACE, null);
  }

  /** A text, by its number. */
  public static Input text(String key, TextCode code) {
    return new Input(key, Need.HELPFUL, Take.TEXT_CODE, code);
  }

  /** The number of a text in lower case; NaN for an input that is not {@link Take#TEXT_CODE}. */
  public double number(String folded) {
    return code == null ? Double.NaN : code.of(folded);
  }

  /** {@link TextCode#leastUnsaid}; NaN for an input that is not {@link Take#TEXT_CODE}. */
  public double leastUnsaid() {
    return code == null ? Double.NaN : code.leastUnsaid();
  }

  /** {@link TextCode#greatestUnsaid}; NaN for an input that is not {@link Take#TEXT_CODE}. */
  public double greatestUnsaid() {
    return code == null ? Double.NaN : code.greatestUnsaid();
  }

  public boolean isRequired() {
    return need == Need.REQUIRED;
  }
}
