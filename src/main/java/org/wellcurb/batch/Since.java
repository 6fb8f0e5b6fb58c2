package org.wellcurb.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Part;
import org.wellcurb.record.RecordMark;
import org.wellcurb.report.ByteText;
import org.wellcurb.report.Cap;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.SinceCounts;
import org.wellcurb.report.SinceCounts.Change;
import org.wellcurb.report.SinceCsv;
import org.wellcurb.report.SinceCsv.Line;

/**
 * Lays the findings of this run beside those of an earlier one. A finding is told by record, pack
 * and rule, and by its row too where the number of the record is not unique in either run.
 *
 * <p>Where a record reads the same as before, entry by entry, whatever changed of its findings
 * changed because it was judged otherwise: by another text, another day or another version.
 */
final class Since {
  private final EarlierReport earlier;
  private final SinceLog log;
  private final MarkedRecords before;
  private final MarkedRecords now;
  private final SinceTotals totals = new SinceTotals();
  private final Catalogue catalogue = Catalogue.standard();

  Since(EarlierReport earlier, SinceLog log) throws IOException, RunFailure {
    this.earlier = earlier;
    this.log = log;
    this.before = earlier.records();
    long[] ids = new long[log.size()];
    long[] marks = new long[log.size()];
    for (int i = 0; i < ids.length; i++) {
      ids[i] = log.id(i);
      marks[i] = log.mark(i);
    }
    this.now = new MarkedRecords(ids, marks);
  }

  /**
   * Writes {@code since.csv}: findings of this run in its order, then those only the earlier had.
   */
  SinceTotals write(Path folder) throws IOException, RunFailure {
    Path findings = folder.resolve(Outputs.FINDINGS_CSV);
    long[] keysBefore = keys(earlier.folder().resolve(Outputs.FINDINGS_CSV));
    long[] keysNow = keys(findings);
    try (OutputStream out = Files.newOutputStream(folder.resolve(Outputs.SINCE_CSV))) {
      out.write(SinceCsv.HEADER.getBytes(StandardCharsets.UTF_8));
      ByteText text = new ByteText();
      EarlierReport.findings(
          findings, line -> put(out, text, line, Arrays.binarySearch(keysBefore, key(line)) >= 0));
      EarlierReport.findings(
          earlier.folder().resolve(Outputs.FINDINGS_CSV),
          line -> {
            if (Arrays.binarySearch(keysNow, key(line)) < 0) {
              put(out, text, line, null);
            }
          });
    }
    return totals;
  }

  private void put(OutputStream out, ByteText text, Line line, @Nullable Boolean hadBefore)
      throws IOException {
    long id = RecordMark.of(line.recordId());
    Change change;
    if (hadBefore == null) {
      change =
          now.count(id) == 0
              ? Change.GONE
              : readsTheSame(id) ? Change.JUDGED_CLEAR : Change.CLEARED;
    } else if (hadBefore) {
      change = Change.STILL;
    } else {
      change = readsTheSame(id) ? Change.JUDGED_SHORT : Change.NEW;
    }
    String licence = licence(id, line.entry());
    totals.add(change, line, licence);
    text.clear();
    SinceCsv.put(text, line, licence, change);
    text.writeTo(out);
  }

  /** False where a number stands for several records, since it is not known which is which. */
  private boolean readsTheSame(long id) {
    return now.count(id) == 1 && before.count(id) == 1 && now.mark(id) == before.mark(id);
  }

  /** The licence that a finding falls to, as {@link org.wellcurb.report.Whose} has it. */
  private String licence(long id, String key) {
    int record = now.first(id);
    if (record < 0) {
      return "";
    }
    Entry entry = catalogue.find(key);
    boolean pump = entry != null && entry.part() == Part.PUMP;
    String first = pump ? log.installer(record) : log.driller(record);
    return first.isEmpty() ? (pump ? log.driller(record) : log.installer(record)) : first;
  }

  private long[] keys(Path findings) throws IOException, RunFailure {
    long[][] keys = {new long[1024]};
    int[] size = {0};
    EarlierReport.findings(
        findings,
        line -> {
          if (size[0] == keys[0].length) {
            keys[0] = Arrays.copyOf(keys[0], 2 * size[0]);
          }
          keys[0][size[0]++] = key(line);
        });
    long[] all = Arrays.copyOf(keys[0], size[0]);
    Arrays.sort(all);
    return all;
  }

  private long key(Line line) {
    long id = RecordMark.of(line.recordId());
    boolean unique = now.count(id) < 2 && before.count(id) < 2;
    return RecordMark.of(line.recordId(), line.pack(), line.rule(), unique ? "" : line.row());
  }

  /** Counts and lists of the page. */
  static final class SinceTotals {
    SinceCounts counts = SinceCounts.NONE;
    final GroupedChanges contractors = new GroupedChanges();
    final GroupedChanges rules = new GroupedChanges();
    final java.util.ArrayList<SinceCsv.Changed> shown = new java.util.ArrayList<>();
    long total;

    void add(Change change, Line line, String licence) {
      counts = counts.and(change);
      contractors.add(licence, change);
      rules.add(line.title(), change);
      if (change != Change.STILL) {
        total++;
        if (shown.size() < Cap.SINCE_ON_PAGE.most()) {
          shown.add(new SinceCsv.Changed(line, licence, change));
        }
      }
    }

    List<SinceCsv.Changed> shown() {
      return shown;
    }
  }
}
