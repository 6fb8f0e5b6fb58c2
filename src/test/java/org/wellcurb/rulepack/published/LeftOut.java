package org.wellcurb.rulepack.published;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;

/** What became of each fact: held by a rule, or left out and why. */
final class LeftOut {
  private static final String MEMORY = "known from memory only";
  private static final String HELD = "in ";
  private static final List<CSVRecord> REASONS = Facts.read("left-out.csv");

  private LeftOut() {}

  static List<CSVRecord> reasons() {
    return REASONS;
  }

  /** The first line that speaks of this fact, if any. */
  static @Nullable CSVRecord first(CSVRecord row) {
    for (CSVRecord reason : REASONS) {
      if (speaks(reason, row)) {
        return reason;
      }
    }
    return null;
  }

  private static boolean speaks(CSVRecord reason, CSVRecord row) {
    String jurisdiction = reason.get("jurisdiction");
    return (jurisdiction.isEmpty() || jurisdiction.equals(row.get("jurisdiction")))
        && row.get("code_section").startsWith(reason.get("code_section"))
        && row.get("topic").startsWith(reason.get("topic"))
        && lower(row.get("subject")).contains(lower(reason.get("subject")));
  }

  /** A test by section states it, or the table of reasons names the rule that it is in. */
  static boolean isHeld(CSVRecord row) {
    return Facts.isStated(row) || reason(row).startsWith(HELD);
  }

  /** Why it is in no rule of its own; empty where nothing is said. */
  static String reason(CSVRecord row) {
    if (Facts.isFromMemory(row)) {
      return MEMORY;
    }
    CSVRecord reason = first(row);
    return reason == null ? "" : reason.get("reason");
  }

  /** The rule that a reason names, such as {@code maryland/pvc-casing-depth}; else empty. */
  static String rule(String reason) {
    if (!reason.startsWith(HELD)) {
      return "";
    }
    String rest = reason.substring(HELD.length());
    int end = 0;
    while (end < rest.length() && " ;:,".indexOf(rest.charAt(end)) < 0) {
      end++;
    }
    return rest.substring(0, end);
  }

  static String page() {
    Map<String, List<CSVRecord>> places = new TreeMap<>();
    for (CSVRecord row : Facts.rows()) {
      places.computeIfAbsent(row.get("jurisdiction"), key -> new ArrayList<>()).add(row);
    }
    StringBuilder few = new StringBuilder();
    StringBuilder many = new StringBuilder();
    int held = 0;
    for (Map.Entry<String, List<CSVRecord>> place : places.entrySet()) {
      List<CSVRecord> rows = place.getValue();
      int here = (int) rows.stream().filter(LeftOut::isHeld).count();
      held += here;
      if (here == 0) {
        few.append(row(place.getKey(), Integer.toString(rows.size()), reason(rows.get(0))));
      } else {
        many.append("\n## ").append(place.getKey()).append("\n\n");
        many.append(rows.size()).append(" facts read, ").append(here).append(" held by rules.\n\n");
        many.append("| section | about | figure | why it is left out |\n|---|---|---|---|\n");
        rows.stream().filter(row -> !isHeld(row)).forEach(row -> many.append(line(row)));
      }
    }
    long fromMemory = Facts.rows().stream().filter(Facts::isFromMemory).count();
    return """
        # Facts that were read and left out

        The packs of published codes were written from %d facts: %d read in published texts, or in quotations of them,
        and %d known from memory only, none of which is in a pack. %d are held by rules; each
        has a test named by its section, or a row of a table. Here are the others, with the reason. This page is made
        from the facts; a test compares it with them. In our own words; ask the authority.

        ## Places without a pack

        | place | facts read | why there is no pack |
        |---|---|---|
        """
            .formatted(Facts.rows().size(), Facts.rows().size() - fromMemory, fromMemory, held)
        + few
        + many;
  }

  private static String line(CSVRecord row) {
    String figure = (row.get("limit_value") + " " + row.get("unit")).strip();
    return row(row.get("code_section"), row.get("subject"), figure, reason(row));
  }

  private static String row(String... cells) {
    StringBuilder out = new StringBuilder("|");
    for (String cell : cells) {
      out.append(' ').append(cell.replace("|", "\\|")).append(" |");
    }
    return out.append('\n').toString();
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
