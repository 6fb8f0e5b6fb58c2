package org.wellcurb.report.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class NumeralsTest {
  @Test
  void aWholeNumberIsQuotedAsItStands() {
    assertEquals("99999999", Numerals.of(99999999, Numerals.FULL, Language.EN));
    assertEquals("0.333333", Numerals.of(1 / 3.0, Numerals.FULL, Language.EN));
    assertEquals("100000000", Numerals.of(99999999, Numerals.TIDY, Language.EN));
  }
}
