package org.wellcurb.report;

import java.util.Locale;
import org.wellcurb.formula.Speech;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;

/**
 * How pages are written.
 *
 * @param language language of the pages' own words (packs keep theirs)
 * @param units units that amounts are printed in
 */
public record PageStyle(Language language, UnitsShown units) {
  /** English, each amount as it was written. */
  public static final PageStyle PLAIN = new PageStyle(Language.EN, UnitsShown.AS_WRITTEN);

  /** How rules and sums are put into words for these pages. */
  public Speech speech() {
    Words words = Words.in(language);
    return new Speech(
        language == Language.FR ? Locale.FRENCH : Locale.ROOT,
        switch (units) {
          case US -> UnitSystem.US;
          case METRIC -> UnitSystem.METRIC;
          case AS_WRITTEN -> UnitSystem.NEUTRAL;
        },
        entry -> words.entry(entry.key()),
        words::choice);
  }
}
