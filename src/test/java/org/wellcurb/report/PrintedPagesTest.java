package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wellcurb.browser.Browser;
import org.wellcurb.record.Catalogue;

/**
 * Printed pages are whole, and no row is cut between two sheets of paper. Each row is given a link
 * at its beginning and at the end of each cell before it prints; the file printed says on which
 * sheet each link stands.
 */
final class PrintedPagesTest {
  private static final Path FOLDER = Path.of("target", "pages");
  private static final LocalDate AS_OF = LocalDate.of(2026, 1, 1);

  /** What must not be cut, where it is no longer than a sheet of paper. */
  private static final String WHOLE =
      "tr, .finding .kind, .finding h3, .finding dd, figure, .first, .care, .counts div, .point, .fields li, article.rule > .asks,"
          + " article.rule:not(:has(> .asks)), ul.examples li";

  /** Half of a sheet of 11 in, in points. */
  private static final double HALF = 11 * 72 / 2.0;

  private static final String MARK =
      """
      let n = 0;
      window.dispatchEvent(new Event('beforeprint'));
      const link = (where, name, first) => {
        const a = document.createElement('a');
        a.href = 'http://row.example/' + name;
        a.textContent = '.';
        first ? where.prepend(a) : where.append(a);
      };
      document.querySelectorAll(arguments[0]).forEach(e => {
        const ends = e.tagName === 'TR' ? [...e.cells]
            : e.tagName === 'FIGURE' ? [e.querySelector('figcaption'), e.querySelector('ul.legend')]
            : [e];
        if (ends.length === 0 || e.closest('thead, details:not([open])')) { return; }
        link(ends[0], n + 'a', true);
        ends.forEach(c => link(c, n + 'b', false));
        n++;
      });
      window.dispatchEvent(new Event('afterprint'));
      return n;
      """;

