package org.wellcurb.formula;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Locale;
import java.util.ResourceBundle;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PhrasesTest {
  /** A lone apostrophe is swallowed, with the places after it. Names of workings are not filled. */
  @ParameterizedTest
  @ValueSource(strings = {"", "fr"})
  void apostrophesOfPhrasesAreDoubled(String language) {
    ResourceBundle phrases =
        ResourceBundle.getBundle("org.wellcurb.formula.phrases", Locale.forLanguageTag(language));
    for (String key : new TreeSet<>(phrases.keySet())) {
      String text = phrases.getString(key);
      // Names of workings, figures and results are words, read as they stand.
      boolean isFilled = !key.matches("(working|figure|formula|result)\\..*");
      assertFalse(isFilled && text.replace("''", "").contains("'"), key + "=" + text);
    }
  }
}
