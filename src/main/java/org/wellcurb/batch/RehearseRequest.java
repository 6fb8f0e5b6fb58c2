package org.wellcurb.batch;

import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.report.PageStyle;

/**
 * What is asked of a rehearsal.
 *
 * @param records files and folders, or {@code -} for standard input
 * @param before the pack in use: a folder, a file, or the name of one that ships
 * @param after the pack tried
 * @param out the folder to write
 * @param asOf the day that the run counts as today
 * @param positionAccuracy metres: positions on maps are no finer than this
 * @param style language of the page
 * @param workers threads that screen
 * @param standardInput what {@code -} reads
 * @param headers the header map; null if headers are keys
 */
public record RehearseRequest(
    List<String> records,
    String before,
    String after,
    Path out,
    LocalDate asOf,
    double positionAccuracy,
    PageStyle style,
    int workers,
    InputStream standardInput,
    @Nullable Path headers) {

  public RehearseRequest {
    records = List.copyOf(records);
  }
}
