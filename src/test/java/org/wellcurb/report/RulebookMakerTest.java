package org.wellcurb.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.wellcurb.report.RulebookPage.RulePrint;
import org.wellcurb.report.RulebookPage.SourcePrint;
import org.wellcurb.report.words.Language;
import org.wellcurb.report.words.UnitsShown;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackLoader;

/** What a rulebook says of its pack is so. */
class RulebookMakerTest {
  @Test
  void aRuleCountsForTheSourceOfEachOfItsDatedTexts() throws Exception {
    Map<String, Integer> rules = new HashMap<>();
    for (SourcePrint source : page("quebec").sources()) {
      rules.put(source.id(), source.rules());
      assertTrue(source.rules() > 0, source.id());
    }
    // Two rules of distances read the older text, and no rule's last text does.
    assertEquals(2, rules.get("r35-2-17-1"));
  }

  @Test
  void whatIsOursSpeaksTheLanguageOfThePage() throws Exception {
    PageStyle french = new PageStyle(Language.FR, UnitsShown.AS_WRITTEN);
    Map<String, RulePrint> rules = new HashMap<>();
    new RulebookMaker(PackLoader.load("fenwick-county"), french)
        .page()
        .chapters()
        .forEach(group -> group.rules().forEach(rule -> rules.put(rule.id(), rule)));
    RulePrint ours = Objects.requireNonNull(rules.get("applies-well-depth"));
    assertEquals("Profondeur finie\u00a0: n'est pas dit sans objet", ours.title());
    assertTrue(ours.remedy().startsWith("Écrire sa valeur"), ours.remedy());
    // A rule that a pack writes about the same is the pack's own.
    RulePrint own = Objects.requireNonNull(rules.get("casing-applies"));
    assertEquals("The form does not say n/a of the casing", own.title());
    RulePrint distance = Objects.requireNonNull(rules.get("surface-water-distance"));
    String given = distance.examples().toString();
    assertTrue(given.contains("Usage du puits\u00a0: domestique"), given);
  }

  @Test
  void thePageSaysWhichRulesAVarianceMayWaive() throws Exception {
    assertEquals("rulebook.waived.any", page("montana").waived());
    PageStyle style = new PageStyle(Language.EN, UnitsShown.AS_WRITTEN);
    Pack pack = PackLoader.load("src/test/resources/bad-packs/sound-whole");
    RulebookPage page = new RulebookMaker(pack, style).page();
    assertEquals("rulebook.waived.some", page.waived());
    assertEquals(List.of("tank-distance"), page.waivable());
  }

  @Test
  void wordsStandAsThePackWritesThem() throws Exception {
    String virginia = page("virginia").chapters().toString();
    assertTrue(virginia.contains("is IIIB"), virginia);
  }

  @Test
  void itsOwnRulesStandFirstBySection() throws Exception {
    RulebookPage page = page("montana");
    List<RulePrint> own = page.chapters().get(0).rules();
    assertEquals(
        List.of("ARM 36.21.638(1)", "ARM 36.21.638(2)", "ARM 36.21.639", "ARM 36.21.647"),
        own.stream().map(RulePrint::section).distinct().limit(4).toList());
    assertEquals(page.counts().rules() + page.counts().always(), rules(page).size());
    // Both texts of the seal were read; the rule stands under the section of the later one.
    RulePrint seal = rules(page).get("seal-depth");
    assertEquals("ARM 36.21.654(3)", Objects.requireNonNull(seal).section());
    assertTrue(seal.texts().get(0).source().text().contains("superseded text"));
    assertTrue(seal.texts().get(1).source().text().contains("current text"));
    assertEquals(
        page.counts().taken(), page.taken().stream().mapToInt(each -> each.rules().size()).sum());
    assertTrue(page.taken().stream().noneMatch(each -> each.pack().equals("montana")));
    assertEquals("montana", page.files().get(0).pack());
  }

  /** What no section of the code says is not among what is signed. */
  @Test
  void entriesThatAlwaysApplyAreCountedAndListedApart() throws Exception {
    RulebookPage page = page("montana");
    assertEquals(2, page.counts().always());
    RulebookPage.Chapter always = page.chapters().get(page.chapters().size() - 1);
    assertFalse(always.isWritten());
    assertEquals(2, always.rules().size());
    for (RulePrint rule : always.rules()) {
      assertTrue(rule.texts().get(0).source().text().isEmpty(), rule.toString());
    }
    String html = new Pages(PageStyle.PLAIN).rulebook(PackLoader.load("montana"));
    int from = html.indexOf("id=\"contents\"");
    String signed = html.substring(from, html.indexOf("</table>", from));
    assertTrue(signed.contains("#rule-seal-depth"), signed);
    assertFalse(signed.contains("#rule-applies-"), signed);
    assertTrue(html.contains("id=\"rule-applies-well-depth\""), "it stands apart, below");
  }

