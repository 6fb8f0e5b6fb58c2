package org.wellcurb.rulepack;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is proved of a pack that loads, and what is not.
 *
 * @param pack id of the pack
 * @param rules how many rules it writes itself
 * @param always how many entries it says always apply, each of which is judged as a rule
 * @param inherited how many rules it takes over
 * @param examples how many examples its own rules have; all of them passed, or it had not loaded
 * @param limits how many limits its own rules state, each row of a table that they use among them
 * @param proved how many of these have an example on both sides
 * @param statements what there is to say, in the order of the file
 */
public record Proof(
    String pack,
    int rules,
    int always,
    int inherited,
    int examples,
    int limits,
    int proved,
    List<Statement> statements) {

  public Proof {
    statements = List.copyOf(statements);
  }

  /** Proves a pack: its own rules, and how they stand to those that it takes over. */
  public static Proof of(Pack pack) {
    return of(pack, "");
  }

  /**
   * Proves a pack that stands in a folder of this name.
   *
   * @param folder name of the folder; empty where the pack stands in none
   */
  public static Proof of(Pack pack, String folder) {
    ProofNotes notes = new ProofNotes(pack);
    LimitProof limits = new LimitProof(pack, notes);
    limits.run();
    TableProof.run(pack, notes);
    DateProof.run(pack, notes);
    UseProof.run(pack, notes);
    WordProof.run(pack, notes);
    DualProof.run(pack, notes);
    PairProof.run(pack, notes);
    InheritedProof.run(pack, notes);
    StandingProof.run(pack, notes);
    VoidProof.run(pack, notes);
    SpanProof.run(pack, notes);
    SpellingProof.run(notes);
    ListedWords.run(notes);
    if (!folder.isEmpty() && !folder.equals(pack.id())) {
      notes.sayOfPack(
          Statement.Weight.DOUBTFUL,
          "it stands in the folder "
              + folder
              + ", by which packs built on it look for it: mend one of the names");
    }
    filledIn(pack, notes);
    List<Rule> own = notes.ownRules();
    List<Rule> here = pack.rules().stream().filter(rule -> rule.pack().equals(pack.id())).toList();
    int always = (int) here.stream().filter(MustApply::isOne).count();
    return new Proof(
        pack.id(),
        here.size() - always,
        always,
        pack.rules().size() - here.size(),
        own.stream().mapToInt(rule -> rule.examples().size()).sum(),
        limits.limits(),
        limits.proved(),
        notes.list().stream().sorted(Comparator.comparingInt(Statement::line)).toList());
  }

  /** A pack to start from says on its face what nobody has written yet. */
  private static void filledIn(Pack pack, ProofNotes notes) {
    Map<String, String> face = new LinkedHashMap<>();
    face.put("title", pack.title());
    face.put("authority", pack.authority());
    face.forEach(
        (key, text) -> {
          if (text.contains(StartingPack.OPEN)) {
            notes.sayOfPack(
                Statement.Weight.NOTE,
                "its "
                    + key
                    + " is still \""
                    + text
                    + "\", which pages and notices print: write the real one, and look at its"
                    + " rules and sources, which are invented");
          }
        });
  }

  /** True if nothing is wrong, doubtful or left unproved. */
  public boolean isClean() {
    return statements.stream().allMatch(s -> s.weight() == Statement.Weight.NOTE);
  }

  /** One line that sums it up. */
  public String summary() {
    return pack
        + ": "
        + rules
        + (rules == 1 ? " rule" : " rules")
        + (always == 0
            ? ""
            : (inherited > 0 ? ", " : " and ")
                + always
                + (always == 1 ? " entry that always applies" : " entries that always apply"))
        + (inherited > 0 ? " and " + inherited + " taken over" : "")
        + "; "
        + examples
        + (examples == 1 ? " example passes" : " examples pass")
        + "; "
        + proved
        + " of "
        + limits
        + " limits have a near example on both sides";
  }
}
