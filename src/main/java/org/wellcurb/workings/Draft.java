package org.wellcurb.workings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;

/** A working in the making, so that each is written down in the order in which it is explained. */
final class Draft {
  private final String name;
  private final Unit usUnit;
  private final Unit metricUnit;
  private final String meaning;
  private String formula = "";
  private String source = "common practice";
  private final List<Input> inputs = new ArrayList<>();
  private final List<String> figures = new ArrayList<>();
  private final List<Draft> steps = new ArrayList<>();
  private final List<Working.Function> stepFunctions = new ArrayList<>();
  private List<Turn> turns = List.of();
  private Working.@Nullable Function greatest;
  private @Nullable IntervalFunction over;

  private Draft(String name, Unit usUnit, Unit metricUnit, String meaning) {
    this.name = name;
    this.usUnit = usUnit;
    this.metricUnit = metricUnit;
    this.meaning = meaning;
  }

  static Draft of(String name, Unit usUnit, Unit metricUnit, String meaning) {
    return new Draft(name, usUnit, metricUnit, meaning);
  }

  Draft formula(String formula) {
    this.formula = formula;
    return this;
  }

  Draft source(String source) {
    this.source = source;
    return this;
  }

  /** Adds inputs, in the order that the function takes them. */
  Draft reads(Input... more) {
    inputs.addAll(List.of(more));
    return this;
  }

  Draft reads(List<Input> more) {
    inputs.addAll(more);
    return this;
  }

  /** Adds figures, which the function takes after all inputs. */
  Draft figures(String... names) {
    figures.addAll(List.of(names));
    return this;
  }

  /** A value on the way, which the formula calls by this name. */
  Draft step(String step, Unit us, Unit metric, Working.Function by) {
    steps.add(new Draft(step, us, metric, step));
    stepFunctions.add(by);
    return this;
  }

  /** A value on the way of which only the least and the greatest are known. */
  Draft step(String step, Unit us, Unit metric, Working.Function least, Working.Function greatest) {
    steps.add(new Draft(step, us, metric, step).greatest(greatest));
    stepFunctions.add(least);
    return this;
  }

  Draft turns(Turn... turns) {
    this.turns = List.of(turns);
    return this;
  }

  /** The greatest value at a point, where even exact inputs leave a range. */
  Draft greatest(Working.Function greatest) {
    this.greatest = greatest;
    return this;
  }

  Draft over(IntervalFunction over) {
    this.over = over;
    return this;
  }

  /** The working, with its arithmetic. */
  Working by(Working.Function function) {
    List<Working> ways = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      Draft step = steps.get(i);
      step.inputs.addAll(inputs);
      step.figures.addAll(figures);
      step.turns = turns;
      ways.add(step.by(stepFunctions.get(i)));
    }
    return new Working(
        name,
        usUnit,
        metricUnit,
        meaning,
        formula,
        source,
        inputs,
        figures,
        ways,
        turns,
        function,
        greatest,
        over);
  }
}
