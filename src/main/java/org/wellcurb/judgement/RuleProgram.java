package org.wellcurb.judgement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;

/**
 * What is needed to judge one rule.
 *
 * @param when when it applies; null if always
 * @param texts its texts with the days on which they are in force; one text without days where the
 *     rule is not dated
 * @param judgedBy which day decides the text
 * @param omission true for a rule whose shortfall is an omission (a repair makes none)
 */
public record RuleProgram(
    @Nullable Formula when, List<DatedText> texts, JudgedBy judgedBy, boolean omission) {
  public RuleProgram {
    texts = List.copyOf(texts);
  }
}
