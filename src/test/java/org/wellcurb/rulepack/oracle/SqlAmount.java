package org.wellcurb.rulepack.oracle;

/**
 * An amount in SQL, as an interval: an end that is null is unbounded.
 *
 * @param lo least value
 * @param hi greatest value
 * @param isVoid whether it reads an entry that does not apply; never null
 */
record SqlAmount(String lo, String hi, String isVoid) {
  static SqlAmount of(double value) {
    String text = "CAST(" + value + " AS DOUBLE)";
    return new SqlAmount(text, text, SqlTruth.NEVER);
  }
}
