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
import org.wellcurb.intake.JoinGuess;
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

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "A table, a workbook, an archive or a folder; several that belong together.")
  private List<String> files = List.of();

  @Option(
      names = "--out",
      paramLabel = "MAP.json",
      description = "Also draft a header map, to be read and mended.")
  private @Nullable Path out;

  @Override
  public Integer call() throws Exception {
    List<HeaderSurvey> surveys = new ArrayList<>();
    List<String> passedOver = new ArrayList<>();
    try {
      Inputs inputs = Inputs.of(files, System.in);
      inputs.passedOver().forEach(p -> passedOver.add(p.file() + ": " + p.reason()));
      for (Input input : inputs.inputs()) {
        try {
          surveys.add(HeaderSurvey.of(input, Catalogue.standard()));
        } catch (IntakeException e) {
          passedOver.add(String.valueOf(e.getMessage()));
        }
      }
    } catch (IntakeException e) {
      throw RunFailure.noInput(String.valueOf(e.getMessage()));
    }
    if (surveys.isEmpty()) {
      throw RunFailure.noInput(
          passedOver.isEmpty() ? String.join(", ", files) + ": holds no table" : passedOver.get(0));
    }
    PrintWriter print = spec.commandLine().getOut();
    for (HeaderSurvey survey : surveys) {
      HeadersText.lines(survey).forEach(print::println);
    }
    passedOver.forEach(print::println);
    // Of several tables the one most like records of wells; of these the longest.
    HeaderSurvey best = surveys.get(0);
    for (HeaderSurvey survey : surveys) {
      boolean more = survey.filling() > best.filling();
      boolean longer = survey.filling() == best.filling() && survey.rows() > best.rows();
      best = more || longer ? survey : best;
    }
    if (out != null) {
      HeaderSurvey main = best;
      List<HeaderSurvey> tables =
          surveys.stream().filter(survey -> !survey.file().equals(main.file())).toList();
      List<JoinGuess> joins = JoinGuess.of(main, tables);
      WholeFile.write(out, MapDraft.of(main, joins).getBytes(StandardCharsets.UTF_8));
      print.println("draft of a map for " + main.file() + ": " + out);
      List<String> others = new ArrayList<>(tables.stream().map(HeaderSurvey::file).toList());
      for (JoinGuess join : joins) {
        HeaderSurvey joined = join.survey();
        others.remove(joined.file());
        print.println(
            "joined to it: "
                + joined.file()
                + ", by "
                + joined.columns().get(join.id()).survey().name()
                + ", which says the same as "
                + main.columns().get(join.matches()).survey().name());
      }
      if (!others.isEmpty()) {
        print.println(
            "not drafted: " + String.join(", ", others) + "; \"joins\" of a map joins them");
      }
    } else {
      print.println("--out MAP.json drafts a map of this, to be read and mended");
    }
    return ExitCode.DONE;
  }
}
