package org.wellcurb.judgement;

import java.util.Collection;
import java.util.List;
import org.wellcurb.formula.Evaluation;
import org.wellcurb.formula.Expr;
import org.wellcurb.formula.Parts;
import org.wellcurb.formula.Table;
import org.wellcurb.formula.Truth;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;
import org.wellcurb.workings.Input;

/** Which entries would settle a condition that cannot be told: the blank, unreadable and ranges. */
final class Needs {
  private final Evaluation at;
  private final Collection<Entry> into;

  private Needs(Evaluation at, Collection<Entry> into) {
    this.at = at;
    this.into = into;
  }

  /** Adds what the condition needs; nothing where its truth is known. */
  static void of(Expr.Condition condition, Evaluation at, Collection<Entry> into) {
    new Needs(at, into).condition(condition);
  }

  private void condition(Expr.Condition c) {
    if (at.truth(c) != Truth.UNKNOWN) {
      return;
    }
    for (Expr part : Parts.of(c)) {
      if (part instanceof Expr.Condition inner) {
        condition(inner);
      } else {
        amount(part);
      }
    }
    if (c instanceof Expr.YesNo e) {
      entry(e.entry());
    }
  }

  private void amount(Expr part) {
    if (part instanceof Expr.EntryAmount e) {
      entry(e.entry());
    } else if (part instanceof Expr.EntryWord e) {
      entry(e.entry());
    } else if (part instanceof Expr.TableAmount t) {
      table(t.table());
    } else if (part instanceof Expr.TableWord t) {
      table(t.table());
    } else if (part instanceof Expr.WorkingAmount w) {
      working(w);
    } else if (part instanceof Expr.Condition c) {
      condition(c);
    } else {
      Parts.of(part).forEach(this::amount);
    }
  }

  /** The keys of a table; none where it has no row for what is given: no entry mends that. */
  private void table(Table table) {
    if (!at.hasNoRow(table)) {
      table.by().forEach(this::entry);
    }
  }

  /**
   * What a working needs: where a required input is blank, those, and what is stated too loosely;
   * one that would only help is needed with them where the working would not be known with them.
   */
  private void working(Expr.WorkingAmount w) {
    List<Entry> entries = at.inputs(w.working());
    List<Input> inputs = w.working().inputs();
    boolean lacksRequired = false;
    boolean lacksFirst = false;
    for (int i = 0; i < entries.size(); i++) {
      byte state = at.frame().state(entries.get(i).index());
      boolean isBlank = state != WellRecord.GIVEN && state != WellRecord.NOT_APPLICABLE;
      lacksRequired |= inputs.get(i).isRequired() && isBlank;
      lacksFirst |= isBlank && inputs.get(i).isNeededFirst(this::isGiven);
    }
    boolean takesHelp = !lacksRequired || !StandIns.wouldDo(w.working(), entries, at.record());
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      boolean isGiven = at.frame().state(entry.index()) == WellRecord.GIVEN;
      boolean helpsNow =
          takesHelp
              && (lacksFirst
                  ? inputs.get(i).isNeededFirst(this::isGiven)
                  : inputs.get(i).isHelpful(this::isGiven));
      boolean isIdle = !inputs.get(i).isRequired() && IdleInputs.has(entry.key(), at.record());
      if ((inputs.get(i).isRequired() || helpsNow || isGiven) && !isIdle) {
        entry(entry);
      }
    }
  }

  private boolean isGiven(String key) {
    return at.frame().state(at.record().catalogue().index(key)) == WellRecord.GIVEN;
  }

  private void entry(Entry entry) {
    WellRecord record = at.record();
    byte state = at.frame().state(entry.index());
    if (state == WellRecord.NOT_APPLICABLE) {
      return;
    }
    boolean isExact =
        state == WellRecord.GIVEN
            && (entry.kind().dimension() == null
                || record.lo(entry.index()) == record.hi(entry.index()));
    if (!isExact) {
      into.add(entry);
    }
  }
}
