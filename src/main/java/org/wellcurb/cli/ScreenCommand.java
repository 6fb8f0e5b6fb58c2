package org.wellcurb.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.wellcurb.batch.LookOptions;
import org.wellcurb.batch.NoticeOptions;
import org.wellcurb.batch.OutputOptions;
import org.wellcurb.batch.ScreenRequest;
import org.wellcurb.batch.ScreenRun;
import org.wellcurb.batch.ScreenSummary;
import org.wellcurb.batch.SheetsFor;
import org.wellcurb.batch.Stop;
import org.wellcurb.report.Cap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code screen}: records in, a report out. */
@Command(
    name = "screen",
    mixinStandardHelpOptions = true,
    description = "Screens records and writes a report.")
final class ScreenCommand implements Callable<Integer> {
  private final Stop stop;

  @Spec private CommandSpec spec;

  @Option(
      names = "--rules",
      required = true,
      paramLabel = "PACK",
      description =
          "A rule pack: a folder, a file, or the name of one that ships. May be given again.")
  private List<String> packs = new ArrayList<>();

  @Option(
      names = "--sheets",
      paramLabel = "WHICH",
      converter = SheetsOption.class,
      description = "Records that get a sheet: flagged, all or none (default: flagged).")
  private SheetsFor sheets = SheetsFor.FLAGGED;

  @Option(
      names = "--most-sheets",
      paramLabel = "N",
      description = "Sheets at most, the worst records first (default: 500).")
  private int mostSheets = Cap.SHEETS.most();

  @Option(
      names = "--notices",
      paramLabel = "WHICH",
      converter = NoticesOption.Converter.class,
      description = "Correction notices: all or none (default: all).")
  private NoticesOption notices = NoticesOption.ALL;

  @Option(
      names = "--most-notices",
      paramLabel = "N",
      description = "Notices at most, the licences with most findings first (default: 200).")
  private int mostNotices = Cap.NOTICES.most();

  @Option(
      names = "--notice",
      paramLabel = "FILE.ftl",
      description = "An office's own template of a notice (see README.md).")
  private @Nullable Path notice;

  @Option(
      names = "--reply-days",
      paramLabel = "N",
      description =
          "Days after the as-of date by which notices ask for an answer (default: 30; at most"
              + " 3660).")
  private int replyDays = NoticeOptions.REPLY_DAYS;

  @Option(
      names = "--crosscheck",
      arity = "1",
      paramLabel = "yes|no",
      converter = YesNoOption.Converter.class,
      description = "Also look at what only the whole batch shows (default: yes).")
  private YesNoOption crosscheck = YesNoOption.YES;

  @Option(
      names = "--earlier",
      paramLabel = "DIR",
      description = "An earlier report: also say what is new, still there, and cleared.")
  private @Nullable Path earlier;

  @Option(
      names = "--settled",
      paramLabel = "FILE",
      description =
          "A table of findings that someone has looked at:"
              + " record_id,rule,decision,by,date,note.")
  private @Nullable Path settled;

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description = "A table that came back with a notice: what is filled in is screened.")
  private @Nullable Path answers;

  @Option(
      names = "--outcomes",
      description = "Also write outcomes.csv: every rule on every record.")
  private boolean outcomes;

  @Option(
      names = "--gate",
      paramLabel = "KIND",
      converter = Gate.Converter.class,
      description =
          "End with 1 if there is a finding of this kind (deficiency, discrepancy, omission,"
              + " advisory), or a row set-aside. May be given again.")
  private List<Gate> gates = new ArrayList<>();

  @Mixin private final RunOptions run = new RunOptions();

  @Mixin private final StyleOptions style = new StyleOptions();

  ScreenCommand(Stop stop) {
    this.stop = stop;
  }

  @Override
  public Integer call() throws Exception {
    Least.of(spec, "--most-sheets", mostSheets, 0);
    Least.of(spec, "--most-notices", mostNotices, 0);
    Least.of(
        spec,
        "--reply-days",
        replyDays,
        0,
        NoticeOptions.MOST_REPLY_DAYS,
        "a notice asks for an answer within ten years");
    run.check(spec);
    ScreenRequest request =
        new ScreenRequest(
            run.input(),
            packs,
            run.out(),
            run.asOf(),
            run.workers(),
            new OutputOptions(sheets, mostSheets, outcomes, run.positionAccuracy(), style.style()),
            new NoticeOptions(notices == NoticesOption.ALL, mostNotices, replyDays, notice),
            new LookOptions(crosscheck == YesNoOption.YES, answers, settled, earlier));
    ScreenSummary summary;
    try (ProgressLine line = ProgressLine.start(run.isQuiet())) {
      summary = new ScreenRun(request, line, stop).run();
    }
    if (!run.isQuiet()) {
      SummaryText.lines(summary, run.out()).forEach(spec.commandLine().getOut()::println);
    }
    return gates.stream().anyMatch(gate -> gate.isTripped(summary)) ? ExitCode.GATE : ExitCode.DONE;
  }
}
