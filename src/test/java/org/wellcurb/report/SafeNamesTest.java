package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SafeNamesTest {
  @ParameterizedTest
  @CsvSource({
    "W-12, W-12.html",
    "W 12/3, W-12-3.html",
    "../../etc/passwd, etc-passwd.html",
    "'..', record.html",
    "'', record.html",
    "con, record-con.html",
    "LPT1.x, record-LPT1.x.html",
    ".hidden, hidden.html",
    "a..b, a.b.html",
    "été, t.html",
    "C:\\x, C-x.html",
    "x., x.html"
  })
  void namesAreSafe(String text, String name) {
    assertEquals(name, new SafeNames().name(text, ".html"));
  }

  @Test
  void namesDifferWithoutCase() {
    SafeNames names = new SafeNames();
    assertEquals("W1.html", names.name("W1", ".html"));
    assertEquals("w1-2.html", names.name("w1", ".html"));
    assertEquals("W1-2-2.html", names.name("W1-2", ".html"));
    assertEquals("W1-3.html", names.name("W1", ".html"));
  }

  @Test
  void longNamesAreCut() {
    String name = new SafeNames().name("x".repeat(5000), ".html");
    assertEquals(Cap.NAME_LETTERS.most() + ".html".length(), name.length());
  }

  @Test
  void noTextLeavesTheFolderOrComesTwice() {
    long seed = 11;
    Random random = new Random(seed);
    String letters = "abAB01./\\:-_ *?\0\n~é";
    SafeNames names = new SafeNames();
    Set<String> seen = new HashSet<>();
    Path folder = Path.of("folder");
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(4); n > 0; n--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      String name = names.name(text.toString(), ".html");
      String where = "seed " + seed + ": " + text + " gives " + name;
      assertTrue(seen.add(name.toLowerCase(Locale.ROOT)), where);
      assertEquals(folder, folder.resolve(name).normalize().getParent(), where);
      assertTrue(name.matches("[A-Za-z0-9_][A-Za-z0-9_.-]*"), where);
    }
  }
}
