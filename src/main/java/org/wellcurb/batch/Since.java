package org.wellcurb.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.NameFold;
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
 * and rule, and by its file and row too where the number of the record is not unique in either run.
 *
 * <p>Where a record reads the same as before, entry by entry, whatever changed of its findings
 * changed because it was judged otherwise: by another text, another day or another version. So it
 * is with a finding that went where the entries that its rule reads are what they were.
 */
final class Since {
  private final EarlierReport earlier;
  private final EarlierFindings old;
  private final SinceLog log;
  private final MarkedRecords before;
  private final MarkedRecords now;
  private final long[] places;
  private final SinceTotals totals = new SinceTotals();
  private final Catalogue catalogue = Catalogue.standard();

  Since(EarlierReport earlier, EarlierFindings old, SinceLog log) {
    this.earlier = earlier;
    this.old = old;
    this.log = log;
    this.before = old.records().byNumber();
    this.now = log.byNumber();
    this.places = log.places();
  }

  /**
   * Writes {@code since.csv}: findings of this run in its order, then those only the earlier had.
   */
  SinceTotals write(Path folder) throws IOException, RunFailure {
    Path findings = folder.resolve(Outputs.FINDINGS_CSV);
    Path oldFindings = earlier.folder().resolve(Outputs.FINDINGS_CSV);
    long[] keysBefore = keys(oldFindings);
    long[] keysNow = keys(findings);
    try (OutputStream out = Files.newOutputStream(folder.resolve(Outputs.SINCE_CSV))) {
      out.write(SinceCsv.HEADER.getBytes(StandardCharsets.UTF_8));
      ByteText text = new ByteText();
      Cursor here = new Cursor(log);
      EarlierReport.findings(
          findings,
          line -> {
            boolean had = Arrays.binarySearch(keysBefore, key(line)) >= 0;
            Change change =
                had ? Change.STILL : readsTheSame(line) ? Change.JUDGED_SHORT : Change.NEW;
            put(out, text, line, here.next(line), change);
          });
      Cursor there = new Cursor(old.records());
      EarlierReport.findings(
          oldFindings,
          line -> {
            String licence = there.next(line);
            if (Arrays.binarySearch(keysNow, key(line)) < 0) {
              put(
                  out,
                  text,
                  line,
                  licence.isEmpty() ? licenceNow(line) : licence,
                  gone(line, there));
            }
          });
    }
    return totals;
  }

  private Change gone(Line line, Cursor there) {
    long id = RecordMark.of(line.recordId());
    boolean unique = isUnique(id);
    boolean here =
        unique
            ? now.count(id) > 0
            : Arrays.binarySearch(places, SinceLog.place(line.recordId(), line.file(), line.row()))
                >= 0;
    if (!here) {
      return Change.GONE;
    }
    boolean otherwise =
        old.isRuleGone(there.finding())
            || readsTheSame(line)
            || old.readsTheSame(there.finding(), unique);
    return otherwise ? Change.JUDGED_CLEAR : Change.CLEARED;
  }

  private void put(OutputStream out, ByteText text, Line line, String licence, Change change)
      throws IOException {
    totals.add(change, line, licence);
    text.clear();
    SinceCsv.put(text, line, licence, change);
    text.writeTo(out);
  }

  private boolean isUnique(long id) {
    return now.count(id) < 2 && before.count(id) < 2;
  }

  /** False where a number stands for several records, since it is not known which is which. */
  private boolean readsTheSame(Line line) {
    long id = RecordMark.of(line.recordId());
    return now.count(id) == 1 && before.count(id) == 1 && now.mark(id) == before.mark(id);
  }

  /**
   * The licence that a finding of an older report falls to, which kept none; empty if not known.
   */
  private String licenceNow(Line line) {
    long id = RecordMark.of(line.recordId());
    String[] licence = {""};
    if (now.count(id) == 1 && before.count(id) < 2) {
      now.each(id, record -> licence[0] = log.licence(record, isPump(line)));
    }
    return licence[0];
  }

  private boolean isPump(Line line) {
    Entry entry = catalogue.find(line.entry());
    return entry != null && entry.part() == Part.PUMP;
  }

  /** Goes along the findings of a run and knows the record of each: both are in input order. */
  private final class Cursor {
    private final SinceLog records;
    private int record = -1;
    private int left;
    private int finding = -1;

    Cursor(SinceLog records) {
      this.records = records;
    }

    /** The licence of the next finding; empty if its record names none. */
    String next(Line line) {
      finding++;
      while (left == 0 && record + 1 < records.size()) {
        left = records.findings(++record);
      }
      if (left == 0) {
        return "";
      }
      left--;
      return records.licence(record, isPump(line));
    }

    /** Place of the finding at hand. */
    int finding() {
      return finding;
    }
  }

  private long[] keys(Path findings) throws IOException, RunFailure {
    LongRow keys = new LongRow();
    EarlierReport.findings(findings, line -> keys.add(key(line)));
    long[] all = keys.all();
    Arrays.sort(all);
    return all;
  }

  private long key(Line line) {
    String place = isUnique(RecordMark.of(line.recordId())) ? "" : line.file() + "\n" + line.row();
    return RecordMark.of(line.recordId(), line.pack(), line.rule(), place);
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
      contractors.add(NameFold.of(licence), licence, change);
      rules.add(line.pack() + ", " + line.rule(), line.title(), change);
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
