package org.wellcurb.rulepack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sound pack with something changed here and there is refused with its faults, or loads. */
class GeneratedPacksTest {
  private static final String[] PIECES = {
    "\"",
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "0",
    "-1",
    "1e999",
    "null",
    "true",
    "ft",
    "psi",
    " and ",
    " or ",
    "not ",
    "(",
    ")",
    ">=",
    "<>",
    "between",
    "well.depth",
    "workings.drawdown",
    "table(frost)",
    "known(",
    "if ",
    "then ",
    "else ",
    "\\u0000",
    "\u0000",
    "\uD800",
    "é",
    "'",
    "*",
    "/",
    "+",
    "2009-02-30",
    "2012-05-01",
    "yes"
  };

  @TempDir Path dir;

  @Test
  void aPackIsRefusedWithItsFaultsOrLoads() throws Exception {
    long seed = 1977;
    Random random = new Random(seed);
    String sound = Files.readString(Path.of("src/test/resources/bad-packs/sound-base/pack.json"));
    Path pack = Files.createDirectory(dir.resolve("sound-base")).resolve("pack.json");
    int loaded = 0;
    int count = 10_000;
    for (int i = 0; i < count; i++) {
      StringBuilder text = new StringBuilder(sound);
      for (int n = random.nextInt(3); n >= 0; n--) {
        int at = random.nextInt(text.length());
        int end = Math.min(text.length(), at + random.nextInt(6));
        text.replace(at, end, PIECES[random.nextInt(PIECES.length)]);
      }
      Files.write(pack, text.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
      String said = "seed " + seed + ", pack " + i + ":\n" + text;
      try {
        PackLoader.load(pack.getParent().toString());
        loaded++;
      } catch (PackException e) {
        assertFalse(e.problems().isEmpty(), said);
        for (PackProblem problem : e.problems()) {
          assertEquals(1, problem.text().lines().count(), said);
        }
      }
    }
    assertTrue(loaded > count / 50 && loaded < count, "seed " + seed + ": " + loaded + " loaded");
  }
}
