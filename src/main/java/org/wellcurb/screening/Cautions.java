package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wellcurb.judgement.Deciding;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.judgement.WorkingShown;
import org.wellcurb.quantity.Note;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;

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
          "wiring",
          "heater",
          "pressure",
          "pit",
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

  /** Whether one of these sums says how much chlorine to handle. */
  public static boolean isOfChlorine(List<WorkingShown> workings) {
    return workings.stream()
        .anyMatch(each -> each.lacking().isEmpty() && CHLORINE_SUMS.contains(each.name()));
  }

  private List<String> keys() {
    List<String> keys = new ArrayList<>();
    if (fallsShort("wire.casing_bonded") || fallsShort("wire.grounding")) {
      keys.add("shock");
    }
    if (ELECTRICAL.stream().anyMatch(this::touches)) {
      keys.add("wiring");
    }
    if (fallsShort("water_heater.")) {
      keys.add("heater");
    }
    if (touches("relief.") || touches("tank.") || touches("pressure.")) {
      keys.add("pressure");
    }
    if (isChoice("well.head", "pit")
        || isChoice("well.head", "buried")
        || below("well.stickup", 0)) {
      keys.add("pit");
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
