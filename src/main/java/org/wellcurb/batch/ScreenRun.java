package org.wellcurb.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.crosscheck.SurveyFile;
import org.wellcurb.intake.HeaderMap;
import org.wellcurb.intake.Inputs;
import org.wellcurb.intake.Sources;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.Cap;
import org.wellcurb.report.NoticePages;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.screening.Tally;

/**
 * Screens records and writes the report: whole, or not at all.
 *
 * <p>Records go through in parts that several threads screen; what comes of them is merged in input
 * order. So the memory needed does not grow with the input, and the bytes written do not hang on
 * the number of threads.
 */
public final class ScreenRun {
  /** Rows for the cross-check; no output, gone before the folder is whole. */
  static final String SURVEY = ".survey";

  private final ScreenRequest request;
  private final Progress progress;
  private final Stop stop;

  public ScreenRun(ScreenRequest request, Progress progress, Stop stop) {
    this.request = request;
    this.progress = progress;
    this.stop = stop;
  }

  /**
   * Runs to the end.
   *
   * @throws RunFailure if nothing was written, with the line that says why
   */
  public ScreenSummary run() throws RunFailure {
    HeaderMap headers = Opening.headers(request.input().headers());
    Opening.readAhead(request);
    List<Pack> packs = Opening.packs(request.packs());
    ScreenRequest styled =
        request.with(request.output().styled(request.output().style().about(packs)));
    NoticePages notices = Opening.notices(styled);
    Bars bars = new Bars();
    LookOptions looks = request.looks();
    Answers answers = Answers.load(looks.answers(), Catalogue.standard());
    Settled settled = Settled.load(looks.settled(), request.asOf());
    @Nullable EarlierReport earlier = EarlierReport.open(looks.earlier());
    OwnEntries entries = new OwnEntries(packs);
    @Nullable EarlierFindings before = earlier == null ? null : read(earlier, entries);
    try (Hashes hashes = new Hashes(request.input().standardInput())) {
      // A line a rule and record: a part of a megabyte read would be hundreds of them written.
      Sources sources =
          request.output().outcomes()
              ? Sources.inSmallParts(Catalogue.standard(), headers)
              : new Sources(Catalogue.standard(), headers);
      Inputs inputs =
          Opening.inputs(
              request.input().records(), request.out(), request.input().headers(), sources, hashes);
      Plan plan =
          new Plan(
              styled,
              packs,
              new PackChoice(packs, Catalogue.standard()),
              answers,
              repeats(answers, settled, inputs, sources),
              settled,
              earlier,
              before,
              entries,
              bars);
      try (FreshFolder folder = FreshFolder.beside(request.out())) {
        ScreenSummary summary = write(folder, plan, sources, inputs, hashes, notices);
        stop.check();
        folder.swapIn();
        stop.isInPlace();
        return summary;
      } catch (IOException e) {
        throw FreshFolder.unwritable(request.out(), e);
      }
    } catch (InterruptedException e) {
      throw RunFailure.unusable("interrupted: nothing was written", e);
    } catch (OutOfMemoryError e) {
      throw RunFailure.unusable(
          "not enough memory: nothing was written; give Java more (-Xmx) or ask for fewer sheets",
          e);
    }
  }

  private static EarlierFindings read(EarlierReport earlier, OwnEntries entries) throws RunFailure {
    try {
      return earlier.read(entries);
    } catch (IOException e) {
      throw RunFailure.unusable(
          earlier.folder() + ": cannot be read: " + Folders.reason(e) + "; name another report", e);
    }
  }

  /** Which of the numbers that side tables name stand on several rows; null where not known. */
  private @Nullable Set<String> repeats(
      Answers answers, Settled settled, Inputs inputs, Sources sources)
      throws RunFailure, InterruptedException {
    Set<String> numbers = new HashSet<>(answers.numbers());
    numbers.addAll(settled.numbers());
    try {
      @Nullable Set<String> repeated =
          Repeats.of(numbers, inputs.inputs(), sources, request.workers(), stop);
      settled.know(repeated);
      return repeated;
    } catch (IOException e) {
      throw RunFailure.noInput(
          "the records cannot be read: " + Folders.reason(e) + "; nothing was written");
    }
  }

  private ScreenSummary write(
      FreshFolder fresh,
      Plan plan,
      Sources sources,
      Inputs inputs,
      Hashes hashes,
      NoticePages notices)
      throws IOException, RunFailure, InterruptedException {
    Path folder = fresh.path();
    List<PartWork> works = new ArrayList<>();
    ReportFiles files =
        new ReportFiles(
            folder,
            request.output().outcomes(),
            request.notices().wanted(),
            request.looks().settled() != null);
    try (Merged merged =
            new Merged(
                files,
                new SetAsideFiles(folder),
                survey(folder, plan.packs()),
                request.output().mostSheets(),
                plan.maps(),
                plan.bars(),
                stop,
                progress);
        RecordParts parts = new RecordParts(inputs.inputs(), sources, stop)) {
      Pipeline.<Part, PartResult>run(
          parts,
          request.workers(),
          () -> {
            PartWork work = new PartWork(plan, stop);
            works.add(work);
            return work;
          },
          () ->
              new PartResult(
                  Cap.RECORDS_ON_PAGE.most(),
                  request.output().mostSheets(),
                  plan.mostRules(),
                  plan.maps()),
          merged);
      files.finish();
      refuseIfNothingWasRead(merged, inputs);
      plan.answers().refuseIfUsedTwice();
      return new ReportEnd(plan, folder, merged, inputs, hashes, notices, stop)
          .write(tallies(plan, works));
    }
  }

  private @Nullable SurveyFile survey(Path folder, List<Pack> packs) throws IOException {
    return request.looks().crosscheck()
        ? new SurveyFile(
            folder.resolve(SURVEY),
            Catalogue.standard(),
            CrossFiles.rules(packs),
            Cap.NAMES_COMPARED.most())
        : null;
  }

  private static void refuseIfNothingWasRead(Merged merged, Inputs inputs) throws RunFailure {
    if (merged.inputs.filesSetAside() == inputs.inputs().size()) {
      throw RunFailure.noInput(merged.inputs.firstFileSetAside() + "; nothing was written");
    }
  }

  /** The counts of all threads: sums, so that it does not matter which thread counted what. */
  private static List<Tally> tallies(Plan plan, List<PartWork> works) {
    List<Tally> sums = new ArrayList<>();
    for (int i = 0; i < plan.packs().size(); i++) {
      Tally sum = new Tally(plan.packs().get(i));
      for (PartWork work : works) {
        sum.add(work.tallies().get(i));
      }
      sums.add(sum);
    }
    return sums;
  }
}
