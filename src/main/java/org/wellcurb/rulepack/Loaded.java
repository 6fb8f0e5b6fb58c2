package org.wellcurb.rulepack;

import java.util.List;
import java.util.Set;

/**
 * A pack as far as it could be read, with what is wrong with it. A pack built on a faulty one is
 * still checked, so that all errors are said in one go; names that are there but could not be read
 * are known, so that one error does not make ten.
 *
 * @param pack what could be read
 * @param ancestors ids of the packs that it is built on, near and far, and its own
 * @param ruleIds ids of all its rules, those that could not be read too
 * @param sourceIds names of all its sources, those that could not be read too
 * @param brokenTables tables that could not be read
 * @param problems what is wrong, that of the packs built on first
 */
record Loaded(
    Pack pack,
    Set<String> ancestors,
    Set<String> ruleIds,
    Set<String> sourceIds,
    Set<String> brokenTables,
    List<PackProblem> problems) {

  Loaded {
    ancestors = Set.copyOf(ancestors);
    ruleIds = Set.copyOf(ruleIds);
    sourceIds = Set.copyOf(sourceIds);
    brokenTables = Set.copyOf(brokenTables);
    problems = List.copyOf(problems);
  }
}
