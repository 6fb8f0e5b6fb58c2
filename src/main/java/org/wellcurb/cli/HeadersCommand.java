package org.wellcurb.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.wellcurb.batch.RunFailure;
import org.wellcurb.intake.HeaderSurvey;
import org.wellcurb.intake.Input;
import org.wellcurb.intake.Inputs;
import org.wellcurb.intake.IntakeException;
import org.wellcurb.intake.MapDraft;
import org.wellcurb.record.Catalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code headers}: what the columns of an export look like; drafts a header map. */
@Command(
    name = "headers",
    mixinStandardHelpOptions = true,
    description = {
      "Shows the columns of an office's own export, and guesses what they are.",
      "Nothing guessed is used until you save it in a map and screen with --headers."
    })
final class HeadersCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "A table, a workbook or an archive.")
  private String file = "";

  @Option(
      names = "--out",
      paramLabel = "MAP.json",
      description = "Also draft a header map, to be read and mended.")
  private @Nullable Path out;

  @Override
  public Integer call() throws Exception {
    List<HeaderSurvey> surveys = new ArrayList<>();
    try {
      for (Input input : Inputs.of(List.of(file), System.in).inputs()) {
        surveys.add(HeaderSurvey.of(input, Catalogue.standard()));
      }
    } catch (IntakeException e) {
      throw RunFailure.noInput(String.valueOf(e.getMessage()));
    }
    if (surveys.isEmpty()) {
      throw RunFailure.noInput(file + ": holds no table");
    }
    PrintWriter print = spec.commandLine().getOut();
    for (HeaderSurvey survey : surveys) {
      HeadersText.lines(survey).forEach(print::println);
    }
    HeaderSurvey first = surveys.get(0);
    if (out != null) {
      WholeFile.write(out, MapDraft.of(first).getBytes(StandardCharsets.UTF_8));
      print.println("draft of a map for " + first.file() + ": " + out);
    } else {
      print.println("--out MAP.json drafts a map of this, to be read and mended");
    }
    return ExitCode.DONE;
  }
}
