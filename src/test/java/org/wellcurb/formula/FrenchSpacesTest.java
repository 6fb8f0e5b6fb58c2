package org.wellcurb.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** No line of a French page begins with a colon. */
class FrenchSpacesTest {
  @Test
  void longFiguresAreSetInThrees() {
    assertEquals("25\u202f920", FrenchSpaces.number("25920"));
    assertEquals("-1\u202f234\u202f567,8901", FrenchSpaces.number("-1234567.8901"));
    assertEquals("2160,5", FrenchSpaces.number("2160.5"));
    assertEquals("0,00012345", FrenchSpaces.number("0.00012345"));
  }

  @Test
  void aSignKeepsToItsWord() {
    assertEquals(
        "Usage\u00a0: «\u00a0domestique\u00a0»\u00a0; 5\u00a0% de perte\u00a0?",
        FrenchSpaces.set("Usage : « domestique » ; 5 % de perte ?"));
  }

  @Test
  void whatIsNoSignOfASentenceStays() {
    assertEquals("a :b", FrenchSpaces.set("a :b"));
    assertEquals("Use : it", FrenchSpaces.in(Locale.ROOT, "Use : it"));
  }
}
