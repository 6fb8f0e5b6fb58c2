package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import org.wellcurb.browser.Browser;

/** From the list of records to what falls short, to the drawing and back, by keys alone. */
final class SheetByKeysTest {
  /** More steps than a page has places to stop at. */
  private static final int MOST_STEPS = 200;

  @Test
  void aRecordIsOpenedReadAndLeftByKeys() {
    try (Browser browser = Browser.start()) {
      browser.open(Path.of("reports", "demo", "index.html"), 1200);
      // The first stop leads past the head of the page.
      type(browser, Keys.TAB);
      assertEquals("skip", at(browser, "className"));
      type(browser, Keys.ENTER);
      step(browser, "#list-records tbody a[href*='FW-23-0411']");
      String id = at(browser, "textContent");
      type(browser, Keys.ENTER);
      assertTrue(heading(browser).contains(id), heading(browser));
      // A letter of what to do first leads to its finding.
      step(browser, "a.to-finding");
      type(browser, Keys.ENTER);
      assertEquals("#finding-a", hash(browser));
      assertTrue(isShown(browser, ":target"));
      // So does the letter in the drawing.
      step(browser, "svg.drawing a");
      assertTrue(at(browser, "ariaLabel").startsWith("A: "), at(browser, "ariaLabel"));
      step(browser, ".marks a");
      // What is folded opens.
      step(browser, "#drawings ~ * details:not([open]) > summary, details:not([open]) > summary");
      type(browser, Keys.ENTER);
      assertEquals("true", script(browser, "document.activeElement.parentElement.open"));
      back(browser, ".over a");
      type(browser, Keys.ENTER);
      assertTrue(heading(browser).contains("records"), heading(browser));
    }
  }

  private static void step(Browser browser, String selector) {
    go(browser, selector, () -> type(browser, Keys.TAB));
  }

  private static void back(Browser browser, String selector) {
    go(
        browser,
        selector,
        () ->
            new Actions(browser.driver())
                .keyDown(Keys.SHIFT)
                .sendKeys(Keys.TAB)
                .keyUp(Keys.SHIFT)
                .perform());
  }

  private static void go(Browser browser, String selector, Runnable key) {
    for (int i = 0; i < MOST_STEPS; i++) {
      key.run();
      if (is(browser, selector)) {
        assertTrue(isShown(browser, ":focus"), selector + " has the focus and is not seen");
        return;
      }
    }
    throw new AssertionError(selector + " is not reached by keys");
  }

  private static boolean is(Browser browser, String selector) {
    return Boolean.TRUE.equals(
        browser
            .driver()
            .executeScript("return document.activeElement.matches(arguments[0])", selector));
  }

  private static boolean isShown(Browser browser, String selector) {
    return Boolean.TRUE.equals(
        browser
            .driver()
            .executeScript(
                "const r = document.querySelector(arguments[0]).getBoundingClientRect();"
                    + "return r.width > 0 && r.height > 0;",
                selector));
  }

  private static void type(Browser browser, Keys key) {
    new Actions(browser.driver()).sendKeys(key).perform();
  }

  private static String at(Browser browser, String property) {
    return script(browser, "document.activeElement." + property);
  }

  private static String hash(Browser browser) {
    return script(browser, "location.hash");
  }

  private static String heading(Browser browser) {
    return script(browser, "document.querySelector('h1').textContent");
  }

  private static String script(Browser browser, String expression) {
    return String.valueOf(
        Objects.requireNonNull(browser.driver().executeScript("return " + expression)));
  }
}
