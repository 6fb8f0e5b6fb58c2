package org.wellcurb.judgement;

import java.util.List;

/**
 * A working as a sheet shows it, so that it can be done again by hand.
 *
 * @param name name of the working
 * @param meaning what it is, in one line
 * @param formula the formula in words
 * @param withNumbers the formula with the record's numbers and units put in
 * @param result the result with its unit, or what it lacks
 * @param source where the formula comes from
 * @param lacking keys of entries that would give it, where it is not known
 * @param assumed what was taken for entries that the record leaves blank, as short statements
 */
public record WorkingShown(
    String name,
    String meaning,
    String formula,
    String withNumbers,
    String result,
    String source,
    List<String> lacking,
    List<String> assumed) {

  public WorkingShown {
    lacking = List.copyOf(lacking);
    assumed = List.copyOf(assumed);
  }
}
