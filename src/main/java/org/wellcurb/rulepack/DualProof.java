package org.wellcurb.rulepack;

import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Unit;
import org.wellcurb.rulepack.Statement.Weight;

/**
 * Says where the two sides of a dual limit differ by more than rounding. Codes round to a round
 * figure: one side must be the other rounded at its own last digit that is not a nought, and the
 * two within a tenth of each other.
 */
final class DualProof {
  private static final double MOST = 0.1;

  private DualProof() {}

  static void run(Pack pack, ProofNotes notes) {
    for (Rule rule : notes.ownRules()) {
      for (Formula formula : UseProof.formulas(rule)) {
        look(formula.tree(), rule, notes);
      }
    }
    for (String name : notes.own("table")) {
      Table table = pack.tables().get(name);
      if (table != null) {
        for (Table.Row row : table.rows()) {
          if (row.value() instanceof Table.Amount a && a.bracketUnit() != null) {
            say(a.primary(), a.unit(), a.bracket(), a.bracketUnit(), "table", name, notes);
          }
        }
      }
    }
  }

  private static void look(Expr expr, Rule rule, ProofNotes notes) {
    if (expr instanceof Expr.Dual d) {
      say(d.primary(), d.unit(), d.bracket(), d.bracketUnit(), "rule", rule.id(), notes);
    }
    Parts.of(expr).forEach(part -> look(part, rule, notes));
  }

  private static void say(
      double a, Unit unit, double b, Unit other, String what, String name, ProofNotes notes) {
    if (!isRounded(a, unit, b, other)) {
      Speech speech = Speech.plain();
      notes.say(
          Weight.DOUBTFUL,
          what,
          name,
          speech.amount(a, unit)
              + " ("
              + speech.amount(b, other)
              + "): the two differ by more than rounding; "
              + speech.amount(a, unit)
              + " is "
              + speech.number(round3(other.fromSi(a)))
              + " "
              + other.symbol());
    }
  }

  /** To three digits. */
  static double round3(double x) {
    double step = Math.pow(10, Math.floor(Math.log10(Math.abs(x))) - 2);
    return x == 0 ? 0 : Math.rint(x / step) * step;
  }

  /** True if one side is the other, rounded. */
  static boolean isRounded(double a, Unit unit, double b, Unit other) {
    double exactB = other.fromSi(a);
    double exactA = unit.fromSi(b);
    double writtenA = unit.fromSi(a);
    double writtenB = other.fromSi(b);
    boolean isNear =
        Math.abs(exactB - writtenB) <= MOST * Math.max(Math.abs(exactB), Math.abs(writtenB));
    return isNear && (rounds(exactB, writtenB) || rounds(exactA, writtenA));
  }

  /** True if a value rounds to a figure at the figure's last digit that is not a nought. */
  private static boolean rounds(double value, double figure) {
    double half = lastPlace(figure) / 2;
    return Math.abs(value - figure) <= half * (1 + 1e-9);
  }

  private static double lastPlace(double figure) {
    if (figure == 0) {
      return 0;
    }
    for (int power = 6; power > -6; power--) {
      double step = Math.pow(10, power);
      double steps = figure / step;
      if (Math.abs(steps - Math.rint(steps)) < 1e-6 && Math.rint(steps) != 0) {
        return step;
      }
    }
    return 0;
  }
}
