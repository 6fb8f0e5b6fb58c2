package org.wellcurb.rulepack;

import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Scope;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Catalogue;
import org.wellcurb.workings.Figure;
import org.wellcurb.workings.WorkingCatalogue;

/** What the names in a pack's formulas mean. */
public record PackScope(Map<String, Table> tables, Map<String, Double> figures) implements Scope {

  @Override
  public Catalogue catalogue() {
    return Catalogue.standard();
  }

  @Override
  public WorkingCatalogue workings() {
    return WorkingCatalogue.standard();
  }

  @Override
  public @Nullable Table table(String name) {
    return tables.get(name);
  }

  @Override
  public Collection<String> tableNames() {
    return tables.keySet();
  }

  @Override
  public double figure(String name) {
    Double own = figures.get(name);
    if (own != null) {
      return own;
    }
    Figure figure = workings().figure(name);
    if (figure == null) {
      throw new IllegalArgumentException("no figure " + name);
    }
    return figure.value();
  }
}
