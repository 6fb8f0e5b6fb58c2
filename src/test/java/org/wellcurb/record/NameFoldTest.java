package org.wellcurb.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that people write in several ways, and names that are not one. */
class NameFoldTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Étang 7",
        "étang 7",
        "É" + "tang 7",
        "E\u0301TANG 7",
        "  étang\u00a0 7\t",
        "\u200Bétang 7\uFEFF",
      })
  void oneName(String written) {
    assertEquals("étang 7", NameFold.of(written));
    assertTrue(NameFold.same(written, "Étang 7"));
  }

  @Test
  void otherNames() {
    assertFalse(NameFold.same("D-1", "D1"));
    assertFalse(NameFold.same("D 1", "D1"));
    assertFalse(NameFold.same("etang", "étang"));
    assertEquals("", NameFold.of(" \u00a0"));
  }

  /** The short way for plain names gives what the long way does. */
  @Test
  void foldingTwiceChangesNothing() {
    for (String name : new String[] {"x-9", "LIC 4", "\u0130stanbul", "a\u0301", "ǅ 1"}) {
      String once = NameFold.of(name);
      assertEquals(once, NameFold.of(once), name);
    }
  }
}
