package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.workings.Working;
import org.wellcurb.workings.WorkingCatalogue;

/** What a sheet prints of a working, done again by hand, gives the result that it prints. */
class ReplayTest {
  private static final long SEED = 20260118;

  @Test
  void printedSumsGiveThePrintedResults() throws Exception {
    Screener screener = new Screener(PackLoader.load("common-practice"), LocalDate.of(2026, 1, 1));
    List<WellRecord> records =
        new ArrayList<>(ReadRecords.in(Path.of("src/test/resources/good-wells")).records);
    records.addAll(ReadRecords.in(Path.of("src/test/resources/odd-wells/logs")).records);
    Random random = new Random(SEED);
    for (int i = 0; i < 900; i++) {
      GoodWell kind = GoodWell.values()[i % GoodWell.values().length];
      records.add(RecordReader.of(kind.form(kind + "-" + i, random)));
    }
    Map<String, Integer> done = new TreeMap<>();
    Map<String, String> wrong = new TreeMap<>();
    for (WellRecord record : records) {
      for (WorkingShown shown : screener.result(record).workings()) {
        String fault = fault(shown, done);
        if (!fault.isEmpty()) {
          wrong.putIfAbsent(shown.name(), fault + " (" + record.id() + ")");
        }
      }
    }
    assertEquals(Map.of(), wrong, "seed " + SEED);
    Set<String> never = new TreeSet<>();
    for (Working working : WorkingCatalogue.standard().workings()) {
      if (done.getOrDefault(working.name(), 0) < 3) {
        never.add(working.name());
      }
    }
    assertEquals(Set.of(), never, "too seldom known, seed " + SEED + ": " + done);
  }

  /**
   * What is wrong with the sum as printed; empty if nothing, or if it is no sum of exact figures.
   */
  private static String fault(WorkingShown shown, Map<String, Integer> done) {
    boolean isExact =
        shown.result().matches("-?\\d[^ ]*( [^ ]+| mg h/L)?")
            && !shown
                .withNumbers()
                .matches(".*(\\d( \\S+)? to -?\\d|or more|or less|does not apply|about).*");
    String said = shown.withNumbers() + " => " + shown.result();
    if (PrintedReading.isOf(shown.name())) {
      boolean isSaid = !shown.withNumbers().contains("not known");
      done.merge(shown.name(), isSaid ? 1 : 0, Integer::sum);
      return PrintedReading.isRight(shown.name(), shown.withNumbers(), shown.result()) ? "" : said;
    }
    if (!isExact) {
      return "";
    }
    double[] sum;
    double[] result;
    try {
      sum = PrintedSum.of(shown.withNumbers());
      result = PrintedSum.of(shown.result());
    } catch (RuntimeException e) {
      return said + ": " + e.getMessage();
    }
    done.merge(shown.name(), 1, Integer::sum);
    return Math.abs(sum[0] - result[0]) <= result[1] + sum[1]
        ? ""
        : said + ": done by hand it is " + sum[0] + ", not " + result[0] + " in SI";
  }
}
