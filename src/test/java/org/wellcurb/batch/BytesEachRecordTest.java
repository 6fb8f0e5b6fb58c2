package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.bench.BigFile;
import org.wellcurb.intake.Inputs;
import org.wellcurb.intake.Sources;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.Cap;
import org.wellcurb.rulepack.Pack;

/**
 * How many bytes a bulk run makes for a record, counted, not timed: a figure that is nearly the
 * same on every machine. An object made for each cell or each rule would be seen at once.
 */
class BytesEachRecordTest {
  private static final int RECORDS = 4_000;

  /**
   * Most bytes a record. Its row, which is copied once, is some 470; most of the rest goes into the
   * one record in ten that has findings, and into what the reader and the lists of this small file
   * make once a part. It came to 7,200 when this was written; a quarter more is room for what is no
   * slip. An object of 16 bytes for each of the 84 cells would be 1,300 alone, one for each of the
   * rules as much again.
   */
  private static final long MOST = 9_000;

  @TempDir Path dir;

  @Test
  void staysWithinTheBound() throws Exception {
    Path file = dir.resolve("wells.csv");
    BigFile.write(1, RECORDS, file);
    ScreenRequest request =
        Runs.request(dir.resolve("out"), List.of("fenwick-county"), file).with(NoticeOptions.NONE);
    request = Runs.withSheets(request, SheetsFor.NONE, 0);
    List<Pack> packs = Opening.packs(request.packs());
    Plan plan = plan(request, packs);
    // As in a region: what to ask for is counted over a sample only.
    plan.bars().asksFrom(Integer.MAX_VALUE);
    PartWork work = new PartWork(plan, new Stop());
    PartResult result =
        new PartResult(Cap.RECORDS_ON_PAGE.most(), 0, plan.mostRules(), plan.maps());
    assertEquals(RECORDS, screen(file, work, result), "a first time, so that all is made ready");
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    screen(file, work, result);
    long each = (threads.getCurrentThreadAllocatedBytes() - before) / RECORDS;
    assertTrue(each > 400, () -> each + " bytes a record: what is read is no longer counted");
    assertTrue(each <= MOST, () -> each + " bytes a record, at most " + MOST + " are thought fit");
  }

  private static Plan plan(ScreenRequest request, List<Pack> packs) throws RunFailure {
    Catalogue catalogue = Catalogue.standard();
    return new Plan(
        request,
        packs,
        new PackChoice(packs, catalogue),
        Answers.load(request.looks().answers(), catalogue),
        Set.of(),
        Settled.load(request.looks().settled(), request.asOf()),
        null,
        null,
        new OwnEntries(packs),
        new Bars());
  }

  /** One thread's work on the whole file; gives how many records were screened. */
  private static long screen(Path file, PartWork work, PartResult result) throws Exception {
    Sources sources = new Sources(Catalogue.standard());
    Inputs inputs =
        sources.prepare(Inputs.of(List.of(file.toString()), java.io.InputStream.nullInputStream()));
    long screened = 0;
    try (RecordParts parts = new RecordParts(inputs.inputs(), sources, new Stop())) {
      for (Part part = parts.next(); part != null; part = parts.next()) {
        work.on(part, result);
        screened += result.screened;
        result.clear();
      }
    }
    return screened;
  }
}
