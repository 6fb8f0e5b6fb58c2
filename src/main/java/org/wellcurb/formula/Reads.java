package org.wellcurb.formula;

import java.util.LinkedHashSet;
import java.util.Set;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.workings.Input;

/**
 * Which entries an expression reads, through tables and workings too, in order of first mention.
 */
public final class Reads {
  private final Catalogue catalogue;
  private final Set<Entry> entries = new LinkedHashSet<>();

  private Reads(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** All entries that the expression reads. */
  public static Set<Entry> of(Expr expr, Catalogue catalogue) {
    Reads reads = new Reads(catalogue);
    reads.add(expr);
    return reads.entries;
  }

  private void add(Expr expr) {
    if (expr instanceof Expr.EntryAmount e) {
      entries.add(e.entry());
    } else if (expr instanceof Expr.YesNo e) {
      entries.add(e.entry());
    } else if (expr instanceof Expr.IsApplicable e) {
      entries.add(e.entry());
    } else if (expr instanceof Expr.Known e) {
      entries.add(e.entry());
    } else if (expr instanceof Expr.Applies e) {
      entries.add(e.entry());
    } else if (expr instanceof Expr.EntryWord e) {
      entries.add(e.entry());
    } else if (expr instanceof Expr.TableAmount t) {
      entries.addAll(t.table().by());
    } else if (expr instanceof Expr.TableWord t) {
      entries.addAll(t.table().by());
    } else if (expr instanceof Expr.WorkingAmount w) {
      for (Input input : w.working().inputs()) {
        entries.add(catalogue.entry(catalogue.index(input.key())));
      }
    } else {
      Parts.of(expr).forEach(this::add);
    }
  }
}
