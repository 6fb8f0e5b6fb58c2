package org.wellcurb.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a reader of one finding sees of the age of the text that judged. */
class OlderTextTest {
  private static final String UNREAD =
      "Since when this text has been in force was not read: it is the text as of 2024-09-20.";

  @TempDir Path dir;

  private Path run(String pack, String records) throws Exception {
    Path file = Files.writeString(dir.resolve("wells.csv"), records);
    Path out = dir.resolve(pack);
    Runs.run(Runs.request(out, List.of(pack), file).with(NoticeOptions.PLAIN));
    return out;
  }

  private static String sheet(Path out, String id) throws IOException {
    return Files.readString(out.resolve("sheets").resolve(id + ".html"));
  }

  private static String notices(Path out) throws IOException {
    try (Stream<Path> pages = Files.list(out.resolve("notices"))) {
      return pages
          .filter(page -> page.toString().endsWith(".html"))
          .sorted()
          .map(OlderTextTest::read)
          .collect(Collectors.joining());
    }
  }

  private static String read(Path page) {
    try {
      return Files.readString(page);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void anOlderWellMayBeHeldToAnOlderText() throws Exception {
    Path out =
        run(
            "arizona",
            """
            record.id,driller.licence,dates.completed,well.stickup [ft],pitless.fitted
            OLD,D-1,1990-05-01,0.5,no
            NEW,D-2,2025-05-01,0.5,no
            AGELESS,D-3,,0.5,no
            """);
    assertTrue(sheet(out, "OLD").contains(UNREAD + " This well goes by 1990-05-01"));
    assertTrue(sheet(out, "AGELESS").contains(UNREAD + " The form does not say how old"));
    assertFalse(sheet(out, "NEW").contains(UNREAD));
    String notices = notices(out);
    assertTrue(notices.contains(UNREAD + " This well goes by 1990-05-01"));
    assertTrue(notices.contains(UNREAD + " The form does not say how old"));
    assertEquals(2, count(notices));
    assertTrue(
        Files.readString(out.resolve("rules.csv"))
            .contains("; first day not read, known as of 2024-09-20"));
  }

  private static int count(String notices) {
    return notices.split("was not read: it is the text as of", -1).length - 1;
  }

  @Test
  void aFindingNamesTheTextThatJudgedIt() throws Exception {
    Path out =
        run(
            "quebec",
            """
            record.id,driller.licence,dates.completed,setback.septic_tank
            THEN,D-1,2010-05-01,10 m
            NOW,D-2,2020-05-01,10 m
            """);
    String then = finding(sheet(out, "THEN"));
    String now = finding(sheet(out, "NOW"));
    assertTrue(then.contains("s. 5(2), superseded"), then);
    assertTrue(now.contains("s. 17 par. 1(1)"), now);
    assertFalse(then.contains("s. 17"), then);
    String json = Files.readString(out.resolve("findings.json"));
    assertTrue(json.contains("\"section\": \"s. 5(2)\""));
    assertTrue(notices(out).contains("s. 5(2), superseded"));
  }

  /** The part of a sheet from the finding of the septic tank on, as far as its source. */
  private static String finding(String sheet) {
    String from = sheet.substring(sheet.indexOf("Well is far enough from the septic tank"));
    int source = from.indexOf("Where it is written");
    return from.substring(0, Math.min(from.length(), (source < 0 ? 3000 : source + 600)));
  }
}
