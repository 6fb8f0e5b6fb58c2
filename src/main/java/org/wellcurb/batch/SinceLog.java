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
 * marks of its number and of what it says, and its licences. Kept only where that is asked for.
 */
final class SinceLog {
  private long[] ids = new long[64];
  private long[] marks = new long[64];
  private int[] drillers = new int[64];
  private int[] installers = new int[64];
  private int size;
  private final Map<String, Integer> places = new HashMap<>();
  private final List<String> licences = new ArrayList<>();

  void record(WellRecord record, long mark) {
    add(RecordMark.of(record.id()), mark, Whose.driller(record), Whose.installer(record));
  }

  private void add(long id, long mark, String driller, String installer) {
    if (size == ids.length) {
      ids = Arrays.copyOf(ids, 2 * size);
      marks = Arrays.copyOf(marks, 2 * size);
      drillers = Arrays.copyOf(drillers, 2 * size);
      installers = Arrays.copyOf(installers, 2 * size);
    }
    ids[size] = id;
    marks[size] = mark;
    drillers[size] = place(driller);
    installers[size] = place(installer);
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
          next.marks[i],
          next.licences.get(next.drillers[i]),
          next.licences.get(next.installers[i]));
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

  long id(int record) {
    return ids[record];
  }

  long mark(int record) {
    return marks[record];
  }

  String driller(int record) {
    return licences.get(drillers[record]);
  }

  String installer(int record) {
    return licences.get(installers[record]);
  }
}
