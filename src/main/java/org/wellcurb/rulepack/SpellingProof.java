package org.wellcurb.rulepack;

import java.util.Set;
import java.util.TreeSet;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Parts;
import org.wellcurb.record.Entry;
import org.wellcurb.record.Kind;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says where a rule holds free text against a list of spellings: a form that writes the same
 * otherwise falls short of it.
 */
final class SpellingProof {
  private SpellingProof() {}

  static void run(ProofNotes notes) {
    for (Rule rule : notes.ownRules()) {
      Set<String> said = new TreeSet<>();
      for (ChangedRule.Place place : ChangedRule.places(rule.program())) {
        if (place.isRequired()) {
          look(place.formula().tree(), rule, said, notes);
        }
      }
    }
  }

  private static void look(Expr expr, Rule rule, Set<String> said, ProofNotes notes) {
    if (expr instanceof Expr.IsOneOf is
        && !is.isNegated()
        && is.word() instanceof Expr.EntryWord of
        && isFree(of.entry())
        && said.add(of.entry().key())) {
      notes.say(
          Weight.NOTE,
          "rule",
          rule.id(),
          of.entry().key()
              + " is free text and compared to the letter, but for capitals: '"
              + is.shown().get(0)
              + "' in another spelling falls short; ask a table by it, without a last row *, and"
              + " what it lacks cannot be told");
    }
    Parts.of(expr).forEach(part -> look(part, rule, said, notes));
  }

  private static boolean isFree(Entry entry) {
    return entry.kind() == Kind.TEXT && entry.choices().isEmpty();
  }
}
