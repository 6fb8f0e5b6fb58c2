package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.quantity.Note;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;
import org.wellcurb.rulepack.FindingKind;
import org.wellcurb.rulepack.Rule;

/**
 * Which cautions a sheet shows: those whose matter the record touches. The words are the report's,
 * under {@code caution.KEY}; {@code always} stands on every page.
 */
public final class Cautions {
  /** The key of the caution on handling chlorine. */
  public static final String CHLORINE = "chlorine";

  /** All keys, in the order in which pages show them. */
  public static final List<String> ALL =
      List.of(
          "shock",
          "power",
          "wiring",
          "heater",
          "pressure",
          "pit",
          "dig",
          CHLORINE,
          "bacteria",
          "coliform",
          "coliform.again",
          "coliform.void",
          "nitrate",
          "nitrate.perhaps",
          "arsenic",
          "copper",
          "fluoride",
          "lead",
          "manganese",
          "uranium",
          "chlorinated",
          "flood",
          "flowing",
          "always");

  /** Sums whose result is a quantity of chlorine to handle. */
  private static final List<String> CHLORINE_SUMS = List.of("chlorine_needed", "bleach_needed");

  /** 200 mg/L, in kg/m3; common practice. */
  private static final double STRONG_DOSE = 0.2;

  private static final List<String> ELECTRICAL =
      List.of(
          "wire.",
          "pump.voltage",
          "pump.phase",
          "pump.leads",
          "pump.running_current",
          "pump.nameplate_current",
          "pump.service_factor_current",
          "pump.insulation_resistance",
          "pump.splice",
          "pump.control_box");

  /** What lies under ground: who puts it right digs. */
  private static final List<String> BURIED =
      List.of("pitless.", "service_line.", "wire.conduit", "well.head", "well.stickup");

  /** What hangs in the well or is switched on with the pump: who puts it right has power near. */
  private static final List<String> POWERED =
      List.of("pump.", "drop_pipe.", "pitless.", "wire.", "pressure.", "tank.", "relief.");

  private static final List<String> LIVE = List.of("wire.casing_bonded", "wire.grounding");

  private static final List<String> HEATER = List.of("water_heater.");

  private static final List<String> STORED = List.of("relief.", "tank.", "pressure.");

  private final WellRecord record;
  private final Catalogue catalogue;
  private final UnfitWater water;
  private final List<RuleResult> results;

  private Cautions(WellRecord record, List<RuleResult> results) {
    this.record = record;
    this.catalogue = record.catalogue();
    water = new UnfitWater(record);
    this.results = results;
  }

  /** The keys of the cautions that apply, the usual one last. */
  public static List<String> of(WellRecord record, List<RuleResult> results) {
    return new Cautions(record, results).keys();
  }

  /**
   * The keys of the cautions for whoever puts these findings right, the usual one left out: of
   * those that ask for work on the well, and not for a word on the form.
   */
  public static List<String> ofWork(List<Finding> findings) {
    Map<String, List<String>> matters =
        Map.of(
            "shock",
            LIVE,
            "power",
            POWERED,
            "wiring",
            ELECTRICAL,
            "heater",
            HEATER,
            "pressure",
            STORED,
            "dig",
            BURIED,
            CHLORINE,
            List.of("disinfection."));
    List<String> entries =
        findings.stream()
            .filter(finding -> isWork(finding.rule()))
            .map(finding -> finding.deciding().entry())
            .toList();
    return ALL.stream()
        .filter(key -> entries.stream().anyMatch(entry -> begins(entry, matters.get(key))))
        .toList();
  }

  private static boolean begins(String entry, @Nullable List<String> beginnings) {
    return beginnings != null && beginnings.stream().anyMatch(entry::startsWith);
  }

  /** Whether what falls short is on the well: entries that contradict or lack are on the form. */
  private static boolean isWork(Rule rule) {
    return rule.kind() == FindingKind.DEFICIENCY || rule.kind() == FindingKind.ADVISORY;
  }

  /** Whether one of these sums says how much chlorine to handle. */
  public static boolean isOfChlorine(List<WorkingShown> workings) {
    return workings.stream()
        .anyMatch(each -> each.lacking().isEmpty() && CHLORINE_SUMS.contains(each.name()));
  }

