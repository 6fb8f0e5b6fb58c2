package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.wellcurb.browser.Browser;

/** Long lists are filtered, sorted and paged by keys, and are whole without scripts. */
final class ListsInBrowserTest {
  private static final int RECORDS = 57;
  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void start() throws IOException {
    page = Files.createDirectories(Path.of("target", "pages")).resolve("lists.html");
    Files.writeString(page, new Pages(PageStyle.PLAIN).index(Batches.of(RECORDS, "FW-")));
    browser = Browser.start();
  }

  @AfterAll
  static void stop() {
    browser.close();
  }

  @Test
  void aListIsFilteredSortedAndPagedByKeys() {
    browser.open(page, 1200);
    assertEquals(20, rows().size());
    assertTrue(status().contains("1–20"), status());
    assertTrue(status().contains("57"), status());
    focus("input");
    type("FW-5");
    List<String> filtered = rows();
    assertEquals(8, filtered.size(), "FW-5 and FW-50 to FW-56");
    assertTrue(filtered.stream().allMatch(row -> row.startsWith("FW-5")));
    type(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE, Keys.TAB);
    // The list of columns: down to the kind counted in the third.
    type(Keys.ARROW_DOWN, Keys.ARROW_DOWN, Keys.ARROW_DOWN);
    List<Integer> downward = numbers(2);
    assertEquals(57, downward.get(0), "counts begin with the most");
    assertTrue(downward.get(0) > downward.get(19));
    assertEquals(List.of("2 descending"), sorted());
    type(Keys.TAB, Keys.SPACE);
    List<Integer> upward = numbers(2);
    List<Integer> inOrder = new ArrayList<>(upward);
    Collections.sort(inOrder);
    assertEquals(inOrder, upward);
    assertEquals(List.of("2 ascending"), sorted());
    type(Keys.ENTER);
    assertEquals(downward, numbers(2), "turned back");
    String first = rows().get(0);
    focusAfter("button:nth-of-type(2)");
    type(Keys.ENTER);
    assertFalse(rows().contains(first), "the next rows");
    assertTrue(status().contains("21–40"), status());
    focusAfter("button:nth-of-type(3)");
    type(Keys.SPACE);
    assertEquals(RECORDS, rows().size());
  }

  @Test
  void withoutScriptsEveryRowIsThere() {
    browser.scripts(false);
    try {
      browser.open(page, 320);
      assertEquals(RECORDS, browser.driver().findElements(by("#list-records tbody tr")).size());
      assertEquals(0, browser.driver().findElements(by(".tools")).size());
      assertTrue(browser.driver().findElements(by("#list-grid tbody tr")).size() > 0);
      assertTrue(
          browser.driver().findElement(by("#list-records tbody tr:last-child")).isDisplayed());
    } finally {
      browser.scripts(true);
    }
  }

  private static org.openqa.selenium.By by(String selector) {
    return org.openqa.selenium.By.cssSelector(selector);
  }

  private static List<String> rows() {
    return strings(
        "return [...document.querySelectorAll('#list-records tbody tr')]"
            + ".map(r => r.textContent.trim())");
  }

  /** Each heading that says how its column is sorted. */
  private static List<String> sorted() {
    return strings(
        "return [...document.querySelectorAll('#list-records thead th')]"
            + ".map((th, i) => i + ' ' + th.getAttribute('aria-sort'))"
            + ".filter(each => !each.endsWith('null'))");
  }

  private static List<Integer> numbers(int column) {
    return strings(
            "return [...document.querySelectorAll('#list-records tbody tr')]"
                + ".map(r => r.cells["
                + column
                + "].textContent.trim())")
        .stream()
        .map(Integer::valueOf)
        .toList();
  }

  private static List<String> strings(String script) {
    List<String> texts = new ArrayList<>();
    Object found = Objects.requireNonNull(browser.driver().executeScript(script));
    for (Object each : (List<?>) found) {
      texts.add((String) each);
    }
    return texts;
  }

  private static String status() {
    return browser.driver().findElement(by("#list-records + .tools p")).getText();
  }

  private static void focus(String what) {
    browser
        .driver()
        .executeScript(
            "document.getElementById('list-records').previousElementSibling"
                + ".querySelector(arguments[0]).focus()",
            what);
  }

  private static void focusAfter(String what) {
    browser
        .driver()
        .executeScript(
            "document.getElementById('list-records').nextElementSibling"
                + ".querySelector(arguments[0]).focus()",
            what);
  }

  private static void type(CharSequence... keys) {
    for (CharSequence each : keys) {
      browser.driver().switchTo().activeElement().sendKeys(each);
    }
  }
}
