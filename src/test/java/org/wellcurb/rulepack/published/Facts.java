package org.wellcurb.rulepack.published;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The facts read in the published texts, one a row, that the packs were written from. */
final class Facts {
  private static final List<CSVRecord> ROWS = all();

  /** The rows that some test has held a rule to so far. */
  private static final Set<CSVRecord> STATED = ConcurrentHashMap.newKeySet();

  private Facts() {}

  /** What was known from memory only and has been read since counts as read. */
  private static List<CSVRecord> all() {
    List<CSVRecord> since = read("read-since.csv");
    Set<String> readSince = since.stream().map(Facts::about).collect(Collectors.toSet());
    Stream<CSVRecord> before =
        read("regulations.csv").stream()
            .filter(row -> !(isFromMemory(row) && readSince.contains(about(row))));
    return Stream.concat(before, since.stream()).toList();
  }

  private static String about(CSVRecord row) {
    return row.get("jurisdiction") + "|" + row.get("code_section") + "|" + row.get("subject");
  }

  static List<CSVRecord> rows() {
    return ROWS;
  }

  /** Forgets which rows were stated, so that what is run next decides alone. */
  static void forget() {
    STATED.clear();
  }

  /** True if a test has held a rule to this row since {@link #forget}. */
  static boolean isStated(CSVRecord row) {
    return STATED.contains(row);
  }

  /**
   * Holds that a row of this section, about this subject, states this figure.
   *
   * @param jurisdiction as the facts name it
   * @param section section of the code
   * @param subject part of the row's subject
   * @param figure the figure as the row has it, such as {@code 50 ft}
   */
  static void state(String jurisdiction, String section, String subject, String figure) {
    List<CSVRecord> about =
        ROWS.stream()
            .filter(row -> row.get("jurisdiction").equals(jurisdiction))
            .filter(row -> row.get("code_section").equals(section))
            .filter(row -> holds(row.get("subject"), subject))
            .toList();
    List<CSVRecord> saying = about.stream().filter(row -> says(row, figure)).toList();
    STATED.addAll(saying);
    if (saying.isEmpty()) {
      throw new AssertionError(
          jurisdiction
              + " "
              + section
              + ", "
              + subject
              + ": no row states "
              + figure
              + "; there are "
              + about.stream().map(row -> row.get("limit_value") + " " + row.get("unit")).toList());
    }
  }

  private static boolean says(CSVRecord row, String figure) {
    return !isFromMemory(row)
        && holds((row.get("limit_value") + " " + row.get("unit")).trim(), figure);
  }

  static boolean isFromMemory(CSVRecord row) {
    return row.get("read_from(stored text|memory)").equals("memory");
  }

  private static boolean holds(String text, String part) {
    return text.toLowerCase(Locale.ROOT).contains(part.toLowerCase(Locale.ROOT));
  }

  /** The rows of a table under {@code published}. */
  static List<CSVRecord> read(String name) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in = Facts.class.getResourceAsStream("/published/" + name);
        CSVParser parser =
            CSVParser.parse(Objects.requireNonNull(in, name), StandardCharsets.UTF_8, format)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
