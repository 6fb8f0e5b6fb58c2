package org.wellcurb.batch;

import org.wellcurb.report.Cap;
import org.wellcurb.report.PageStyle;

/**
 * How a screening is written.
 *
 * @param sheets which records get a sheet
 * @param mostSheets how many sheets at most, the worst first
 * @param outcomes whether {@code outcomes.csv} is written
 * @param positionAccuracy metres: positions on maps are no finer than this
 * @param style language and units of the pages
 */
public record OutputOptions(
    SheetsFor sheets, int mostSheets, boolean outcomes, double positionAccuracy, PageStyle style) {
  /** Metres that positions on maps are rounded to, unless {@code --position-accuracy} says. */
  public static final double POSITION_ACCURACY = 100;

  /** Metres that positions may be rounded to at most: a coarser map shows no place. */
  public static final double COARSEST_POSITION = 20_000;

  /** Everything as it is when no option is given. */
  public static final OutputOptions PLAIN =
      new OutputOptions(
          SheetsFor.FLAGGED,
          Cap.SHEETS.most(),
          /* outcomes= */ false,
          POSITION_ACCURACY,
          PageStyle.PLAIN);

  /** The same, with sheets of these records, and so many at most. */
  public OutputOptions with(SheetsFor which, int most) {
    return new OutputOptions(which, most, outcomes, positionAccuracy, style);
  }

  /** The same, with {@code outcomes.csv}. */
  public OutputOptions withOutcomes() {
    return new OutputOptions(sheets, mostSheets, /* outcomes= */ true, positionAccuracy, style);
  }

  /** The same, with pages in this style. */
  public OutputOptions styled(PageStyle other) {
    return new OutputOptions(sheets, mostSheets, outcomes, positionAccuracy, other);
  }
}
