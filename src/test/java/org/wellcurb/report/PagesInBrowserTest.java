package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.browser.Browser;
import org.wellcurb.record.Catalogue;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;

/** The pages in a real browser, from files, with the network off. */
final class PagesInBrowserTest {
  private static final Path FOLDER = Path.of("target", "pages");
  private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);

  /** Words of drawings that come out smaller than 11 px. */
  private static final String SMALL =
      """
      return [...document.querySelectorAll('svg text')]
          .filter(t => t.getClientRects().length > 0)
          .map(t => [t.textContent,
              parseFloat(getComputedStyle(t).fontSize) * t.ownerSVGElement.getScreenCTM().a])
          .filter(each => each[1] < 11)
          .map(each => each.join(' '));
      """;

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

  private static String page(String name) {
    Pages pages = new Pages(PageStyle.PLAIN);
    Pages french = new Pages(new PageStyle(Language.FR, UnitsShown.METRIC));
    return switch (name) {
      case "sheet" -> pages.sheet(Results.of(Forms.full()), AS_OF, "../index.html");
      case "sheet-fr" -> french.sheet(Results.of(Forms.full()), AS_OF, "../index.html");
      case "sheet-bare" -> pages.sheet(Results.of(Forms.bare()), AS_OF, "");
      case "sheet-absurd" -> pages.sheet(Results.of(Forms.absurd()), AS_OF, "");
      case "sheet-hostile" -> pages.sheet(Results.of(Forms.hostile()), AS_OF, "");
      case "index" -> pages.index(Batches.of(40, "FW-"));
      case "index-fr" -> french.index(Batches.of(1, "FW-"));
      case "index-long" -> pages.index(Batches.of(1234, "FW-"));
      case "index-hostile" -> pages.index(Batches.of(3, Forms.HOSTILE));
      case "notice" -> pages.notice(Batches.notice());
      case "notice-fr" -> french.notice(Batches.notice());
      case "rulebook" -> pages.rulebook(Results.of(Forms.full()).pack());
      case "rehearsal" -> pages.rehearsal(Batches.rehearsal());
      case "since" -> pages.since(Batches.since());
      case "since-fr" -> french.since(Batches.since());
      case "blank" -> pages.blank(Catalogue.standard());
      case "blank-fr" -> french.blank(Catalogue.standard());
      default -> throw new IllegalArgumentException(name);
    };
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sheet",
        "sheet-fr",
        "sheet-bare",
        "sheet-absurd",
        "sheet-hostile",
        "index",
        "index-fr",
        "index-long",
        "index-hostile",
        "notice",
        "notice-fr",
        "rulebook",
        "rehearsal",
        "since",
        "since-fr",
        "blank",
        "blank-fr"
      })
  void aPageOpensWithoutComplaintBarrierOrSidewaysScroll(String name) throws IOException {
    Path file = FOLDER.resolve(name + ".html");
    Files.writeString(file, page(name));
    browser.open(file, 1200);
    assertEquals(List.of(), browser.complaints());
    assertEquals(null, browser.driver().executeScript("return window.acted"));
    assertEquals(List.of(), browser.barriers());
    Files.write(FOLDER.resolve(name + "-desktop.png"), browser.picture());
    browser.width(320);
    assertEquals(0, browser.sideways());
    assertEquals(List.of(), browser.barriers());
    assertEquals(List.of(), browser.driver().executeScript(SMALL), "too small to read");
    Files.write(FOLDER.resolve(name + "-phone.png"), browser.picture());
    Files.write(FOLDER.resolve(name + ".pdf"), browser.print(8.5, 11));
  }
}
