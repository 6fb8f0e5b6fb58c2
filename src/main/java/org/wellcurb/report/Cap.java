package org.wellcurb.report;

/**
 * Every cap of the pages: how much they hold before they are cut. Exact counts are never cut, only
 * lists; and each page says where a cap cut it, and which file holds the rest.
 */
public enum Cap {
  /** Record sheets written, unless {@code --most-sheets} says otherwise. */
  SHEETS(500, "findings.csv"),
  /** Correction notices written, unless {@code --most-notices} says otherwise. */
  NOTICES(200, "findings.csv"),
  /** Records listed on the batch page. */
  RECORDS_ON_PAGE(1000, "records.csv"),
  /** Contractors listed on the batch page. */
  CONTRACTORS_ON_PAGE(200, "findings.csv"),
  /** Contractors in the grid of rules by contractors. */
  GRID_CONTRACTORS(10, "findings.csv"),
  /** Rules in the grid of rules by contractors. */
  GRID_RULES(20, "findings.csv"),
  /** Rows set aside that the batch page quotes. */
  SET_ASIDE_ON_PAGE(200, "set-aside.csv"),
  /** Inputs that the batch page describes. */
  INPUTS_ON_PAGE(200, "run.json"),
  /** Columns of inputs that the batch page describes. */
  COLUMNS_ON_PAGE(2000, "run.json"),
  /** Columns that the batch page names as not read as they were meant. */
  TROUBLES_ON_PAGE(30, "run.json"),
  /** Findings in one correction notice, which names no file: its holder gets no other. */
  FINDINGS_IN_NOTICE(500, "findings.csv"),
  /** Outcomes that change, listed in a rehearsal. */
  CHANGES_ON_PAGE(1000, "changes.csv"),
  /** Findings that changed since an earlier report, listed on its page. */
  SINCE_ON_PAGE(1000, "since.csv"),
  /** Lines of a table given beside the records that match nothing. */
  SIDE_LINES_ON_PAGE(100, "the table given"),
  /** Hints of each kind from the whole batch that the batch page shows. */
  CROSS_ON_PAGE(50, "crosscheck.json"),
  /** Groups, pairs and wells of each kind that crosscheck.json describes; all are counted. */
  CROSS_IN_FILE(1000, "findings.csv"),
  /** Records or entries that one such hint names. */
  CROSS_NAMED(6, "crosscheck.json"),
  /** Letters of one cell that a page quotes. */
  QUOTED_LETTERS(200, "set-aside.csv"),
  /** Letters of a file name made from a record's number, before what makes it unique. */
  NAME_LETTERS(60, "records.csv"),
  /** Records over which it is counted what would be most useful to ask for, drawn from all. */
  ASKS_COUNTED(20_000, "outcomes.csv (--outcomes)"),
  /** Entries to ask for that the batch page lists. */
  ASKS_ON_PAGE(50, "outcomes.csv (--outcomes)"),
  /** Rules that the batch page lists with what would tell them. */
  RULE_ASKS_ON_PAGE(50, "outcomes.csv (--outcomes)"),
  /** Entries that one such rule names. */
  RULE_ASKS_NAMED(6, "outcomes.csv (--outcomes)"),
  /** Licences, and zones, that the look at the whole batch tells apart. */
  NAMES_COMPARED(20_000, "records.csv"),
  /** Licences counted one by one; those met after are counted together. */
  LICENCES_COUNTED(20_000, "findings.csv");

  /** Put after a text that was cut. */
  public static final String ELLIPSIS = "...";

  private final int most;
  private final String rest;

  Cap(int most, String rest) {
    this.most = most;
    this.rest = rest;
  }

  /** How many, unless an option says otherwise. */
  public int most() {
    return most;
  }

  /** The file of the run that holds what is cut. */
  public String rest() {
    return rest;
  }

  /** The text, cut to so many letters and marked where it was longer. */
  public String cut(String text) {
    if (text.length() <= most) {
      return text;
    }
    int end = Character.isHighSurrogate(text.charAt(most - 1)) ? most - 1 : most;
    return text.substring(0, end) + ELLIPSIS;
  }
}
