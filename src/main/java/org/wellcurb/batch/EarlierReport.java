package org.wellcurb.batch;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.RecordMark;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.SinceCsv.Line;
import org.wellcurb.rulepack.FindingKind;

/** A report that was written before, to lay this one beside. */
final class EarlierReport {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
  private static final List<String> NEEDED =
      List.of(Outputs.FINDINGS_CSV, Outputs.RECORDS_CSV, Outputs.RUN_JSON);

  private final Path folder;
  private final String asOf;
  private final String version;
  private final Map<String, String> packs;

  /** Rules that ran, by pack and rule; empty where the report does not say. */
  private final Set<String> rules;

  private EarlierReport(
      Path folder, String asOf, String version, Map<String, String> packs, Set<String> rules) {
    this.rules = rules;
    this.folder = folder;
    this.asOf = asOf;
    this.version = version;
    this.packs = packs;
  }

  /** What is done with each finding. */
  @FunctionalInterface
  interface Each {
    void on(Line line) throws IOException;
  }

  /**
   * Opens an earlier report.
   *
   * @param folder null where none is given
   */
  static @Nullable EarlierReport open(@Nullable Path folder) throws RunFailure {
    if (folder == null) {
      return null;
    }
    for (String name : NEEDED) {
      if (!Files.isRegularFile(folder.resolve(name))) {
        throw RunFailure.unusable(
            folder + ": holds no " + name + "; --earlier needs the folder of an earlier report");
      }
    }
    try {
      JsonNode run = new ObjectMapper().readTree(folder.resolve(Outputs.RUN_JSON).toFile());
      Map<String, String> packs = new TreeMap<>();
      for (JsonNode pack : run.path("packs")) {
        StringBuilder hashes = new StringBuilder();
        pack.path("files").forEach(file -> hashes.append(file.path("sha256").asText()));
        packs.put(pack.path("pack").asText(), hashes.toString());
      }
      return new EarlierReport(
          folder,
          run.path("asOf").asText(),
          run.path("version").asText(),
          packs,
          rules(folder.resolve(Outputs.RULES_CSV)));
    } catch (IOException e) {
      throw RunFailure.unusable(
          folder.resolve(Outputs.RUN_JSON) + ": cannot be read: " + Folders.reason(e), e);
    }
  }

  private static Set<String> rules(Path file) throws IOException, RunFailure {
    Set<String> rules = new HashSet<>();
    if (Files.isRegularFile(file)) {
      try (CSVParser lines = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
        for (CSVRecord line : lines) {
          rules.add(name(plain(line.get("pack")), plain(line.get("rule"))));
        }
      } catch (java.io.UncheckedIOException | IllegalArgumentException e) {
        throw RunFailure.unusable(file + ": cannot be read as rules; name another report", e);
      }
    }
    return rules;
  }

  private static String name(String pack, String rule) {
    return pack + "\n" + rule;
  }

  /** Whether a rule ran then; true of all where the report does not say. */
  boolean hadRule(String pack, String rule) {
    return rules.isEmpty() || rules.contains(name(pack, rule));
  }

  Path folder() {
    return folder;
  }

  String asOf() {
    return asOf;
  }

  String version() {
    return version;
  }

  /** Hashes of the files of each pack, put together, by its name. */
  Map<String, String> packs() {
    return packs;
  }

  /**
   * Its records and findings. Where it wrote no marks, nothing reads the same.
   *
   * @param entries what the rules of this run read
   */
  EarlierFindings read(OwnEntries entries) throws IOException, RunFailure {
    SinceLog log = new SinceLog();
    LongRow own = new LongRow();
    Path file = folder.resolve(Outputs.MARKS);
    try (CSVParser records =
            CSVParser.parse(folder.resolve(Outputs.RECORDS_CSV), StandardCharsets.UTF_8, FORMAT);
        BufferedReader written =
            Files.isRegularFile(file)
                ? Files.newBufferedReader(file)
                : new BufferedReader(java.io.Reader.nullReader())) {
      for (CSVRecord record : records) {
        MarksLine line = MarksLine.of(written.readLine());
        String id = plain(record.get("record_id"));
        int findings = 0;
        for (FindingKind kind : FindingKind.values()) {
          findings += Integer.parseInt(record.get(kind.label()));
        }
        log.add(
            RecordMark.of(id),
            SinceLog.place(id, plain(record.get("file")), record.get("row")),
            line.mark(),
            line.driller(),
            line.installer(),
            findings);
        line.own().forEach(own::add);
      }
    } catch (java.io.UncheckedIOException | IllegalArgumentException e) {
      throw RunFailure.unusable(folder + ": is no report that can be read; name another", e);
    }
    return findings(log, own.all(), entries);
  }

  private EarlierFindings findings(SinceLog log, long[] own, OwnEntries entries)
      throws IOException, RunFailure {
    LongRow ids = new LongRow();
    LongRow places = new LongRow();
    LongRow rules = new LongRow();
    LongRow decided = new LongRow();
    findings(
        folder.resolve(Outputs.FINDINGS_CSV),
        line -> {
          ids.add(RecordMark.of(line.recordId()));
          places.add(SinceLog.place(line.recordId(), line.file(), line.row()));
          rules.add(entries.place(line.pack(), line.rule()));
          decided.add(decided(line));
        });
    int[] rulePlaces = ints(rules);
    boolean whole = own.length == rulePlaces.length;
    return new EarlierFindings(
        log,
        ids.all(),
        places.all(),
        rulePlaces,
        ints(decided),
        whole ? own : new long[0],
        entries);
  }

  private static int[] ints(LongRow row) {
    return Arrays.stream(row.all()).mapToInt(number -> (int) number).toArray();
  }

  /** The place of the entry whose value decided a finding; -1 where none was written. */
  private static int decided(Line line) {
    Entry entry = Catalogue.standard().find(line.entry());
    return entry == null || line.kind().equals(FindingKind.OMISSION.label()) ? -1 : entry.index();
  }

  /** Goes through a findings.csv in its order. */
  static void findings(Path file, Each each) throws IOException, RunFailure {
    try (CSVParser findings = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
      for (CSVRecord finding : findings) {
        each.on(
            new Line(
                plain(finding.get("record_id")),
                plain(finding.get("file")),
                finding.get("row"),
                plain(finding.get("pack")),
                plain(finding.get("rule")),
                finding.get("kind"),
                plain(finding.get("title")),
                plain(finding.get("entry"))));
      }
    } catch (java.io.UncheckedIOException | IllegalArgumentException e) {
      throw RunFailure.unusable(file + ": cannot be read as findings; name another report", e);
    }
  }

  /** Takes off the apostrophe that keeps a text from being a formula. */
  static String plain(String cell) {
    return cell.startsWith("'") && cell.length() > 1 && "=@+-\t\r\n".indexOf(cell.charAt(1)) >= 0
        ? cell.substring(1)
        : cell;
  }
}