  @Test
  void everyRuleHasItsPlaceInOneBookAndItsExamplesInPrint() throws Exception {
    for (String name : PackLoader.shipped()) {
      Pack pack = PackLoader.load(name);
      RulebookPage page = new RulebookMaker(pack, PageStyle.PLAIN).page();
      Map<String, RulePrint> own = rules(page);
      int taken = page.taken().stream().mapToInt(each -> each.rules().size()).sum();
      assertEquals(pack.rules().size(), own.size() + taken, name);
      int examples = own.values().stream().mapToInt(each -> each.examples().size()).sum();
      assertEquals(page.counts().examples(), examples, name);
      String said = page.toString();
      assertFalse(said.contains("not: "), name);
      assertFalse(said.contains("at most 0 "), name);
      assertFalse(said.contains(" is any"), name);
      assertFalse(said.contains("at least if "), name);
    }
  }

  @Test
  void figuresOfTheSystemAskedForStandBeside() throws Exception {
    String both = page("montana", UnitsShown.AS_WRITTEN);
    String us = page("montana", UnitsShown.US);
    String metric = page("montana", UnitsShown.METRIC);
    assertTrue(both.contains("is at least 50 ft [15.2 m]"));
    assertEquals(both, metric.replace("units.metric", "units.as-written"));
    assertTrue(us.contains("Distance to septic tank is at least 50 ft]"), us);
    assertFalse(us.contains("[15.2 m]"));
    Pattern feet = Pattern.compile("\\[[0-9.]+ ft\\]");
    assertTrue(feet.matcher(page("quebec", UnitsShown.US)).find());
    assertFalse(feet.matcher(page("quebec", UnitsShown.METRIC)).find());
  }

  @Test
  void aRowSaysWhetherItsEndsBelongToIt() throws Exception {
    String tables = page("oregon").tables() + page("fenwick-county").tables().toString();
    assertTrue(tables.contains(", both included") || tables.contains(" or less"), tables);
    assertFalse(tables.contains("up to"), tables);
  }

  @Test
  void aTableSaysWhatItIsAndWhereItStandsAndItsRuleNamesIt() throws Exception {
    RulebookPage page = page("fenwick-county");
    RulebookPage.TablePrint frost =
        page.tables().stream().filter(each -> each.name().equals("frost")).findAny().orElseThrow();
    assertEquals("Depth of frost by zone", frost.title());
    assertTrue(frost.source().text().contains("section 7(1)"), frost.source().text());
    RulePrint pitless = rules(page).get("pitless-below-county-frost");
    assertEquals(List.of("frost"), Objects.requireNonNull(pitless).tables());
    String html = new Pages(PageStyle.PLAIN).rulebook(PackLoader.load("fenwick-county"));
    assertTrue(
        html.contains("<a href=\"#table-frost\">Depth of frost by zone</a>"),
        "the rule leads to it");
    assertTrue(html.contains("<div id=\"table-frost\">"), "the table is there");
  }

  /** Whoever signs it sees what the table leaves open. */
  @Test
  void aTableSaysWhatItHasNoRowFor() throws Exception {
    RulebookPage page = page("fenwick-county");
    Map<String, List<String>> lacks = new LinkedHashMap<>();
    page.tables().forEach(table -> lacks.put(table.name(), table.lacks()));
    assertEquals(List.of("Zone: any other word"), lacks.get("frost"));
    assertEquals(List.of("Zone: any other word; Casing material: any"), lacks.get("grout-depth"));
    assertEquals(List.of(), lacks.get("field-distance"), "its last row takes any");
    String html = new Pages(PageStyle.PLAIN).rulebook(PackLoader.load("fenwick-county"));
    assertTrue(html.contains("<li>Zone: any other word.</li>"), "the page says it");
  }

  @Test
  void aNoteOfASourceIsSaidOnce() throws Exception {
    List<String> notes = new ArrayList<>();
    rules(page("quebec"))
        .values()
        .forEach(
            rule ->
                rule.texts().stream()
                    .map(text -> text.source().note())
                    .filter(note -> !note.isEmpty())
                    .forEach(notes::add));
    assertTrue(notes.size() > 3, notes.toString());
    assertEquals(notes.stream().distinct().toList(), notes);
  }

  @Test
  void sectionsStandAsPeopleCountThem() {
    List<String> sections =
        new ArrayList<>(List.of("4.10", "10", "4.2(b)", "4", "Table 2", "4.2(a)", "04.3", "s. 9"));
    sections.sort(NaturalOrder.OF_SECTIONS);
    assertEquals(
        List.of("4", "4.2(a)", "4.2(b)", "04.3", "4.10", "10", "s. 9", "Table 2"), sections);
  }

  private static Map<String, RulePrint> rules(RulebookPage page) {
    Map<String, RulePrint> rules = new LinkedHashMap<>();
    page.chapters().forEach(chapter -> chapter.rules().forEach(rule -> rules.put(rule.id(), rule)));
    return rules;
  }

  private static String page(String pack, UnitsShown units) throws Exception {
    PageStyle style = new PageStyle(Language.EN, units);
    return new RulebookMaker(PackLoader.load(pack), style).page().toString();
  }

  private static RulebookPage page(String pack) throws Exception {
    return new RulebookMaker(PackLoader.load(pack), PageStyle.PLAIN).page();
  }
}
