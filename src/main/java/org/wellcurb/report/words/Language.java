package org.wellcurb.report.words;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A language that pages are written in. */
public enum Language {
  EN,
  FR;

  /** The code that pages and {@code --language} use, such as {@code en}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The language with this code; null if pages are not written in it. */
  public static @Nullable Language of(String code) {
    for (Language language : values()) {
      if (language.code().equals(code)) {
        return language;
      }
    }
    return null;
  }
}
