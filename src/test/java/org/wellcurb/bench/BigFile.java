package org.wellcurb.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Makes a big file of records from a seed: some 86 columns and 470 bytes a record, coherent (a well
 * that could be), with a fault in one of ten. The same seed gives the same file; record {@code n}
 * is the same however many follow.
 *
 * <p>Run it with {@code mvn -q -P bench test-compile exec:java
 * -Dexec.mainClass=org.wellcurb.bench.BigFile -Dexec.classpathScope=test -Dexec.args="1 1000000
 * wells.csv"}. A name that ends in {@code .ndjson} or {@code .jsonl} gives JSON lines.
 */
public final class BigFile {
  private BigFile() {}

  /** SEED RECORDS FILE. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 3) {
      throw new IllegalArgumentException("give SEED RECORDS FILE");
    }
    write(Long.parseLong(arguments[0]), Long.parseLong(arguments[1]), Path.of(arguments[2]));
  }

  /** Writes the file. */
  public static void write(long seed, long records, Path file) throws IOException {
    String name = String.valueOf(file.getFileName());
    boolean json = name.endsWith(".ndjson") || name.endsWith(".jsonl");
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 20)) {
      StringBuilder line = new StringBuilder();
      if (!json) {
        line.append(String.join(",", Columns.HEADERS)).append('\n');
      }
      for (long n = 0; n < records; n++) {
        Map<String, String> well = new WellMaker(seed, n).make();
        if (json) {
          json(line, well);
        } else {
          csv(line, well);
        }
        out.write(line.toString().getBytes(StandardCharsets.US_ASCII));
        line.setLength(0);
      }
    }
  }

  private static void csv(StringBuilder line, Map<String, String> well) {
    List<String> keys = Columns.KEYS;
    for (int i = 0; i < keys.size(); i++) {
      if (i > 0) {
        line.append(',');
      }
      line.append(well.getOrDefault(keys.get(i), ""));
    }
    line.append('\n');
  }

  /** Dotted names become objects, as the form of a record has it; numbers are numbers. */
  private static void json(StringBuilder line, Map<String, String> well) {
    String group = "";
    line.append('{');
    boolean first = true;
    for (String key : Columns.KEYS) {
      String value = well.get(key);
      if (value == null) {
        continue;
      }
      int point = key.indexOf('.');
      String to = key.substring(0, point);
      if (!to.equals(group)) {
        line.append(group.isEmpty() ? "" : "},").append('"').append(to).append("\":{");
        group = to;
        first = true;
      }
      line.append(first ? "\"" : ",\"").append(key.substring(point + 1)).append("\":");
      first = false;
      if (Columns.isNumber(key) && isPlain(value)) {
        line.append(value);
      } else {
        line.append('"').append(value).append('"');
      }
    }
    line.append("}}\n");
  }

  /** Amounts with units, and ranges, are strings. */
  private static boolean isPlain(String value) {
    return value.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.' || c == '-')
        && value.indexOf('-', 1) < 0;
  }
}
