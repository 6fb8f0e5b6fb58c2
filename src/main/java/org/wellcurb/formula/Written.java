package org.wellcurb.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.quantity.UnitSystem;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.record.WellRecord;

/**
 * The unit systems in which things were written: of the amounts that a comparison reads (it picks
 * the side of a dual limit) and of the limit itself (it decides whether rounding gives slack).
 */
final class Written {
  private Written() {}

  /** Places of the entries whose unit counts for a comparison over these expressions. */
  static int[] amounts(List<Expr> sides, Catalogue catalogue) {
    return sides.stream()
        .flatMap(side -> Reads.of(side, catalogue).stream())
        .filter(entry -> entry.usUnit() != null)
        .mapToInt(Entry::index)
        .distinct()
        .toArray();
  }

  /** The one system that all given amounts were written in; null if there are none, or two. */
  static @Nullable UnitSystem common(Frame f, int[] entries) {
    @Nullable UnitSystem common = null;
    for (int entry : entries) {
      if (f.state(entry) == WellRecord.GIVEN) {
        UnitSystem system = f.record().system(entry);
        if (system != UnitSystem.NEUTRAL) {
          if (common != null && common != system) {
            return null;
          }
          common = system;
        }
      }
    }
    return common;
  }

  /** True if a limit holds no entry and no working (a table may be chosen by entries). */
  static boolean holdsNoEntry(Expr limit) {
    return !Parts.any(
        limit,
        part ->
            part instanceof Expr.EntryAmount
                || part instanceof Expr.WorkingAmount
                || part instanceof Expr.Condition);
  }

  /** The unit system of a limit that holds no entry, as it stands in this frame; null if mixed. */
  static @Nullable UnitSystem ofLimit(Expr limit, Frame f) {
    if (limit instanceof Expr.Literal literal) {
      return literal.unit().system();
    } else if (limit instanceof Expr.FigureAmount figure) {
      return figure.unit().system();
    } else if (limit instanceof Expr.Dual dual) {
      return f.written == dual.bracketUnit().system()
          ? dual.bracketUnit().system()
          : dual.unit().system();
    } else if (limit instanceof Expr.TableAmount table) {
      return ofTable(table.table(), f);
    }
    UnitSystem system = UnitSystem.NEUTRAL;
    for (Expr part : Parts.of(limit)) {
      @Nullable UnitSystem other = ofLimit(part, f);
      if (other == null) {
        return null;
      }
      if (system != UnitSystem.NEUTRAL && other != UnitSystem.NEUTRAL && system != other) {
        return null;
      }
      system = other == UnitSystem.NEUTRAL ? system : other;
    }
    return system;
  }

  private static @Nullable UnitSystem ofTable(Table table, Frame f) {
    TableRows rows = new TableRows(table);
    @Nullable UnitSystem system = null;
    for (int i = 0; i < table.rows().size(); i++) {
      int match = rows.match(f, i);
      if (match == Truth.FALSE || !(table.rows().get(i).value() instanceof Table.Amount value)) {
        continue;
      }
      UnitSystem ofRow =
          value.bracketUnit() != null && f.written == value.bracketUnit().system()
              ? value.bracketUnit().system()
              : value.unit().system();
      // Of several rows that it may be, the system is known where they share one.
      if (system != null && system != ofRow) {
        return null;
      }
      system = ofRow;
      if (match == Truth.TRUE) {
        return system;
      }
    }
    return system;
  }
}
