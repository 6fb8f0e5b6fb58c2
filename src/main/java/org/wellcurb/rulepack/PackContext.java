package org.wellcurb.rulepack;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.wellcurb.formula.Formula;
import org.wellcurb.formula.FormulaException;
import org.wellcurb.judgement.JudgedBy;
import org.wellcurb.record.Catalogue;

/**
 * What the rules of a pack are read against.
 *
 * @param id id of the pack
 * @param edition day of its edition
 * @param judgedBy which day decides, for rules that do not say
 * @param sources the sources that could be read, by name
 * @param sourceIds names of all sources
 * @param brokenTables tables that could not be read: formulas that name them are passed over
 */
record PackContext(
    String id,
    LocalDate edition,
    JudgedBy judgedBy,
    PackScope scope,
    Map<String, Source> sources,
    Set<String> sourceIds,
    Set<String> brokenTables,
    Problems problems,
    Shapes shapes) {

  Catalogue catalogue() {
    return scope.catalogue();
  }

  /** The formula that stands here; null where none can be read. */
  @Nullable Formula formula(@Nullable Json json) {
    String text = shapes.line(json);
    if (text == null || json == null || namesBrokenTable(text)) {
      return null;
    }
    try {
      return Formula.condition(text, scope);
    } catch (FormulaException e) {
      problems.within(json, e);
      return null;
    }
  }

  private boolean namesBrokenTable(String text) {
    String close = text.replaceAll("\\s", "");
    return brokenTables.stream().anyMatch(name -> close.contains("table(" + name + ")"));
  }

  /** The source of this name; null where it cannot be told. */
  @Nullable Source source(@Nullable Json json) {
    String name = shapes.name(json);
    if (name == null || json == null) {
      return null;
    }
    if (!sourceIds.contains(name)) {
      problems.at(
          json,
          "there is no source " + name,
          Mends.nearest(name, sourceIds.stream().sorted().toList(), "add it to sources"));
      return null;
    }
    return sources.get(name);
  }
}
