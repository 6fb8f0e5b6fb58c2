package org.wellcurb.rulepack;

import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says what of a pack's rules stands to others otherwise than was likely meant: a rule that takes
 * the place of one taken over by chance, a subject that no other rule shares, a day that decides
 * nothing.
 */
final class StandingProof {
  private final Pack pack;
  private final ProofNotes notes;

  private StandingProof(Pack pack, ProofNotes notes) {
    this.pack = pack;
    this.notes = notes;
  }

  static void run(Pack pack, ProofNotes notes) {
    new StandingProof(pack, notes).run();
  }

  private void run() {
    for (Rule rule : notes.ownRules()) {
      replaced(rule);
      subject(rule);
      day(rule);
    }
    boolean anyDated = pack.rules().stream().anyMatch(rule -> rule.program().isDated());
    if (pack.judgedBy() instanceof JudgedBy.LessStrictOf && !anyDated) {
      notes.sayOfPack(
          Weight.DOUBTFUL,
          "judgedBy takes the milder of several days, and no rule has dated texts");
    }
  }

  private void replaced(Rule rule) {
    if (!rule.replaces().isEmpty() && rule.replacesBecause().isEmpty()) {
      say(
          Weight.DOUBTFUL,
          rule,
          "it replaces the rule of this id in "
              + rule.replaces()
              + " and does not say why: add replacesBecause, or give it an id of its own");
    } else if (rule.replaces().isEmpty() && !rule.replacesBecause().isEmpty()) {
      say(
          Weight.DOUBTFUL,
          rule,
          "it says why it replaces a rule, and none that is taken over has this id");
    }
  }

  /** A pack without jurisdictions is there for others to build on: they may share its subjects. */
  private void subject(Rule rule) {
    if (pack.jurisdictions().isEmpty()) {
      return;
    }
    long alike =
        pack.rules().stream().filter(other -> other.subject().equals(rule.subject())).count();
    if (!rule.subject().isEmpty() && alike == 1) {
      say(Weight.NOTE, rule, "no other rule has its subject " + rule.subject());
    }
  }

  private void day(Rule rule) {
    if (!rule.program().isDated() && !rule.program().judgedBy().equals(pack.judgedBy())) {
      say(
          Weight.DOUBTFUL,
          rule,
          "its judgedBy decides nothing: it has one text, in force on every day");
    }
  }

  private void say(Weight weight, Rule rule, String said) {
    notes.say(weight, "rule", rule.id(), said);
  }
}
