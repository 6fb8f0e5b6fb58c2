package org.wellcurb.screening;

import java.util.List;

/**
 * A suggestion of what was meant; never applied.
 *
 * @param entry key of the entry
 * @param other key of the entry that it may have changed places with; empty if none
 * @param written what stands there
 * @param reading what it may have been, as a sentence
 * @param rules how many broken rules it would put right; 0 where that is for someone else to say,
 *     and what is broken stands until then
 * @param settles ids of all broken rules that it would put right, in the pack's order; more than
 *     {@code rules} where several have one subject
 */
public record PossibleReading(
    String entry, String other, String written, String reading, int rules, List<String> settles) {

  public PossibleReading {
    settles = List.copyOf(settles);
  }

  /** True if it would change this entry. */
  public boolean changes(String key) {
    return key.equals(entry) || (!other.isEmpty() && key.equals(other));
  }
}
