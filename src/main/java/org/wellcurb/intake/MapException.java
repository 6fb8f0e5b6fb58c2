package org.wellcurb.intake;

import java.io.Serial;
import java.util.List;

/** A header map that cannot be used: everything that is wrong with it, in one go. */
public final class MapException extends Exception {
  @Serial private static final long serialVersionUID = 1L;

  private final transient List<MapProblem> problems;

  MapException(List<MapProblem> problems) {
    super(String.join("\n", problems.stream().map(MapProblem::text).toList()));
    this.problems = List.copyOf(problems);
  }

  /** What is wrong, in the order of the places. */
  public List<MapProblem> problems() {
    return problems;
  }
}
