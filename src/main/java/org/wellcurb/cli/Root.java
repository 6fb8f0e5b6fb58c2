package org.wellcurb.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The program without a command: says what there is. */
@Command(
    name = "wellcurb",
    mixinStandardHelpOptions = true,
    versionProvider = Root.Versions.class,
    description =
        "Checks as-built records of private water wells against the rules of the place where the"
            + " well stands.",
    footer = {
      "",
      "Exit: 0 done; 1 a gate was tripped; 2 the command line, a pack or a map is not usable"
          + " (nothing was written); 3 no input could be read."
    },
    synopsisSubcommandLabel = "COMMAND")
final class Root implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--trace",
      scope = CommandLine.ScopeType.INHERIT,
      description = "On an error, print where in the program it arose.")
  private boolean trace;

  boolean isTracing() {
    return trace;
  }

  @Override
  public Integer call() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "Missing command: " + String.join(", ", commands()));
  }

  private java.util.Set<String> commands() {
    return spec.subcommands().keySet();
  }

  /** The version that the jar was built as. */
  static final class Versions implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"wellcurb " + org.wellcurb.batch.Version.text()};
    }
  }
}
