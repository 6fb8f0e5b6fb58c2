package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.ByteText;

/**
 * A line of {@code marks.txt}, which a run keeps for the next: of each record in turn the mark of
 * what it says, its licences, and of each of its findings the mark of what the rule read. The parts
 * stand between tabs. Older reports have the first mark alone.
 *
 * @param mark mark of the record; 0 if it is not known
 * @param driller licence of the driller; empty if none
 * @param installer licence of the installer; empty if none
 * @param own marks by finding, in order
 */
record MarksLine(long mark, String driller, String installer, List<Long> own) {
  MarksLine {
    own = List.copyOf(own);
  }

  /** Begins a line; the marks of the findings and the end of the line follow. */
  static void put(ByteText out, long mark, String driller, String installer) {
    out.hex(mark).put('\t').put(oneLine(driller)).put('\t').put(oneLine(installer)).put('\t');
  }

  /**
   * Reads a line.
   *
   * @param line null where the file has ended
   * @throws NumberFormatException if it is no such line
   */
  static MarksLine of(@Nullable String line) {
    if (line == null || line.isEmpty()) {
      return new MarksLine(0, "", "", List.of());
    }
    List<String> parts = parts(line, '\t');
    List<Long> own = new ArrayList<>();
    if (parts.size() > 3) {
      for (String mark : parts(parts.get(3), ' ')) {
        if (!mark.isEmpty()) {
          own.add(Long.parseUnsignedLong(mark, 16));
        }
      }
    }
    return new MarksLine(
        Long.parseUnsignedLong(parts.get(0), 16),
        parts.size() > 1 ? parts.get(1) : "",
        parts.size() > 2 ? parts.get(2) : "",
        own);
  }

  private static List<String> parts(String text, char between) {
    List<String> parts = new ArrayList<>();
    int from = 0;
    for (int at = text.indexOf(between); at >= 0; at = text.indexOf(between, from)) {
      parts.add(text.substring(from, at));
      from = at + 1;
    }
    parts.add(text.substring(from));
    return parts;
  }

  /** A licence written over several lines is one name still. */
  private static String oneLine(String licence) {
    for (int i = 0; i < licence.length(); i++) {
      if (licence.charAt(i) < ' ') {
        return licence.replaceAll("\\p{Cntrl}+", " ");
      }
    }
    return licence;
  }
}
