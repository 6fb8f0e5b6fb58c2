package org.wellcurb.spark;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.input.PortableDataStream;
import org.wellcurb.intake.Chunk;
import org.wellcurb.intake.ChunkReader;
import org.wellcurb.intake.Input;
import org.wellcurb.intake.RawRow;
import org.wellcurb.intake.RecordSink;
import org.wellcurb.intake.RecordSource;
import org.wellcurb.intake.SetAside;
import org.wellcurb.intake.Sources;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackException;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.screening.Screener;
import org.wellcurb.screening.Tally;
import scala.Tuple2;

/**
 * What is sent to wherever some of the records are: it loads the pack there, screens them and sends
 * back counts.
 *
 * @param pack a pack that each machine finds by this name
 * @param asOf the as-of date of the run
 */
record Task(String pack, LocalDate asOf) implements Serializable {
  /** JSON lines are screened so many bytes at a time. */
  private static final int BLOCK = 4 << 20;

  /** Whole files: tables, whose header only their beginning holds, or JSON. */
  Iterator<Counts> files(Iterator<Tuple2<String, PortableDataStream>> files) throws IOException {
    Counting counting = new Counting(pack(), asOf);
    while (files.hasNext()) {
      Tuple2<String, PortableDataStream> file = files.next();
      counting.screen(file._1(), file._2().toArray());
    }
    return counting.counts();
  }

  /** JSON lines, each a record. */
  Iterator<Counts> lines(Iterator<String> lines) throws IOException {
    Counting counting = new Counting(pack(), asOf);
    ByteArrayOutputStream block = new ByteArrayOutputStream();
    while (lines.hasNext()) {
      String line = lines.next().strip();
      if (line.startsWith("{")) {
        block.write(line.getBytes(StandardCharsets.UTF_8));
        block.write('\n');
      } else if (!line.isEmpty()) {
        // No record; and it may stand first, where it would say that none of these lines are JSON.
        counting.setAside++;
      }
      if (block.size() >= BLOCK || (block.size() > 0 && !lines.hasNext())) {
        counting.screen("lines.ndjson", block.toByteArray());
        block.reset();
      }
    }
    return counting.counts();
  }

  private static final class Counting implements RecordSink {
    private final Sources sources = new Sources(Catalogue.standard());
    private final ChunkReader reader = new ChunkReader(Catalogue.standard());
    private final Screener screener;
    private final Tally tally;
    private long setAside;

    Counting(String name, LocalDate asOf) {
      try {
        Pack pack = PackLoader.load(name);
        screener = new Screener(pack, asOf);
        tally = new Tally(pack);
      } catch (PackException e) {
        throw new IllegalArgumentException(e);
      }
    }

    void screen(String name, byte[] bytes) throws IOException {
      for (Input input : Input.of(name, bytes)) {
        screen(input);
      }
    }

    private void screen(Input input) throws IOException {
      try (RecordSource source = sources.open(input)) {
        SetAside whole = source.unusable();
        if (whole != null) {
          throw new IOException(input.file() + ": " + whole.reason());
        }
        for (Chunk chunk = source.next(); chunk != null; chunk = source.next()) {
          reader.read(chunk, this);
        }
      }
    }

    @Override
    public void record(WellRecord record, RawRow raw) {
      tally.add(screener.outcomes(record));
    }

    @Override
    public void setAside(SetAside row) {
      setAside++;
    }

    Iterator<Counts> counts() {
      return List.of(new Counts(tally, setAside)).iterator();
    }
  }
}
