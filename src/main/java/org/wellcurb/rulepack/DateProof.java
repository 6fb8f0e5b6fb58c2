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
          LocalDate first = LocalDate.ofEpochDay((long) last + 1);
          LocalDate end = LocalDate.ofEpochDay((long) next - 1);
          boolean isSlip = next - last <= SLIP;
          String said = "no text is in force from " + first + " to " + end;
          notes.say(
              isSlip ? Weight.DOUBTFUL : Weight.NOTE,
              "rule",
              rule.id(),
              isSlip ? said + days((long) (next - last) - 1) + mend(first, end) : said);
        }
      }
    }
  }

  private static String days(long count) {
    return count == 1 ? " (1 day)" : " (" + count + " days)";
  }

  private static String mend(LocalDate first, LocalDate end) {
    return ", and it judges no well of that time: end the text before on "
        + end
        + ", or begin the next on "
        + first;
  }
}
