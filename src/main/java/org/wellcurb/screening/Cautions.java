package org.wellcurb.screening;

import java.util.ArrayList;
import java.util.List;
import org.wellcurb.judgement.Outcome;
import org.wellcurb.record.Catalogue;
import org.wellcurb.record.WellRecord;

/**
 * Which cautions a sheet shows: those whose matter the record touches. The words are the report's,
 * under {@code caution.KEY}; {@code always} stands on every page.
 */
public final class Cautions {
  private final WellRecord record;
  private final Catalogue catalogue;
  private final List<RuleResult> results;

  private Cautions(WellRecord record, List<RuleResult> results) {
    this.record = record;
    this.catalogue = record.catalogue();
    this.results = results;
  }

  /** The keys of the cautions that apply, the usual one last. */
  public static List<String> of(WellRecord record, List<RuleResult> results) {
    return new Cautions(record, results).keys();
  }

  private List<String> keys() {
    List<String> keys = new ArrayList<>();
    if (touches("wire.") || isOpen("pump.insulation_resistance", "pump.running_current")) {
      keys.add("wiring");
    }
    if (touches("relief.") || touches("tank.") || touches("pressure.")) {
      keys.add("pressure");
    }
    if (isChoice("well.head", "pit") || below("well.stickup", 0)) {
      keys.add("pit");
    }
    if (touches("disinfection.") || isChoice("sample.coliform", "present")) {
      keys.add("chlorine");
    }
    if (isChoice("sample.coliform", "absent")) {
      keys.add("coliform");
    }
    // The federal limit for public systems: 10 mg/L as nitrogen (40 CFR 141.62).
    if (above("sample.nitrate", 0.010)) {
      keys.add("nitrate");
    }
    if (touches("well.flood_level")) {
      keys.add("flood");
    }
    if (isYes("water.flowing") || isGiven("water.shut_in_pressure")) {
      keys.add("flowing");
    }
    keys.add("always");
    return keys;
  }

  /** True if a finding, or something that cannot be told, is about an entry with this beginning. */
  private boolean touches(String beginning) {
    return results.stream()
        .filter(
            result ->
                result.outcome() == Outcome.FALLS_SHORT || result.outcome() == Outcome.CANNOT_TELL)
        .anyMatch(
            result ->
                (result.explanation().deciding() != null
                        && result.explanation().deciding().entry().startsWith(beginning))
                    || result.explanation().needs().stream()
                        .anyMatch(key -> key.startsWith(beginning)));
  }

  private boolean isOpen(String... keys) {
    for (String key : keys) {
      if (touches(key)) {
        return true;
      }
    }
    return false;
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

  private boolean below(String key, double limit) {
    return isGiven(key) && record.hi(catalogue.index(key)) < limit;
  }

  private boolean above(String key, double limit) {
    return isGiven(key) && record.hi(catalogue.index(key)) > limit;
  }
}
