package org.wellcurb.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Lays the counts of a report, however long, beside each other: rows of the input, run.json,
 * records.csv, findings.csv, set-aside.csv and rules.csv must tell the same.
 */
public final class Reconcile {
  private static final String[] OUTCOMES = {
    "meets", "falls_short", "cannot_tell", "not_applicable", "waived"
  };
  private static final String[] NAMES = {
    "meets", "fallsShort", "cannotTell", "notApplicable", "waived"
  };
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private Reconcile() {}

  /** REPORT TABLE, the table that it was made of. */
  public static void main(String[] arguments) throws IOException {
    Path report = Path.of(arguments[0]);
    JsonNode run = new ObjectMapper().readTree(report.resolve("run.json").toFile());
    JsonNode counts = run.findValue("rowsRead") == null ? run : run.findParent("rowsRead");
    long rows = counts.path("rowsRead").asLong();
    long screened = counts.path("screened").asLong();
    same("rows of the table", lines(Path.of(arguments[1]), null), "rowsRead", rows);
    long aside = lines(report.resolve("set-aside.csv"), null);
    same("screened and set aside", screened + aside, "rowsRead", rows);
    long[] ofRecords = new long[OUTCOMES.length];
    same("records.csv", lines(report.resolve("records.csv"), ofRecords), "screened", screened);
    long findings = lines(report.resolve("findings.csv"), null);
    long[] ofRules = new long[OUTCOMES.length];
    long rules = lines(report.resolve("rules.csv"), ofRules);
    long all = 0;
    for (int i = 0; i < OUTCOMES.length; i++) {
      same("records.csv " + OUTCOMES[i], ofRecords[i], "rules.csv", ofRules[i]);
      same("rules.csv " + OUTCOMES[i], ofRules[i], "run.json", counts.path(NAMES[i]).asLong());
      all += ofRules[i];
    }
    same("findings.csv", findings, "falls_short", ofRules[1]);
    same("rules times screened", rules * screened, "all outcomes", all);
  }

  private static void same(String what, long count, String other, long counted) {
    if (count != counted) {
      throw new IllegalStateException(what + ": " + count + ", but " + other + ": " + counted);
    }
    System.out.println(what + " = " + other + " = " + count);
  }

  /** Rows of a table; adds up the columns of outcomes. */
  private static long lines(Path table, long @org.jspecify.annotations.Nullable [] sums)
      throws IOException {
    long lines = 0;
    try (CSVParser parser = CSVParser.parse(table, StandardCharsets.UTF_8, FORMAT)) {
      for (CSVRecord row : parser) {
        lines++;
        for (int i = 0; sums != null && i < OUTCOMES.length; i++) {
          sums[i] += Long.parseLong(row.get(OUTCOMES[i]));
        }
      }
    }
    return lines;
  }
}
