package org.wellcurb.intake;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;

/** Bytes that are read as JSON, alone, in an array, or one a line. */
class JsonFuzz {
  @FuzzTest(maxDuration = "10m")
  void everyObjectIsAccountedFor(FuzzedDataProvider data) {
    String before = data.pickValue(new String[] {"", "[", "[{\"record\":{\"id\":\"A\"}},", "{"});
    String name = data.consumeBoolean() ? "a.json" : "a.ndjson";
    Bytes.check(name, Bytes.after(before, data.consumeRemainingAsBytes()));
  }
}
