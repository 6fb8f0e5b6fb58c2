package org.wellcurb.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.wellcurb.report.Pages;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

  @Mixin private final StyleOptions style = new StyleOptions();

  @Override
  public Integer call() throws Exception {
    Pack loaded = PackLoader.load(pack);
    String page = new Pages(style.style().about(List.of(loaded))).rulebook(loaded);
    WholeFile.write(out, page.getBytes(StandardCharsets.UTF_8));
    return ExitCode.DONE;
  }
}
