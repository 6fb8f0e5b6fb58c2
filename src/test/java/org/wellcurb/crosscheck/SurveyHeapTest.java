package org.wellcurb.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;

/**
 * The look at a batch needs no more heap, the more records there are, beside a bit a record here
 * and there: their numbers are in files.
 */
class SurveyHeapTest {
  private static final int RECORDS = 500_000;

  /** Megabytes that Java, the program and its buffers of fixed size take, with two threads. */
  private static final int ANY_RUN = 28;

  /** Bytes a record: in 8 bytes each a number of one column would not fit. */
  private static final int BYTES = 4;

  @TempDir Path folder;

  @Test
  void rowsGoThroughInSoMuchHeap() throws Exception {
    long heap = ANY_RUN + (long) BYTES * RECORDS / 1_000_000;
    Process process =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx" + heap + "m",
                    "-XX:+UseSerialGC",
                    "-cp",
                    System.getProperty("java.class.path"),
                    Look.class.getName(),
                    folder.toString()))
            .inheritIO()
            .start();
    assertEquals(true, process.waitFor(10, TimeUnit.MINUTES));
    assertEquals(0, process.exitValue(), "in " + heap + " MB");
  }

  /** The look at so many wells, in a process of its own. */
  static final class Look {
    private Look() {}

    /** The folder to keep the rows in. */
    public static void main(String[] arguments) throws IOException {
      Catalogue catalogue = Catalogue.standard();
      SurveyPart one = new SurveyPart(catalogue, 0);
      List<WellRecord> forms = new ArrayList<>();
      for (int licence = 0; licence < 500; licence++) {
        Map<String, String> form =
            Map.of(
                "record.id",
                "W",
                "driller.licence",
                "D-" + licence,
                "dates.completed",
                "2019-04-01",
                "well.depth",
                "200",
                "water.static_level",
                "30",
                "water.yield",
                "10");
        forms.add(RecordReader.of(form).copy());
      }
      Path file = Path.of(arguments[0]).resolve("survey");
      try (SurveyFile survey = new SurveyFile(file, catalogue, RuleSet.NONE, 1000)) {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < RECORDS; i += forms.size()) {
          for (WellRecord form : forms) {
            Area.add(one, form, false, true, 0, new byte[0]);
          }
          // To read as many forms would take most of the time: numbers and figures are put in.
          ByteBuffer rows = one.rows();
          int length = SurveyRow.length(0);
          for (int at = 0; at < rows.position(); at += length) {
            rows.putLong(at + SurveyRow.ID, random.nextLong());
            rows.putFloat(at + SurveyRow.LATITUDE, (float) (44 + random.nextDouble()));
            rows.putFloat(at + SurveyRow.LONGITUDE, (float) (-76 + random.nextDouble()));
            for (int field = 0; field < Field.values().length; field++) {
              float figure = 5 * (1 + random.nextInt(60));
              rows.putFloat(at + SurveyRow.VALUES + 4 * field, figure);
              rows.putFloat(at + SurveyRow.WRITTEN + 4 * field, figure);
            }
            for (int group = SurveyRow.GROUPS; group < SurveyRow.LATITUDE; group += 4) {
              rows.putInt(at + group, random.nextInt(RECORDS) | 1);
            }
            rows.putInt(at + SurveyRow.WHOLE, random.nextInt(RECORDS) | 1);
          }
          survey.append(one, "wells.csv");
          one.clear();
        }
        CrossResult result = new CrossCheck(survey, catalogue, 100).run(2);
        if (result.records() != RECORDS) {
          throw new IllegalStateException("records: " + result.records());
        }
      }
    }
  }
}
