package org.wellcurb.report;

import org.wellcurb.judgement.Explanation;

/**
 * A finding as a sheet shows it.
 *
 * @param letter the letter that names it on the page
 * @param anchor its place on the page
 * @param kind kind of finding, in lower case
 * @param ruleId id of the rule
 * @param title what the rule asks
 * @param sentence what is wrong
 * @param near how near to the limit, where rounding of the written figure could turn it; may be
 *     empty
 * @param why the requirement, with numbers, and how it was judged
 * @param because why it matters
 * @param remedy how to put it right
 * @param source where the limit is written
 * @param reading what may have been meant; may be empty
 * @param settled how someone settled it; empty while it is open
 */
public record FindingView(
    String letter,
    String anchor,
    String kind,
    String ruleId,
    String title,
    String sentence,
    String near,
    Explanation why,
    String because,
    String remedy,
    SourceLine source,
    String reading,
    String settled) {}
