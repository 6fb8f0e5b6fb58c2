package org.wellcurb.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wellcurb.record.RecordMark;
import org.wellcurb.record.WellRecord;
import org.wellcurb.report.Whose;

/**
 * What is kept of each record so that its findings can be laid beside those of an earlier report:
 * marks of its number, of where it stands and of what it says, and its licences. Kept only where
 * that is asked for.
 */
final class SinceLog {
  private long[] ids = new long[64];
  private long[] spots = new long[64];
  private long[] marks = new long[64];
  private int[] drillers = new int[64];
  private int[] installers = new int[64];
  private int[] counts = new int[64];
  private int size;
  private final Map<String, Integer> places = new HashMap<>();
  private final List<String> licences = new ArrayList<>();

  void record(WellRecord record, long mark, int findings) {
    add(
        RecordMark.of(record.id()),
        place(record.id(), record.file(), String.valueOf(record.row())),
        mark,
        Whose.driller(record),
        Whose.installer(record),
        findings);
  }

  /** The mark of where a record stands: its number, file and row. */
  static long place(String id, String file, String row) {
    return RecordMark.of(id, file, row);
  }

  /**
   * Adds a record.
   *
   * @param id mark of its number
   * @param place mark of its number, file and row
   * @param mark mark of what it says; 0 if it is not known
   * @param findings how many findings it has
   */
  void add(long id, long place, long mark, String driller, String installer, int findings) {
    if (size == ids.length) {
      ids = Arrays.copyOf(ids, 2 * size);
      spots = Arrays.copyOf(spots, 2 * size);
      marks = Arrays.copyOf(marks, 2 * size);
      drillers = Arrays.copyOf(drillers, 2 * size);
      installers = Arrays.copyOf(installers, 2 * size);
      counts = Arrays.copyOf(counts, 2 * size);
    }
    ids[size] = id;
    spots[size] = place;
    marks[size] = mark;
    drillers[size] = place(driller);
    installers[size] = place(installer);
    counts[size] = findings;
    size++;
  }

  private int place(String licence) {
    Integer place = places.putIfAbsent(licence, licences.size());
    if (place != null) {
      return place;
    }
    licences.add(licence);
    return licences.size() - 1;
  }

  /** Adds what the next part has. */
  void add(SinceLog next) {
    for (int i = 0; i < next.size; i++) {
      add(
          next.ids[i],
          next.spots[i],
          next.marks[i],
          next.licences.get(next.drillers[i]),
          next.licences.get(next.installers[i]),
          next.counts[i]);
    }
  }

  void clear() {
    size = 0;
    places.clear();
    licences.clear();
  }

  int size() {
    return size;
  }

  /** The mark of a record's number. */
  long id(int record) {
    return ids[record];
  }

  /** The mark of where a record stands. */
  long spot(int record) {
    return spots[record];
  }

  /** The mark of what a record says; 0 if it is not known. */
  long mark(int record) {
    return marks[record];
  }

  /** How many findings a record has. */
  int findings(int record) {
    return counts[record];
  }

  /** The records by their number. */
  MarkedRecords byNumber() {
    return new MarkedRecords(Arrays.copyOf(ids, size), Arrays.copyOf(marks, size));
  }

  /** The licence that a finding on an entry falls to, as {@link Whose} has it. */
  String licence(int record, boolean isPump) {
    String driller = licences.get(drillers[record]);
    String installer = licences.get(installers[record]);
    String first = isPump ? installer : driller;
    return first.isEmpty() ? (isPump ? driller : installer) : first;
  }
}
