package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.wellcurb.browser.Browser;

/** The pages in a real browser, from files, with the network off. */
final class PagesInBrowserTest {
  private static final Path FOLDER = Path.of("target", "pages");
  private static Browser browser;

  @BeforeAll
  static void start() throws IOException {
    Files.createDirectories(FOLDER);
    browser = Browser.start();
  }

  @AfterAll
  static void stop() {
    browser.close();
  }

  @Test
  void aSheetOpensWithoutComplaintAndWithoutBarriers() throws IOException {
    Path sheet = FOLDER.resolve("sheet.html");
    String html =
        new Pages(PageStyle.PLAIN).sheet(Results.of(Forms.full()), LocalDate.of(2026, 1, 1), "");
    Files.writeString(sheet, html);
    browser.open(sheet, 1200);
    assertEquals(List.of(), browser.complaints());
    assertEquals(List.of(), browser.barriers());
    Files.write(FOLDER.resolve("sheet-desktop.png"), browser.picture());
    browser.width(320);
    assertEquals(0, browser.sideways());
    Files.write(FOLDER.resolve("sheet-phone.png"), browser.picture());
    Files.write(FOLDER.resolve("sheet.pdf"), browser.print(8.5, 11));
  }
}
