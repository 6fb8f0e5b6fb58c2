package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.judgement.Judge;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.RuleProgram;
import org.wellcurb.record.Catalogue;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Looks whether the examples show where each limit is. Every figure of a rule is tried a tenth less
 * and a tenth more, and so is what each row of its tables gives: if no example comes out otherwise,
 * none would notice a slip there. What is asked without a figure is left to {@link SideProof}.
 */
final class LimitProof {

  /** One limit: what it is tried as, and which of these some example told from it. */
  private static final class Limit {
    final List<String> others = new ArrayList<>();
    final List<Boolean> told = new ArrayList<>();

    int tryAs(String other) {
      others.add(other);
      told.add(false);
      return others.size() - 1;
    }

    boolean isProved() {
      return !told.contains(false);
    }

    String untold() {
      List<String> left = new ArrayList<>();
      for (int i = 0; i < others.size(); i++) {
        if (!told.get(i)) {
          left.add(others.get(i));
        }
      }
      return String.join(" or from ", left);
    }
  }

  /** A figure and the formula that it stands in. */
  private record Stated(ChangedRule.Place place, Figures.Figure figure) {

    /** True if one that no example told from it is proved to make no difference. */
    boolean isInShadow(Limit limit) {
      for (int i = 0; i < figure.others().size(); i++) {
        if (!limit.told.get(i)
            && ShadowProof.isSame(
                place, Figures.with(place.formula(), figure.place(), figure.others().get(i)))) {
          return true;
        }
      }
      return false;
    }
  }

  /** A rule with one limit changed. */
  private record Change(Limit limit, int other, RuleProgram program) {}

  private final Pack pack;
  private final ProofNotes notes;
  private final Judge judge;
  private final ExampleForms forms = new ExampleForms();
  private final Speech speech = Speech.plain();
  private final Map<String, List<Limit>> rows = new LinkedHashMap<>();
  private int limits;
  private int proved;

  LimitProof(Pack pack, ProofNotes notes) {
    this.pack = pack;
    this.notes = notes;
    judge = new Judge(Catalogue.standard(), pack.edition(), pack.mustApply());
  }

  /** How many limits there are. */
  int limits() {
    return limits;
  }

  /** How many of them the examples show. */
  int proved() {
    return proved;
  }

  void run() {
    SideProof sides = new SideProof(pack, notes);
    List<String> tables = notes.own("table");
    for (Rule rule : notes.ownRules()) {
      if (!ChangedRule.isAsked(rule.program())) {
        rule(rule, tables);
        sides.rule(rule);
      }
    }
    limits += sides.limits();
    proved += sides.proved();
    rows.forEach(this::table);
  }

  private void rule(Rule rule, List<String> tables) {
    List<Change> changes = new ArrayList<>();
    Map<Limit, Stated> own = new LinkedHashMap<>();
    for (ChangedRule.Place place : ChangedRule.places(rule.program())) {
      for (Figures.Figure figure : Figures.of(place.formula())) {
        Limit limit = new Limit();
        own.put(limit, new Stated(place, figure));
        for (var other : figure.others()) {
          Formula changed = Figures.with(place.formula(), figure.place(), other);
          int number = limit.tryAs(Neighbours.said(other));
          changes.add(new Change(limit, number, place.with(changed)));
        }
      }
    }
    for (String name : tables) {
      @Nullable Table table = pack.tables().get(name);
      if (table != null && ChangedRule.reads(rule.program(), table)) {
        changes.addAll(rows(rule.program(), table));
      }
    }
    tell(rule, changes);
    own.forEach((limit, stated) -> count(limit, rule, stated));
  }

  private String said(Rule rule, ChangedRule.Place place, Figures.Figure figure) {
    String sentence = Sentence.of(figure.comparison(), speech);
    int texts = rule.program().texts().size();
    return "'"
        + sentence
        + "'"
        + (texts > 1 && place.text() > 0 ? " (text " + place.text() + ")" : "")
        + ": ";
  }

  private List<Change> rows(RuleProgram program, Table table) {
    int count = WrittenRows.count(table);
    List<Limit> of =
        rows.computeIfAbsent(
            table.name(),
            name -> {
              List<Limit> fresh = new ArrayList<>();
              for (int i = 0; i < count; i++) {
                fresh.add(new Limit());
              }
              return fresh;
            });
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Limit limit = of.get(i);
      List<Table> others = ChangedRule.rows(program, table, i);
      while (limit.others.size() < others.size()) {
        limit.tryAs("");
      }
      for (int j = 0; j < others.size(); j++) {
        if (!limit.told.get(j)) {
          changes.add(new Change(limit, j, ChangedRule.with(program, others.get(j))));
        }
      }
    }
    return changes;
  }

  /** Marks the changes that some example of the rule comes out otherwise by. */
  private void tell(Rule rule, List<Change> changes) {
    List<JudgedBy> days = days(rule.program().judgedBy());
    for (Example example : rule.examples()) {
      if (example.expect() == Outcome.WAIVED) {
        continue;
      }
      judge.take(forms.record(example));
      for (JudgedBy day : days) {
        int outcome = judge.outcome(rule.program().by(day));
        for (Change change : changes) {
          if (!change.limit.told.get(change.other)
              && judge.outcome(change.program.by(day)) != outcome) {
            change.limit.told.set(change.other, true);
          }
        }
      }
    }
  }

  /** Each of several days by itself: a milder text may always stand in for one of them. */
  private static List<JudgedBy> days(JudgedBy day) {
    return day instanceof JudgedBy.LessStrictOf several ? several.days() : List.of(day);
  }

  private void count(Limit limit, Rule rule, Stated stated) {
    limits++;
    if (limit.isProved()) {
      proved++;
      return;
    }
    String said = said(rule, stated.place, stated.figure);
    String figure = Sentence.of(stated.figure.stated(), speech);
    if (stated.isInShadow(limit)) {
      notes.say(
          Weight.WRONG,
          "rule",
          rule.id(),
          said
              + "it stands in the shadow of what else the rule asks, and no example can show where "
              + figure
              + " is; leave it out, or mend the limit that is not meant");
      return;
    }
    String mend =
        limit.told.contains(true)
            ? "; add one between the two"
            : "; add one between it and each of these";
    notes.say(
        Weight.UNPROVED,
        "rule",
        rule.id(),
        said + "no example tells " + figure + " from " + limit.untold() + mend);
  }

  private void table(String name, List<Limit> of) {
    List<String> missing = new ArrayList<>();
    for (int i = 0; i < of.size(); i++) {
      limits++;
      if (of.get(i).isProved()) {
        proved++;
      } else {
        missing.add(String.valueOf(i + 1));
      }
    }
    if (!missing.isEmpty()) {
      @Nullable Table table = pack.tables().get(name);
      notes.say(
          Weight.UNPROVED,
          "table",
          name,
          missing.size()
              + " of its "
              + of.size()
              + " rows "
              + (table != null && table.gives() == null
                  ? "have no example that meets the rule by what the row gives"
                  : "have no example within a tenth on both sides")
              + ": "
              + String.join(", ", missing));
    }
  }
}
