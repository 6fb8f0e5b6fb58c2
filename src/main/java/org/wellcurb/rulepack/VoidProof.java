package org.wellcurb.rulepack;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Relation;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says where {@code n/a} in one entry takes away more than its author may think: a limit that does
 * not need it, or a duty to fill the entry in. Where an example gives the entry as {@code n/a}, or
 * the rule asks whether it applies or is known, its author has seen it.
 */
final class VoidProof {
  private final Pack pack;
  private final ProofNotes notes;

  private VoidProof(Pack pack, ProofNotes notes) {
    this.pack = pack;
    this.notes = notes;
  }

  static void run(Pack pack, ProofNotes notes) {
    VoidProof proof = new VoidProof(pack, notes);
    for (Rule rule : notes.ownRules()) {
      proof.rule(rule);
    }
  }

  private void rule(Rule rule) {
    Set<String> seen = new HashSet<>(pack.mustApply());
    for (Example example : rule.examples()) {
      example.given().forEach((key, said) -> see(key, said, seen));
    }
    for (ChangedRule.Place place : ChangedRule.places(rule.program())) {
      asked(place.formula().tree(), !place.isRequired(), seen);
    }
    Set<String> said = new TreeSet<>();
    Set<String> omitted = new TreeSet<>();
    for (ChangedRule.Place place : ChangedRule.places(rule.program())) {
      if (place.isRequired()) {
        extremes(place.formula().tree(), "and or or", rule, seen, said);
        omissions(place.formula().tree(), seen, omitted);
      }
    }
    if (!omitted.isEmpty()) {
      notes.say(
          Weight.NOTE,
          "rule",
          rule.id(),
          "a form that says n/a in "
              + String.join(", ", omitted)
              + " omits nothing by it; what applies to every well belongs in mustApply; if it is"
              + " meant, give an example with n/a");
    }
  }

  private static void see(String key, String said, Set<String> seen) {
    if (said.equals("n/a") || said.equals("not applicable")) {
      seen.add(key);
    }
  }

  private static void asked(Expr expr, boolean isWhen, Set<String> seen) {
    if (expr instanceof Expr.IsApplicable e) {
      seen.add(e.entry().key());
    } else if (isWhen && expr instanceof Expr.Known e) {
      seen.add(e.entry().key());
    }
    Parts.of(expr).forEach(part -> asked(part, isWhen, seen));
  }

  /** What a least or greatest reads, beside a term that reads nothing of the form. */
  private void extremes(Expr expr, String join, Rule rule, Set<String> seen, Set<String> said) {
    if (expr instanceof Expr.Extreme extreme) {
      List<Expr.Amount> fixed = extreme.of().stream().filter(part -> !readsForm(part)).toList();
      if (!fixed.isEmpty()) {
        for (Expr.Amount part : extreme.of()) {
          for (Entry entry : entries(part)) {
            if (!seen.contains(entry.key()) && said.add(entry.key())) {
              notes.say(
                  Weight.NOTE,
                  "rule",
                  rule.id(),
                  "n/a in "
                      + entry.key()
                      + " takes the whole comparison away, "
                      + Sentence.of(fixed.get(0), Speech.plain())
                      + " too; to keep that, compare with each by itself and join the two with "
                      + join
                      + "; if it is meant, give an example with n/a");
            }
          }
        }
      }
    }
    if (expr instanceof Expr.AmountIf || expr instanceof Expr.ConditionIf) {
      turned(Parts.of(expr).get(0), rule, seen, said);
    }
    if (expr instanceof Expr.Compare c) {
      boolean isUp = c.relation() == Relation.AT_LEAST || c.relation() == Relation.MORE;
      // What stands on the other side too is what is compared: without it there is nothing to ask.
      extremes(c.a(), joins(c.a(), !isUp), rule, with(seen, c.b()), said);
      extremes(c.b(), joins(c.b(), isUp), rule, with(seen, c.a()), said);
    } else {
      Parts.of(expr).forEach(part -> extremes(part, join, rule, seen, said));
    }
  }

  /** What an if turns on by one entry alone: n/a there leaves neither branch. */
  private void turned(Expr test, Rule rule, Set<String> seen, Set<String> said) {
    Set<String> keys = new TreeSet<>();
    keys(test, keys);
    if (keys.size() == 1) {
      String key = keys.iterator().next();
      if (!seen.contains(key) && said.add(key)) {
        notes.say(
            Weight.NOTE,
            "rule",
            rule.id(),
            "n/a in "
                + key
                + ", on which an if turns, takes the whole comparison away; to go on with its else,"
                + " write applies("
                + key
                + ") and .. there; if it is meant, give an example with n/a");
      }
    }
  }

  /** Keys of all entries that an expression names. */
  private static void keys(Expr part, Set<String> into) {
    if (part instanceof Expr.EntryAmount e) {
      into.add(e.entry().key());
    } else if (part instanceof Expr.EntryWord e) {
      into.add(e.entry().key());
    } else if (part instanceof Expr.YesNo e) {
      into.add(e.entry().key());
    } else if (part instanceof Expr.Known e) {
      into.add(e.entry().key());
    }
    Parts.of(part).forEach(each -> keys(each, into));
  }

  private static Set<String> with(Set<String> seen, Expr side) {
    Set<String> all = new HashSet<>(seen);
    entries(side).forEach(entry -> all.add(entry.key()));
    return all;
  }

  /** What joins the comparisons that stand for one with a least or greatest. */
  private static String joins(Expr.Amount side, boolean mustExceed) {
    if (side instanceof Expr.Extreme extreme) {
      return extreme.isGreatest() == mustExceed ? "and" : "or";
    }
    return "and or or";
  }

  private static Set<Entry> entries(Expr part) {
    Set<Entry> entries = new LinkedHashSet<>();
    collect(part, entries);
    return entries;
  }

  private static void collect(Expr part, Set<Entry> into) {
    if (part instanceof Expr.EntryAmount e) {
      into.add(e.entry());
    } else if (part instanceof Expr.WorkingAmount w) {
      w.working().inputs().stream()
          .map(input -> Catalogue.standard().find(input.key()))
          .forEach(
              entry -> {
                if (entry != null && w.working().inputs().size() == 1) {
                  into.add(entry);
                }
              });
    }
    Parts.of(part).forEach(each -> collect(each, into));
  }

  private static boolean readsForm(Expr part) {
    return Parts.any(
        part,
        each ->
            each instanceof Expr.EntryAmount
                || each instanceof Expr.WorkingAmount
                || each instanceof Expr.TableAmount);
  }

  /** What must be known in any case; of several ways to meet a rule, n/a leaves the others. */
  private static void omissions(Expr expr, Set<String> seen, Set<String> into) {
    if (expr instanceof Expr.Known known && !seen.contains(known.entry().key())) {
      into.add(known.entry().key());
    } else if (expr instanceof Expr.And and) {
      and.all().forEach(part -> omissions(part, seen, into));
    } else if (expr instanceof Expr.ConditionIf branches) {
      omissions(branches.then(), seen, into);
      omissions(branches.otherwise(), seen, into);
    }
  }
}
