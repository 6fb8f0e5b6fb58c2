package org.wellcurb.screening;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.wellcurb.rulepack.Rule;

/**
 * What a finding may do to people, by how soon: among findings of one kind those that may harm
 * sooner stand first. It goes by the entries that the rule holds against a limit, whatever pack it
 * is of. Common practice.
 */
public enum Harm {
  /** Water that makes people ill within days: bacteria, and nitrate for infants. */
  WATER(Set.of("sample.coliform", "sample.coliform_again", "sample.e_coli", "sample.nitrate")),
  /** What may burst. */
  PRESSURE(
      Set.of(
          "relief.fitted",
          "relief.setting",
          "relief.capacity",
          "relief.valve_between",
          "water_heater.relief_valve",
          "tank.pressure_rating",
          "service_line.pressure_rating",
          "drop_pipe.pressure_rating")),
  /** What may give a shock. */
  SHOCK(
      Set.of(
          "wire.grounding",
          "wire.casing_bonded",
          "wire.breaker",
          "wire.disconnect",
          "setback.overhead_line")),
  /** Water that makes people ill over the years. */
  SLOW(
      Set.of(
          "sample.arsenic", "sample.lead", "sample.fluoride", "sample.copper", "sample.manganese")),
  /** Any other. */
  OTHER(Set.of());

  /** Gravest kind first, then the sooner harm. */
  public static final Comparator<Rule> GRAVEST_FIRST =
      Comparator.comparing(Rule::kind).thenComparing(Harm::of);

  private final Set<String> entries;

  Harm(Set<String> entries) {
    this.entries = entries;
  }

  /** Keys of the entries by which it is told. */
  Set<String> entries() {
    return entries;
  }

  /** What may come of falling short of a rule. */
  public static Harm of(Rule rule) {
    Set<String> required = rule.required();
    for (Harm harm : values()) {
      if (!Collections.disjoint(harm.entries, required)) {
        return harm;
      }
    }
    return OTHER;
  }

  /** The same findings, the gravest kind first, then the sooner harm, then in the pack's order. */
  public static List<Finding> gravestFirst(List<Finding> findings) {
    return findings.stream().sorted(Comparator.comparing(Finding::rule, GRAVEST_FIRST)).toList();
  }
}
