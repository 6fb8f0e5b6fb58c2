package org.wellcurb.rulepack;

import java.util.List;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Scope;
import org.wellcurb.formula.Speech;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.record.Entry;

/**
 * The rule that comes with each entry of {@code mustApply}: it falls short where the entry is
 * written n/a.
 */
final class MustApply {
  private static final Source SOURCE =
      new Source("must-apply", Source.Basis.COMMON_PRACTICE, "", "", "", null, "", "");

  private MustApply() {}

  /** The id of the rule for this entry. */
  static String id(String key) {
    return "applies-" + key.replace('.', '-').replace('_', '-');
  }

  /** The rule for this entry. */
  static Rule rule(Entry entry, String pack, JudgedBy judgedBy, Scope scope) {
    DatedText text = new DatedText(null, null, null, Formula.applies(entry, scope));
    return new Rule(
        id(entry.key()),
        pack,
        Speech.plainLabel(entry) + " is not written off as not applicable",
        FindingKind.OMISSION,
        "",
        new RuleProgram(null, List.of(text), judgedBy, true),
        "It applies to every well that this pack judges.",
        "Write its value, or leave it blank where it is not known.",
        /* atOnce= */ "",
        SOURCE,
        List.of(SOURCE),
        "",
        List.of(),
        "",
        "");
  }
}
