package org.wellcurb.judgement;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Scope;
import org.wellcurb.formula.Table;
import org.wellcurb.record.Catalogue;
import org.wellcurb.workings.WorkingCatalogue;

/** The standard names, and the tables that a test gives. */
public final class TestScope implements Scope {
  private final Map<String, Table> tables = new LinkedHashMap<>();

  public void add(Table table) {
    tables.put(table.name(), table);
  }

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
    return Objects.requireNonNull(workings().figure(name)).value();
  }
}
