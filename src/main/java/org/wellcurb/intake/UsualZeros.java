package org.wellcurb.intake;

import java.util.Set;
import org.wellcurb.record.Entry;

/**
 * Entries in which many zeros are no surprise: grout begins at the ground, samples hold nothing.
 */
final class UsualZeros {
  private static final Set<String> USUAL =
      Set.of(
          "disinfection.residual",
          "grout.top",
          "pump.check_valves",
          "pump.torque_arresters",
          "storage.volume",
          "water.free_flow",
          "water.shut_in_pressure",
          "well.liner_top");

  private UsualZeros() {}

  static boolean isUsual(Entry entry) {
    return USUAL.contains(entry.key()) || entry.key().startsWith("sample.");
  }
}
