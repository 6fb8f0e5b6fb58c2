package org.wellcurb.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.NameFold;
import org.wellcurb.record.Part;
import org.wellcurb.record.RecordMark;
import org.wellcurb.report.ByteText;
import org.wellcurb.report.Cap;
import org.wellcurb.report.Explained;
import org.wellcurb.report.Outputs;
import org.wellcurb.report.SinceCounts;
import org.wellcurb.report.SinceCounts.Change;
import org.wellcurb.report.SinceCsv;
import org.wellcurb.report.SinceCsv.Line;
import org.wellcurb.report.SinceView.Told;

/**
 * Lays the findings of this run beside those of an earlier one. A finding is told by record, pack
 * and rule. Where the number of a record is not unique in either run, {@link RecordPairs} tells
 * which of its records is which.
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
  private final RecordPairs pairs;
  private final SinceTotals totals = new SinceTotals();
  private final Catalogue catalogue = Catalogue.standard();

  /** Number and rule, and number and entry, of what answers say does not apply. */
  private final Set<String> voids = new HashSet<>();

  /**
   * @param saidVoid answers that say of a blank entry that it does not apply
   */
  Since(EarlierReport earlier, EarlierFindings old, SinceLog log, List<Explained> saidVoid) {
    saidVoid.forEach(
        said -> {
          voids.add(key(said.recordId(), said.rule()));
          voids.add(key(said.recordId(), said.entry()));
        });
    this.earlier = earlier;
    this.old = old;
    this.log = log;
    this.before = old.records().byNumber();
    this.now = log.byNumber();
    this.pairs = new RecordPairs(old.records(), before, log, now);
    old.close();
  }

  /**
   * Writes {@code since.csv}: findings of this run in its order, then those only the earlier had.
   */
  SinceTotals write(Path folder) throws IOException, RunFailure {
    Path findings = folder.resolve(Outputs.FINDINGS_CSV);
    Path oldFindings = earlier.folder().resolve(Outputs.FINDINGS_CSV);
    long[] keysBefore = keys(oldFindings, false);
    long[] keysNow = keys(findings, true);
    try (OutputStream out = Files.newOutputStream(folder.resolve(Outputs.SINCE_CSV))) {
      out.write(SinceCsv.HEADER.getBytes(StandardCharsets.UTF_8));
      ByteText text = new ByteText();
      Cursor here = new Cursor(log);
      EarlierReport.findings(
          findings,
          line -> {
            String licence = here.next(line);
            boolean had = Arrays.binarySearch(keysBefore, keyNow(line, here.record())) >= 0;
            Change change =
                had
                    ? Change.STILL
                    : isOfNewRecord(line, here.record())
                        ? Change.NEW_RECORD
                        : isByRules(line, here.record()) ? Change.JUDGED_SHORT : Change.NEW;
            put(out, text, line, licence, change);
            totals.add(here.record() < 0 ? Told.BY_NUMBER : pairs.howNow(here.record()));
          });
      Cursor there = new Cursor(old.records());
      EarlierReport.findings(
          oldFindings,
          line -> {
            String licence = there.next(line);
            if (Arrays.binarySearch(keysNow, keyBefore(line, there.record())) < 0) {
              put(
                  out,
                  text,
                  line,
                  licence.isEmpty() ? licenceNow(line) : licence,
                  gone(line, there));
              totals.add(there.record() < 0 ? Told.BY_NUMBER : pairs.howBefore(there.record()));
            }
          });
    }
    return totals;
  }

  private Change gone(Line line, Cursor there) {
    long id = RecordMark.of(line.recordId());
    boolean unique = isUnique(id);
    int later = unique || there.record() < 0 ? RecordPairs.NONE : pairs.later(there.record());
    if (unique ? now.count(id) == 0 : later < 0) {
      boolean isUnsure = !unique && there.record() >= 0 && pairs.isUnsure(there.record());
      return isUnsure ? Change.UNTOLD : Change.GONE;
    }
    boolean otherwise =
        old.isRuleGone(there.finding())
            || (unique
                ? isMarkedTheSame(id) || old.same().holds(there.finding())
                : isMarkedTheSame(there.record(), later)
                    || old.same().holds(there.finding(), log.spot(later)));
    if (otherwise) {
      return Change.JUDGED_CLEAR;
    }
    boolean untold =
        unique
            ? old.untold().holds(there.finding())
            : old.untold().holds(there.finding(), log.spot(later));
    if (untold) {
      return Change.UNTOLD;
    }
    boolean isSaid =
        voids.contains(key(line.recordId(), line.rule()))
            || voids.contains(key(line.recordId(), line.entry()));
    return isSaid ? Change.SAID_VOID : Change.CLEARED;
  }

  private static String key(String recordId, String what) {
    return recordId + "\n" + what;
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

  /** Whether the record was not found so before because the rule was not there, or another. */
  private boolean isByRules(Line line, int record) {
    return !earlier.hadRule(line.pack(), line.rule()) || readsTheSame(line, record);
  }

  /**
   * Whether a record of this run reads as it did.
   *
   * @param record less than 0 where it is not known
   */
  private boolean readsTheSame(Line line, int record) {
    long id = RecordMark.of(line.recordId());
    if (isUnique(id)) {
      return isMarkedTheSame(id);
    }
    int earlier = record < 0 ? RecordPairs.NONE : pairs.earlier(record);
    return earlier >= 0 && isMarkedTheSame(earlier, record);
  }

  /** Whether the earlier report did not have this record of this run. */
  private boolean isOfNewRecord(Line line, int record) {
    long id = RecordMark.of(line.recordId());
    return isUnique(id)
        ? before.count(id) == 0
        : record >= 0 && pairs.earlier(record) == RecordPairs.NONE;
  }

  private boolean isMarkedTheSame(long id) {
    return now.count(id) == 1 && before.count(id) == 1 && now.mark(id) == before.mark(id);
  }

  private boolean isMarkedTheSame(int earlier, int later) {
    return old.records().mark(earlier) == log.mark(later);
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
    private boolean isLost;

    Cursor(SinceLog records) {
      this.records = records;
    }

    /** The licence of the next finding; empty if its record names none. */
    String next(Line line) {
      finding++;
      while (left == 0 && record + 1 < records.size()) {
        left = records.findings(++record);
      }
      isLost = left == 0;
      if (isLost) {
        return "";
      }
      left--;
      return records.licence(record, isPump(line));
    }

    /** Place of the record of the finding at hand; less than 0 if it is not known. */
    int record() {
      return isLost ? -1 : record;
    }

    /** Place of the finding at hand. */
    int finding() {
      return finding;
    }
  }

  private long[] keys(Path findings, boolean isNow) throws IOException, RunFailure {
    LongRow keys = new LongRow();
    Cursor cursor = new Cursor(isNow ? log : old.records());
    EarlierReport.findings(
        findings,
        line -> {
          cursor.next(line);
          keys.add(isNow ? keyNow(line, cursor.record()) : keyBefore(line, cursor.record()));
        });
    long[] all = keys.all();
    Arrays.sort(all);
    return all;
  }

  private long keyNow(Line line, int record) {
    if (isUnique(RecordMark.of(line.recordId()))) {
      return key(line, "");
    }
    int earlier = record < 0 ? RecordPairs.NONE : pairs.earlier(record);
    return key(line, earlier < 0 ? "now " + line.file() + "\n" + line.row() : "then " + earlier);
  }

  private long keyBefore(Line line, int record) {
    return key(line, isUnique(RecordMark.of(line.recordId())) ? "" : "then " + record);
  }

  private static long key(Line line, String which) {
    return RecordMark.of(line.recordId(), line.pack(), line.rule(), which);
  }

  /** Counts and lists of the page. */
  static final class SinceTotals {
    SinceCounts counts = SinceCounts.NONE;
    final GroupedChanges contractors = new GroupedChanges();
    final GroupedChanges rules = new GroupedChanges();
    final java.util.ArrayList<SinceCsv.Changed> shown = new java.util.ArrayList<>();
    final long[] told = new long[Told.values().length];
    long total;
    private final Map<String, Map<String, Long>> newByPack = new HashMap<>();

    /** New findings, of records that the earlier report had, by such rules of such packs. */
    long newBy(BiPredicate<String, String> isMeant) {
      long sum = 0;
      for (Map.Entry<String, Map<String, Long>> pack : newByPack.entrySet()) {
        for (Map.Entry<String, Long> rule : pack.getValue().entrySet()) {
          sum += isMeant.test(pack.getKey(), rule.getKey()) ? rule.getValue() : 0;
        }
      }
      return sum;
    }

    void add(Told how) {
      told[how.ordinal()]++;
    }

    /** How many findings were laid beside earlier ones in each way, the number alone left out. */
    Map<Told, Long> told() {
      Map<Told, Long> counts = new EnumMap<>(Told.class);
      for (Told how : Told.values()) {
        if (how != Told.BY_NUMBER && told[how.ordinal()] > 0) {
          counts.put(how, told[how.ordinal()]);
        }
      }
      return counts;
    }

    void add(Change change, Line line, String licence) {
      counts = counts.and(change);
      contractors.add(NameFold.of(licence), licence, change);
      rules.add(line.pack() + ", " + line.rule(), line.title(), change);
      if (change == Change.NEW) {
        newByPack
            .computeIfAbsent(line.pack(), pack -> new HashMap<>())
            .merge(line.rule(), 1L, Long::sum);
      }
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
