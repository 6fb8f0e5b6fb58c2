package org.wellcurb.formula;

import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.wellcurb.record.Catalogue;
import org.wellcurb.workings.WorkingCatalogue;

/** What the names in a formula may mean. */
public interface Scope {
  Catalogue catalogue();

  WorkingCatalogue workings();

  /** The table of this name; null if the pack has none. */
  @Nullable Table table(String name);

  /** Names of all tables, for saying which was probably meant. */
  Collection<String> tableNames();

  /** The value in SI that the pack gives this figure, or the figure's own. */
  double figure(String name);
}
