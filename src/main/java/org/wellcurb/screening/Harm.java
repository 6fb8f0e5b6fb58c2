package org.wellcurb.screening;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.Entry;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Rule;

/**
 * What a finding may do to people, by how soon: among findings of one kind those that may harm
 * sooner stand first. It goes by what the pack says must be done at once, and by the entries that
 * the rule holds against a limit. Common practice.
 */
public enum Harm {
  /** Water that makes people ill within days: bacteria, and nitrate for infants. */
  WATER(Set.of("sample.coliform", "sample.coliform_again", "sample.e_coli", "sample.nitrate")),
  /** What the pack gives words for that must not wait. */
  HAZARD(Set.of()),
  /** What may burst. A setting alone may as well be too low, and only weep. */
  PRESSURE(
      Set.of(
          "relief.fitted",
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
          "pump.insulation_resistance",
          "setback.overhead_line")),
  /** Water that makes people ill over the years. */
  SLOW(
      Set.of(
          "sample.arsenic",
          "sample.lead",
          "sample.fluoride",
          "sample.copper",
          "sample.manganese",
          "sample.uranium")),
  /** A way in for what makes people ill, or a sample that does not tell whether it came in. */
  WAY_IN(
      all(
          List.of("setback.", "grout.", "disinfection."),
          Set.of(
              "well.cap",
              "well.head",
              "well.stickup",
              "well.flood_level",
              "well.casing_depth",
              "well.old_well",
              "sample.chlorine_residual",
              "sample.tap",
              "dates.sampled",
              "dates.sampled_again",
              "dates.disinfected",
              "dates.grouted"),
          Set.of("setback.property_line", "setback.building", "setback.road"))),
  /** Any other. */
  OTHER(Set.of()),
  /** What stands on the form alone: days, licences, numbers. */
  PAPER(
      all(
          List.of("record.", "driller.", "installer.", "dates."),
          Set.of("well.tag"),
          Set.of("dates.sampled", "dates.sampled_again", "dates.disinfected", "dates.grouted")));

  /** Gravest kind first, then the sooner harm. */
  public static final Comparator<Rule> GRAVEST_FIRST =
      Comparator.comparing(Rule::kind).thenComparing(Harm::of);

  private final Set<String> entries;

  Harm(Set<String> entries) {
    this.entries = entries;
  }

  private static Set<String> all(List<String> beginnings, Set<String> more, Set<String> but) {
    Set<String> keys = new TreeSet<>(more);
    for (int i = 0; i < Catalogue.standard().size(); i++) {
      Entry entry = Catalogue.standard().entry(i);
      if (beginnings.stream().anyMatch(entry.key()::startsWith)) {
        keys.add(entry.key());
      }
    }
    keys.removeAll(but);
    return keys;
  }

  /** Keys of the entries by which it is told. */
  Set<String> entries() {
    return entries;
  }

  /** Whether whoever lives there must be told today. */
  public boolean isNow() {
    return this == WATER || this == HAZARD;
  }

  /** What may come of falling short of a rule. */
  public static Harm of(Rule rule) {
    Set<String> required = rule.required();
    if (!rule.atOnce().isEmpty() && Collections.disjoint(WATER.entries, required)) {
      return HAZARD;
    }
    for (Harm harm : values()) {
      boolean isOf =
          harm == PAPER
              ? !required.isEmpty() && PAPER.entries.containsAll(required)
              : !Collections.disjoint(harm.entries, required);
      // That a result is not stated, or that two do not agree, harms nobody by itself.
      if (isOf && (harm != WATER || rule.kind() == FindingKind.DEFICIENCY)) {
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
