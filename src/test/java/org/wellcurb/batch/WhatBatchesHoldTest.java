package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** What real batches hold, one line each, and which tests hold a reader to it. */
class WhatBatchesHoldTest {
  private static final Path LINES = Path.of("src/test/resources/batch/what-batches-hold.csv");

  /** The last of the lines that offices' own records taught. */
  private static final int LAST = 27;

  @Test
  void eachHasTestsThatAreRun() throws Exception {
    List<Map<String, String>> lines = Runs.rows(LINES);
    assertEquals(LAST, lines.size());
    for (int i = 0; i < LAST; i++) {
      assertEquals(String.valueOf(i + 1), lines.get(i).get("number"));
      String tests = lines.get(i).get("tests");
      assertFalse(tests.isBlank(), lines.get(i).toString());
      for (String test : tests.split(" ", -1)) {
        assertTrue(isRun(test), test);
      }
    }
  }

  private static boolean isRun(String test) throws ClassNotFoundException {
    int at = test.indexOf('#');
    Class<?> in = Class.forName("org.wellcurb." + test.substring(0, at));
    return Arrays.stream(in.getDeclaredMethods())
        .filter(method -> method.getName().equals(test.substring(at + 1)))
        .anyMatch(WhatBatchesHoldTest::isTest);
  }

  private static boolean isTest(Method method) {
    return method.isAnnotationPresent(Test.class)
        || method.isAnnotationPresent(ParameterizedTest.class);
  }
}
