package org.wellcurb.batch;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What a run looks at beside records and packs.
 *
 * @param crosscheck whether it looks at what only the whole batch shows
 * @param answers a table of corrections returned with a notice; null if there is none
 * @param settled a table of findings that someone has looked at; null if there is none
 * @param earlier the folder of an earlier report; null if there is none
 */
public record LookOptions(
    boolean crosscheck, @Nullable Path answers, @Nullable Path settled, @Nullable Path earlier) {
  /** The whole batch, and nothing else. */
  public static final LookOptions PLAIN = new LookOptions(true, null, null, null);
}
