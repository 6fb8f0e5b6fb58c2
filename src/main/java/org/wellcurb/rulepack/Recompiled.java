package org.wellcurb.rulepack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Scope;
import org.wellcurb.judgement.DatedText;
import org.wellcurb.judgement.RuleProgram;

/**
 * Compiles the rules that a pack takes over against its own tables and figures, so that a county
 * which states its own frost depths, say, has them in the rules that it did not write.
 */
final class Recompiled {
  private Recompiled() {}

  static void all(Map<String, Rule> rules, Scope scope, Problems problems, Json.Obj root) {
    for (Map.Entry<String, Rule> each : rules.entrySet()) {
      Rule rule = each.getValue();
      try {
        each.setValue(rule.with(program(rule.program(), scope)));
      } catch (FormulaException e) {
        Json.Text place = root.key("tables");
        problems.at(
            place == null ? root : place,
            "the rule " + rule.id() + " of " + rule.pack() + " cannot use this: " + e.what(),
            "give the table the dimension that it has there, or drop the rule");
      }
    }
  }

  private static RuleProgram program(RuleProgram program, Scope scope) throws FormulaException {
    List<DatedText> texts = new ArrayList<>();
    for (DatedText text : program.texts()) {
      texts.add(
          new DatedText(
              text.from(),
              text.until(),
              anew(text.when(), scope),
              anew(text.require(), scope),
              text.knownFrom()));
    }
    return new RuleProgram(
        anew(program.when(), scope), texts, program.judgedBy(), program.omission());
  }

  private static @Nullable Formula anew(@Nullable Formula formula, Scope scope)
      throws FormulaException {
    // So what mustApply makes, which has no text of its own, stays as it is too.
    return formula == null || !Parts.any(formula.tree(), Recompiled::hangsOnPack)
        ? formula
        : Formula.condition(formula.text(), scope);
  }

  /** True of what a pack may say otherwise: tables, figures, and workings, which read figures. */
  private static boolean hangsOnPack(Expr part) {
    return part instanceof Expr.TableAmount
        || part instanceof Expr.TableWord
        || part instanceof Expr.FigureAmount
        || part instanceof Expr.WorkingAmount;
  }
}
