package org.wellcurb.judgement;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a comparison of words asks for is turned round by a negation, and back by another. */
final class WantedTest {
  @ParameterizedTest
  @CsvSource({
    "given,nothing",
    "yes,no",
    "steel,anything but steel",
    "'steel, pvc','anything but steel, pvc'"
  })
  void isTurnedRound(String wanted, String opposite) {
    assertEquals(opposite, Wanted.opposite(wanted));
    assertEquals(wanted, Wanted.opposite(opposite));
  }

  @Test
  void namesItsWords() {
    List<String> words = List.of("not sealed", "limestone or dolomite");
    assertEquals(words, Wanted.words(Wanted.oneOf(words, true)));
    assertEquals(words, Wanted.words(Wanted.oneOf(words, false)));
    assertEquals("", Wanted.opposite(""));
  }
}
