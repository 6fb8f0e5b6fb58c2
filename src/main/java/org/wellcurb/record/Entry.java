package org.wellcurb.record;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Interval;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;

/**
 * One item of a record, as the catalogue describes it.
 *
 * @param index place in the catalogue
 * @param key dotted key, such as {@code pump.intake_depth}
 * @param kind what it holds
 * @param usUnit unit of a bare number where units are US; null for words
 * @param metricUnit unit of a bare number where units are metric; null for words
 * @param plausible the range that real wells stay in, in SI; {@link Interval#ALL} where none is
 *     given
 * @param choices words that it may hold, for choices
 * @param spellings for each choice the other ways in which it may be written
 * @param part the part of the form
 * @param datum what a depth is measured from
 * @param meaning help in one line, may be empty
 */
public record Entry(
    int index,
    String key,
    Kind kind,
    @Nullable Unit usUnit,
    @Nullable Unit metricUnit,
    Interval plausible,
    List<String> choices,
    List<List<String>> spellings,
    Part part,
    Datum datum,
    String meaning) {

  /** The unit of a bare number in this unit system; null for words. */
  public @Nullable Unit unit(UnitSystem system) {
    return system == UnitSystem.METRIC ? metricUnit : usUnit;
  }

  /**
   * Place of a choice in {@link #choices()}, by its word or another spelling, without regard to
   * case and outer blanks; -1 if none.
   */
  public int choice(String text) {
    String trimmed = text.trim();
    for (int i = 0; i < choices.size(); i++) {
      if (choices.get(i).equalsIgnoreCase(trimmed)
          || spellings.get(i).stream().anyMatch(trimmed::equalsIgnoreCase)) {
        return i;
      }
    }
    return -1;
  }

  /** Below zero only where real wells are: levels above the ground, casings in pits. */
  public boolean mayBeNegative() {
    return switch (kind) {
      case TEMPERATURE, AWG, ANGLE, DATE -> true;
      case LENGTH, NUMBER -> plausible.lo() < 0;
      default -> false;
    };
  }

  /**
   * An amount as people say it: one that reaches down to nothing only because it cannot be less has
   * no lower end. {@code <80 psi} is 80 psi or less, not 0 to 80.
   */
  public Interval said(Interval si) {
    boolean isOpen = !mayBeNegative() && si.lo() <= 0 && si.hi() > 0 && Double.isFinite(si.hi());
    return isOpen ? new Interval(Double.NEGATIVE_INFINITY, si.hi()) : si;
  }

  /** Of the key alone, which no other entry of a catalogue has: quick, where entries are kept. */
  @Override
  public int hashCode() {
    return key.hashCode();
  }
}
