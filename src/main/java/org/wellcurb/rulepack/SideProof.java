package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Truth;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.Explainer;
import org.wellcurb.judgement.Judge;
import org.wellcurb.record.Catalogue;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Looks whether what a rule asks without a figure, a word or whether an entry is known, is so in
 * one example and not so in another: each part of an {@code and} or {@code or} of what it requires,
 * and all that an {@code if} turns on, in each dated text. The words of a {@code when} are not
 * counted: what it is for, the examples that meet the rule and that fall short of it show.
 */
final class SideProof {

  /** Which sides examples fall on. */
  private static final class Sides {
    boolean met;
    boolean unmet;

    void add(int truth) {
      met |= truth == Truth.TRUE;
      unmet |= truth == Truth.FALSE;
    }
  }

  private final ProofNotes notes;
  private final Judge judge;
  private final Explainer explainer;
  private final ExampleForms forms = new ExampleForms();
  private int limits;
  private int proved;

  SideProof(Pack pack, ProofNotes notes) {
    this.notes = notes;
    judge = new Judge(Catalogue.standard(), pack.edition(), pack.mustApply());
    explainer = new Explainer(judge, new PackScope(pack.tables(), pack.figures()), Speech.plain());
  }

  int limits() {
    return limits;
  }

  int proved() {
    return proved;
  }

  void rule(Rule rule) {
    List<ChangedRule.Place> places = ChangedRule.places(rule.program());
    List<Map<Expr.Condition, Sides>> all = new ArrayList<>();
    for (ChangedRule.Place place : places) {
      Map<Expr.Condition, Sides> sides = new LinkedHashMap<>();
      questions(place).forEach(c -> sides.put(c, new Sides()));
      all.add(sides);
    }
    List<DatedText> texts = rule.program().texts();
    for (Example example : rule.examples()) {
      judge.take(forms.record(example));
      List<DatedText> inForce = judge.inForce(rule.program());
      Evaluation at = explainer.parts();
      for (int i = 0; i < places.size(); i++) {
        ChangedRule.Place place = places.get(i);
        @Nullable DatedText text = place.text() == 0 ? null : texts.get(place.text() - 1);
        boolean isIn = text == null || (inForce.size() == 1 && inForce.contains(text));
        boolean isAsked =
            !place.isRequired()
                || (applies(at, rule.program().when())
                    && (text == null || applies(at, text.when())));
        if (isIn && isAsked) {
          all.get(i).forEach((question, sides) -> sides.add(at.truth(question)));
        }
      }
    }
    for (int i = 0; i < places.size(); i++) {
      int text = places.get(i).text();
      String which = texts.size() > 1 && text > 0 ? " (text " + text + ")" : "";
      String where = places.get(i).isRequired() ? "" : " of its when";
      all.get(i).forEach((question, sides) -> count(rule, where + which, question, sides));
    }
  }

  private static boolean applies(Evaluation at, @Nullable Formula when) {
    return when == null || at.truth(when.tree()) == Truth.TRUE;
  }

  private void count(Rule rule, String where, Expr.Condition question, Sides sides) {
    limits++;
    if (sides.met && sides.unmet) {
      proved++;
      return;
    }
    String side =
        sides.met
            ? "in no example is it not so"
            : sides.unmet ? "in no example is it so" : "no example comes to it";
    notes.say(
        Weight.UNPROVED,
        "rule",
        rule.id(),
        "'" + Sentence.of(question, Speech.plain()) + "'" + where + ": " + side);
  }

  /** What a condition asks without a figure, each once. */
  private static List<Expr.Condition> questions(ChangedRule.Place place) {
    List<Expr.Condition> found = new ArrayList<>();
    collect(place.formula().tree(), place.isRequired(), found);
    return found;
  }

  private static void collect(Expr expr, boolean isCounted, List<Expr.Condition> into) {
    boolean isJoint =
        expr instanceof Expr.And
            || expr instanceof Expr.Or
            || expr instanceof Expr.Not
            || expr instanceof Expr.ConditionIf;
    if (expr instanceof Expr.Condition question
        && isCounted
        && !isJoint
        && !(expr instanceof Expr.Constant)
        && !Figures.isFigured(question)
        && !into.contains(question)) {
      into.add(question);
    }
    boolean isChoice = expr instanceof Expr.AmountIf || expr instanceof Expr.ConditionIf;
    List<Expr> parts = Parts.of(expr);
    for (int i = 0; i < parts.size(); i++) {
      collect(parts.get(i), isCounted || (isChoice && i == 0), into);
    }
  }
}
