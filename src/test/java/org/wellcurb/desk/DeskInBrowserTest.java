package org.wellcurb.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.wellcurb.browser.Browser;
import org.wellcurb.report.Forms;
import org.wellcurb.report.PageStyle;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;

/** The desk in a real browser, worked with keys alone. */
final class DeskInBrowserTest {
  /** More steps than the page has places to stop at. */
  private static final int MOST_STEPS = 600;

  private final Browser browser = Browser.start().local();
  private Desk desk;
  @TempDir Path downloads;

  DeskInBrowserTest() throws Exception {
    desk = open(PageStyle.PLAIN);
  }

  private static Desk open(PageStyle style) throws Exception {
    List<Pack> packs = List.of(PackLoader.load("fenwick-county"), PackLoader.load("tarn-district"));
    return Desk.open(0, packs, LocalDate.of(2026, 1, 1), style);
  }

  @BeforeEach
  void go() {
    browser.downloads(downloads).width(1200);
    browser.driver().get(desk.address());
    await("the page", () -> status().startsWith("Type something"));
  }

  @AfterEach
  void close() {
    desk.close();
    browser.close();
  }

  @Test
  void aFormIsFilledCheckedSavedOpenedAndPrintedByKeys() throws Exception {
    tab("record-id");
    type("FW-K1");
    tab("record-jurisdiction");
    type("fenwick");
    tab("dates-completed");
    type("2023-05-01");
    // Groups after the first are closed: their headings open them.
    open("pump-control");
    tab("pump-control");
    choose("pump-control", "switch");
    open("relief-setting");
    tab("pressure-cut_in");
    type("40");
    tab("pressure-cut_out");
    type("60");
    tab("tank-precharge");
    type("38");
    tab("relief-fitted");
    choose("relief-fitted", "yes");
    tab("relief-setting");
    type("65");
    // Four entries that the form lacks, and the valve.
    said("5");
    inSheet("65 psi");
    inSheet("Relief opens 65 psi");
    over("75");
    said("4");
    over("448 kPa");
    said("5");
    open("layers");
    tabInto("#layer-rows input");
    type("0", Keys.TAB, "12 ft", Keys.TAB, "clay");
    tab("layer-more");
    type(Keys.ENTER);
    type("12 ft", Keys.TAB, "30 ft", Keys.TAB, "shale");
    assertEquals(List.of(), browser.complaints());
    assertEquals(List.of(), barriers());

    back("save");
    type(Keys.SPACE);
    Path saved = downloads.resolve("FW-K1.json");
    await("the file saved", () -> Files.exists(saved));
    JsonNode record = new JsonMapper().readTree(saved.toFile());
    assertEquals("448 kPa", record.path("relief").path("setting").asText());
    assertEquals("38", record.path("tank").path("precharge").asText());
    assertEquals("shale", record.path("layers").path(1).path("material").asText());

    tab("clear");
    type(Keys.SPACE);
    await("an empty form", () -> status().startsWith("Type something"));
    assertEquals("", value("relief-setting"));

    // The window in which a file is chosen is the browser's own; the page's part is to be reached.
    back("file");
    browser.driver().findElement(By.id("file")).sendKeys(saved.toString());
    said("5");
    assertEquals("FW-K1", value("record-id"));
    assertEquals("448 kPa", value("relief-setting"));

    browser
        .driver()
        .executeScript(
            "document.getElementById('sheet').contentWindow.print = () => { window.printed = 1; }");
    tab("print");
    type(Keys.ENTER);
    assertEquals(1L, browser.driver().executeScript("return window.printed"));
    tab("sheet");

    // The browser's own printing prints the sheet as well, and leaves the page as it was.
    browser.driver().executeScript("window.dispatchEvent(new Event('beforeprint'))");
    browser.asPrinted(true);
    assertTrue(browser.driver().findElement(By.cssSelector("#paper .finding")).isDisplayed());
    assertFalse(browser.driver().findElement(By.id("form")).isDisplayed());
    browser.asPrinted(false);
    browser.driver().executeScript("window.dispatchEvent(new Event('afterprint'))");
    assertTrue(browser.driver().findElement(By.id("form")).isDisplayed());
    assertEquals(List.of(), browser.driver().findElements(By.cssSelector("#paper > *")));
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void withoutScriptsThePageSaysThatItNeedsThem() {
    browser.scripts(false);
    try {
      browser.driver().get(desk.address());
      assertTrue(browser.driver().findElement(By.cssSelector("noscript p")).isDisplayed());
    } finally {
      browser.scripts(true);
    }
  }

  @Test
  void aFileOfSeveralRecordsIsDroppedAndOneIsChosenByKeys() throws Exception {
    String csv = Files.readString(Path.of("sample-records", "fenwick-2023.csv"));
    browser
        .driver()
        .executeScript(
            "const t = new DataTransfer();"
                + "t.items.add(new File([arguments[0]], 'wells.csv'));"
                + "document.dispatchEvent(new DragEvent('drop', {dataTransfer: t, bubbles: true}));",
            csv);
    await("the records", () -> "FW-23-0401".equals(value("record-id")));
    said("1");
    tab("which");
    type(Keys.ARROW_DOWN);
    await("the next record", () -> "FW-23-0402".equals(value("record-id")));
    inSheet("FW-23-0402");
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void whatThereIsToSayOfAnEntryStandsBesideIt() {
    tab("record-id");
    type("FW-N1");
    tab("record-jurisdiction");
    type("atlantis");
    beside("record-jurisdiction", "The rules at this desk are not for that.");
    over("fenwick");
    beside("record-jurisdiction", "");
    open("relief-setting");
    tab("relief-setting");
    type("high");
    beside("relief-setting", "It cannot be read as it stands.");
    Object many =
        browser
            .driver()
            .executeScript(
                "return document.getElementById('relief-setting').closest('details')"
                    + ".querySelector('summary .many').textContent;");
    assertEquals("(1 to look at)", many);
    over("65");
    beside("relief-setting", "");
    drop(
        "relief.json",
        """
        {"record": {"id": "FW-N2", "jurisdiction": "fenwick"}, "dates": {"completed": "2023-05-01"},
         "pump": {"control": "switch"}, "pressure": {"cut_in": 40, "cut_out": 60},
         "relief": {"fitted": "yes", "setting": 65}}
        """);
    // The finding stands beside the entry that decided it, and leads by its letter to the sheet.
    beside("relief-setting", "65 psi. The limit is 70 psi, so it is 5 psi too little.");
    assertEquals(List.of(), barriers());
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void aLayerHalfWrittenIsKept() throws Exception {
    tab("record-id");
    type("FW-L1");
    open("layers");
    tabInto("#layer-rows input");
    type("4 ft", Keys.TAB, Keys.TAB, "clay");
    back("save");
    type(Keys.SPACE);
    Path saved = downloads.resolve("FW-L1.json");
    await("the file saved", () -> Files.exists(saved));
    JsonNode layer = new JsonMapper().readTree(saved.toFile()).path("layers").path(0);
    assertEquals("4 ft", layer.path("from").asText());
    assertEquals("unknown", layer.path("to").asText());
    assertEquals("clay", layer.path("material").asText());
  }

  @Test
  void whatWasClearedComesBack() {
    tab("record-id");
    type("FW-C1");
    await("a sheet", () -> status().startsWith("Findings"));
    back("clear");
    type(Keys.SPACE);
    await("an empty form", () -> value("record-id").isEmpty());
    tab("back");
    type(Keys.SPACE);
    await("the form again", () -> value("record-id").equals("FW-C1"));
    assertFalse(browser.driver().findElement(By.id("back")).isDisplayed());
    assertTrue(is("#clear"));
  }

  @Test
  void whatIsTypedIsNotLostByOpeningSwitchingOrLeaving() throws Exception {
    assertFalse(asksBeforeLeaving());
    tab("record-id");
    type("FW-U1");
    assertEquals("Not saved.", text("kept"));
    assertTrue(asksBeforeLeaving());
    drop("two.csv", "record.id,well.depth [ft]\nFW-E1,100\nFW-E2,200\n");
    await("the record", () -> value("record-id").equals("FW-E1"));
    note("What stood in the form before is kept");
    assertTrue(asksBeforeLeaving());
    // What is changed in one record of a file stays while one looks at another.
    type(By.id("well-depth"), "101 ft");
    type(By.id("well-bore_diameter"), "6,5");
    choose(1);
    await("the other record", () -> value("record-id").equals("FW-E2"));
    assertEquals("", text("kept"));
    choose(0);
    await("the first record", () -> value("record-id").equals("FW-E1"));
    assertEquals("101 ft", value("well-depth"));
    assertEquals("6,5", value("well-bore_diameter"));
    assertTrue(text("which").contains("FW-E1 (not saved)"));
    await(
        "what was typed is read as before",
        () -> text("well-bore_diameter-unit").contains("6.5 in"));
    click("back");
    await("the first form", () -> value("record-id").equals("FW-U1"));
    assertEquals("Not saved.", text("kept"));
    // The file with its change waits in turn.
    click("back");
    await("the file again", () -> value("well-depth").equals("101 ft"));
    click("save");
    await("that it is saved", () -> text("kept").startsWith("Saved as FW-E1.json"));
    Path saved = downloads.resolve("FW-E1.json");
    await("the file saved", () -> Files.exists(saved));
    assertEquals(
        "6.5",
        new JsonMapper().readTree(saved.toFile()).path("well").path("bore_diameter").asText());
    browser
        .driver()
        .executeScript(
            "const t = new DataTransfer();"
                + "t.items.add(new File(['{\"record\": {\"id\": \"ONE\"}}'], 'one.json'));"
                + "t.items.add(new File(['{}'], 'other.json'));"
                + "document.dispatchEvent(new DragEvent('drop', {dataTransfer: t, bubbles: true}));");
    note("One file at a time: one.json was opened, not other.json.");
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void theUnitsThatBareNumbersCountInAreSaid() {
    assertEquals("ft | m", text("pump-intake_depth-unit"));
    type(By.id("well-depth"), "41,2");
    await("that US is taken", () -> text("bare").startsWith("No units are chosen: one number"));
    assertEquals("= 41.2 ft", text("well-depth-unit"));
    inSheet("No units are chosen");
    type(By.id("pump-intake_depth"), "1,250");
    beside("pump-intake_depth", "Write 1.250 or 1250.");
    type(By.id("record-units"), "metric");
    assertEquals("m", text("pump-intake_depth-unit"));
    await("metres", () -> text("well-depth-unit").equals("= 41.2 m") && text("bare").isEmpty());
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void whatIsToBeWrittenAgainIsSaidAtTheEntryAndNotCalledMissing() {
    type(By.id("record-jurisdiction"), "fenwick");
    type(By.id("site-zone"), "hill country");
    beside("site-zone", "No table of limits has that word. Write one of:");
    assertTrue(
        Boolean.TRUE.equals(
            browser
                .driver()
                .executeScript(
                    "const z = document.getElementById('site-zone');"
                        + "const said = document.getElementById('site-zone-note').textContent;"
                        + "return [...z.list.options].some(o => said.includes(o.value));")));
    type(By.id("dates-permit"), "3/2/2025");
    beside("dates-permit", "Write 2025-02-03 or 2025-03-02.");
    type(By.id("relief-setting"), "75 furlongs");
    beside("relief-setting", "Write a number with psi or kPa.");
    inSheet("Write these 2 entries again, they cannot be read for sure: Permit issued");
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void fromAFindingOneGoesToItsEntryAndPaperSaysWhose() {
    drop(
        "relief.json",
        """
        {"record": {"id": "FW-B1", "jurisdiction": "fenwick", "units": "us"},
         "dates": {"completed": "2023-05-01"},
         "pump": {"control": "switch"}, "pressure": {"cut_in": 40, "cut_out": 60},
         "relief": {"fitted": "yes", "setting": 65}}
        """);
    await(
        "a way back",
        () ->
            Boolean.TRUE.equals(
                browser
                    .driver()
                    .executeScript(
                        "const d = document.getElementById('sheet').contentDocument;"
                            + "const b = [...d.querySelectorAll('.finding .tools button')]"
                            + ".find(x => x.textContent.includes('Relief'));"
                            + "if (b) { b.click(); } return !!b;")));
    assertTrue(is("#relief-setting"));
    for (String root : List.of("document", "document.getElementById('sheet').contentDocument")) {
      Object foot =
          browser
              .driver()
              .executeScript("return " + root + ".adoptedStyleSheets[0].cssRules[0].cssText;");
      assertTrue(String.valueOf(foot).contains("FW-B1"), String.valueOf(foot));
    }
    String asked =
        String.valueOf(
            browser
                .driver()
                .executeScript(
                    "const b = document.getElementById('sheet').contentDocument"
                        + ".querySelector('ol.asks button'); b.focus(); return b.dataset.entry;"));
    type(Keys.ENTER);
    await("the field of " + asked, () -> is("[name='" + asked + "']"));
    back("find");
    type("pump intake", Keys.ENTER);
    assertTrue(is("#pump-intake_depth"));
    tab("all");
  }

  private boolean asksBeforeLeaving() {
    return Boolean.TRUE.equals(
        browser
            .driver()
            .executeScript(
                "const e = new Event('beforeunload', {cancelable: true});"
                    + "window.dispatchEvent(e); return e.defaultPrevented;"));
  }

  private String text(String id) {
    return String.valueOf(browser.driver().findElement(By.id(id)).getDomProperty("textContent"));
  }

  private void click(String id) {
    browser.driver().executeScript("document.getElementById(arguments[0]).click()", id);
  }

  private void choose(int record) {
    browser
        .driver()
        .executeScript(
            "const w = document.getElementById('which'); w.value = arguments[0];"
                + "w.dispatchEvent(new Event('change'))",
            record);
  }

  @Test
  void aFileThatIsNoneIsSaidAndTheFormStays() throws Exception {
    tab("record-id");
    type("FW-D1");
    drop("notes.json", "{\"record\": nothing}");
    note("notes.json");
    note("is not JSON");
    assertEquals("FW-D1", value("record-id"));
    drop("pictures.xlsx", "PK nothing");
    note("pictures.xlsx");
    drop("empty.csv", "");
    note("is empty");
    browser
        .driver()
        .executeScript(
            "const t = new DataTransfer();"
                + "t.items.add(new File([new Uint8Array(9 << 20)], 'huge.csv'));"
                + "document.dispatchEvent(new DragEvent('drop', {dataTransfer: t, bubbles: true}));");
    note("huge.csv: larger than the 8 MiB");
    assertEquals("FW-D1", value("record-id"));
    // What a file holds besides is told, and stays told while one types.
    drop("two.csv", "record.id,well.depth [ft],Remarks\nFW-E1,100,fine\nFW-E2,100\n,200,none\n");
    await("the record", () -> value("record-id").equals("FW-E1"));
    note("2 rows set aside; the first: has 2 cells, the header has 3");
    note("these columns are no entries and stay in the file: Remarks");
    tab("record-id");
    type("X");
    inSheet("FW-E1X");
    note("2 rows set aside");
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void everyKindOfFileIsOpened() throws Exception {
    String json = "{\"record\": {\"id\": \"FW-1\"}, \"well\": {\"depth\": \"100 ft\"}}";
    drop("one.json", json);
    await("JSON", () -> value("record-id").equals("FW-1"));
    drop("two.ndjson", json.replace("FW-1", "FW-2") + "\n");
    await("JSON lines", () -> value("record-id").equals("FW-2"));
    drop("three.csv", "record.id;well.depth [m]\nFW-3;30,5\n");
    await("CSV", () -> value("record-id").equals("FW-3"));
    assertEquals("30.5 m", value("well-depth"));
    ByteArrayOutputStream book = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(book, "test", "1.0")) {
      Worksheet sheet = workbook.newWorksheet("wells");
      sheet.value(0, 0, "record.id");
      sheet.value(0, 1, "well.depth [ft]");
      sheet.value(1, 0, "FW-4");
      sheet.value(1, 1, 120);
    }
    browser
        .driver()
        .executeScript(
            "const bytes = Uint8Array.from(atob(arguments[0]), c => c.charCodeAt(0));"
                + "const t = new DataTransfer();"
                + "t.items.add(new File([bytes], 'four.xlsx'));"
                + "document.dispatchEvent(new DragEvent('drop', {dataTransfer: t, bubbles: true}));",
            Base64.getEncoder().encodeToString(book.toByteArray()));
    await("a workbook", () -> value("record-id").equals("FW-4"));
    assertEquals("120", value("well-depth").replace(" ft", ""));
    assertEquals(List.of(), browser.complaints());
  }

  /** A desk that has gone says so in one line, and its sheet no longer looks like the form's. */
  @Test
  void aSheetOfAnEarlierFormLooksLikeOne() {
    tab("record-id");
    type("FW-G1");
    inSheet("FW-G1");
    desk.close();
    type("X");
    await("the loss", () -> status().startsWith("The desk does not answer"));
    assertTrue(browser.driver().findElement(By.cssSelector("#beside.behind")).isDisplayed());
  }

  /** From the top: further down the bar that stays in view covers part of what is just below it. */
  private List<String> barriers() {
    browser.driver().executeScript("window.scrollTo(0, 0)");
    return browser.barriers();
  }

  private void drop(String name, String text) {
    browser
        .driver()
        .executeScript(
            "const t = new DataTransfer();"
                + "t.items.add(new File([arguments[1]], arguments[0]));"
                + "document.dispatchEvent(new DragEvent('drop', {dataTransfer: t, bubbles: true}));",
            name,
            text);
  }

  private void note(String text) {
    await(
        text + " in the note",
        () -> browser.driver().findElement(By.id("note")).getText().contains(text));
  }

  private void beside(String id, String text) {
    await(
        text + " beside " + id,
        () -> {
          String said =
              Objects.requireNonNull(
                  browser.driver().findElement(By.id(id + "-note")).getDomProperty("textContent"));
          return text.isEmpty() ? said.isEmpty() : said.contains(text);
        });
  }

  @Test
  void aFormNeedsNoSidewaysScrollOnANarrowPhone() {
    browser.width(320);
    browser
        .driver()
        .executeScript("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertEquals(0, browser.sideways(), browser::wide);
    assertEquals(List.of(), barriers());
  }

  @Test
  void whatLooksLikeMarkupStaysTextInEveryEntry() throws Exception {
    browser
        .driver()
        .executeScript(
            "document.getElementById('layer-more').click();"
                + "document.querySelectorAll('#form input').forEach(i => { i.value = arguments[0]; });"
                + "document.querySelectorAll('#form select').forEach(s => {"
                + " s.add(new Option(arguments[0], arguments[0], true, true)); });"
                + "document.getElementById('form').dispatchEvent(new Event('input'));",
            Forms.HOSTILE);
    inSheet("javascript:window.acted=1");
    assertNull(browser.driver().executeScript("return window.acted"));
    assertNull(
        browser
            .driver()
            .executeScript("return document.getElementById('sheet').contentWindow.acted"));
    assertEquals(List.of(), browser.complaints());
  }

  @Test
  void frenchHasNoBarriers() throws Exception {
    desk.close();
    desk = open(new PageStyle(Language.FR, UnitsShown.METRIC));
    browser.driver().get(desk.address());
    assertEquals("fr", browser.driver().findElement(By.tagName("html")).getDomAttribute("lang"));
    assertEquals(List.of(), barriers());
    assertEquals(List.of(), browser.complaints());
  }

  /**
   * A comma that a person types marks decimals; one that a file holds means what it means there.
   */
  @Test
  void frenchFiguresHaveACommaAndThoseOfAFileStay() throws Exception {
    desk.close();
    desk = open(new PageStyle(Language.FR, UnitsShown.AS_WRITTEN));
    browser.driver().get(desk.address());
    type(By.id("relief-setting"), "4,250 bar");
    inSheet("4,25 bar");
    assertEquals(List.of(), browser.complaints());
    Path file =
        Files.writeString(
            downloads.resolve("deep.json"),
            "{\"record\": {\"id\": \"DEEP\"}, \"well\": {\"depth\": \"1,250 ft\"}}");
    browser.driver().findElement(By.id("file")).sendKeys(file.toString());
    inSheet("1250 pi");
    assertEquals("1,250 ft", value("well-depth"));
  }

  private void type(By field, String text) {
    browser
        .driver()
        .executeScript(
            "arguments[0].value = arguments[1];"
                + "arguments[0].dispatchEvent(new Event('input', {bubbles: true}))",
            browser.driver().findElement(field),
            text);
  }

  /** Waits until the page says that there are so many findings. */
  private void said(String findings) {
    await(findings + " findings", () -> status().matches("[^0-9]*" + findings + "[^0-9].*"));
  }

  private String status() {
    return browser.driver().findElement(By.id("status")).getText();
  }

  private void inSheet(String text) {
    await(
        text + " in the sheet",
        () ->
            Objects.requireNonNullElse(
                    (String)
                        browser
                            .driver()
                            .executeScript(
                                "const d = document.getElementById('sheet').contentDocument;"
                                    + "return d && d.body ? d.body.textContent : '';"),
                    "")
                .contains(text));
  }

  private void await(String what, java.util.function.BooleanSupplier until) {
    new WebDriverWait(browser.driver(), Duration.ofSeconds(40))
        .withMessage(() -> what + "; the page says: " + status() + " " + browser.complaints())
        .until(driver -> until.getAsBoolean());
  }

  private String value(String id) {
    return String.valueOf(browser.driver().findElement(By.id(id)).getDomProperty("value"));
  }

  private void type(CharSequence... keys) {
    Actions actions = new Actions(browser.driver());
    for (CharSequence each : keys) {
      actions.sendKeys(each);
    }
    actions.perform();
  }

  private void shifted(Keys key) {
    new Actions(browser.driver()).keyDown(Keys.SHIFT).sendKeys(key).keyUp(Keys.SHIFT).perform();
  }

  /** Writes another text over what a field holds. */
  private void over(String text) {
    type(Keys.HOME);
    shifted(Keys.END);
    type(text);
  }

  /** Chooses in a list that has the focus, by typing what it says. */
  private void choose(String id, String text) {
    type(text);
    assertEquals(text, value(id));
  }

  private void tab(String id) {
    tabInto("#" + id);
  }

  /** Goes on by the Tab key until the place has the focus. */
  private void tabInto(String selector) {
    step(selector, () -> type(Keys.TAB));
  }

  private void back(String id) {
    step("#" + id, () -> shifted(Keys.TAB));
  }

  private void step(String selector, Runnable key) {
    for (int i = 0; i < MOST_STEPS; i++) {
      if (is(selector)) {
        return;
      }
      key.run();
    }
    assertTrue(is(selector), selector + " is not reached by keys");
  }

  private boolean is(String selector) {
    return Boolean.TRUE.equals(
        browser
            .driver()
            .executeScript("return document.activeElement.matches(arguments[0])", selector));
  }

  /** Opens the group that holds a field, by its heading. */
  private void open(String id) {
    for (int i = 0; i < MOST_STEPS; i++) {
      Object at =
          browser
              .driver()
              .executeScript(
                  "const a = document.activeElement;"
                      + "const d = document.getElementById(arguments[0]).closest('details');"
                      + "return a === d.firstElementChild ? (d.open ? 'open' : 'shut') : '';",
                  id);
      assertNotNull(at);
      if (at.equals("shut")) {
        type(Keys.ENTER);
        return;
      }
      type(Keys.TAB);
    }
    throw new AssertionError("the group of " + id + " is not reached by keys");
  }
}
