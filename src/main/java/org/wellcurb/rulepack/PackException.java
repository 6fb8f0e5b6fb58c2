package org.wellcurb.rulepack;

import java.util.List;
import java.util.stream.Collectors;

/** A pack that cannot be used, with everything that is wrong with it. */
public final class PackException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<PackProblem> problems;

  /**
   * @param problems at least one, in the order of the files and of the places in them
   */
  public PackException(List<PackProblem> problems) {
    super(problems.stream().map(PackProblem::text).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  public List<PackProblem> problems() {
    return problems;
  }

  /** All problems with the lines that they stand in, for a terminal. */
  public String shown() {
    return problems.stream().map(PackProblem::shown).collect(Collectors.joining("\n"));
  }
}
