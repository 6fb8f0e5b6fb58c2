package org.wellcurb.batch;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/**
 * What is asked of a run.
 *
 * @param input where records come from
 * @param packs folders, files, or names of packs that ship
 * @param out the folder to write
 * @param asOf the day that the run counts as today
 * @param workers threads that screen
 * @param output sheets, pages and tables
 * @param notices correction notices
 * @param looks what else is looked at: answers, settled findings, an earlier report, the whole
 */
public record ScreenRequest(
    InputOptions input,
    List<String> packs,
    Path out,
    LocalDate asOf,
    int workers,
    OutputOptions output,
    NoticeOptions notices,
    LookOptions looks) {
  public ScreenRequest {
    packs = List.copyOf(packs);
  }

  /** A run with everything as it is when no option is given, and one worker. */
  public static ScreenRequest plain(
      List<String> records, List<String> packs, Path out, LocalDate asOf) {
    return new ScreenRequest(
        InputOptions.of(records),
        packs,
        out,
        asOf,
        /* workers= */ 1,
        OutputOptions.PLAIN,
        NoticeOptions.PLAIN,
        LookOptions.PLAIN);
  }

  /** The same, with records from here. */
  public ScreenRequest with(InputOptions other) {
    return new ScreenRequest(other, packs, out, asOf, workers, output, notices, looks);
  }

  /** The same, read by this header map. */
  public ScreenRequest withHeaders(Path map) {
    return with(input.by(map));
  }

  /** The same, written like this. */
  public ScreenRequest with(OutputOptions other) {
    return new ScreenRequest(input, packs, out, asOf, workers, other, notices, looks);
  }

  /** The same, with these notices. */
  public ScreenRequest with(NoticeOptions other) {
    return new ScreenRequest(input, packs, out, asOf, workers, output, other, looks);
  }

  /** The same, looking at this. */
  public ScreenRequest with(LookOptions other) {
    return new ScreenRequest(input, packs, out, asOf, workers, output, notices, other);
  }

  /** The same, by so many threads. */
  public ScreenRequest by(int threads) {
    return new ScreenRequest(input, packs, out, asOf, threads, output, notices, looks);
  }
}
