package org.wellcurb.intake;

import org.jspecify.annotations.Nullable;

/** A file that is set aside whole. */
record UnusableSource(String file, SetAside unusable) implements RecordSource {
  @Override
  public @Nullable Chunk next() {
    return null;
  }

  @Override
  public RawFrame rawFrame() {
    return new RawFrame(file, "", "\n", "\n");
  }

  @Override
  public void close() {}
}
