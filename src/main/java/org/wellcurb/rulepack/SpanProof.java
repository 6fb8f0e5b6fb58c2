package org.wellcurb.rulepack;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Relation;
import org.wellcurb.quantity.Dimension;
import org.wellcurb.record.Entry;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says where a span of days after a day has no beginning: {@code dates.received <= dates.completed
 * + 30 days} is met by a form received a year before. Not where another rule of the pack keeps the
 * two in order, nor where an example shows that it is meant.
 */
final class SpanProof {
  private SpanProof() {}

  static void run(Pack pack, ProofNotes notes) {
    Set<String> ordered = new HashSet<>();
    for (Rule rule : pack.rules()) {
      for (ChangedRule.Place place : ChangedRule.places(rule.program())) {
        Parts.any(
            place.formula().tree(),
            part -> {
              order(part, ordered);
              return false;
            });
      }
    }
    for (Rule rule : notes.ownRules()) {
      for (ChangedRule.Place place : ChangedRule.places(rule.program())) {
        if (place.isRequired()) {
          look(place.formula(), rule, ordered, notes);
        }
      }
    }
  }

  /** Notes which day another must not lie before: {@code first then}. */
  private static void order(Expr part, Set<String> ordered) {
    if (part instanceof Expr.Compare c) {
      Relation relation = c.relation();
      @Nullable Entry a = day(c.a());
      @Nullable Entry b = day(c.b());
      if (a != null && b != null) {
        boolean isUp = relation == Relation.AT_MOST || relation == Relation.LESS;
        boolean isDown = relation == Relation.AT_LEAST || relation == Relation.MORE;
        if (isUp) {
          ordered.add(a.key() + " " + b.key());
        } else if (isDown) {
          ordered.add(b.key() + " " + a.key());
        }
      }
    }
  }

  private static void look(Formula formula, Rule rule, Set<String> ordered, ProofNotes notes) {
    Parts.any(
        formula.tree(),
        part -> {
          if (part instanceof Expr.Compare c) {
            boolean isUp = c.relation() == Relation.AT_MOST || c.relation() == Relation.LESS;
            boolean isDown = c.relation() == Relation.AT_LEAST || c.relation() == Relation.MORE;
            if (isUp) {
              span(c.a(), c.b(), rule, ordered, notes);
            } else if (isDown) {
              span(c.b(), c.a(), rule, ordered, notes);
            }
          }
          return false;
        });
  }

  /** {@code then} is at most some days after {@code end}'s day. */
  private static void span(
      Expr.Amount then, Expr.Amount end, Rule rule, Set<String> ordered, ProofNotes notes) {
    @Nullable Entry later = day(then);
    if (later == null
        || !(end instanceof Expr.Arithmetic sum)
        || sum.sign() != '+'
        || !sum.b().dimension().equals(Dimension.TIME)) {
      return;
    }
    @Nullable Entry first = day(sum.a());
    if (first == null
        || ordered.contains(first.key() + " " + later.key())
        || isShown(rule, first, later)) {
      return;
    }
    notes.say(
        Weight.NOTE,
        "rule",
        rule.id(),
        later.key()
            + " long before "
            + first.key()
            + " meets it too; if that is no answer, write "
            + later.key()
            + " between "
            + first.key()
            + " and the end; if it is meant, give an example of it");
  }

  private static boolean isShown(Rule rule, Entry first, Entry later) {
    return rule.examples().stream()
        .anyMatch(
            example -> {
              String a = example.given().getOrDefault(first.key(), "");
              String b = example.given().getOrDefault(later.key(), "");
              return !a.isEmpty() && !b.isEmpty() && b.compareTo(a) < 0;
            });
  }

  private static @Nullable Entry day(Expr.Amount amount) {
    return amount instanceof Expr.EntryAmount e && e.dimension().equals(Dimension.DATE)
        ? e.entry()
        : null;
  }
}
