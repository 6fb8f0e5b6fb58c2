package org.wellcurb.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.wellcurb.bench.BigFile;

/** What it costs to find where a row of some 470 bytes ends, with and without quotes, in a row. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class SplitKernel {
  private static final int ROWS = 5_000;

  /** How the cells of the first column are written. */
  @Param({"plain", "quoted"})
  public String cells;

  private byte[] bytes = new byte[0];

  /** The rows of a big file; where quotes are asked for, each row's first cell has them. */
  @Setup
  public void make() throws IOException {
    Path file = Files.createTempFile("wellcurb-bench", ".csv");
    BigFile.write(1, ROWS, file);
    String text = Files.readString(file, StandardCharsets.US_ASCII);
    Files.delete(file);
    String rows = text.substring(text.indexOf('\n') + 1);
    if (cells.equals("quoted")) {
      rows = rows.replaceAll("(?m)^(W[0-9]+),", "\"$1, \"\"so\"\" called\",");
    }
    bytes = rows.getBytes(StandardCharsets.US_ASCII);
  }

  /** Cuts it into chunks, as a run does. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public int rowEnds() throws IOException {
    int rows = 0;
    try (RowSplitter splitter =
        new RowSplitter(
            new ByteArrayInputStream(bytes), new RowScanner((byte) ','), 2, RowSplitter.CHUNK)) {
      for (CutRows cut = splitter.next(); cut != null; cut = splitter.next()) {
        rows += cut.marks.count();
      }
    }
    if (rows != ROWS) {
      throw new IllegalStateException(rows + " rows");
    }
    return rows;
  }
}
