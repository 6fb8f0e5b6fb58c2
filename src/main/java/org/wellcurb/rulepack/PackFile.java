package org.wellcurb.rulepack;

import java.util.Map;

/**
 * A file that a pack was loaded from.
 *
 * @param pack id of the pack in it
 * @param sha256 hash of its bytes, in lower-case hexadecimal
 * @param text its text, for showing where an error is
 * @param french what its texts are in French, by their own words, where its folder has it
 */
public record PackFile(String pack, String sha256, String text, Map<String, String> french) {
  public PackFile {
    french = Map.copyOf(french);
  }

  /** A file whose texts stand in one language. */
  public PackFile(String pack, String sha256, String text) {
    this(pack, sha256, text, Map.of());
  }
}
