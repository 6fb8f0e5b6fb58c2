package org.wellcurb.batch;

/** Hears how far a run has come. */
@FunctionalInterface
public interface Progress {
  /** Hears nothing. */
  Progress SILENT = rows -> {};

  /** So many rows have been read. */
  void rows(long rows);
}
