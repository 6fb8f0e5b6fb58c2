package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.formula.Truth;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.Explainer;
import org.wellcurb.judgement.Judge;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.record.Catalogue;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Looks whether each limit has an example on both sides, near enough to show where it is: each
 * comparison that a rule requires, in each of its dated texts, and each row of the tables in it.
 */
final class LimitProof {

  /** Which sides examples fall on. */
  private static final class Sides {
    boolean met;
    boolean unmet;

    boolean nearMet;
    boolean nearUnmet;

    void add(int truth, boolean isNear) {
      met |= truth == Truth.TRUE;
      unmet |= truth == Truth.FALSE;
      nearMet |= truth == Truth.TRUE && isNear;
      nearUnmet |= truth == Truth.FALSE && isNear;
    }

    boolean bothNear() {
      return nearMet && nearUnmet;
    }

    boolean both() {
      return met && unmet;
    }
  }

  private final Pack pack;
  private final ProofNotes notes;
  private final Judge judge;
  private final ExampleForms forms = new ExampleForms();
  private final Explainer explainer;
  private final IdentityHashMap<Table, Sides[]> tables = new IdentityHashMap<>();
  private int limits;
  private int proved;

  LimitProof(Pack pack, ProofNotes notes) {
    this.pack = pack;
    this.notes = notes;
    judge = new Judge(Catalogue.standard(), pack.edition(), pack.mustApply());
    explainer = new Explainer(judge, new PackScope(pack.tables(), pack.figures()), Speech.plain());
  }

  /** How many limits there are. */
  int limits() {
    return limits;
  }

  /** How many have an example on both sides. */
  int proved() {
    return proved;
  }

  void run() {
    for (Rule rule : notes.ownRules()) {
      rule(rule);
    }
    Map<String, Table> byName = pack.tables();
    for (String name : notes.own("table")) {
      Table table = byName.get(name);
      Sides[] rows = table == null ? null : tables.get(table);
      if (table != null && rows != null) {
        table(table, rows);
      }
    }
  }

  private void rule(Rule rule) {
    List<DatedText> texts = rule.program().texts();
    List<Map<Expr.Condition, Sides>> all = new ArrayList<>();
    for (DatedText text : texts) {
      Map<Expr.Condition, Sides> sides = new LinkedHashMap<>();
      Formula require = text.require();
      if (require != null) {
        comparisons(require.tree()).forEach(c -> sides.put(c, new Sides()));
      }
      all.add(sides);
    }
    for (Example example : rule.examples()) {
      judge.take(forms.record(example));
      List<DatedText> inForce = judge.inForce(rule.program());
      for (int i = 0; i < texts.size(); i++) {
        if (inForce.contains(texts.get(i)) && inForce.size() == 1) {
          look(rule, texts.get(i), all.get(i));
        }
      }
    }
    for (int i = 0; i < texts.size(); i++) {
      String which = texts.size() > 1 ? " (text " + (i + 1) + ")" : "";
      all.get(i).forEach((comparison, sides) -> limit(rule, which, comparison, sides));
    }
  }

  private void look(Rule rule, DatedText text, Map<Expr.Condition, Sides> sides) {
    Evaluation at = explainer.parts();
    if (!applies(at, rule.program().when()) || !applies(at, text.when())) {
      return;
    }
    sides.forEach(
        (comparison, seen) -> {
          int truth = at.truth(comparison);
          // Of a limit that a milder one may stand in for, no shortfall need be near.
          boolean isNear =
              rule.program().judgedBy() instanceof JudgedBy.LessStrictOf
                  || Nearness.isNear(at, comparison);
          seen.add(truth, isNear);
          for (Table table : tablesIn(comparison)) {
            Sides[] rows = tables.computeIfAbsent(table, LimitProof::noRowSeen);
            int row = at.row(table);
            if (row >= 0) {
              rows[WrittenRows.number(table, row)].add(truth, isNear);
            }
          }
        });
  }

  private static Sides[] noRowSeen(Table table) {
    Sides[] rows = new Sides[WrittenRows.count(table)];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = new Sides();
    }
    return rows;
  }

  private static boolean applies(Evaluation at, @Nullable Formula when) {
    return when == null || at.truth(when.tree()) == Truth.TRUE;
  }

  private void limit(Rule rule, String which, Expr.Condition comparison, Sides sides) {
    limits++;
    if (sides.bothNear()) {
      proved++;
      return;
    }
    String sentence = Sentence.of(comparison, Speech.plain());
    String side =
        sides.both()
            ? "no example within a tenth of it"
                + (sides.nearMet ? " breaks it" : sides.nearUnmet ? " meets it" : "")
            : sides.met
                ? "no example breaks it"
                : sides.unmet ? "no example meets it" : "no example comes to it";
    notes.say(Weight.UNPROVED, "rule", rule.id(), "'" + sentence + "'" + which + ": " + side);
  }

  private void table(Table table, Sides[] rows) {
    List<Integer> missing = new ArrayList<>();
    for (int i = 0; i < rows.length; i++) {
      limits++;
      // A row that gives a word settles the comparison by itself: it has one side only.
      boolean isProved = table.gives() == null ? rows[i].met || rows[i].unmet : rows[i].bothNear();
      if (isProved) {
        proved++;
      } else {
        missing.add(i + 1);
      }
    }
    if (!missing.isEmpty()) {
      String numbers = missing.stream().map(String::valueOf).collect(Collectors.joining(", "));
      notes.say(
          Weight.UNPROVED,
          "table",
          table.name(),
          missing.size()
              + " of its "
              + rows.length
              + " rows "
              + (table.gives() == null
                  ? "have no example"
                  : "have no example within a tenth on both sides")
              + ": "
              + numbers);
    }
  }

  /** The comparisons of a condition, each once. */
  static List<Expr.Condition> comparisons(Expr.Condition condition) {
    List<Expr.Condition> found = new ArrayList<>();
    collect(condition, found);
    return found;
  }

  private static void collect(Expr expr, List<Expr.Condition> into) {
    boolean isJoint =
        expr instanceof Expr.And
            || expr instanceof Expr.Or
            || expr instanceof Expr.Not
            || expr instanceof Expr.ConditionIf;
    if (isJoint) {
      Parts.of(expr).forEach(part -> collect(part, into));
    } else if (expr instanceof Expr.Condition comparison
        && !(expr instanceof Expr.Constant)
        && !into.contains(comparison)) {
      into.add(comparison);
    }
  }

  private static List<Table> tablesIn(Expr expr) {
    List<Table> found = new ArrayList<>();
    if (expr instanceof Expr.TableAmount amount) {
      found.add(amount.table());
    } else if (expr instanceof Expr.TableWord word) {
      found.add(word.table());
    }
    Parts.of(expr).forEach(part -> found.addAll(tablesIn(part)));
    return found;
  }
}
