package org.wellcurb.rulepack;

import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says which rules taken over come out otherwise under this pack's own tables, figures and list of
 * entries that must apply: their examples were proved without these.
 */
final class InheritedProof {
  private InheritedProof() {}

  static void run(Pack pack, ProofNotes notes) {
    ExampleCheck check = new ExampleCheck(pack);
    for (Rule rule : pack.rules()) {
      if (rule.pack().equals(pack.id())) {
        continue;
      }
      for (Example example : rule.examples()) {
        Outcome outcome = check.outcome(rule, example);
        if (outcome != example.expect() && outcome != Outcome.CANNOT_TELL) {
          notes.say(
              Weight.NOTE,
              "rule",
              rule.id(),
              "an example that '"
                  + example.expect().label()
                  + "' in "
                  + rule.pack()
                  + " comes out here as '"
                  + outcome.label()
                  + "'");
          break;
        }
      }
    }
  }
}
