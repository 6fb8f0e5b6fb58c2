package org.wellcurb.rulepack.oracle;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Table;
import org.wellcurb.quantity.Unit;

/** The amounts and words that stand in a formula and the tables it reads. */
final class Literals {
  /** An amount as it is written: in SI, and its unit. */
  record Figure(double si, Unit unit) {}

  final List<Figure> amounts = new ArrayList<>();
  final List<Double> days = new ArrayList<>();
  final List<String> words = new ArrayList<>();
  final List<String> workings = new ArrayList<>();

  void read(Expr expr) {
    if (expr instanceof Expr.Literal e) {
      amounts.add(new Figure(e.value(), e.unit()));
    } else if (expr instanceof Expr.Dual e) {
      amounts.add(new Figure(e.primary(), e.unit()));
      amounts.add(new Figure(e.bracket(), e.bracketUnit()));
    } else if (expr instanceof Expr.Day e) {
      days.add(e.value());
    } else if (expr instanceof Expr.WorkingAmount e) {
      workings.add(e.working().name());
    } else if (expr instanceof Expr.TableAmount e) {
      table(e.table());
    } else if (expr instanceof Expr.Arithmetic e) {
      read(e.a());
      read(e.b());
    } else if (expr instanceof Expr.Extreme e) {
      e.of().forEach(this::read);
    } else if (expr instanceof Expr.AmountIf e) {
      read(e.test());
      read(e.then());
      read(e.otherwise());
    } else if (expr instanceof Expr.Condition e) {
      condition(e);
    }
  }

  private void condition(Expr.Condition condition) {
    if (condition instanceof Expr.Compare e) {
      read(e.a());
      read(e.b());
    } else if (condition instanceof Expr.Between e) {
      read(e.a());
      read(e.least());
      read(e.greatest());
    } else if (condition instanceof Expr.IsOneOf e) {
      words.addAll(e.words());
      if (e.word() instanceof Expr.TableWord of) {
        table(of.table());
      }
    } else if (condition instanceof Expr.Not e) {
      read(e.a());
    } else if (condition instanceof Expr.And e) {
      e.all().forEach(this::read);
    } else if (condition instanceof Expr.Or e) {
      e.any().forEach(this::read);
    } else if (condition instanceof Expr.ConditionIf e) {
      read(e.test());
      read(e.then());
      read(e.otherwise());
    }
  }

  private void table(Table table) {
    for (Table.Row row : table.rows()) {
      if (row.value() instanceof Table.Amount value) {
        amounts.add(new Figure(value.primary(), value.unit()));
      }
      for (int k = 0; k < row.cells().size(); k++) {
        cell(table, k, row.cells().get(k));
      }
    }
  }

  private void cell(Table table, int key, Table.Cell cell) {
    if (cell instanceof Table.Words of) {
      words.addAll(of.words());
    } else if (cell instanceof Table.Range range) {
      Unit unit = table.by().get(key).usUnit();
      for (double end : new double[] {range.range().lo(), range.range().hi()}) {
        if (unit != null && Double.isFinite(end)) {
          amounts.add(new Figure(end, unit));
        }
      }
    }
  }
}
