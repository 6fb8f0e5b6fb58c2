package org.wellcurb.workings;

import java.util.Map;
import java.util.Set;

/** Why a published figure differs from what is computed by more than half of its last digit. */
final class WideTolerances {
  private static final Map<String, String> WHY =
      Map.ofEntries(
          Map.entry(
              "friction_loss_hazen_williams",
              "up to 3.2 %: the table for C = 150 does not rise smoothly from flow to flow (0.39 ft"
                  + " where the formula gives 0.400, 2.09 where 2.02, yet 1.52 and 2.46 to the last"
                  + " digit), so the table is rough and the formula right; 0.6 %: the table for C ="
                  + " 100 lies evenly above; 1.8 %: the same, times a factor of two digits"),
          Map.entry("pressure_head", "2.31 ft a psi is rounded; water of 1000 kg/m3 has 2.3067"),
          Map.entry("total_dynamic_head", "2.31 ft a psi, as for pressure_head: 0.2 ft at 50 psi"),
          Map.entry(
              "annulus_volume",
              "9.22 ft3 was taken from rounded areas; by geometry it is 9.214, which is right"),
          Map.entry(
              "cement_grout_yield",
              "0.478 + 0.667 ft3: 5 gal of water are 0.6684 ft3, so 1.146 is right"),
          Map.entry(
              "chlorine_dose_calcium_hypochlorite",
              "0.8 %: the volume a foot that the sheet prints has two digits"),
          Map.entry(
              "chlorine_dose_sodium_hypochlorite",
              "1 %: a volume a foot of two digits; 6 and 13 %: a table for householders in round"
                  + " millilitres, always upward"),
          Map.entry("voltage_drop_percent", "the page rounds 3.992 V to 4.0 before it divides"),
          Map.entry(
              "pvc_casing_min_wall", "6.625 in / 21 is 0.3155; the standard rounds it upward"));

  private WideTolerances() {}

  /** Why rows of a quantity differ; empty where all come out as printed. */
  static String why(String quantity) {
    return WHY.getOrDefault(quantity, "");
  }

  static Set<String> quantities() {
    return WHY.keySet();
  }
}
