package org.wellcurb.cli;

import org.wellcurb.report.PageStyle;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** The language and the units of pages. */
final class StyleOptions {
  @Option(
      names = "--language",
      paramLabel = "CODE",
      converter = LanguageOption.class,
      description = "Language of the pages: en or fr (default: en).")
  private Language language = Language.EN;

  @Option(
      names = "--units",
      paramLabel = "SYSTEM",
      converter = UnitsOption.class,
      description =
          "Units that the pages show, the record's own beside them: us, metric or as-written"
              + " (default: as-written).")
  private UnitsShown units = UnitsShown.AS_WRITTEN;

  PageStyle style() {
    return new PageStyle(language, units);
  }

  /** Reads the language. */
  static final class LanguageOption implements CommandLine.ITypeConverter<Language> {
    @Override
    public Language convert(String text) {
      Language language = Language.of(text);
      if (language == null) {
        throw new CommandLine.TypeConversionException("'" + text + "' is none of en, fr");
      }
      return language;
    }
  }

  /** Reads the units. */
  static final class UnitsOption implements CommandLine.ITypeConverter<UnitsShown> {
    @Override
    public UnitsShown convert(String text) {
      UnitsShown units = UnitsShown.of(text);
      if (units == null) {
        throw new CommandLine.TypeConversionException(
            "'" + text + "' is none of us, metric, as-written");
      }
      return units;
    }
  }
}