  private List<String> keys() {
    List<String> keys = new ArrayList<>();
    if (LIVE.stream().anyMatch(this::fallsShort)) {
      keys.add("shock");
    }
    if (POWERED.stream().anyMatch(this::isToMend)) {
      keys.add("power");
    }
    if (ELECTRICAL.stream().anyMatch(this::touches)) {
      keys.add("wiring");
    }
    if (HEATER.stream().anyMatch(this::fallsShort)) {
      keys.add("heater");
    }
    if (STORED.stream().anyMatch(this::touches)) {
      keys.add("pressure");
    }
    if (isChoice("well.head", "pit")
        || isChoice("well.head", "buried")
        || below("well.stickup", 0)) {
      keys.add("pit");
    }
    if (BURIED.stream().anyMatch(this::isToMend)) {
      keys.add("dig");
    }
    // Who must disinfect handles it: not whoever only looks at what the form left open.
    if (fallsShort("disinfection.") || water.hasBacteria()) {
      keys.add(CHLORINE);
    }
    if (water.hasBacteria()) {
      keys.add("bacteria");
    }
    if (isChoice("sample.coliform", "absent") && !water.hasBacteria()) {
      boolean isVoid = fallsShort("sample.chlorine_residual") || fallsShort("dates.sampled");
      keys.add(isVoid ? "coliform.void" : "coliform");
    }
    if (water.isCleared()) {
      keys.add("coliform.again");
    }
    if (water.mayHaveNitrate()) {
      keys.add(water.hasNitrate() ? "nitrate" : "nitrate.perhaps");
    }
    if (water.mayHaveArsenic()) {
      keys.add("arsenic");
    }
    for (UnfitWater.Over over : UnfitWater.over(record)) {
      keys.add(catalogue.entry(over.entry()).key().replace("sample.", ""));
    }
    if (water.mayHaveChlorine() || above("disinfection.dose", STRONG_DOSE)) {
      keys.add("chlorinated");
    }
    if (touches("well.flood_level") || isUnderFlood()) {
      keys.add("flood");
    }
    if (isYes("water.flowing")
        || isGiven("water.shut_in_pressure")
        || record.note(catalogue.index("water.static_level")) == Note.FLOWING) {
      keys.add("flowing");
    }
    keys.add("always");
    return keys;
  }

  /** True if a finding, or something that cannot be told, is about an entry with this beginning. */
  private boolean touches(String beginning) {
    return isDecidedBy(beginning, Outcome.FALLS_SHORT)
        || isDecidedBy(beginning, Outcome.CANNOT_TELL)
        || results.stream()
            .filter(
                result ->
                    result.outcome() == Outcome.FALLS_SHORT
                        || result.outcome() == Outcome.CANNOT_TELL)
            .flatMap(result -> result.explanation().needs().stream())
            .anyMatch(key -> key.startsWith(beginning));
  }

  /** True if a finding is about an entry with this beginning. */
  private boolean fallsShort(String beginning) {
    return isDecidedBy(beginning, Outcome.FALLS_SHORT);
  }

  /** True if a finding about an entry with this beginning asks for work on the well. */
  private boolean isToMend(String beginning) {
    return results.stream()
        .filter(result -> isWork(result.rule()) && result.outcome() == Outcome.FALLS_SHORT)
        .map(result -> result.explanation().deciding())
        .anyMatch(deciding -> deciding != null && deciding.entry().startsWith(beginning));
  }

  private boolean isDecidedBy(String beginning, Outcome outcome) {
    for (RuleResult result : results) {
      @Nullable Deciding deciding = result.explanation().deciding();
      if (result.outcome() == outcome
          && deciding != null
          && deciding.entry().startsWith(beginning)) {
        return true;
      }
    }
    return false;
  }

  /** The casing top may stand lower than the highest flood. */
  private boolean isUnderFlood() {
    int flood = catalogue.index("well.flood_level");
    int top = catalogue.index("well.stickup");
    return record.isGiven(flood) && record.isGiven(top) && record.hi(flood) > record.lo(top);
  }

  private boolean isGiven(String key) {
    return record.isGiven(catalogue.index(key));
  }

  private boolean isChoice(String key, String choice) {
    return choice.equals(record.choice(catalogue.index(key)));
  }

  private boolean isYes(String key) {
    return isGiven(key) && record.lo(catalogue.index(key)) == 1;
  }

  private boolean above(String key, double limit) {
    return isGiven(key) && record.lo(catalogue.index(key)) > limit;
  }

  private boolean below(String key, double limit) {
    return isGiven(key) && record.hi(catalogue.index(key)) < limit;
  }
}
