package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Two texts side by side are whole, and only what is not the same is marked. */
class WordChangeTest {
  private static String shown(List<WordChange> parts) {
    return parts.stream()
        .map(part -> part.isChanged() ? "[" + part.text() + "]" : part.text())
        .collect(Collectors.joining(" "));
  }

  @Test
  void wordsThatTheOtherLacksAreMarked() {
    List<List<WordChange>> sides =
        WordChange.between("at least 100 ft (30 m) or less", "at least 120 ft (36 m) or far less");
    assertEquals("at least [100] ft [(30] m) or less", shown(sides.get(0)));
    assertEquals("at least [120] ft [(36] m) or [far] less", shown(sides.get(1)));
    assertEquals(List.of(), WordChange.between("", "all new").get(0));
    assertEquals("[all new]", shown(WordChange.between("", "all new").get(1)));
    assertEquals("the same", shown(WordChange.between("the same", "the same").get(1)));
  }

  @Test
  void bothTextsAreWholeAndWhatIsNotMarkedIsInBoth() {
    long seed = 20261126;
    Random random = new Random(seed);
    for (int run = 0; run < 500; run++) {
      String a = text(random);
      String b = text(random);
      List<List<WordChange>> sides = WordChange.between(a, b);
      assertEquals(a, whole(sides.get(0)), "seed " + seed);
      assertEquals(b, whole(sides.get(1)), "seed " + seed);
      assertEquals(kept(sides.get(0)), kept(sides.get(1)), "seed " + seed + ": " + a + " | " + b);
    }
  }

  private static String text(Random random) {
    return random
        .ints(1 + random.nextInt(12), 0, 4)
        .mapToObj(i -> String.valueOf((char) ('a' + i)))
        .collect(Collectors.joining(" "));
  }

  private static String whole(List<WordChange> parts) {
    return parts.stream().map(WordChange::text).collect(Collectors.joining(" "));
  }

  private static String kept(List<WordChange> parts) {
    return parts.stream()
        .filter(part -> !part.isChanged())
        .map(WordChange::text)
        .collect(Collectors.joining(" "));
  }
}
