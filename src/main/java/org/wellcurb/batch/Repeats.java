package org.wellcurb.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.intake.ChunkReader;
import org.wellcurb.intake.Input;
import org.wellcurb.intake.RawRow;
import org.wellcurb.intake.RecordSink;
import org.wellcurb.intake.SetAside;
import org.wellcurb.intake.Sources;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;

/** Finds which numbers that a side table names stand on several rows: a reading of its own. */
final class Repeats {
  private Repeats() {}

  /**
   * Reads the inputs for these numbers.
   *
   * @return those on several rows; null where an input can be read but once, so that it is not
   *     known
   */
  static @Nullable Set<String> of(
      Set<String> numbers, List<Input> inputs, Sources sources, int workers, Stop stop)
      throws IOException, RunFailure, InterruptedException {
    if (numbers.isEmpty()) {
      return Set.of();
    }
    if (inputs.stream().anyMatch(input -> input.path() == null)) {
      return null;
    }
    Set<String> met = new HashSet<>();
    Set<String> repeated = new HashSet<>();
    try (RecordParts parts = new RecordParts(inputs, sources, stop)) {
      Pipeline.<Part, List<String>>run(
          parts,
          workers,
          () -> new Reading(numbers, stop),
          ArrayList::new,
          ids -> {
            for (String id : ids) {
              if (!met.add(id)) {
                repeated.add(id);
              }
            }
            ids.clear();
          });
    }
    return repeated;
  }

  /** Notes the numbers of one part; on one thread. */
  private static final class Reading implements Pipeline.Work<Part, List<String>>, RecordSink {
    private final ChunkReader reader = new ChunkReader(Catalogue.standard());
    private final Set<String> numbers;
    private final Stop stop;
    private List<String> ids = List.of();

    Reading(Set<String> numbers, Stop stop) {
      this.numbers = numbers;
      this.stop = stop;
    }

    @Override
    public void on(Part part, List<String> into) throws IOException {
      ids = into;
      if (part.chunk() != null) {
        reader.read(part.chunk(), this);
      }
    }

    @Override
    public void record(WellRecord record, RawRow raw) {
      stop.checkWithinPart();
      String id = record.id();
      if (numbers.contains(id)) {
        ids.add(id);
      }
    }

    @Override
    public void setAside(SetAside row) {
      // No record, so none to answer for.
    }
  }
}
