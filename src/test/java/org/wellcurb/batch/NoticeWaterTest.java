package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a sample shows of the water stands in the notice as on the sheet, whatever the rules ask.
 */
class NoticeWaterTest {
  private static final String BOTH = "boiling does not take arsenic out";

  @TempDir Path dir;

  private String notice(String pack, String record) throws Exception {
    String head =
        "record.id,record.jurisdiction,driller.licence,well.use,sample.coliform,sample.nitrate,"
            + "sample.arsenic\n";
    Path records = Files.writeString(dir.resolve("wells.csv"), head + record + "\n");
    Runs.run(Runs.request(dir.resolve("out"), List.of(pack), records).with(NoticeOptions.PLAIN));
    return Files.readString(dir.resolve("out/notices/D-1.html"));
  }

  private static String atOnce(String notice) {
    int from = notice.indexOf("id=\"at-once\"");
    return from < 0 ? "" : notice.substring(from, notice.indexOf("</section>", from));
  }

  @Test
  void nobodyIsToldToBoilWhatBoilingDoesNotMend() throws Exception {
    String notice = atOnce(notice("fenwick-county", "A,alder,D-1,household,present,2,30 ug/L"));
    assertTrue(notice.contains(BOTH), notice);
    assertFalse(notice.contains("unless it was kept at a rolling boil"), notice);
    assertTrue(
        atOnce(notice("fenwick-county", "A,alder,D-1,household,present,2,1 ug/L"))
            .contains("unless it was kept at a rolling boil"));
  }

  @Test
  void itIsSaidWhereNoRuleAsksForIt() throws Exception {
    String notice = notice("montana", "A,mt,D-1,household,present,12,30 ug/L");
    assertTrue(atOnce(notice).contains("boiling makes the nitrate worse"), notice);
    assertEquals("", atOnce(notice("montana", "A,mt,D-1,household,absent,1,1 ug/L")));
  }

  @Test
  void theBatchPageSaysWhatToTellThem() throws Exception {
    notice("fenwick-county", "A,alder,D-1,household,present,2,30 ug/L");
    String index = Files.readString(dir.resolve("out/index.html"));
    String first = index.substring(index.indexOf("id=\"first\""));
    assertTrue(first.substring(0, first.indexOf("</section>")).contains(BOTH));
  }
}
