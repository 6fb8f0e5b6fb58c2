package org.wellcurb.bench;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Frame;
import org.wellcurb.quantity.PlainNumber;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.CellReader;
import org.wellcurb.record.CellStyle;
import org.wellcurb.record.RecordFiller;
import org.wellcurb.record.RecordReader;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.PackScope;
import org.wellcurb.screening.LaneScreener;
import org.wellcurb.screening.Screener;

/** What the inner parts of a bulk run cost each, in nanoseconds: a number, a cell, a record. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class Kernels {
  private static final int NUMBERS = 1_000;
  private static final int RECORDS = LaneScreener.MOST;
  private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);

  private final PlainNumber plain = new PlainNumber();
  private final byte[][] numbers = new byte[NUMBERS][];
  private final String[] numberTexts = new String[NUMBERS];
  private final CellReader cells = new CellReader(Catalogue.standard());
  private final RecordFiller filler = new RecordFiller(Catalogue.standard());
  private final List<byte[]> row = new ArrayList<>();
  private final int[] entries = new int[Columns.KEYS.size()];
  private final List<WellRecord> records = new ArrayList<>();
  private final Frame exact = new Frame(Catalogue.standard());
  private final Frame ranges = new Frame(Catalogue.standard());
  private LaneScreener lanes;
  private Screener screener;
  private Formula working;

  /** Numbers as forms have them; whole records from the big file. */
  @Setup
  public void make() throws Exception {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < NUMBERS; i++) {
      String text =
          random.nextInt(2_000) + (random.nextInt(3) == 0 ? "." + random.nextInt(99) : "");
      numberTexts[i] = text;
      numbers[i] = text.getBytes(StandardCharsets.US_ASCII);
    }
    Map<String, String> first = new WellMaker(1, 0).make();
    for (int i = 0; i < entries.length; i++) {
      entries[i] = Catalogue.standard().index(Columns.KEYS.get(i));
      String text = first.getOrDefault(Columns.KEYS.get(i), "");
      row.add(text.getBytes(StandardCharsets.UTF_8));
    }
    for (int i = 0; i < RECORDS; i++) {
      records.add(RecordReader.of(new WellMaker(1, i).make()));
    }
    Pack pack = PackLoader.load("fenwick-county");
    lanes = new LaneScreener(pack, AS_OF);
    screener = new Screener(pack, AS_OF);
    working =
        Formula.condition(
            "workings.total_dynamic_head <= 900 ft", new PackScope(Map.of(), Map.of()));
    exact.take(records.get(0));
    Map<String, String> wide = new HashMap<>(first);
    wide.put("water.pumping_level", "80-120");
    wide.put("service_line.length", "50-90");
    wide.put("pump.rated_flow", "8-12");
    ranges.take(RecordReader.of(wide));
  }

  @Benchmark
  @OperationsPerInvocation(NUMBERS)
  public void numberByOurPath(Blackhole hole) {
    for (byte[] number : numbers) {
      plain.read(number, 0, number.length);
      hole.consume(plain.value());
    }
  }

  @Benchmark
  @OperationsPerInvocation(NUMBERS)
  public void numberByTheLibrary(Blackhole hole) {
    for (byte[] number : numbers) {
      hole.consume(JavaDoubleParser.parseDouble(number, 0, number.length));
    }
  }

  @Benchmark
  @OperationsPerInvocation(NUMBERS)
  public void numberByTheJdk(Blackhole hole) {
    for (String number : numberTexts) {
      hole.consume(Double.parseDouble(number));
    }
  }

  /** The cells of one row, nothing remembered from other rows. */
  @Benchmark
  public WellRecord cellsOfARecord() {
    filler.clear("wells.csv", 2);
    for (int i = 0; i < entries.length; i++) {
      byte[] cell = row.get(i);
      cells.read(filler, entries[i], cell, 0, cell.length, null, UnitSystem.US, CellStyle.PLAIN);
    }
    return filler.record();
  }

  /** A record by all rules of the pack, 64 at a time. */
  @Benchmark
  @OperationsPerInvocation(RECORDS)
  public byte[] recordSideBySide() {
    lanes.clear();
    for (int i = 0; i < RECORDS; i++) {
      lanes.take(i, records.get(i));
    }
    lanes.judge();
    return lanes.outcomes(0);
  }

  /** A record by all rules of the pack, one after the other. */
  @Benchmark
  @OperationsPerInvocation(RECORDS)
  public void recordByItself(Blackhole hole) {
    for (WellRecord record : records) {
      hole.consume(screener.outcomes(record));
    }
  }

  /** A working of nine entries, all exact. */
  @Benchmark
  public int workingAtAPoint() {
    return working.evaluate(exact);
  }

  /** The same with three entries that are ranges: tried at all their corners. */
  @Benchmark
  public int workingOverRanges() {
    return working.evaluate(ranges);
  }
}
