package org.wellcurb.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The comparisons as a plain script for Python: its csv module, floats, one line a comparison. */
final class PythonPeer {
  private PythonPeer() {}

  /** Writes the script; it takes FILE and OUT. */
  static void write(Path script, List<Comparison> comparisons) throws IOException {
    List<String> columns = new ArrayList<>();
    boolean[] used = new boolean[Columns.KEYS.size()];
    for (Comparison comparison : comparisons) {
      used[comparison.left()] = true;
      if (comparison.right() >= 0) {
        used[comparison.right()] = true;
      }
    }
    StringBuilder text =
        new StringBuilder(
            """
            import csv, sys

            NOTHING = float('nan')


            def number(cell):
                try:
                    return float(cell)
                except ValueError:
                    return NOTHING


            with open(sys.argv[1], newline='') as f, open(sys.argv[2], 'w', newline='') as g:
                out = csv.writer(g)
                rows = csv.reader(f)
                next(rows)
                out.writerow(['record', 'rule'])
                for row in rows:
            """);
    for (int i = 0; i < used.length; i++) {
      columns.add("c" + i);
      if (used[i]) {
        text.append("        c").append(i).append(" = number(row[").append(i).append("])\n");
      }
    }
    for (Comparison comparison : comparisons) {
      text.append("        if ").append(comparison.failing(columns)).append(":\n");
      text.append("            out.writerow([row[0], '").append(comparison.rule()).append("'])\n");
    }
    Files.writeString(script, text);
  }
}
