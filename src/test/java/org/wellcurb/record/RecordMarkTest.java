package org.wellcurb.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Marks of records: the same however many are worked out in turn, another for what differs. */
class RecordMarkTest {
  private static final long SEED = 20260101;

  @Test
  void severalAtOnceHaveTheMarksOfEachAlone() {
    Random random = new Random(SEED);
    List<WellRecord> made = new ArrayList<>();
    for (int i = 0; i < 21; i++) {
      made.add(record(random, i));
    }
    WellRecord[] records = made.toArray(WellRecord[]::new);
    for (int count = 0; count <= records.length; count++) {
      long[] marks = new long[records.length];
      RecordMark.of(records, count, marks);
      for (int i = 0; i < count; i++) {
        assertEquals(RecordMark.of(records[i]), marks[i], "seed " + SEED + ", record " + i);
      }
      for (int i = count; i < marks.length; i++) {
        assertEquals(0, marks[i], "not asked for");
      }
    }
  }

  @Test
  void whatDiffersHasAnotherMark() {
    Map<String, String> one = Map.of("record.id", "A1", "well.depth", "120 ft");
    Map<String, String> deeper = Map.of("record.id", "A1", "well.depth", "121 ft");
    Map<String, String> finer = Map.of("record.id", "A1", "well.depth", "120.0 ft");
    long mark = RecordMark.of(RecordReader.of(one));
    assertEquals(mark, RecordMark.of(RecordReader.of(Map.copyOf(one))));
    assertNotEquals(mark, RecordMark.of(RecordReader.of(deeper)));
    assertNotEquals(mark, RecordMark.of(RecordReader.of(finer)), "how finely it is written counts");
  }

  private static WellRecord record(Random random, int number) {
    Map<String, String> given = new LinkedHashMap<>();
    given.put("record.id", "W" + number);
    if (random.nextBoolean()) {
      given.put("well.depth", 50 + random.nextInt(300) + " ft");
    }
    if (random.nextBoolean()) {
      given.put("driller.licence", "D" + random.nextInt(50));
    }
    if (random.nextBoolean()) {
      given.put("dates.completed", "2009-05-" + (10 + random.nextInt(20)));
    }
    if (random.nextBoolean()) {
      given.put("site.zone", "shore " + random.nextInt(90));
    }
    return RecordReader.of(given);
  }
}
