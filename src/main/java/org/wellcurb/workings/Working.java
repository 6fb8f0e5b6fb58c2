package org.wellcurb.workings;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;

/**
 * A value computed from entries, which packs name as {@code workings.NAME}.
 *
 * <p>Over ranges it is evaluated at every corner of its inputs (and at the turning points that lie
 * inside), never over other workings; so each working reads entries only, and shares code with
 * others as plain functions. It is unknown where a required input is not known, and where the
 * function gives NaN at any of these points.
 *
 * @param name what packs call it
 * @param usUnit unit it is printed in where the record is in US units; also gives the dimension
 * @param metricUnit unit it is printed in where the record is metric
 * @param meaning one line: what it is
 * @param formula the formula with entry keys, names of figures and names of steps in braces, such
 *     as {@code {water.pumping_level} - {water.static_level}}; printed with the numbers put in
 * @param source where the formula comes from, or {@code common practice}
 * @param inputs the entries that it reads, in the order that the function takes them
 * @param figures names of the {@link Figure figures} that it reads, in the order that the function
 *     takes them after the inputs
 * @param steps what is computed on the way and stands in the formula by its name, each as a working
 *     over the same inputs and figures; may be empty
 * @param turns turning points, may be empty
 * @param function the arithmetic; where {@code greatest} is given, the least value at a point
 * @param greatest the greatest value at a point, for a working that is a range even where all its
 *     inputs are exact (the range is then from the least of {@code function} to the greatest of
 *     this, over all corners); null for the others
 * @param over what replaces corners and turns; null for nearly all
 */
public record Working(
    String name,
    Unit usUnit,
    Unit metricUnit,
    String meaning,
    String formula,
    String source,
    List<Input> inputs,
    List<String> figures,
    List<Working> steps,
    List<Turn> turns,
    Function function,
    @Nullable Function greatest,
    @Nullable IntervalFunction over) {

  public Working {
    inputs = List.copyOf(inputs);
    figures = List.copyOf(figures);
    steps = List.copyOf(steps);
    turns = List.copyOf(turns);
  }

  /** By its name: to make ready a hash of all parts takes longer than one run saves by it. */
  @Override
  public int hashCode() {
    return name.hashCode();
  }

  /** The arithmetic of a working at one point. */
  @FunctionalInterface
  public interface Function {
    /**
     * @param x the inputs in SI, then the figures in SI. Depths are below ground. A choice is its
     *     place in the catalogue, yes-no is 1 or 0, a date is days since 1970-01-01. NaN stands for
     *     an optional input that is not given. Not to be changed or kept.
     * @return the value in SI; NaN where it cannot be known from these inputs; may be infinite
     */
    double at(double[] x);
  }

  /** The step of this name; null if there is none. */
  public @Nullable Working step(String step) {
    for (Working each : steps) {
      if (each.name().equals(step)) {
        return each;
      }
    }
    return null;
  }

  public Dimension dimension() {
    return usUnit.dimension();
  }

  /** The unit it is printed in. */
  public Unit unit(UnitSystem system) {
    return system == UnitSystem.METRIC ? metricUnit : usUnit;
  }
}
