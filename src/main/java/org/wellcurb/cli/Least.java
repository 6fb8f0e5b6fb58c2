package org.wellcurb.cli;

import java.util.Locale;
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

  static void of(CommandSpec spec, String option, double value, double least) {
    if (!(value >= least)) {
      throw new CommandLine.ParameterException(
          spec.commandLine(),
          String.format(Locale.ROOT, "%s: must be at least %.0f", option, least));
    }
  }
}
