package org.wellcurb.rulepack.oracle;

import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;

/** The few workings that published rules read, said in SQL from their definitions. */
final class SqlWorkings {
  private SqlWorkings() {}

  static SqlAmount amount(SqlFormula formula, String working) {
    return switch (working) {
      case "casing_outside_diameter" -> outside(formula);
      case "annulus_width" -> width(formula);
      case "specific_capacity" -> capacity(formula);
      default -> throw new UnsupportedOperationException("no SQL for workings." + working);
    };
  }

  /** Only for records whose diameter is stated as the outside: then it is that. */
  private static SqlAmount outside(SqlFormula formula) {
    return entry(formula, "well.casing_diameter");
  }

  private static SqlAmount width(SqlFormula formula) {
    SqlAmount bore = entry(formula, "well.bore_diameter");
    SqlAmount casing = outside(formula);
    String known = "CASE WHEN e_well_bore_diameter_s = 1 AND e_well_casing_diameter_s = 1 THEN ";
    return new SqlAmount(
        "(" + known + "(" + bore.lo() + " - " + casing.hi() + ") / 2 END)",
        "(" + known + "(" + bore.hi() + " - " + casing.lo() + ") / 2 END)",
        "(" + bore.isVoid() + " OR " + casing.isVoid() + ")");
  }

  /** Rate over drawdown; not from a test whose pumping level is none. */
  private static SqlAmount capacity(SqlFormula formula) {
    SqlAmount rate = entry(formula, "water.test_rate");
    SqlAmount down = entry(formula, "water.pumping_level");
    SqlAmount rest = entry(formula, "water.static_level");
    String measured =
        "CASE WHEN e_water_test_rate_s = 1 AND e_water_pumping_level_s = 1"
            + " AND e_water_static_level_s = 1"
            + " AND coalesce(e_water_test_method_w, '') NOT IN ('air lift', 'bailer', 'flow only')"
            + " AND "
            + down.lo()
            + " > "
            + rest.hi()
            + " THEN ";
    return new SqlAmount(
        "("
            + measured
            + "coalesce("
            + rate.lo()
            + " / ("
            + down.hi()
            + " - "
            + rest.lo()
            + "), 0) END)",
        "(" + measured + rate.hi() + " / (" + down.lo() + " - " + rest.hi() + ") END)",
        "(" + rate.isVoid() + " OR " + down.isVoid() + " OR " + rest.isVoid() + ")");
  }

  private static SqlAmount entry(SqlFormula formula, String key) {
    Entry entry = Catalogue.standard().entry(Catalogue.standard().index(key));
    return formula.entry(entry);
  }
}
