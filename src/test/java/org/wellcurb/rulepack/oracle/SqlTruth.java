package org.wellcurb.rulepack.oracle;

/**
 * A condition in SQL.
 *
 * @param truth its truth: true, false, or null where it cannot be told
 * @param isVoid whether it reads an entry that does not apply; never null
 */
record SqlTruth(String truth, String isVoid) {
  static final String NEVER = "FALSE";

  SqlTruth(String truth) {
    this(truth, NEVER);
  }

  SqlTruth negated() {
    return new SqlTruth("(NOT " + truth + ")", isVoid);
  }
}
