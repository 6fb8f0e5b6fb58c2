package org.wellcurb.batch;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.Chunk;
import org.wellcurb.intake.Input;
import org.wellcurb.intake.IntakeException;
import org.wellcurb.intake.RecordSource;
import org.wellcurb.intake.Sources;

/** The inputs of a run, one after the other, in parts. */
final class RecordParts implements Pipeline.Source<Part>, Closeable {
  private final List<Input> inputs;
  private final Sources sources;
  private final Stop stop;
  private @Nullable RecordSource open;
  private int next;
  private long number;

  RecordParts(List<Input> inputs, Sources sources, Stop stop) {
    this.inputs = inputs;
    this.sources = sources;
    this.stop = stop;
  }

  @Override
  public @Nullable Part next() throws RunFailure {
    stop.check();
    if (open == null && next == inputs.size()) {
      return null;
    }
    String file = open == null ? inputs.get(next).file() : open.file();
    try {
      RecordSource source = open == null ? sources.open(inputs.get(next++)) : open;
      open = source;
      Chunk chunk = source.next();
      if (chunk == null) {
        source.close();
        open = null;
      }
      return new Part(number++, next - 1, source, chunk);
    } catch (IntakeException e) {
      throw RunFailure.noInput(String.valueOf(e.getMessage()));
    } catch (IOException e) {
      throw RunFailure.noInput(
          file + ": cannot be read: " + Folders.reason(e) + "; nothing was written");
    }
  }

  @Override
  public void close() throws IOException {
    if (open != null) {
      open.close();
    }
  }
}
