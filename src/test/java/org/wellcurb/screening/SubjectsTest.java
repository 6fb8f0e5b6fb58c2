package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wellcurb.formula.Speech;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.record.RecordReader;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackFile;
import org.wellcurb.rulepack.PackLoader;
import org.wellcurb.rulepack.Rule;
import org.wellcurb.rulepack.Source;

/** Which rule of one subject stands. */
class SubjectsTest {
  private static final JudgedBy AS_OF = new JudgedBy.AsOf();

  @Test
  void theWorstStands() {
    assertArrayEquals(
        outcomes(Outcome.NOT_APPLICABLE, Outcome.FALLS_SHORT, Outcome.NOT_APPLICABLE),
        settle(Outcome.MEETS, Outcome.FALLS_SHORT, Outcome.CANNOT_TELL));
  }

  @Test
  void ofEqualsThatOfThePackThatBuildsOnTheOthersStands() {
    assertArrayEquals(
        outcomes(Outcome.NOT_APPLICABLE, Outcome.NOT_APPLICABLE, Outcome.FALLS_SHORT),
        settle(Outcome.FALLS_SHORT, Outcome.FALLS_SHORT, Outcome.FALLS_SHORT));
  }

  @Test
  void ofEqualsInOnePackTheFirstStands() {
    assertArrayEquals(
        outcomes(Outcome.MEETS, Outcome.NOT_APPLICABLE, Outcome.NOT_APPLICABLE),
        settle(Outcome.MEETS, Outcome.MEETS, Outcome.NOT_APPLICABLE));
  }

  /** What a code recommends hides nothing of what one requires, whichever is written first. */
  @Test
  void ofEqualsThatOfTheGravestKindStands() {
    Rule shall = rule("shall", "practice", FindingKind.DEFICIENCY);
    Rule should = rule("should", "county", FindingKind.ADVISORY);
    Rule ownShould = rule("own-should", "practice", FindingKind.ADVISORY);
    for (Pack pack : List.of(pack(shall, should, ownShould), pack(ownShould, should, shall))) {
      Subjects subjects = new Subjects(pack);
      byte[] all = outcomes(Outcome.FALLS_SHORT, Outcome.FALLS_SHORT, Outcome.FALLS_SHORT);
      subjects.settle(all);
      for (int i = 0; i < all.length; i++) {
        boolean isShall = pack.rules().get(i).equals(shall);
        assertEquals(isShall ? "" : "shall", subjects.standsFor(i));
        assertEquals((isShall ? Outcome.FALLS_SHORT : Outcome.NOT_APPLICABLE).ordinal(), all[i]);
      }
    }
  }

  @Test
  void theOthersNameTheOneThatStands() {
    Subjects subjects = new Subjects(pack());
    subjects.settle(outcomes(Outcome.MEETS, Outcome.CANNOT_TELL, Outcome.MEETS));
    assertEquals(
        List.of("practice-2", "", "practice-2"),
        List.of(subjects.standsFor(0), subjects.standsFor(1), subjects.standsFor(2)));
  }

  /** n/a in an entry that always applies is one omission, whoever asks for the entry. */
  @Test
  void oneRuleStandsForAnEntryThatAlwaysApplies(@TempDir Path folder) throws Exception {
    Path file = Files.createDirectory(folder.resolve("county")).resolve("pack.json");
    Files.writeString(
        file,
        """
        { "pack": "county", "title": "County (invented)", "authority": "Office (invented)",
          "edition": "2024-04-01", "judgedBy": "dates.completed", "mustApply": ["driller.licence"],
          "sources": { "a": { "basis": "invented", "title": "By-law", "section": "1" } },
          "rules": [ { "id": "licence", "title": "The form names the licence", "kind": "omission",
            "when": "well.use is not 'monitoring'",
            "require": "known(driller.licence)", "because": "b", "remedy": "r", "source": "a",
            "examples": [
              { "given": { "well.use": "household", "driller.licence": "L-1" }, "expect": "meets" },
              { "given": { "well.use": "household" }, "expect": "falls short" } ] } ] }
        """);
    Pack pack = PackLoader.load(file.getParent().toString());
    assertEquals(
        List.of("licence falls short ", "applies-driller-licence not applicable licence"),
        said(pack, "household", "n/a"));
    assertEquals(
        List.of("licence falls short ", "applies-driller-licence meets "),
        said(pack, "household", ""));
    // Where the rule does not apply, the entry still does.
    assertEquals(
        List.of("licence not applicable ", "applies-driller-licence falls short "),
        said(pack, "monitoring", "n/a"));
  }

  private static List<String> said(Pack pack, String use, String licence) {
    Screener screener = new Screener(pack, LocalDate.of(2026, 1, 1), Speech.plain());
    Map<String, String> form =
        Map.of("record.id", "W-1", "well.use", use, "driller.licence", licence);
    return screener.result(RecordReader.of(form)).results().stream()
        .map(
            each ->
                each.rule().id()
                    + " "
                    + each.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                    + " "
                    + each.standsFor())
        .toList();
  }

  private static byte[] settle(Outcome... outcomes) {
    byte[] bytes = outcomes(outcomes);
    new Subjects(pack()).settle(bytes);
    return bytes;
  }

  private static byte[] outcomes(Outcome... outcomes) {
    byte[] bytes = new byte[outcomes.length];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) outcomes[i].ordinal();
    }
    return bytes;
  }

  private static Pack pack() {
    return pack(
        rule("practice-1", "practice"), rule("practice-2", "practice"), rule("county-1", "county"));
  }

  private static Pack pack(Rule... rules) {
    return new Pack(
        "county",
        "County",
        "Nobody",
        List.of(),
        LocalDate.of(2024, 1, 1),
        AS_OF,
        "",
        List.of("practice"),
        Map.of(),
        Map.of(),
        List.of(),
        List.of(),
        null,
        Map.of(),
        List.of(rules),
        List.of(new PackFile("practice", "", ""), new PackFile("county", "", "")));
  }

  private static Rule rule(String id, String pack) {
    return rule(id, pack, FindingKind.ADVISORY);
  }

  private static Rule rule(String id, String pack, FindingKind kind) {
    Source source = new Source("a", Source.Basis.INVENTED, "A", "", "", null, "", "");
    DatedText text = new DatedText(null, null, null, null);
    return new Rule(
        id,
        pack,
        id,
        kind,
        "yield-test",
        new RuleProgram(null, List.of(text), AS_OF, false),
        "",
        "",
        /* atOnce= */ "",
        source,
        List.of(source),
        "",
        List.of(),
        "",
        "");
  }
}
