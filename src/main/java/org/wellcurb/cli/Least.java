package org.wellcurb.cli;

import java.util.Locale;
import org.wellcurb.batch.ScreenRequest;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** Refuses an option that is too small, or too great. */
final class Least {
  private Least() {}

  static void of(
      CommandSpec spec, String option, double value, double least, double most, String why) {
    of(spec, option, value, least);
    if (value > most) {
      throw new CommandLine.ParameterException(
          spec.commandLine(),
          String.format(Locale.ROOT, "%s: must be at most %.0f; %s", option, most, why));
    }
  }

  /** Refuses a position accuracy that leaves no position. */
  static void ofPosition(CommandSpec spec, double accuracy) {
    of(
        spec,
        "--position-accuracy",
        accuracy,
        0,
        ScreenRequest.COARSEST_POSITION,
        "a coarser one puts every record at one place");
  }

  static void of(CommandSpec spec, String option, double value, double least) {
    if (!(value >= least)) {
      throw new CommandLine.ParameterException(
          spec.commandLine(),
          String.format(Locale.ROOT, "%s: must be at least %.0f", option, least));
    }
  }
}
