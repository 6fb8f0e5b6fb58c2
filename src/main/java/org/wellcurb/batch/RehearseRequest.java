package org.wellcurb.batch;

import java.nio.file.Path;
import java.time.LocalDate;
import org.wellcurb.report.PageStyle;

/**
 * What is asked of a rehearsal.
 *
 * @param input where records come from
 * @param before the pack in use: a folder, a file, or the name of one that ships
 * @param after the pack tried
 * @param out the folder to write
 * @param asOf the day that the run counts as today
 * @param workers threads that screen
 * @param positionAccuracy metres: positions on maps are no finer than this
 * @param style language of the page
 */
public record RehearseRequest(
    InputOptions input,
    String before,
    String after,
    Path out,
    LocalDate asOf,
    int workers,
    double positionAccuracy,
    PageStyle style) {}
