package org.wellcurb.report;

import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.report.words.Words;
import org.wellcurb.rulepack.Rule;

/**
 * What a rule says of itself, for pages. A pack's rules speak its own words; the rules that come
 * with its list of entries that always apply are ours, and speak the page's language.
 */
final class RuleWords {
  private final Words words;

  RuleWords(Words words) {
    this.words = words;
  }

  /** What it asks. */
  String title(Rule rule) {
    @Nullable String entry = mustApply(rule);
    return entry == null ? rule.title() : words.say("must.apply.title", words.entry(entry));
  }

  /** Why it matters. */
  String because(Rule rule) {
    return mustApply(rule) == null ? rule.because() : words.say("must.apply.because");
  }

  /** How to put it right. */
  String remedy(Rule rule) {
    return mustApply(rule) == null ? rule.remedy() : words.say("must.apply.remedy");
  }

  /** Whether a text is one that our own rules say in this language, and no pack's. */
  static boolean isOurs(String text, Words words) {
    String title = words.say("must.apply.title", "");
    return text.endsWith(title)
        || text.equals(words.say("must.apply.because"))
        || text.equals(words.say("must.apply.remedy"));
  }

  /** Whether a rule comes with the pack's list of entries that always apply. */
  static boolean isOfMustApply(Rule rule) {
    return mustApply(rule) != null;
  }

  /** The entry that must apply, for a rule of ours; null for a pack's own, which has examples. */
  private static @Nullable String mustApply(Rule rule) {
    @Nullable Formula require = rule.program().texts().get(0).require();
    return require != null
            && rule.examples().isEmpty()
            && require.tree() instanceof Expr.Applies applies
        ? applies.entry().key()
        : null;
  }
}
