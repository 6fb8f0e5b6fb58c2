package org.wellcurb.rulepack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
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
public final class MustApply {
  private static final Source SOURCE =
      new Source("must-apply", Source.Basis.COMMON_PRACTICE, "", "", "", null, "", "");

  private MustApply() {}

  /** The id of the rule for this entry. */
  static String id(String key) {
    return "applies-" + key.replace('.', '-').replace('_', '-');
  }

  /**
   * The entry that a rule made here is about; null for a pack's own rule. Only those made here have
   * neither examples nor a question.
   */
  private static @Nullable Entry entry(Rule rule) {
    @Nullable Formula require = rule.program().texts().get(0).require();
    return require != null
            && rule.examples().isEmpty()
            && require.tree() instanceof Expr.Applies applies
            && rule.id().equals(id(applies.entry().key()))
        ? applies.entry()
        : null;
  }

  /** True if the rule was made here and no pack wrote it. */
  static boolean isOne(Rule rule) {
    return entry(rule) != null;
  }

  /**
   * True if the first is the rule that comes with an entry of {@code mustApply} and the other asks,
   * in each of its texts, for nothing but that entry: where it is n/a both fall short of the same.
   */
  public static boolean isSaidBy(Rule rule, Rule other) {
    @Nullable Entry entry = entry(rule);
    return entry != null
        && other.kind() == FindingKind.OMISSION
        && other.program().texts().stream()
            .map(DatedText::require)
            .allMatch(
                require ->
                    require != null
                        && require.tree() instanceof Expr.Known known
                        && known.entry().equals(entry));
  }

  /**
   * The rule for this entry.
   *
   * @param said where it is written that it applies; null where the pack does not tell
   */
  static Rule rule(
      Entry entry, String pack, JudgedBy judgedBy, Scope scope, @Nullable Source said) {
    Source source = said == null ? SOURCE : said;
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
        source,
        List.of(source),
        "",
        List.of(),
        "",
        "");
  }
}