  private static final String CLOSED =
      """
      window.dispatchEvent(new Event('beforeprint'));
      const seen = e => e !== null && e.checkVisibility({contentVisibilityAuto: true});
      const wrong = [...document.querySelectorAll('details')]
          .filter(d => d.querySelector('.unprinted') !== null)
          .filter(d => seen(d.querySelector('.unprinted')) === seen(d.querySelector('td, li, dd'))
              && d.querySelector('td, li, dd') !== null)
          .map(d => d.querySelector('summary').textContent);
      const shut = [...document.querySelectorAll('details:not([open]) .unprinted')].filter(seen);
      window.dispatchEvent(new Event('afterprint'));
      return shut.length === 0 ? wrong.concat('nothing is left out') : wrong;
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
    return switch (name) {
      case "sheet" -> pages.sheet(Results.of(Forms.full()), AS_OF, "../index.html");
      case "index" -> pages.index(Batches.of(120, "FW-"));
      case "notice" -> pages.notice(Batches.notice());
      case "rulebook" -> pages.rulebook(Results.of(Forms.full()).pack());
      case "rehearsal" -> pages.rehearsal(Batches.rehearsal());
      case "since" -> pages.since(Batches.since());
      case "blank" -> pages.blank(Catalogue.standard());
      default -> throw new IllegalArgumentException(name);
    };
  }

  @ParameterizedTest
  @ValueSource(strings = {"sheet", "index", "notice", "rulebook", "rehearsal", "since", "blank"})
  void noRowIsCut(String name) throws IOException {
    Path file = FOLDER.resolve("printed-" + name + ".html");
    Files.writeString(file, page(name));
    browser.open(file, 800);
    Object count = Objects.requireNonNull(browser.driver().executeScript(MARK, WHOLE));
    long marked = (Long) count;
    byte[] pdf = browser.print(8.5, 11);
    Files.write(FOLDER.resolve("printed-" + name + ".pdf"), pdf);
    Map<String, List<Integer>> sheets = links(pdf);
    List<String> cut = new ArrayList<>();
    for (long i = 0; i < marked; i++) {
      List<Integer> at = sheets.getOrDefault(i + "a", List.of());
      List<Integer> ends = sheets.getOrDefault(i + "b", List.of());
      if (at.isEmpty()) {
        cut.add(i + " is not printed");
        continue;
      }
      if (ends.stream().anyMatch(each -> !each.equals(at.get(0)))) {
        cut.add(i + " begins on sheet " + at.get(0) + " and ends on " + ends);
      }
    }
    assertTrue(marked > 3, "there is something to print");
    assertEquals(List.of(), cut);
  }

  /** A sheet of A4 is narrower than a letter sheet by 6 mm: its tables stay tables all the same. */
  @ParameterizedTest
  @ValueSource(strings = {"sheet", "index"})
  void theTwoPapersTakeAboutAsManySheets(String name) throws IOException {
    Path file = FOLDER.resolve("papers-" + name + ".html");
    Files.writeString(file, page(name));
    browser.open(file, 800);
    int letter = order(objects(browser.print(8.5, 11))).size();
    int a4 = order(objects(browser.print(8.27, 11.69))).size();
    assertTrue(letter > 1, "there is something to print");
    assertTrue(a4 <= letter * 1.2 + 1, letter + " letter sheets are " + a4 + " of A4");
  }

  /** A card goes on over the end of a sheet of paper, rather than to leave half of it white. */
  @ParameterizedTest
  @ValueSource(strings = {"sheet", "notice"})
  void noSheetOfPaperIsHalfWhite(String name) throws IOException {
    Path file = FOLDER.resolve("white-" + name + ".html");
    Files.writeString(file, page(name));
    browser.open(file, 800);
    browser.driver().executeScript(MARK, "p, dd, h3, td > span, .legend span");
    Map<String, String> objects = objects(browser.print(8.5, 11));
    List<String> order = order(objects);
    List<String> white = new ArrayList<>();
    for (int sheet = 0; sheet < order.size() - 1; sheet++) {
      double lowest = lowest(objects, order.get(sheet));
      if (lowest > HALF) {
        white.add("sheet " + (sheet + 1) + " of " + order.size() + " ends " + lowest + " up");
      }
    }
    assertTrue(order.size() > 1, "there is something to print");
    assertEquals(List.of(), white);
  }

  /** How far up from the foot of a sheet its lowest link stands, in points. */
  private static double lowest(Map<String, String> objects, String sheet) {
    double lowest = Double.MAX_VALUE;
    Matcher list =
        Pattern.compile("(?s)/Annots \\[(.*?)]").matcher(objects.getOrDefault(sheet, ""));
    if (list.find()) {
      Matcher one = Pattern.compile("([0-9]+) 0 R").matcher(list.group(1));
      while (one.find()) {
        Matcher at =
            Pattern.compile("/Rect \\[[-0-9.]+ ([-0-9.]+) [-0-9.]+ ([-0-9.]+)]")
                .matcher(objects.getOrDefault(one.group(1), ""));
        if (at.find()) {
          double a = Double.parseDouble(at.group(1));
          lowest = Math.min(lowest, Math.min(a, Double.parseDouble(at.group(2))));
        }
      }
    }
    return lowest;
  }

  /** A loose sheet of paper says whose it is and which of how many. */
  @Test
  void eachSheetOfPaperHasAFoot() {
    String foot = RunningFoot.of("Record FW-1 <\"}").text();
    assertTrue(foot.contains("content:\"Record\\20 FW-1\\20 \\3c \\22 \\7d \""), foot);
    assertTrue(foot.contains("counter(page)") && foot.contains("counter(pages)"), foot);
    String page = page("sheet");
    Matcher style = Pattern.compile("<style>(@page.*?)</style>").matcher(page);
    assertTrue(style.find());
    assertTrue(page.contains(new Inline(style.group(1)).hash()), "the policy lets it act");
  }

  /** Entries given are printed; what a reader left closed is not, and the paper says so. */
  @Test
  void whatIsClosedIsLeftOutAndSaid() throws IOException {
    Path file = FOLDER.resolve("closed-sheet.html");
    Files.writeString(file, page("sheet"));
    browser.open(file, 800).asPrinted(true);
    try {
      Object said = Objects.requireNonNull(browser.driver().executeScript(CLOSED));
      assertEquals(List.of(), said);
      assertTrue(page("sheet").contains("<details class=\"prints\""), "entries are given");
    } finally {
      browser.asPrinted(false);
    }
  }

  /** On which sheets, from 0, each link of a printed file stands. */
  private static Map<String, List<Integer>> links(byte[] pdf) {
    Map<String, String> objects = objects(pdf);
    List<String> order = order(objects);
    Map<String, List<Integer>> links = new HashMap<>();
    for (int sheet = 0; sheet < order.size(); sheet++) {
      String annotations = objects.getOrDefault(order.get(sheet), "");
      Matcher list = Pattern.compile("(?s)/Annots \\[(.*?)]").matcher(annotations);
      if (list.find()) {
        Matcher one = Pattern.compile("([0-9]+) 0 R").matcher(list.group(1));
        while (one.find()) {
          Matcher uri =
              Pattern.compile("row\\.example/([0-9]+[ab])")
                  .matcher(objects.getOrDefault(one.group(1), ""));
          if (uri.find()) {
            links.computeIfAbsent(uri.group(1), none -> new ArrayList<>()).add(sheet);
          }
        }
      }
    }
    return links;
  }

  private static Map<String, String> objects(byte[] pdf) {
    String text = new String(pdf, StandardCharsets.ISO_8859_1);
    Map<String, String> objects = new HashMap<>();
    Matcher object = Pattern.compile("(?s)(?<![0-9])([0-9]+) 0 obj\\b(.*?)\\bendobj").matcher(text);
    while (object.find()) {
      objects.put(object.group(1), object.group(2));
    }
    return objects;
  }

  /** The printed sheets in their order. */
  private static List<String> order(Map<String, String> objects) {
    List<String> order = new ArrayList<>();
    for (String each : objects.values()) {
      if (each.contains("/Type /Catalog")) {
        pages(objects, ref(each, "/Pages ([0-9]+) 0 R"), order);
      }
    }
    assertTrue(!order.isEmpty(), "the file printed has no sheets that this test can read");
    return order;
  }

  private static void pages(Map<String, String> objects, String id, List<String> order) {
    String node = objects.getOrDefault(id, "");
    if (!node.contains("/Kids")) {
      order.add(id);
      return;
    }
    Matcher kids = Pattern.compile("(?s)/Kids \\[(.*?)]").matcher(node);
    assertTrue(kids.find());
    Matcher one = Pattern.compile("([0-9]+) 0 R").matcher(kids.group(1));
    while (one.find()) {
      pages(objects, one.group(1), order);
    }
  }

  private static String ref(String object, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(object);
    assertTrue(found.find(), pattern);
    return found.group(1);
  }
}
