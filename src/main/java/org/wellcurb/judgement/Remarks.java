package org.wellcurb.judgement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Sentence;
import org.wellcurb.formula.Speech;
import org.wellcurb.formula.Table;
import org.wellcurb.formula.Truth;
import org.wellcurb.formula.UnitOf;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.quantity.Units;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/** What is to be said about how a rule was judged, as whole sentences. */
final class Remarks {
  private final Judge judge;
  private final Evaluation at;
  private final Speech speech;

  Remarks(Judge judge, Evaluation at, Speech speech) {
    this.judge = judge;
    this.at = at;
    this.speech = speech;
  }

  /** Which dated text was used, where the rule has any. */
  void texts(RuleProgram rule, List<DatedText> inForce, DatedText text, List<String> said) {
    if (!rule.isDated()) {
      return;
    }
    if (inForce.isEmpty()) {
      said.add(speech.phrase("remark.no.text"));
    } else if (inForce.size() > 1 || judge.hasGap(rule)) {
      Set<Entry> days = new LinkedHashSet<>();
      judge.days(rule, days);
      said.add(speech.phrase("remark.texts", labels(days)));
      if (inForce.size() > 1) {
        inForce.forEach(each -> mayBind(each, said));
      }
    } else if (text.from() != null && text.until() != null) {
      said.add(
          speech.phrase("remark.text.from.until", text.from().toString(), text.until().toString()));
    } else if (text.from() != null) {
      said.add(speech.phrase("remark.text.from", text.from().toString()));
    } else if (text.until() != null) {
      said.add(speech.phrase("remark.text.until", text.until().toString()));
    }
  }

  /** What a text asks of which only the day would tell whether it binds. */
  private void mayBind(DatedText text, List<String> said) {
    @Nullable Formula require = text.require();
    String asks = require == null ? "" : Sentence.of(require.tree(), speech);
    String from = text.from() == null ? "" : text.from().toString();
    String until = text.until() == null ? "" : text.until().toString();
    if (from.isEmpty()) {
      said.add(speech.phrase("remark.may.until", until, asks));
    } else if (until.isEmpty()) {
      said.add(speech.phrase("remark.may.from", from, asks));
    } else {
      said.add(speech.phrase("remark.may.from.until", from, until, asks));
    }
  }

  /** That the well may be older than all that was read of the text. */
  void older(RuleProgram rule, DatedText text, List<String> said) {
    double day = judge.dayBefore(rule, text);
    @Nullable LocalDate known = text.knownFrom();
    if (known == null || Double.isNaN(day)) {
      return;
    }
    Set<Entry> days = new LinkedHashSet<>();
    judge.days(rule, days);
    said.add(
        Double.isInfinite(day)
            ? speech.phrase("remark.older.undated", known.toString(), labels(days))
            : speech.phrase("remark.older", known.toString(), Speech.day(day)));
  }

  /** Slack, bracketed sides and table rows, comparison by comparison. */
  void comparisons(Expr expr, List<String> said) {
    if (expr instanceof Expr.Compare c) {
      sides(c, said);
      if (at.usesSlack(c)) {
        said.add(speech.phrase("remark.slack"));
      }
    } else if (expr instanceof Expr.Between c) {
      sides(c, said);
      if (at.usesSlack(c)) {
        said.add(speech.phrase("remark.slack"));
      }
    }
    if (expr instanceof Expr.TableAmount t) {
      row(t.table(), said);
    } else if (expr instanceof Expr.TableWord t) {
      row(t.table(), said);
    }
    Parts.of(expr).forEach(part -> comparisons(part, said));
  }

  private void sides(Expr.Condition comparison, List<String> said) {
    @Nullable UnitSystem written = at.written(comparison);
    for (Expr part : Parts.of(comparison)) {
      if (written != null && part instanceof Expr.Dual d && written == d.bracketUnit().system()) {
        said.add(speech.phrase("remark.bracket", speech.limit(d.bracket(), d.bracketUnit())));
      }
    }
  }

  /** Tables without a row for what is given, where a part that cannot be told reads them. */
  void noRows(Expr expr, Set<String> said) {
    if (expr instanceof Expr.Condition c && at.truth(c) != Truth.UNKNOWN) {
      return;
    }
    @Nullable Table table =
        expr instanceof Expr.TableAmount t
            ? t.table()
            : expr instanceof Expr.TableWord w ? w.table() : null;
    if (table != null && at.hasNoRow(table)) {
      said.add(speech.phrase("remark.no.row", table.name(), keys(table)));
    }
    Parts.of(expr).forEach(part -> noRows(part, said));
  }

  private String keys(Table table) {
    List<String> keys = new ArrayList<>();
    for (Entry key : table.by()) {
      String written = at.record().written(key.index());
      if (!written.isEmpty()) {
        keys.add(speech.label(key) + " " + speech.choice(written));
      }
    }
    return String.join(", ", keys);
  }

  private void row(Table table, List<String> said) {
    String of = keys(table);
    if (at.hasNoRow(table)) {
      said.add(speech.phrase("remark.no.row", table.name(), of));
      return;
    }
    int row = at.row(table);
    if (row >= 0) {
      said.add(speech.phrase("remark.row", table.name(), value(table.rows().get(row).value()), of));
    }
  }

  private String value(Table.Value value) {
    if (value instanceof Table.Amount amount) {
      String primary = speech.limit(amount.primary(), amount.unit());
      return amount.bracketUnit() == null
          ? primary
          : primary + " (" + speech.limit(amount.bracket(), amount.bracketUnit()) + ")";
    }
    return ((Table.Word) value).shown();
  }

  /** Which depths were brought to ground, and by how much. */
  void ground(RuleProgram rule, DatedText text, List<String> said) {
    Set<Entry> moved = new LinkedHashSet<>();
    for (@Nullable Formula formula :
        new @Nullable Formula[] {rule.when(), text.when(), text.require()}) {
      if (formula != null) {
        for (Entry entry : formula.reads()) {
          boolean isMoved =
              entry.datum().isMovable()
                  && at.frame().state(entry.index()) == WellRecord.GIVEN
                  && at.frame().shift(entry.datum()) != 0;
          if (isMoved) {
            moved.add(entry);
          }
        }
      }
    }
    if (judge.dependsOnWay(rule, text)) {
      said.add(speech.phrase("remark.datum"));
      return;
    }
    for (Entry entry : moved) {
      double shift = at.frame().shift(entry.datum());
      boolean isMetric = UnitOf.system(at) == UnitSystem.METRIC;
      said.add(
          speech.phrase(
              "remark.ground",
              speech.label(entry),
              speech.amount(shift, isMetric ? Units.METRE : Units.FOOT)));
    }
  }

  private String labels(Set<Entry> entries) {
    return String.join(", ", entries.stream().map(speech::label).toList());
  }
}
