package org.wellcurb.screening;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Pack;
import org.wellcurb.rulepack.PackFile;
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

  @Test
  void theOthersNameTheOneThatStands() {
    Subjects subjects = new Subjects(pack());
    subjects.settle(outcomes(Outcome.MEETS, Outcome.CANNOT_TELL, Outcome.MEETS));
    assertEquals(
        List.of("practice-2", "", "practice-2"),
        List.of(subjects.standsFor(0), subjects.standsFor(1), subjects.standsFor(2)));
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
        List.of(
            rule("practice-1", "practice"),
            rule("practice-2", "practice"),
            rule("county-1", "county")),
        List.of(new PackFile("practice", "", ""), new PackFile("county", "", "")));
  }

  private static Rule rule(String id, String pack) {
    Source source = new Source("a", Source.Basis.INVENTED, "A", "", "", null, "", "");
    DatedText text = new DatedText(null, null, null, null);
    return new Rule(
        id,
        pack,
        id,
        FindingKind.ADVISORY,
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
