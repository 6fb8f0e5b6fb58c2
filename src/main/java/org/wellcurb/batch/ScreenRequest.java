package org.wellcurb.batch;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.Cap;
import org.wellcurb.report.PageStyle;

/**
 * What is asked of a run.
 *
 * @param records files and folders, or {@code -} for standard input
 * @param packs folders, files, or names of packs that ship
 * @param out the folder to write
 * @param asOf the day that the run counts as today
 * @param sheets which records get a sheet
 * @param mostSheets how many sheets at most, the worst first
 * @param outcomes whether {@code outcomes.csv} is written
 * @param positionAccuracy metres: positions on maps are no finer than this
 * @param style language and units of the pages
 * @param workers threads that screen
 * @param standardInput what {@code -} reads
 * @param headers the header map; null if headers are keys
 * @param notices correction notices
 * @param looks what else is looked at: answers, settled findings, an earlier report, the whole
 */
public record ScreenRequest(
    List<String> records,
    List<String> packs,
    Path out,
    LocalDate asOf,
    SheetsFor sheets,
    int mostSheets,
    boolean outcomes,
    double positionAccuracy,
    PageStyle style,
    int workers,
    InputStream standardInput,
    @Nullable Path headers,
    NoticeOptions notices,
    LookOptions looks) {

  /** Metres that positions on maps are rounded to, unless {@code --position-accuracy} says. */
  public static final double POSITION_ACCURACY = 100;

  /** Metres that positions may be rounded to at most: a coarser map shows no place. */
  public static final double COARSEST_POSITION = 20_000;

  public ScreenRequest {
    records = List.copyOf(records);
    packs = List.copyOf(packs);
  }

  /** A run whose headers are keys. */
  public ScreenRequest(
      List<String> records,
      List<String> packs,
      Path out,
      LocalDate asOf,
      SheetsFor sheets,
      int mostSheets,
      boolean outcomes,
      double positionAccuracy,
      PageStyle style,
      int workers,
      InputStream standardInput) {
    this(
        records,
        packs,
        out,
        asOf,
        sheets,
        mostSheets,
        outcomes,
        positionAccuracy,
        style,
        workers,
        standardInput,
        null,
        NoticeOptions.PLAIN,
        LookOptions.PLAIN);
  }

  /** A run with everything as it is when no option is given, and one worker. */
  public static ScreenRequest plain(
      List<String> records, List<String> packs, Path out, LocalDate asOf) {
    return new ScreenRequest(
        records,
        packs,
        out,
        asOf,
        SheetsFor.FLAGGED,
        Cap.SHEETS.most(),
        false,
        POSITION_ACCURACY,
        PageStyle.PLAIN,
        1,
        InputStream.nullInputStream());
  }

  /** The same, with pages in this style. */
  ScreenRequest styled(PageStyle other) {
    return new ScreenRequest(
        records,
        packs,
        out,
        asOf,
        sheets,
        mostSheets,
        outcomes,
        positionAccuracy,
        other,
        workers,
        standardInput,
        headers,
        notices,
        looks);
  }

  /** The same, read by this header map. */
  public ScreenRequest withHeaders(Path map) {
    return new ScreenRequest(
        records,
        packs,
        out,
        asOf,
        sheets,
        mostSheets,
        outcomes,
        positionAccuracy,
        style,
        workers,
        standardInput,
        map,
        notices,
        looks);
  }

  /** The same, with these notices. */
  public ScreenRequest with(NoticeOptions other) {
    return new ScreenRequest(
        records,
        packs,
        out,
        asOf,
        sheets,
        mostSheets,
        outcomes,
        positionAccuracy,
        style,
        workers,
        standardInput,
        headers,
        other,
        looks);
  }

  /** The same, looking at this. */
  public ScreenRequest with(LookOptions other) {
    return new ScreenRequest(
        records,
        packs,
        out,
        asOf,
        sheets,
        mostSheets,
        outcomes,
        positionAccuracy,
        style,
        workers,
        standardInput,
        headers,
        notices,
        other);
  }
}
