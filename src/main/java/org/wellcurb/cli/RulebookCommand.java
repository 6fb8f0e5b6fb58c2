package org.wellcurb.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.Pages;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A pack as a printable page. */
@Command(
    name = "rulebook",
    mixinStandardHelpOptions = true,
    description = "Writes a pack as a printable rulebook.")
final class RulebookCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "PACK",
      description = "A rule pack: a folder, a file, or the name of one that ships.")
  private String pack = "";

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE.html",
      description = "The page to write.")
  private Path out = Path.of("");

  @Option(
      names = "--language",
      paramLabel = "CODE",
      converter = StyleOptions.LanguageOption.class,
      description = "Language of the page: en or fr (default: en).")
  private Language language = Language.EN;

  @Option(
      names = "--units",
      paramLabel = "SYSTEM",
      converter = UnitsBeside.class,
      description =
          "Units that stand in square brackets beside a limit's own: us, metric or both, whichever"
              + " it is not in (default: both).")
  private UnitsShown units = UnitsShown.AS_WRITTEN;

  @Override
  public Integer call() throws Exception {
    // The page says that all examples passed: so they are run, those of packs that ship too.
    Pack loaded = PackLoader.loadForAuthor(pack);
    PageStyle style = new PageStyle(language, units).about(List.of(loaded));
    String page = new Pages(style).rulebook(loaded);
    WholeFile.write(out, page.getBytes(StandardCharsets.UTF_8));
    return ExitCode.DONE;
  }

  /** Reads which units stand beside. */
  static final class UnitsBeside implements CommandLine.ITypeConverter<UnitsShown> {
    @Override
    public UnitsShown convert(String text) {
      UnitsShown units = text.equals("both") ? UnitsShown.AS_WRITTEN : UnitsShown.of(text);
      if (units == null || text.equals(UnitsShown.AS_WRITTEN.code())) {
        throw new CommandLine.TypeConversionException("'" + text + "' is none of us, metric, both");
      }
      return units;
    }
  }
}
