package org.wellcurb.batch;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a run reads records from.
 *
 * @param records files and folders, or {@code -} for standard input
 * @param headers the header map; null if headers are keys
 * @param standardInput what {@code -} reads
 */
public record InputOptions(
    List<String> records, @Nullable Path headers, InputStream standardInput) {
  public InputOptions {
    records = List.copyOf(records);
  }

  /** Files and folders whose headers are keys. */
  public static InputOptions of(List<String> records) {
    return new InputOptions(records, null, InputStream.nullInputStream());
  }

  /** The same, read by this header map. */
  public InputOptions by(Path map) {
    return new InputOptions(records, map, standardInput);
  }

  /** The same, where {@code -} reads this. */
  public InputOptions from(InputStream in) {
    return new InputOptions(records, headers, in);
  }
}
