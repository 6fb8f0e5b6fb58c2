package org.wellcurb.report;

import java.util.List;

/**
 * One rule in the list of all outcomes.
 *
 * @param ruleId id of the rule
 * @param title what the rule asks
 * @param letter letter of its finding; empty if it has none
 * @param requirement the requirement as a sentence
 * @param numbers the requirement with the record's numbers; may be empty
 * @param needs what would settle it, as pages call the entries
 * @param ask what a person has to judge; may be empty
 * @param remarks how it was judged, whole sentences
 * @param source where it is written
 * @param variance reference of the variance that waives it; may be empty
 * @param standsFor title of the rule of the same subject that stands in its place; may be empty
 */
public record OutcomeLine(
    String ruleId,
    String title,
    String letter,
    String requirement,
    String numbers,
    List<String> needs,
    String ask,
    List<String> remarks,
    SourceLine source,
    String variance,
    String standsFor) {

  public OutcomeLine {
    needs = List.copyOf(needs);
    remarks = List.copyOf(remarks);
  }
}
