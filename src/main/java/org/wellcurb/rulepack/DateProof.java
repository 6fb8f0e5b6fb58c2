package org.wellcurb.rulepack;

import java.time.LocalDate;
import java.util.List;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.rulepack.Statement.Weight;

/** Says between which dated texts of a rule there are days on which none is in force. */
final class DateProof {
  /** A shorter gap is a slip of the pen; a longer one may be history. */
  private static final int SLIP = 366;

  private DateProof() {}

  static void run(Pack pack, ProofNotes notes) {
    for (Rule rule : notes.ownRules()) {
      List<DatedText> texts = rule.program().texts();
      for (int i = 1; i < texts.size(); i++) {
        double last = texts.get(i - 1).lastDay();
        double next = texts.get(i).firstDay();
        if (next > last + 1) {
          notes.say(
              next - last <= SLIP ? Weight.DOUBTFUL : Weight.NOTE,
              "rule",
              rule.id(),
              "no text is in force from "
                  + LocalDate.ofEpochDay((long) last + 1)
                  + " to "
                  + LocalDate.ofEpochDay((long) next - 1));
        }
      }
    }
  }
}
