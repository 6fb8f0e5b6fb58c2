package org.wellcurb.screening;

import org.wellcurb.judgement.Explanation;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Rule;

/**
 * One rule on one record, explained.
 *
 * @param rule the rule
 * @param outcome the outcome that counts (waived where a variance names the rule)
 * @param explanation why, before any waiver
 * @param standsFor id of the rule of the same subject whose outcome stands in this one's place;
 *     empty where this one stands
 * @param variance reference of the variance that waives it; empty if none
 */
public record RuleResult(
    Rule rule, Outcome outcome, Explanation explanation, String standsFor, String variance) {}
