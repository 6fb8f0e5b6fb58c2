package org.wellcurb.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.wellcurb.browser.Browser;
import org.wellcurb.report.PageStyle;
import org.wellcurb.rulepack.PackLoader;

/**
 * The pictures of the README are taken of the real pages. Letters differ from machine to machine,
 * so that pictures are not compared dot by dot; {@code -Dpictures=remake} puts new ones in place of
 * the committed.
 */
final class PictureBookTest {
  private static final Path BOOK = Path.of("src", "site", "pictures");
  private static final Path TAKEN = Path.of("target", "pictures");
  private static final Path DEMO = Path.of("reports", "demo");
  private static final int MOST_BYTES = 150_000;
  private static Browser browser;

  @BeforeAll
  static void start() throws IOException {
    Files.createDirectories(TAKEN);
    browser = Browser.start();
  }

  @AfterAll
  static void stop() {
    browser.close();
  }

  @ParameterizedTest
  @CsvSource({
    "batch-desktop, index.html, 1200, 640, screen",
    "sheet-desktop, sheets/FW-23-0411.html, 1200, 840, screen",
    "drawings-desktop, sheets/FW-23-0411.html#drawings, 1200, 780, screen",
    "sheet-phone, sheets/FW-23-0411.html, 390, 844, screen",
    "notice-print, notices/FW-D-103.html, 794, 980, print",
    "desk-desktop, desk, 1200, 720, screen"
  })
  void aPictureIsTaken(String name, String page, int width, int height, String medium)
      throws Exception {
    byte[] png;
    try (Desk desk =
        Desk.open(
            0,
            List.of(PackLoader.load("fenwick-county")),
            LocalDate.of(2026, 1, 1),
            PageStyle.PLAIN)) {
      browser.asPrinted(medium.equals("print")).width(width);
      if (page.equals("desk")) {
        desk(desk);
      } else {
        browser.open(DEMO.resolve(page.replaceAll("#.*", "")), width);
      }
      if (page.contains("#")) {
        browser
            .driver()
            .executeScript(
                "document.querySelectorAll('main > :not([aria-labelledby=\"drawings\"])')"
                    + ".forEach(e => { e.hidden = true; })");
      }
      png = browser.picture(width, height);
    }
    Files.write(TAKEN.resolve(name + ".png"), png);
    plausible(png, width, height);
    Path kept = BOOK.resolve(name + ".png");
    if ("remake".equals(System.getProperty("pictures"))) {
      Files.createDirectories(BOOK);
      Files.write(kept, png);
    }
    plausible(Files.readAllBytes(kept), width, height);
    assertTrue(
        Files.readString(Path.of("README.md")).contains("src/site/pictures/" + name + ".png"),
        "the README shows " + name);
  }

  private static void desk(Desk desk) {
    browser.local();
    browser.driver().get(desk.address());
    Path sample = Path.of("sample-records", "fenwick-valve-before-relief.json");
    browser.driver().findElement(By.id("file")).sendKeys(sample.toAbsolutePath().toString());
    new WebDriverWait(browser.driver(), Duration.ofSeconds(40))
        .until(driver -> driver.findElement(By.id("status")).getText().startsWith("Findings: 1"));
    new WebDriverWait(browser.driver(), Duration.ofSeconds(40))
        .until(
            driver ->
                browser
                        .driver()
                        .executeScript(
                            "return document.getElementById('sheet').contentDocument"
                                + ".querySelector('.finding') ? 1 : null;")
                    != null);
    browser.driver().executeScript("window.scrollTo(0, 0)");
  }

  /** Of this size, small enough for a repository, and not an empty sheet. */
  private static void plausible(byte[] png, int width, int height) throws IOException {
    assertTrue(png.length > 5_000 && png.length < MOST_BYTES, png.length + " bytes");
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    assertEquals(width, image.getWidth());
    assertEquals(height, image.getHeight());
    Set<Integer> colours = new HashSet<>();
    int ground = image.getRGB(2, 2);
    int written = 0;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int colour = image.getRGB(x, y);
        colours.add(colour);
        written += colour == ground ? 0 : 1;
      }
    }
    assertTrue(colours.size() > 20, colours.size() + " colours");
    assertTrue(written > width * height / 100, written + " dots that are not the ground");
  }
}
