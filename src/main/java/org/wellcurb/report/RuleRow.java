package org.wellcurb.report;

/**
 * One rule of one pack on the batch page.
 *
 * @param pack id of the pack that judged
 * @param ruleId id of the rule
 * @param title what the rule asks
 * @param kind kind of finding, in lower case
 * @param meets records that meet it
 * @param fallsShort records that fall short of it
 * @param cannotTell records of which it cannot be told
 * @param notApplicable records to which it does not apply
 * @param waived records for which it is waived
 * @param rate share of falling short among those that could be told
 * @param bar the share as a bar with its interval, as SVG
 */
public record RuleRow(
    String pack,
    String ruleId,
    String title,
    String kind,
    long meets,
    long fallsShort,
    long cannotTell,
    long notApplicable,
    long waived,
    String rate,
    String bar) {}
