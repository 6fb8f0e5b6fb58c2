package org.wellcurb.report;

import java.util.Set;
import org.wellcurb.judgement.Explanation;

/**
 * A finding as a sheet shows it.
 *
 * @param letter the letter that names it on the page
 * @param anchor its place on the page
 * @param kind kind of finding, in lower case
 * @param heading key of the words for that kind: an advisory is of common practice, or of a text
 * @param ruleId id of the rule
 * @param entry key of the entry that decided; may be empty
 * @param reads keys of the entries that the rule holds against something
 * @param whose who answers for it, with the licence
 * @param title what the rule asks
 * @param sentence what is wrong
 * @param near how near to the limit, where rounding of the written figure could turn it; may be
 *     empty
 * @param why the requirement, with numbers, and how it was judged
 * @param because why it matters
 * @param remedy how to put it right
 * @param atOnce what must be done before that; empty where it can wait
 * @param source where the limit is written
 * @param reading what may have been meant; may be empty
 * @param settled how someone settled it; empty while it is open
 */
public record FindingView(
    String letter,
    String anchor,
    String kind,
    String heading,
    String ruleId,
    String entry,
    Set<String> reads,
    String whose,
    String title,
    String sentence,
    String near,
    Explanation why,
    String because,
    String remedy,
    String atOnce,
    SourceLine source,
    String reading,
    String settled) {
  /** The heading of an advisory that a code or another text recommends. */
  static final String OF_TEXT = "kind.advisory.text";

  public FindingView {
    reads = Set.copyOf(reads);
  }
}
