package org.wellcurb.formula;

import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.Unit;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/** The unit in which a person who knows the record would expect an amount. */
public final class UnitOf {
  private UnitOf() {}

  /**
   * For an entry the unit that it was written in; for a working that of the record's system; for a
   * sum that of the first entry of its dimension; for a limit its own, and within a sum the side of
   * the record's system.
   */
  public static Unit amount(Expr.Amount amount, Evaluation at) {
    if (amount instanceof Expr.WorkingAmount working) {
      return working.working().unit(system(at));
    }
    if (amount instanceof Expr.EntryAmount e) {
      return entry(e.entry(), at);
    }
    if (amount instanceof Expr.Literal literal) {
      return literal.unit();
    }
    @Nullable Unit found = search(amount, amount, at);
    return found == null ? Counterpart.forDimension(amount.dimension(), system(at)) : found;
  }

  private static Unit entry(Entry entry, Evaluation at) {
    @Nullable Unit written = at.record().unit(entry.index());
    if (written != null) {
      return written;
    }
    @Nullable Unit own = entry.unit(system(at));
    return own == null
        ? Counterpart.forDimension(org.wellcurb.quantity.Dimension.NUMBER, UnitSystem.US)
        : own;
  }

  private static @Nullable Unit search(Expr part, Expr.Amount whole, Evaluation at) {
    if (part instanceof Expr.Amount a && a.dimension().equals(whole.dimension())) {
      if (part instanceof Expr.EntryAmount e) {
        return entry(e.entry(), at);
      }
      if (part instanceof Expr.WorkingAmount w) {
        return w.working().unit(system(at));
      }
      if (part instanceof Expr.Literal l) {
        return l.unit();
      }
      if (part instanceof Expr.TableAmount t
          && t.table().rows().get(0).value() instanceof Table.Amount value) {
        return value.unit();
      }
      if (part instanceof Expr.Dual d) {
        return d.bracketUnit().system() == system(at) ? d.bracketUnit() : d.unit();
      }
      if (part instanceof Expr.FigureAmount f) {
        return f.unit();
      }
    }
    for (Expr inner : Parts.of(part)) {
      @Nullable Unit found = search(inner, whole, at);
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /**
   * The unit system of the record: what {@code record.units} says, else that in which most of its
   * amounts were written, else US.
   */
  public static UnitSystem system(Evaluation at) {
    return system(at.record());
  }

  /** The unit system of a record. */
  public static UnitSystem system(WellRecord record) {
    int units = record.catalogue().index("record.units");
    @Nullable String said = record.choice(units);
    if (said != null) {
      return said.equals("metric") ? UnitSystem.METRIC : UnitSystem.US;
    }
    int balance = 0;
    for (int i = 0; i < record.catalogue().size(); i++) {
      if (record.isGiven(i)) {
        UnitSystem system = record.system(i);
        balance += system == UnitSystem.METRIC ? 1 : system == UnitSystem.US ? -1 : 0;
      }
    }
    return balance > 0 ? UnitSystem.METRIC : UnitSystem.US;
  }
}
