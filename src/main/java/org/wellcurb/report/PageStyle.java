package org.wellcurb.report;

import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;

/**
 * How pages are written.
 *
 * @param language language of the pages' own words (packs keep theirs)
 * @param units units that amounts are printed in
 */
public record PageStyle(Language language, UnitsShown units) {
  /** English, each amount as it was written. */
  public static final PageStyle PLAIN = new PageStyle(Language.EN, UnitsShown.AS_WRITTEN);
}
