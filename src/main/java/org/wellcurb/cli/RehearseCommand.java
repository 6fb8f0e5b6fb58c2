package org.wellcurb.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.wellcurb.batch.RehearseRequest;
import org.wellcurb.batch.RehearseRun;
import org.wellcurb.batch.RehearseSummary;
import org.wellcurb.batch.ScreenRequest;
import org.wellcurb.batch.Stop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code rehearse}: the same records under two packs. */
@Command(
    name = "rehearse",
    mixinStandardHelpOptions = true,
    description = "Judges the same records by two packs and writes which outcomes change.")
final class RehearseCommand implements Callable<Integer> {
  private final Stop stop;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "RECORDS",
      description = "Files or folders with records; - is standard input.")
  private List<String> records = new ArrayList<>();

  @Option(
      names = "--rules",
      required = true,
      paramLabel = "OLD",
      description = "The pack in use: a folder, a file, or the name of one that ships.")
  private String before = "";

  @Option(names = "--against", required = true, paramLabel = "NEW", description = "The pack tried.")
  private String after = "";

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder to write: absent, empty, or an earlier report.")
  private Path out = Path.of("");

  @Option(
      names = "--headers",
      paramLabel = "MAP",
      description = "A header map: which columns of an office's own export fill which entries.")
  private @Nullable Path headers;

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      converter = DateOption.class,
      description = "The day that counts as today (YYYY-MM-DD); today in UTC if not given.")
  private LocalDate asOf = LocalDate.now(Clock.systemUTC());

  @Option(
      names = "--position-accuracy",
      paramLabel = "METRES",
      description = "Positions on maps are no finer than this (default: 100; at most 20000).")
  private double positionAccuracy = ScreenRequest.POSITION_ACCURACY;

  @Option(
      names = "--workers",
      paramLabel = "N",
      description = "Threads that judge (default: as many as processors).")
  private int workers = Runtime.getRuntime().availableProcessors();

  @Mixin private final StyleOptions style = new StyleOptions();

  @Option(names = "--quiet", description = "No progress line, no summary.")
  private boolean quiet;

  RehearseCommand(Stop stop) {
    this.stop = stop;
  }

  @Override
  public Integer call() throws Exception {
    Least.of(spec, "--workers", workers, 1);
    Least.ofPosition(spec, positionAccuracy);
    RehearseRequest request =
        new RehearseRequest(
            records,
            before,
            after,
            out,
            asOf,
            positionAccuracy,
            style.style(),
            workers,
            System.in,
            headers);
    RehearseSummary summary;
    try (ProgressLine line = ProgressLine.start(quiet)) {
      summary = new RehearseRun(request, line, stop).run();
    }
    if (!quiet) {
      SummaryText.lines(summary, before, after, out).forEach(spec.commandLine().getOut()::println);
    }
    return ExitCode.DONE;
  }
}
