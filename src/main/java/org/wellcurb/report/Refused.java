package org.wellcurb.report;

/**
 * A line of a table given beside the records that was not applied to the record it names.
 *
 * @param place name of the table and line in it, such as {@code a.csv:2}
 * @param what record and entry or rule that the line names, and what it writes
 * @param why why it was not applied
 */
public record Refused(String place, String what, Why why) {

  /** Why a line was not applied; in the order in which the gravest is kept. */
  public enum Why {
    OTHER_PLACE(
        "refused.other_place", "its number stands in the batch, but not in that file and row"),
    REPEATED("refused.repeated", "its number stands on several rows; give file and row"),
    OTHER_LICENCE("refused.other_licence", "the record names another licence than the table"),
    NOT_ASKED(
        "refused.not_asked",
        "no point of a notice asks for this entry of this record; the office mends it in the"
            + " records"),
    TWO_ANSWERS("refused.two_answers", "another line answers the same otherwise; leave one"),
    UNREADABLE("refused.unreadable", "it cannot be read"),
    NOTHING("refused.nothing", "it says that nothing is known"),
    NOT_APPLICABLE(
        "refused.not_applicable",
        "it says n/a where the record has a value, or where the entry always applies"),
    LESS("refused.less", "it says less than the record does"),
    NO_SAMPLE(
        "refused.no_sample",
        "a result is taken with the day of its sample (later than the one on record) and the"
            + " laboratory; fill in sampled and laboratory"),
    OPEN(
        "refused.open",
        "it is a range or a bound by which it cannot be told what was found; give the figure"),
    CASE("refused.case", "its number differs in case from one of the batch"),
    OPEN_QUOTE("refused.open_quote", "a quote is opened and never closed; close it"),
    AFTER_QUOTE(
        "refused.after_quote", "letters follow a closing quote; write a quote within a cell twice"),
    CELLS(
        "refused.cells",
        "it has not as many cells as the header; look for a comma too many or too few"),
    NO_RECORD("refused.no_record", "it names no record"),
    NO_ENTRY("refused.no_entry", "there is no such entry; blank --as csv prints all entries"),
    RECORD_ID(
        "refused.record_id",
        "what a form says of itself (its number, place, part and variances) cannot be corrected"
            + " so; the office mends it in the records"),
    BLANK(
        "refused.blank", "a cell is blank; say which finding, what was decided, by whom and when"),
    NO_DAY("refused.no_day", "its date is no day such as 2026-01-31"),
    LATER("refused.later", "its date is after the as-of date"),
    TWO_DECISIONS("refused.two_decisions", "another line settles the same; leave one");

    private final String key;
    private final String label;

    Why(String key, String label) {
      this.key = key;
      this.label = label;
    }

    /** As the summary says it. */
    public String label() {
      return label;
    }

    /** Key of the words of the page. */
    public String key() {
      return key;
    }
  }
}
