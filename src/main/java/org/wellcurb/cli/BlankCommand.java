package org.wellcurb.cli;

import java.util.concurrent.Callable;
import org.wellcurb.report.BlankForm;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** An empty form. */
@Command(
    name = "blank",
    mixinStandardHelpOptions = true,
    description = "Prints an empty form: a table's header, a JSON record, or a page to print.")
final class BlankCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(names = "--as", required = true, paramLabel = "KIND", description = "csv, json or html.")
  private String kind = "";

  @Mixin private final StyleOptions style = new StyleOptions();

  @Override
  public Integer call() {
    String form =
        switch (kind) {
          case "csv" -> BlankForm.csv(style.style().units());
          case "json" -> BlankForm.json(style.style().units());
          case "html" -> BlankForm.html(style.style());
          default ->
              throw new CommandLine.ParameterException(
                  spec.commandLine(), "--as: '" + kind + "' is none of csv, json, html");
        };
    spec.commandLine().getOut().print(form);
    return ExitCode.DONE;
  }
}
