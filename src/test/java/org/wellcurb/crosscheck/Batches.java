package org.wellcurb.crosscheck;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.RecordReader;

/** Records made one by one, and the look at them all. */
final class Batches {
  private static final byte[] NONE = {};
  static final int MOST_NAMES = 1000;

  final List<Map<String, String>> records = new ArrayList<>();

  /** Adds a record of these entries: key, value, key, value, ... */
  Map<String, String> add(String... entries) {
    Map<String, String> record = new LinkedHashMap<>();
    for (int i = 0; i < entries.length; i += 2) {
      record.put(entries[i], entries[i + 1]);
    }
    records.add(record);
    return record;
  }

  CrossResult check(Path folder) throws IOException {
    return check(folder, records, false, 1000);
  }

  /**
   * Looks at records.
   *
   * @param isByFile whether each stands in the input that its entry {@code file} names
   * @param most that is described of each kind
   */
  static CrossResult check(
      Path folder, List<Map<String, String>> records, boolean isByFile, int most)
      throws IOException {
    Path file = folder.resolve("survey");
    Catalogue catalogue = Catalogue.standard();
    SurveyPart part = new SurveyPart(catalogue, 0);
    try (SurveyFile survey = new SurveyFile(file, catalogue, RuleSet.NONE, MOST_NAMES)) {
      for (Map<String, String> record : records) {
        Map<String, String> given = new LinkedHashMap<>(record);
        String input = isByFile ? given.remove("file") : "a.csv";
        Area.add(part, RecordReader.of(given), false, true, 0, NONE);
        survey.append(part, input);
        part.clear();
      }
      return new CrossCheck(survey, catalogue, most).run();
    } finally {
      Files.deleteIfExists(file);
    }
  }
}
