package org.wellcurb.intake;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;

/** Bytes that are read as a table: each row is a record or set aside, however the file is cut. */
class TableFuzz {
  @FuzzTest(maxDuration = "10m")
  void everyRowIsAccountedFor(FuzzedDataProvider data) {
    boolean headed = data.consumeBoolean();
    byte[] rest = data.consumeRemainingAsBytes();
    byte[] bytes = headed ? Bytes.after("record.id,well.depth [ft],dates.completed\n", rest) : rest;
    Bytes.check("a.csv", bytes);
  }
}
