package org.wellcurb.report;

import java.util.Set;

/** Names of what a run writes at the top of its folder. */
public final class Outputs {
  public static final String INDEX = "index.html";
  public static final String SHEETS = "sheets";
  public static final String NOTICES = "notices";
  public static final String FINDINGS_CSV = "findings.csv";
  public static final String RULES_CSV = "rules.csv";
  public static final String RECORDS_CSV = "records.csv";
  public static final String OUTCOMES_CSV = "outcomes.csv";
  public static final String FINDINGS_JSON = "findings.json";
  public static final String FINDINGS_GEOJSON = "findings.geojson";
  public static final String VARIANCES_CSV = "variances.csv";
  public static final String SET_ASIDE_CSV = "set-aside.csv";
  public static final String SET_ASIDE = "set-aside";
  public static final String CROSSCHECK_JSON = "crosscheck.json";
  public static final String CHANGES_CSV = "changes.csv";
  public static final String CHANGES_GEOJSON = "changes.geojson";
  public static final String MARKS = "marks.txt";
  public static final String SINCE_CSV = "since.csv";
  public static final String SINCE = "since.html";
  public static final String EXPLAINED_CSV = "explained.csv";
  public static final String RUN_JSON = "run.json";

  private Outputs() {}

  /** All of them: an earlier report holds nothing else at its top. */
  public static final Set<String> ALL =
      Set.of(
          INDEX,
          SHEETS,
          NOTICES,
          FINDINGS_CSV,
          RULES_CSV,
          RECORDS_CSV,
          OUTCOMES_CSV,
          FINDINGS_JSON,
          FINDINGS_GEOJSON,
          VARIANCES_CSV,
          SET_ASIDE_CSV,
          SET_ASIDE,
          CROSSCHECK_JSON,
          CHANGES_CSV,
          MARKS,
          SINCE_CSV,
          SINCE,
          CHANGES_GEOJSON,
          EXPLAINED_CSV,
          RUN_JSON);
}
