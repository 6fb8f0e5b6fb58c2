package org.wellcurb.cli;

import java.util.concurrent.Callable;
import org.wellcurb.batch.RehearseRequest;
import org.wellcurb.batch.RehearseRun;
import org.wellcurb.batch.RehearseSummary;
import org.wellcurb.batch.Stop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code rehearse}: the same records under two packs. */
@Command(
    name = "rehearse",
    mixinStandardHelpOptions = true,
    description = "Judges the same records by two packs and writes which outcomes change.")
final class RehearseCommand implements Callable<Integer> {
  private final Stop stop;

  @Spec private CommandSpec spec;

  @Option(
      names = "--rules",
      required = true,
      paramLabel = "OLD",
      description = "The pack in use: a folder, a file, or the name of one that ships.")
  private String before = "";

  @Option(names = "--against", required = true, paramLabel = "NEW", description = "The pack tried.")
  private String after = "";

  @Mixin private final RunOptions run = new RunOptions();

  @Mixin private final StyleOptions style = new StyleOptions();

  RehearseCommand(Stop stop) {
    this.stop = stop;
  }

  @Override
  public Integer call() throws Exception {
    run.check(spec);
    RehearseRequest request =
        new RehearseRequest(
            run.input(),
            before,
            after,
            run.out(),
            run.asOf(),
            run.workers(),
            run.positionAccuracy(),
            style.style());
    RehearseSummary summary;
    try (ProgressLine line = ProgressLine.start(run.isQuiet())) {
      summary = new RehearseRun(request, line, stop).run();
    }
    if (!run.isQuiet()) {
      SummaryText.lines(summary, before, after, run.out())
          .forEach(spec.commandLine().getOut()::println);
    }
    return ExitCode.DONE;
  }
}
