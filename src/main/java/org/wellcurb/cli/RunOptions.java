package org.wellcurb.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.batch.InputOptions;
import org.wellcurb.batch.OutputOptions;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command asks that reads records and writes a folder. */
final class RunOptions {
  @Parameters(
      arity = "1..*",
      paramLabel = "RECORDS",
      description = "Files or folders with records; - is standard input.")
  private List<String> records = new ArrayList<>();

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
  private double positionAccuracy = OutputOptions.POSITION_ACCURACY;

  @Option(
      names = "--workers",
      paramLabel = "N",
      description = "Threads that judge (default: as many as processors).")
  private int workers = Runtime.getRuntime().availableProcessors();

  @Option(names = "--quiet", description = "No progress line, no summary.")
  private boolean quiet;

  /** Refuses what is too small, or too great. */
  void check(CommandSpec spec) {
    Least.of(spec, "--workers", workers, 1);
    Least.of(
        spec,
        "--position-accuracy",
        positionAccuracy,
        0,
        OutputOptions.COARSEST_POSITION,
        "a coarser one puts every record at one place");
  }

  InputOptions input() {
    return new InputOptions(records, headers, System.in);
  }

  Path out() {
    return out;
  }

  LocalDate asOf() {
    return asOf;
  }

  double positionAccuracy() {
    return positionAccuracy;
  }

  int workers() {
    return workers;
  }

  boolean isQuiet() {
    return quiet;
  }
}
