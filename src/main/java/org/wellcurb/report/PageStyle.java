package org.wellcurb.report;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.wellcurb.formula.FrenchSpaces;
import org.wellcurb.formula.Speech;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Pack;

/**
 * How pages are written.
 *
 * @param language language of the pages' own words
 * @param units units that amounts are printed in
 * @param packTexts texts of packs in that language, by the pack's own words, as far as packs have
 *     it
 */
public record PageStyle(Language language, UnitsShown units, Map<String, String> packTexts) {
  /** English, each amount as it was written. */
  public static final PageStyle PLAIN = new PageStyle(Language.EN, UnitsShown.AS_WRITTEN);

  public PageStyle {
    packTexts = Map.copyOf(packTexts);
  }

  /** A style that knows no pack. */
  public PageStyle(Language language, UnitsShown units) {
    this(language, units, Map.of());
  }

  /** The same for pages about these packs, whose texts it says in its language where they can. */
  public PageStyle about(List<Pack> packs) {
    if (language != Language.FR) {
      return this;
    }
    Map<String, String> texts = new HashMap<>();
    for (Pack pack : packs) {
      pack.files()
          .forEach(
              file ->
                  file.french().forEach((own, french) -> texts.put(own, FrenchSpaces.set(french))));
    }
    return new PageStyle(language, units, texts);
  }

  /** A text of a pack in the language of the pages, or as the pack has it. */
  public String own(String text) {
    String said = said(text);
    return said.isEmpty() ? text : said;
  }

  /** A text of a pack or a reader in the language of the pages; empty where there is none. */
  String said(String text) {
    if (RuleWords.isOurs(text, Words.in(language))) {
      return text;
    }
    String own = packTexts.getOrDefault(text, "");
    return own.isEmpty() ? Words.in(language).said(text) : own;
  }

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
