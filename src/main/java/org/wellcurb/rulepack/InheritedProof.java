package org.wellcurb.rulepack;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Pattern;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says which rules taken over come out otherwise under this pack's own tables, figures and list of
 * entries that must apply: their examples were proved without these.
 */
final class InheritedProof {
  private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private InheritedProof() {}

  static void run(Pack pack, ProofNotes notes) {
    ExampleCheck check = new ExampleCheck(pack);
    Set<String> later = new LinkedHashSet<>();
    Set<String> of = new LinkedHashSet<>();
    for (Rule rule : pack.rules()) {
      if (rule.pack().equals(pack.id())) {
        continue;
      }
      for (Example example : rule.examples()) {
        Outcome outcome = check.outcome(rule, example);
        if (outcome != example.expect() && outcome != Outcome.CANNOT_TELL) {
          if (isAfter(example, pack.edition())) {
            later.add(rule.id());
            of.add(rule.pack());
            break;
          }
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
    if (!later.isEmpty()) {
      notes.sayOfPack(
          Weight.NOTE,
          "its edition "
              + pack.edition()
              + " lies before days in examples of "
              + String.join(", ", of)
              + ", which come out otherwise here, and rightly: "
              + String.join(", ", later));
    }
  }

  /** True if an example tells of a day that lies after the edition, on which it is judged. */
  private static boolean isAfter(Example example, LocalDate edition) {
    return example.given().values().stream()
        .anyMatch(text -> DAY.matcher(text).matches() && text.compareTo(edition.toString()) > 0);
  }
}
